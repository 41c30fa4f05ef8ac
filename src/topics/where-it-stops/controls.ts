import { controls } from '../base/controls.ts';
import type { Control } from '../base/controls.ts';

const { 'subject.angle': angle, 'subject.hrc': hardness } = controls;
// Unreachable: both stand among the controls.
if (!angle || !hardness) throw new RangeError('the subject’s angle and hardness have no control');

/** The subject's edge angle, down to the floor and below it. */
const slimAngle: Control = { ...angle, min: 4 };

export const limitsControls: Record<string, Control> = {
  'limits.angle': slimAngle,
  'limits.hardness': hardness,
};
