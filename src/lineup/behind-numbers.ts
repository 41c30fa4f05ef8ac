import { nominal, parameters } from '../model/index.ts';
import {
  behindFactors,
  behindOf,
  contactDepthOf,
  regrindOf,
  removedMm2,
  slipMm,
  thicknessAtMm,
} from './behind.ts';
import type { Behind } from './behind.ts';
import type { NumberOf } from './numbers.ts';
import type { Scene } from './scene.ts';
import { brief, plain, times } from './show.ts';

/** A measure to three figures, without empty decimals. */
const short = (value: number): string => brief(Number(plain(value)));

const both = (name: string, of: (blade: Behind, scene: Scene) => string): Record<string, NumberOf> => ({
  [`subject.${name}`]: (scene) => of(behindOf(scene).subject, scene),
  [`baseline.${name}`]: (scene) => of(behindOf(scene).baseline, scene),
});

const exponent = parameters.thicknessExponent;

/** The numbers of what lies behind an edge. */
export const behindNumbers: Record<string, NumberOf> = {
  'contact.depth': (scene) => `${brief(contactDepthOf(scene))} mm`,
  ...both('opened', (blade, scene) => `${plain(thicknessAtMm(blade, contactDepthOf(scene)), 2)} mm`),
  ...both('bevel.width', ({ bevelWidthMm }) => `${plain(bevelWidthMm, 2)} mm`),
  ...both('bevel.height', ({ bevelHeightMm }) => `${plain(bevelHeightMm, 2)} mm`),
  ...both('grind.angle', ({ grindAngleDeg }) => `${short(grindAngleDeg)}°`),
  ...both('removed', (blade, scene) => `${plain(removedMm2(blade.edgeMm, regrindOf(scene)), 2)} mm²`),
  'regrind.from': (scene) => `${short(regrindOf(scene).fromDeg)}°`,
  'regrind.to': (scene) => `${short(regrindOf(scene).toDeg)}°`,
  'slip.height': () => `${slipMm} mm`,
  'behind.close': (scene) => times(behindFactors(scene).close.both),
  'behind.pocket': (scene) => times(behindFactors(scene).pocket.both),
  'thickness.exponent': ({ lineUp }) =>
    brief(nominal(lineUp.assumptions?.thicknessExponent ?? exponent.default)),
  'thickness.exponent.range': () => `${brief(exponent.low)} to ${brief(exponent.high)}`,
};
