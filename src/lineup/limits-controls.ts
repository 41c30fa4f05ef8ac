import { measures, nominal } from '../model/index.ts';
import { controls } from './controls.ts';
import type { Control } from './controls.ts';
import type { KnifeEntry, LineUpEntry } from './schema.ts';

const subjectOf = ({ knives, subject }: LineUpEntry): KnifeEntry => {
  const knife = knives.find(({ id }) => id === subject);
  if (!knife) throw new RangeError(`subject ${subject} is not among the knives of the line-up`);
  return knife;
};

const angle = controls['subject.angle'];
if (!angle) throw new RangeError('the subject’s angle has no control');

/** The subject's edge angle, down to the floor and below it. */
const slimAngle: Control = { ...angle, min: 4 };

const hardness: Control = {
  label: (entry) => `${subjectOf(entry).name}: hardness`,
  min: 50,
  max: measures.hrc.high,
  step: 0.5,
  unit: ' HRC',
  read: (entry) => nominal(subjectOf(entry).hrc),
  write: (entry, value) => ({
    ...entry,
    knives: entry.knives.map((knife) => {
      if (knife.id !== entry.subject) return knife;
      const { hrc } = knife;
      return {
        ...knife,
        hrc: typeof hrc === 'object' && 'plusMinus' in hrc ? { ...hrc, value } : value,
      };
    }),
  }),
};

export const limitsControls: Record<string, Control> = {
  'limits.angle': slimAngle,
  'limits.hardness': hardness,
};
