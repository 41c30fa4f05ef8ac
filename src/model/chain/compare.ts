import { refuse, within } from '../check.ts';
import {
  checkSection,
  edgeAngle,
  edgeAngleRange,
  effectiveFriction,
  frictionAngleDeg,
} from '../geometry/geometry.ts';
import { angleFloorDeg, chippingRatio, rollingRatio } from './limits.ts';
import { checkQuantity, contactDepthMmOf, exactGrind, measures, nominal, parameters } from '../quantities.ts';
import type { MeasureId, ParameterId } from '../quantities.ts';
import { unknownMeasures } from './unknown-measures.ts';
import { signedShares } from '../ratio/log-shares.ts';
import { nameOf, pointOf, terms, workOf } from './factors.ts';
import type { Point, Work } from './factors.ts';
import type { Family, Knife, Comparison, Quantity, Reading, Row, Term, TermId } from '../types.ts';

interface Laid {
  comparison: Comparison;
  work: Work;
  points: { knife: Knife; point: Point }[];
  baseline: { knife: Knife; point: Point };
}

/** Refuses what cannot be computed, naming the knife, and lays the rest out for the terms. */
function lay(comparison: Comparison): Laid {
  const ids = comparison.knives.map(({ id }) => id);
  const twice = ids.length === new Set(ids).size ? undefined : ids.find((id, i) => ids.indexOf(id) !== i);
  if (twice !== undefined) refuse(`knife id ${twice} stands twice in the line-up: every id is used once`);
  checkParameter('contactDepthMm', comparison.contactDepthMm, ' mm');
  checkParameter('slicePush', comparison.slicePush);
  checkParameter('friction', comparison.friction);
  for (const id of assumed) checkParameter(id, comparison.assumptions?.[id]);
  const contactDepthMm = contactDepthMmOf(comparison);
  const points = comparison.knives.map((knife) => ({
    knife,
    point: named(knife, () => checkedPoint(knife, contactDepthMm)),
  }));
  const baseline = points.find(({ knife }) => knife.id === comparison.baseline);
  if (!baseline) return refuse(`baseline ${comparison.baseline} is not among the knives: ${ids.join(', ')}`);
  return {
    comparison,
    points,
    baseline,
    work: workOf(
      comparison,
      points.map(({ point }) => point),
    ),
  };
}

const assumed = [
  'angleExponent',
  'thicknessExponent',
  'finishExponent',
  'hardnessExponent',
  'residualCv',
] as const;

function checkParameter(id: ParameterId, value: Quantity | undefined, unit = ''): void {
  const { name, accepts } = parameters[id];
  if (value !== undefined) checkQuantity(name, value, { ...accepts, unit });
}

function checkMeasure(id: MeasureId, value: Quantity | undefined): void {
  if (value !== undefined) checkQuantity(measures[id].name, value, measures[id]);
}

function checkedPoint(knife: Knife, contactDepthMm: number): Point {
  // The angle's own refusal says "per side", which its range alone would not.
  edgeAngle('edge angle', nominal(checkQuantity('edge angle', knife.angleDeg)));
  if (knife.microbevelAngleDeg !== undefined)
    edgeAngle('microbevel angle', nominal(checkQuantity('microbevel angle', knife.microbevelAngleDeg)));
  checkQuantity(measures.edgeMm.name, knife.edgeMm, measures.edgeMm);
  checkQuantity(measures.hrc.name, knife.hrc, measures.hrc);
  if ('um' in knife.finish) checkQuantity(measures.finishUm.name, knife.finish.um, measures.finishUm);
  checkQuantity(measures.spineMm.name, knife.grind.spineMm, measures.spineMm);
  checkQuantity(measures.heightMm.name, knife.grind.heightMm, measures.heightMm);
  if (knife.grind.form !== 'flat') checkMeasure('radiusMm', knife.grind.radiusMm);
  for (const [kind, volume] of Object.entries(knife.carbideVolPercent))
    checkQuantity(`${kind} volume`, volume, measures.carbideVolPercent);
  checkMeasure('toughness', knife.toughness);
  const point = pointOf(knife, contactDepthMm);
  if (point.apexAngleDeg < point.angleDeg)
    refuse(
      `microbevel angle ${point.apexAngleDeg}° is not between the bevel's ${point.angleDeg}° and ${edgeAngleRange.high}° per side`,
    );
  return point;
}

/** Runs a computation for a knife and says in a refusal which knife it was. */
function named<T>(knife: Knife, compute: () => T): T {
  try {
    return compute();
  } catch (error) {
    // Unreachable: anything else is a fault in the model itself, and goes on as it is.
    if (error instanceof RangeError)
      throw new RangeError(`${nameOf(knife)}: ${error.message}`, { cause: error });
    throw error;
  }
}

/** Where the factors of a row nearly cancel, a share of the total means nothing. */
const cancelling = 0.1;

/** The baseline's shares of the cutting force: given, or a third each; always adding up to 1. */
function sharesOf(comparison: Comparison): { wedge: number; thickness: number; grind: number } {
  const { wedge, thickness, grind } = comparison.assumptions?.rivalShares ?? {
    wedge: 1,
    thickness: 1,
    grind: 1,
  };
  for (const [name, share] of Object.entries({ wedge, thickness, grind }))
    within(`share of ${name}`, share, 0, 1e6);
  const sum = wedge + thickness + grind;
  if (sum <= 0)
    refuse(
      `shares of the cutting force ${wedge}, ${thickness}, ${grind} add up to 0, not to a number above 0`,
    );
  return { wedge: wedge / sum, thickness: thickness / sum, grind: grind / sum };
}

const factorOf = (all: readonly Pick<Term, 'id' | 'factor'>[], id: TermId): number =>
  all.find((term) => term.id === id)?.factor ?? 1;

/** Wedge, thickness and grind as resistances side by side: their forces add. */
export function rivalGeometry(all: readonly Pick<Term, 'id' | 'factor'>[], comparison: Comparison): number {
  const c = sharesOf(comparison);
  const [w, t, g] = [factorOf(all, 'wedge'), factorOf(all, 'thickness'), factorOf(all, 'grind')];
  // Written so that equal knives give exactly 1.
  return 1 / (1 + c.wedge * (1 / w - 1) + c.thickness * (1 / t - 1) + c.grind * (1 / g - 1));
}

function rowOf(laid: Laid, { knife, point }: Laid['points'][number], reading: Reading): Row {
  const { work, baseline, comparison } = laid;
  const all: Term[] = named(knife, () =>
    terms.map((term) => ({
      id: term.id,
      family: term.family,
      ...term[reading](point, baseline.point, work),
    })),
  );
  const standing = all.filter((term): term is Term & { factor: number } => term.factor !== null);
  const product = standing.reduce((total, { factor }) => total * factor, 1);
  const forces = standing.filter(({ id }) => id !== 'wedge' && id !== 'thickness' && id !== 'grind');
  const rival = rivalGeometry(all, comparison) * forces.reduce((total, { factor }) => total * factor, 1);

  const logs = standing.map(({ factor }) => Math.log(factor));
  const total = logs.reduce((sum, log) => sum + log, 0);
  const size = logs.reduce((sum, log) => sum + Math.abs(log), 0);
  const byId = (values: readonly number[]) =>
    Object.fromEntries(standing.map(({ id }, index) => [id, values[index] ?? 0]));
  const families: Record<Family, number> = { geometry: 1, finish: 1, steel: 1 };
  for (const { family, factor } of standing) families[family] *= factor;

  return {
    knife: knife.id,
    terms: all,
    product,
    rival,
    complete: standing.length === all.length,
    logShares:
      size === 0 || Math.abs(total) < cancelling * size ? null : byId(logs.map((log) => log / total)),
    signedShares: byId(signedShares(standing.map(({ factor }) => factor))),
    families,
    sideLoad: sideLoadOf(knife, point, baseline),
    notes: notesOf(laid, knife, point, reading, all),
  };
}

const rowsOf = (laid: Laid, reading: Reading): Row[] =>
  laid.points.map((entry) => rowOf(laid, entry, reading));

function sideLoadOf(knife: Knife, point: Point, baseline: Laid['baseline']): Row['sideLoad'] {
  const angles = { angleDeg: point.apexAngleDeg, baselineAngleDeg: baseline.point.apexAngleDeg };
  return {
    rolling: rollingRatio({ ...angles, hrc: point.hrc, baselineHrc: baseline.point.hrc }),
    chipping:
      knife.toughness === undefined || baseline.knife.toughness === undefined
        ? null
        : chippingRatio({
            ...angles,
            toughness: nominal(knife.toughness),
            baselineToughness: nominal(baseline.knife.toughness),
          }),
  };
}

const short = (value: number): string => String(Number(value.toPrecision(3)));

/** What the reader should know about this knife beside its numbers. */
function notesOf(
  { work, baseline }: Laid,
  knife: Knife,
  point: Point,
  reading: Reading,
  all: readonly Term[],
): string[] {
  const name = nameOf(knife);
  const notes: string[] = [];
  const floor = angleFloorDeg(point.vickers);
  if (point.apexAngleDeg <= Math.max(6, floor)) {
    notes.push(
      `${name} is at the floor: at ${short(point.apexAngleDeg)}° per side the bevel itself may break away, somewhere between 4° and 6° in clean slicing of card and about ${short(floor)}° for its hardness.`,
    );
  }
  if (point.angleDeg > 30)
    notes.push(
      `${name} has ${short(point.angleDeg)}° per side, which looks like an included angle: half of it would be ${short(point.angleDeg / 2)}°.`,
    );
  const { friction, slicePush } = work;
  const frictionAngle = frictionAngleDeg(
    effectiveFriction({ friction, slicePush, angleDeg: point.angleDeg }),
  );
  if (reading === 'careful' && point.angleDeg <= frictionAngle) {
    notes.push(
      `At ${short(point.angleDeg)}° per side ${name} is no wider than the friction angle of ${short(frictionAngle)}°, so it sticks in the cut when you let go; that changes nothing in the ratio.`,
    );
  }
  if (knife.microbevelAngleDeg !== undefined) {
    notes.push(
      `${name} has a microbevel at ${short(point.apexAngleDeg)}°: the apex term and the side load take that angle, the wedge term the bevel's ${short(point.angleDeg)}° (assumed).`,
    );
  }
  const grind = exactGrind(knife.grind);
  const least = checkSection({ ...grind, edgeMm: point.edgeMm });
  if (least < point.edgeMm) {
    notes.push(
      `${name} has a waist: its hollow grind thins to ${short(least)} mm above a shoulder of ${short(point.edgeMm)} mm.`,
    );
  }
  if (grind.heightMm < work.contactDepthMm) {
    notes.push(
      `The cut reaches ${short(work.contactDepthMm)} mm above the shoulder of ${name}, past the top of its grind at ${short(grind.heightMm)} mm; from there on the blade counts as ${short(grind.spineMm)} mm thick throughout.`,
    );
  }
  if (point.carbideVolPercent > 100)
    notes.push(
      `The kinds of carbide of ${name} come to ${short(point.carbideVolPercent)} % by volume, more than there is room for: one of them must be wrong.`,
    );
  for (const { what, low, high, unit } of unknownMeasures(knife)) {
    notes.push(
      `The ${what} of ${name} is not known: the middle of ${short(low)}–${short(high)}${unit} stands in here, and the true ratio may be well off.`,
    );
  }
  for (const { id, factor, status } of all) {
    if (factor === null && knife.id !== baseline.knife.id)
      notes.push(
        `For ${name} the term ${id} is ${status}. It is not taken as 1; the total covers the other terms only.`,
      );
  }
  if (knife.id !== baseline.knife.id && knife.toughness === undefined) {
    notes.push(`The toughness of ${name} is not known, so nothing is said of how it resists chipping.`);
  }
  return notes;
}

/**
 * Every knife of a comparison against its baseline: seven terms, their product and its rival, shares and notes.
 * Quantities count with their middle; a term that cannot be computed is left out and the row marked incomplete.
 * Within a comparison a/b · b/a and a/b · b/c · c/a are 1 in both readings. Whether the published regression covers
 * hardness and carbide is decided for the comparison as a whole, so one knife more or less can change both terms.
 *
 * @param lineUp one or more knives, the baseline among them; angles per side, lengths in mm
 * @param options.reading `pocket`, sums one can do in the head, or `close` (the default)
 * @returns one row a knife, in the order of the comparison; the baseline's own factors are exactly 1
 * @throws RangeError naming knife, parameter, value and range for input outside what the model takes
 */
export function compare(comparison: Comparison, options?: { reading: Reading }): { rows: Row[] } {
  const reading = options?.reading ?? 'careful';
  if (!['quick', 'careful'].includes(reading)) refuse(`reading ${reading} is not one of quick, careful`);
  return { rows: rowsOf(lay(comparison), reading) };
}

/**
 * The rows of `compare` by both readings, for the price of laying the comparison out once.
 *
 * @param lineUp as `compare` takes it
 * @returns one row a knife, in the order of the comparison, under the name of each reading
 * @throws RangeError where `compare` does
 */
export function compareBoth(comparison: Comparison): Record<Reading, Row[]> {
  const laid = lay(comparison);
  return { quick: rowsOf(laid, 'quick'), careful: rowsOf(laid, 'careful') };
}

/**
 * The rival's shares of the cutting force when another knife becomes the baseline: (cᵢ/fᵢ)/Σ, so that the rival's
 * ratios stay consistent.
 *
 * @param options.reading whose factors the shares are carried by; `close` is the default
 * @throws RangeError where the knife is not in the comparison
 */
export function carryRivalShares(
  comparison: Comparison,
  newBaseline: string,
  options?: { reading: Reading },
): Comparison {
  const row = compare(comparison, options).rows.find(({ knife }) => knife === newBaseline);
  if (!row)
    return refuse(
      `baseline ${newBaseline} is not among the knives: ${comparison.knives.map(({ id }) => id).join(', ')}`,
    );
  const c = sharesOf(comparison);
  const carried = {
    wedge: c.wedge / factorOf(row.terms, 'wedge'),
    thickness: c.thickness / factorOf(row.terms, 'thickness'),
    grind: c.grind / factorOf(row.terms, 'grind'),
  };
  const sum = carried.wedge + carried.thickness + carried.grind;
  return {
    ...comparison,
    baseline: newBaseline,
    assumptions: {
      ...comparison.assumptions,
      rivalShares: {
        wedge: carried.wedge / sum,
        thickness: carried.thickness / sum,
        grind: carried.grind / sum,
      },
    },
  };
}
