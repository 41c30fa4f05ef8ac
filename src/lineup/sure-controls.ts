import { isUnknown, nominal, parameters } from '../model/index.ts';
import type { Quantity } from '../model/index.ts';
import { knifeOf, withKnife } from './controls.ts';
import type { Control, Role } from './controls.ts';
import type { Placed } from './schema.ts';

const isAlong = (value: Placed): value is Exclude<Placed, Quantity> =>
  typeof value === 'object' && 'heel' in value;

/** The ± of a quantity as entered; half its range where it is not known. */
function plusMinusOf(value: Placed): number {
  if (typeof value === 'number') return 0;
  if (isAlong(value)) {
    const readings = [value.heel, value.middle, value.tip];
    return (Math.max(...readings) - Math.min(...readings)) / 2;
  }
  return isUnknown(value) ? (value.high - value.low) / 2 : value.plusMinus;
}

/** The same value with another ±; readings along the edge become their mean. */
function withPlusMinus(value: Placed, plusMinus: number): Quantity {
  const middle = isAlong(value) ? (value.heel + value.middle + value.tip) / 3 : nominal(value);
  if (plusMinus === 0) return middle;
  const shape = typeof value === 'object' && 'shape' in value && value.shape ? { shape: value.shape } : {};
  return { value: middle, plusMinus, ...shape };
}

const angle = (role: Role): Control => ({
  label: (entry) => `${knifeOf(entry, role).name}: ± of the edge angle`,
  min: 0,
  max: 6,
  step: 0.25,
  unit: '°',
  read: (entry) => {
    const { angle: given } = knifeOf(entry, role);
    return 'deg' in given ? plusMinusOf(given.deg) : 0;
  },
  write: (entry, value) =>
    withKnife(entry, role, (knife) =>
      'deg' in knife.angle
        ? { ...knife, angle: { ...knife.angle, deg: withPlusMinus(knife.angle.deg, value) } }
        : knife,
    ),
});

const edge = (role: Role): Control => ({
  label: (entry) => `${knifeOf(entry, role).name}: ± of the thickness behind the edge`,
  min: 0,
  max: 0.2,
  step: 0.01,
  unit: ' mm',
  read: (entry) => plusMinusOf(knifeOf(entry, role).edgeMm),
  write: (entry, value) =>
    withKnife(entry, role, (knife) => ({ ...knife, edgeMm: withPlusMinus(knife.edgeMm, value) })),
});

/** The sliders of the lesson on doubt. */
export const sureControls: Record<string, Control> = {
  'subject.angle.plusMinus': angle('subject'),
  'baseline.angle.plusMinus': angle('baseline'),
  'subject.edge.plusMinus': edge('subject'),
  residualCv: {
    label: () => 'How far steels lie off the published line',
    min: 0,
    max: 0.3,
    step: 0.01,
    unit: '',
    read: ({ assumptions }) => nominal(assumptions.residualCv ?? parameters.residualCv.default),
    write: (entry, residualCv) => ({ ...entry, assumptions: { ...entry.assumptions, residualCv } }),
  },
};
