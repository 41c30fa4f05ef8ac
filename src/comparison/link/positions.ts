import type {
  Assumptions,
  CarbideKind,
  CarbideVolPercent,
  Dispute,
  Finish,
  Grind,
  GrindForm,
  GritScale,
  Position,
  Quantity,
} from '../../model/index.ts';
import { packRun, unpackRun } from './run-positions.ts';
import type {
  AngleEntry,
  CarbideEntry,
  Equalisable,
  KnifeEntry,
  ComparisonEntry,
  Placed,
  PlanEntry,
} from '../schema.ts';

/**
 * A comparison as nested lists without field names, so that a link stays short. A position never changes its meaning
 * within a version, and the lists of names below only ever grow at their end: links already sent depend on both.
 */
export type Packed = string | number | boolean | null | readonly Packed[];

const shapes = ['uniform', 'triangular', 'normal'] as const;
/** Stands where the number of a shape would: the two numbers before it are the ends of a range. */
const notKnown = 9;
const states = [
  'as bought',
  'resharpened',
  'modified',
  'not recorded',
] as const satisfies KnifeEntry['state'][];
const scales = ['FEPA-P', 'FEPA-F', 'JIS', 'CAMI'] as const satisfies GritScale[];
const forms = ['flat', 'hollow', 'convex'] as const satisfies GrindForm[];
const carbides = ['Fe3C', 'CrC', 'CrVC', 'MC', 'M6C', 'MN', 'CrN'] as const satisfies CarbideKind[];
const readings = ['quick', 'careful'] as const satisfies ComparisonEntry['reading'][];
const lengthUnits = ['mm', 'thou'] as const satisfies ComparisonEntry['lengthUnit'][];
const attributes = [
  'angleDeg',
  'edgeMm',
  'finish',
  'grind',
  'hrc',
  'carbideVolPercent',
] as const satisfies Equalisable[];
const exponents = [
  'angleExponent',
  'thicknessExponent',
  'finishExponent',
  'hardnessExponent',
] as const satisfies (keyof Assumptions)[];
const disputed = ['apex', 'push', 'forces', 'floor'] as const satisfies Dispute[];
const held = {
  apex: ['between', 'tooth', 'wear'],
  push: ['spread', 'bed', 'buried'],
  forces: ['multiply', 'add'],
  floor: ['moving', 'still'],
} as const satisfies { [D in Dispute]: readonly NonNullable<Position[D]>[] };
const gauges = ['angleDeg', 'edgeMm', 'hrc'] as const satisfies (keyof NonNullable<
  ComparisonEntry['gaugeBias']
>)[];
const planned = [
  'cv',
  'ratio',
  'batches',
  'seed',
  'blind',
  'runs',
  'control',
  'endPoint',
  'closed',
  'reopened',
  'start',
  'correlation',
] as const satisfies (keyof PlanEntry)[];
const angleWays = { typed: 0, slantWidth: 1, height: 2 } as const;

/** Without what is missing at the end. */
function trimmed(list: readonly Packed[]): readonly Packed[] {
  const last = list.findLastIndex((item) => item !== null);
  return list.slice(0, last + 1);
}

const orNull = <T>(value: T | undefined, pack: (value: T) => Packed): Packed =>
  value === undefined ? null : pack(value);

function packQuantity(quantity: Quantity): Packed {
  if (typeof quantity === 'number') return quantity;
  if ('unknown' in quantity) return [quantity.low, quantity.high, notKnown];
  const pair = [quantity.value, quantity.plusMinus];
  return quantity.shape === undefined ? pair : [...pair, shapes.indexOf(quantity.shape)];
}

const packPlaced = (value: Placed): Packed =>
  typeof value === 'object' && 'heel' in value
    ? [[value.heel, value.middle, value.tip]]
    : packQuantity(value);

function packAngle(angle: AngleEntry): Packed {
  if ('deg' in angle) return trimmed([angleWays.typed, packPlaced(angle.deg), angle.perSide ? 1 : null]);
  const plusMinus = angle.plusMinus ?? null;
  return 'slantWidthMm' in angle
    ? trimmed([
        angleWays.slantWidth,
        packQuantity(angle.bevelMm),
        packQuantity(angle.slantWidthMm),
        plusMinus,
      ])
    : trimmed([angleWays.height, packQuantity(angle.bevelMm), packQuantity(angle.heightMm), plusMinus]);
}

const packFinish = (finish: Finish): Packed =>
  'um' in finish ? [packQuantity(finish.um)] : [scales.indexOf(finish.scale), finish.grit];

const packGrind = ({ form, spineMm, heightMm, radiusMm }: Grind): Packed =>
  trimmed([
    forms.indexOf(form),
    packQuantity(spineMm),
    packQuantity(heightMm),
    orNull(radiusMm, packQuantity),
  ]);

const packCarbide = (carbide: CarbideEntry): Packed =>
  'designation' in carbide
    ? carbide.designation
    : trimmed(carbides.map((kind) => orNull(carbide.volPercent[kind], packQuantity)));

const packKnife = (knife: KnifeEntry): Packed =>
  trimmed([
    knife.id,
    knife.name,
    states.indexOf(knife.state),
    packAngle(knife.angle),
    packPlaced(knife.edgeMm),
    packFinish(knife.finish),
    packGrind(knife.grind),
    packQuantity(knife.hrc),
    packCarbide(knife.carbide),
    orNull(knife.microbevelDeg, packQuantity),
    orNull(knife.toughness, packQuantity),
  ]);

function packAssumptions(assumptions: Assumptions): Packed {
  const { rivalShares } = assumptions;
  return trimmed([
    ...exponents.map((name) => orNull(assumptions[name], packQuantity)),
    rivalShares ? [rivalShares.wedge, rivalShares.thickness, rivalShares.grind] : null,
    orNull(assumptions.residualCv, packQuantity),
  ]);
}

const packPosition = (position: Position): Packed =>
  trimmed(
    disputed.map((dispute) =>
      orNull(position[dispute], (one) => (held[dispute] as readonly string[]).indexOf(one)),
    ),
  );

const packPlan = (plan: PlanEntry): Packed =>
  trimmed(
    planned.map((name) => {
      const value = plan[name] ?? null;
      return typeof value === 'object' && value !== null ? [value.low, value.high] : value;
    }),
  );

/** The comparison as lists. What version 1 did not have stands at the end. */
export function pack(entry: ComparisonEntry): Packed[] {
  const place = (id: string) => entry.knives.findIndex((knife) => knife.id === id);
  return [
    entry.title,
    entry.invented ? 1 : 0,
    entry.knives.map(packKnife),
    place(entry.baseline),
    place(entry.subject),
    readings.indexOf(entry.reading),
    entry.work,
    entry.slicePush,
    packQuantity(entry.contactDepthMm),
    packQuantity(entry.friction),
    packAssumptions(entry.assumptions),
    lengthUnits.indexOf(entry.lengthUnit),
    entry.madeEqual.map((attribute) => attributes.indexOf(attribute)),
    entry.faceValues,
    orNull(entry.gaugeBias, (bias) => trimmed(gauges.map((gauge) => bias[gauge] ?? null))),
    orNull(entry.position, packPosition),
    orNull(entry.runs, (runs) => runs.map(packRun)),
    orNull(entry.plan, packPlan),
    orNull(entry.corrections, (all) => all.map(({ date, reason, changed }) => [date, reason, ...changed])),
  ];
}

type Unread = unknown;

/** What stands there if it is a list; otherwise a list of nothing, which the check of the comparison then refuses. */
const list = (value: Unread): Unread[] => (Array.isArray(value) ? value : []);

const named = (names: readonly string[], index: Unread): Unread =>
  typeof index === 'number' ? names[index] : undefined;

/** A field only where something stands at its position. */
const field = (name: string, value: Unread, unpack: (value: Unread) => Unread = (same) => same): object =>
  value === null || value === undefined ? {} : { [name]: unpack(value) };

function unpackQuantity(packed: Unread): Unread {
  if (!Array.isArray(packed)) return packed;
  const [first, second, kind] = list(packed);
  if (kind === notKnown) return { unknown: true, low: first, high: second };
  return { value: first, plusMinus: second, ...field('shape', kind, (index) => named(shapes, index)) };
}

function unpackPlaced(packed: Unread): Unread {
  if (!Array.isArray(packed) || !Array.isArray(packed[0])) return unpackQuantity(packed);
  const [heel, middle, tip] = list(packed[0]);
  return { heel, middle, tip };
}

function unpackAngle(packed: Unread): Unread {
  const [way, first, second, plusMinus] = list(packed);
  if (way === angleWays.typed)
    return { deg: unpackPlaced(first), ...field('perSide', second, (one) => one === 1) };
  const side = way === angleWays.slantWidth ? 'slantWidthMm' : 'heightMm';
  return { bevelMm: unpackQuantity(first), [side]: unpackQuantity(second), ...field('plusMinus', plusMinus) };
}

function unpackFinish(packed: Unread): Unread {
  const items = list(packed);
  return items.length === 1
    ? { um: unpackQuantity(items[0]) }
    : { scale: named(scales, items[0]), grit: items[1] };
}

function unpackGrind(packed: Unread): Unread {
  const [form, spineMm, heightMm, radiusMm] = list(packed);
  return {
    form: named(forms, form),
    spineMm: unpackQuantity(spineMm),
    heightMm: unpackQuantity(heightMm),
    ...field('radiusMm', radiusMm, unpackQuantity),
  };
}

function unpackCarbide(packed: Unread): Unread {
  if (typeof packed === 'string') return { designation: packed };
  const volumes = list(packed);
  return {
    volPercent: Object.assign(
      {},
      ...carbides.map((kind, index) => field(kind, volumes[index], unpackQuantity)),
    ) as CarbideVolPercent,
  };
}

function unpackKnife(packed: Unread): Unread {
  const [id, name, state, angle, edge, finish, grind, hrc, carbide, microbevel, toughness] = list(packed);
  return {
    id,
    name,
    state: named(states, state),
    angle: unpackAngle(angle),
    ...field('microbevelDeg', microbevel, unpackQuantity),
    edgeMm: unpackPlaced(edge),
    finish: unpackFinish(finish),
    grind: unpackGrind(grind),
    hrc: unpackQuantity(hrc),
    carbide: unpackCarbide(carbide),
    ...field('toughness', toughness, unpackQuantity),
  };
}

function unpackAssumptions(packed: Unread): Unread {
  const items = list(packed);
  const [wedge, thickness, grind] = list(items[exponents.length]);
  return {
    ...(Object.assign(
      {},
      ...exponents.map((name, index) => field(name, items[index], unpackQuantity)),
    ) as object),
    ...field('rivalShares', items[exponents.length], () => ({ wedge, thickness, grind })),
    ...field('residualCv', items[exponents.length + 1], unpackQuantity),
  };
}

const unpackNamed = (
  names: readonly string[],
  packed: Unread,
  read: (name: string, value: Unread) => Unread,
) =>
  Object.assign(
    {},
    ...names.map((name, index) => field(name, list(packed)[index], (value) => read(name, value))),
  ) as object;

function unpackPlanned(name: string, value: Unread): Unread {
  if (name !== 'start') return value;
  const [low, high] = list(value);
  return { low, high };
}

/** The document the lists stand for, not yet checked. */
export function unpack(packed: Unread): unknown {
  const [
    title,
    invented,
    knives,
    baseline,
    subject,
    reading,
    work,
    slicePush,
    contactDepthMm,
    friction,
    assumptions,
    lengthUnit,
    madeEqual,
    faceValues,
    gaugeBias,
    position,
    runs,
    plan,
    corrected,
  ] = list(packed);
  const idAt = (index: Unread): Unread =>
    typeof index === 'number' ? list(list(knives)[index])[0] : undefined;
  return {
    title,
    ...(invented === 1 ? { invented: true } : {}),
    knives: list(knives).map(unpackKnife),
    baseline: idAt(baseline),
    subject: idAt(subject),
    reading: named(readings, reading),
    work,
    slicePush,
    contactDepthMm: unpackQuantity(contactDepthMm),
    friction: unpackQuantity(friction),
    assumptions: unpackAssumptions(assumptions),
    lengthUnit: named(lengthUnits, lengthUnit),
    madeEqual: list(madeEqual).map((index) => named(attributes, index)),
    faceValues,
    ...field('gaugeBias', gaugeBias, (bias) => unpackNamed(gauges, bias, (_, value) => value)),
    ...field('position', position, (stands) =>
      unpackNamed(disputed, stands, (dispute, index) => named(held[dispute as Dispute], index)),
    ),
    ...field('runs', runs, (all) => list(all).map(unpackRun)),
    ...field('plan', plan, (all) => unpackNamed(planned, all, unpackPlanned)),
    ...field('corrections', corrected, (all) =>
      list(all).map((one) => {
        const [date, reason, ...changed] = list(one);
        return { date, reason, changed };
      }),
    ),
  };
}
