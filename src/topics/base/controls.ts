import { withShownNames } from '../../comparison/knife-names.ts';
import { measures, nominal, parameters } from '../../model/index.ts';
import type { Quantity } from '../../model/index.ts';
import { found } from '../../comparison/found.ts';
import type { Role } from '../../comparison/role.ts';
import type { KnifeEntry, ComparisonEntry, Placed } from '../../comparison/entry.ts';
import { brief, units } from '../../scene/show.ts';
import { oneQuantity, perSideDeg } from '../../comparison/knife-measures.ts';

/** A slider: what it shows, what it may be, and how it reads and writes the comparison. Only controls write. */
export interface Control {
  label(entry: ComparisonEntry): string;
  min: number;
  max: number;
  step: number;
  unit: string;
  read(entry: ComparisonEntry): number;
  write(entry: ComparisonEntry, value: number): ComparisonEntry;
  /** The highest value where that depends on the comparison; never above `max`. */
  last?(entry: ComparisonEntry): number;
  /** How a value is said where a number with a unit does not say it. */
  say?(entry: ComparisonEntry, value: number): string;
}

export const knifeOf = (entry: ComparisonEntry, role: Role): KnifeEntry =>
  found(withShownNames(entry.knives), entry[role], role);

export const withKnife = (
  entry: ComparisonEntry,
  role: Role,
  change: (knife: KnifeEntry) => KnifeEntry,
): ComparisonEntry => ({
  ...entry,
  knives: entry.knives.map((knife) => (knife.id === entry[role] ? change(knife) : knife)),
});

/** A new middle value for a quantity; a ± that was entered stays what it was. */
const moved = (quantity: Placed, value: number): Quantity =>
  typeof quantity === 'object' && 'plusMinus' in quantity ? { ...quantity, value } : value;

const angle = (role: Role): Control => ({
  label: (entry) => `${knifeOf(entry, role).name}: edge angle per side`,
  min: 8,
  max: 30,
  step: 0.5,
  unit: units.deg,
  read: (entry) => nominal(perSideDeg(knifeOf(entry, role).angle)),
  write: (entry, value) =>
    withKnife(entry, role, (knife) => ({
      ...knife,
      angle: { deg: 'deg' in knife.angle ? moved(knife.angle.deg, value) : value },
    })),
});

const edge = (role: Role): Control => ({
  label: (entry) => `${knifeOf(entry, role).name}: thickness behind the edge`,
  min: 0.1,
  max: 1.2,
  step: 0.01,
  unit: units.mm,
  read: (entry) => nominal(oneQuantity(knifeOf(entry, role).edgeMm)),
  write: (entry, value) =>
    withKnife(entry, role, (knife) => ({
      ...knife,
      edgeMm: moved(knife.edgeMm, value),
    })),
});

const hardness = (role: Role): Control => ({
  label: (entry) => `${knifeOf(entry, role).name}: hardness`,
  min: 40,
  max: measures.hrc.high,
  step: 0.5,
  unit: units.hrc,
  read: (entry) => nominal(knifeOf(entry, role).hrc),
  write: (entry, value) => withKnife(entry, role, (knife) => ({ ...knife, hrc: moved(knife.hrc, value) })),
});

/** An assumed exponent. Set back to the model's own value it is the model's again, with its stated range. */
const exponent = (
  name: 'angleExponent' | 'thicknessExponent' | 'finishExponent',
  label: string,
  min: number,
  max: number,
): Control => ({
  label: () => label,
  min,
  max,
  step: 0.05,
  unit: '',
  read: ({ assumptions }) => nominal(assumptions[name] ?? parameters[name].default),
  write: (entry, value) => {
    const { [name]: _before, ...others } = entry.assumptions;
    const own = value === parameters[name].default;
    return { ...entry, assumptions: own ? others : { ...others, [name]: value } };
  },
});

/** How many percentages the sliders of the first lesson reach; more are typed on the Compare page. */
const longestChain = 10;

const percentage = (index: number): Control => ({
  label: () => `Effect ${index + 1}`,
  min: -60,
  max: 100,
  step: 5,
  unit: '%',
  read: (entry) => entry.faceValues?.[index] ?? 0,
  write: (entry, value) => {
    const values = [...(entry.faceValues ?? [])];
    while (values.length <= index) values.push(0);
    values[index] = value;
    return { ...entry, faceValues: values };
  },
});

export const controls: Record<string, Control> = {
  'subject.angle': angle('subject'),
  'baseline.angle': angle('baseline'),
  'subject.edge': edge('subject'),
  'baseline.edge': edge('baseline'),
  'subject.hrc': hardness('subject'),
  'baseline.hrc': hardness('baseline'),
  friction: {
    label: () => 'Friction coefficient µ₀',
    min: 0,
    max: 0.5,
    step: 0.01,
    unit: '',
    read: (entry) => nominal(entry.friction),
    write: (entry, value) => ({ ...entry, friction: moved(entry.friction, value) }),
  },
  slicePush: {
    label: () => 'Slice to push, speed ratio ξ',
    min: 0,
    max: 10,
    step: 0.25,
    unit: '',
    read: (entry) => entry.slicePush,
    write: (entry, value) => ({ ...entry, slicePush: value }),
  },
  angleExponent: exponent('angleExponent', 'Angle exponent E at 15°', 0.85, 2.4),
  thicknessExponent: exponent('thicknessExponent', 'Thickness exponent e', 0, 1),
  finishExponent: exponent('finishExponent', 'Finish exponent e', 0, 0.7),
  ...Object.fromEntries(
    Array.from({ length: longestChain }, (_, index) => [`percentage.${index + 1}`, percentage(index)]),
  ),
};

export const showControl = (control: Control, value: number, entry: ComparisonEntry): string =>
  control.say?.(entry, value) ??
  `${control.unit === '%' && value > 0 ? '+' : ''}${brief(value)}${control.unit}`;
