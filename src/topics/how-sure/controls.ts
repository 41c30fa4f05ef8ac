import { isUnknown, nominal, parameters } from '../../model/index.ts';
import type { Quantity } from '../../model/index.ts';
import { knifeOf, withKnife } from '../base/controls.ts';
import type { Control } from '../base/controls.ts';
import type { Role } from '../../comparison/role.ts';
import { oneQuantity, perSideDeg } from '../../comparison/knife-measures.ts';
import { units } from '../../scene/show.ts';

/** The ± of a quantity; half its range where it is not known. */
function plusMinusOf(value: Quantity): number {
  if (typeof value === 'number') return 0;
  return isUnknown(value) ? (value.high - value.low) / 2 : value.plusMinus;
}

/** The same middle with another ±. */
function withPlusMinus(value: Quantity, plusMinus: number): Quantity {
  if (plusMinus === 0) return nominal(value);
  const shape = typeof value === 'object' && 'shape' in value ? { shape: value.shape } : {};
  return { value: nominal(value), plusMinus, ...shape };
}

const angle = (role: Role): Control => ({
  label: (entry) => `${knifeOf(entry, role).name}: ± of the edge angle`,
  min: 0,
  max: 6,
  step: 0.25,
  unit: units.deg,
  read: (entry) => plusMinusOf(perSideDeg(knifeOf(entry, role).angle)),
  // Readings along the edge, or of a caliper, become the angle they gave, which is per side beyond doubt.
  write: (entry, value) =>
    withKnife(entry, role, (knife) => {
      const deg = withPlusMinus(perSideDeg(knife.angle), value);
      return { ...knife, angle: 'deg' in knife.angle ? { ...knife.angle, deg } : { deg, perSide: true } };
    }),
});

const edge = (role: Role): Control => ({
  label: (entry) => `${knifeOf(entry, role).name}: ± of the thickness behind the edge`,
  min: 0,
  max: 0.2,
  step: 0.01,
  unit: units.mm,
  read: (entry) => plusMinusOf(oneQuantity(knifeOf(entry, role).edgeMm)),
  write: (entry, value) =>
    withKnife(entry, role, (knife) => ({
      ...knife,
      edgeMm: withPlusMinus(oneQuantity(knife.edgeMm), value),
    })),
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
