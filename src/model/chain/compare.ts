import { refuse } from '../check.ts';
import { parameters, rangeOf } from '../quantities.ts';
import { signedShares } from '../ratio/log-shares.ts';
import type { Comparison, Family, Knife, Reading, Row, Term } from '../types.ts';
import { middleCalculation, middleShared, stated, type Calculation, type SharedId } from './calculation.ts';
import { checkedPoints, naming } from './check-comparison.ts';
import { factors, type Factor } from './factors.ts';
import { sideLoadRatios } from './limits.ts';
import { notesOf } from './notes.ts';
import type { Point } from './point.ts';
import { forcesOf, lnTotals } from './structures.ts';

/** A knife ready to be compared. */
interface Laid {
  knife: Knife;
  point: Point;
  calculation: Calculation;
  /** ln of the three lives against the ordinary blade. */
  totals: ReturnType<typeof lnTotals>;
}

/** Refuses what cannot be computed, naming the knife, and lays the rest out for the factors. */
function lay(comparison: Comparison): Laid[] {
  const points = checkedPoints(comparison);
  const shared = middleShared(comparison);
  return comparison.knives.map((knife, i) => {
    // Unreachable: there is a point for every knife.
    const point = points[i] ?? refuse(`knife ${knife.id} is missing`);
    const calculation = middleCalculation(comparison, knife, shared);
    const totals = lnTotals(calculation);
    if (Number.isNaN(totals.multiplied)) refuseWedge(point, calculation);
    return { knife, point, calculation, totals };
  });
}

/** Says which wedge cannot be driven: the one thing a checked knife may still fail by. */
function refuseWedge({ name, angleDeg }: Point, { shared }: Calculation): never {
  const friction = Number(shared('friction'));
  return refuse(
    `${name}: edge angle ${angleDeg}° and friction ${friction} make a wedge that cannot be driven: angle and friction angle together must stay below 90°`,
  );
}

/** ln of a factor between two knives, by the careful estimate. */
function lnFactor(factor: Factor, a: Calculation, b: Calculation): number {
  if (factor.partOf) return factor.partOf.ln(a, b);
  const whole = Number(factor.careful(a)) - Number(factor.careful(b));
  const parts = factors.filter(({ partOf }) => partOf?.factor === factor.id);
  const rest = parts.reduce((ln, { partOf }) => ln - (partOf?.ln(a, b) ?? 0), whole);
  return factor.combines === 'resists' ? -rest : rest;
}

/** The stated range of a parameter in this comparison, within what the model takes. */
function rangeOfParameter(comparison: Comparison, id: SharedId): { low: number; high: number } {
  const given = stated(comparison, id);
  const { low, high, accepts } = parameters[id];
  if (given === undefined) return { low, high };
  const ends = rangeOf(given);
  return { low: Math.max(accepts.low, ends.low), high: Math.min(accepts.high, ends.high) };
}

/** A factor by the careful estimate, with what it becomes at the ends of its parameters' ranges, one at a time. */
function carefulTerm(comparison: Comparison, factor: Factor, a: Laid, b: Laid): Term {
  const { id, family, status } = factor;
  const middle = lnFactor(factor, a.calculation, b.calculation);
  const all = [middle];
  const shared = middleShared(comparison);
  for (const parameter of factor.parameters) {
    const { low, high } = rangeOfParameter(comparison, parameter);
    for (const end of [low, high]) {
      const then = { ...shared, [parameter]: end };
      const at = ({ knife }: Laid) => middleCalculation(comparison, knife, then);
      const ln = lnFactor(factor, at(a), at(b));
      if (Number.isFinite(ln)) all.push(ln);
    }
  }
  // One coefficient of variation to either side, where there is a difference to be off by.
  const off = factor.offTheLine && middle !== 0 ? shared.lifeExponent * Math.log1p(shared.residualCv) : 0;
  return {
    id,
    family,
    factor: Math.exp(middle),
    low: Math.exp(Math.min(...all) - off),
    high: Math.exp(Math.max(...all) + off),
    status,
  };
}

function quickTerm({ id, family, quick, quickStatus }: Factor, a: Laid, b: Laid): Term {
  const factor = Math.exp(quick(a.point) - quick(b.point));
  return { id, family, factor, low: factor, high: factor, status: quickStatus };
}

/** Where the factors of a row nearly cancel, a share of the total means nothing. */
const cancelling = 0.1;

function rowOf(comparison: Comparison, own: Laid, baseline: Laid, reading: Reading): Row {
  const all = factors.map((factor) =>
    reading === 'quick' ? quickTerm(factor, own, baseline) : carefulTerm(comparison, factor, own, baseline),
  );
  const product = all.reduce((total, { factor }) => total * factor, 1);
  const logs = all.map(({ factor }) => Math.log(factor));
  const total = logs.reduce((sum, log) => sum + log, 0);
  const size = logs.reduce((sum, log) => sum + Math.abs(log), 0);
  const byId = (values: readonly number[]) =>
    Object.fromEntries(all.map(({ id }, index) => [id, values[index] ?? 0]));
  const families: Record<Family, number> = { geometry: 1, finish: 1, steel: 1 };
  for (const { family, factor } of all) families[family] *= factor;
  const ratio = (of: 'multiplied' | 'added' | 'toLimit'): number =>
    reading === 'quick' ? product : Math.exp(own.totals[of] - baseline.totals[of]);

  return {
    knife: own.knife.id,
    terms: all,
    multiplied: ratio('multiplied'),
    added: ratio('added'),
    toLimit: ratio('toLimit'),
    forces: forcesOf(own.calculation),
    logShares:
      size === 0 || Math.abs(total) < cancelling * size ? null : byId(logs.map((log) => log / total)),
    signedShares: byId(signedShares(all.map(({ factor }) => factor))),
    families,
    sideLoad: sideLoadRatios(apexOf(own), apexOf(baseline)),
    notes: notesOf({ comparison, ...own, reading }),
  };
}

const apexOf = ({ point: { apexAngleDeg, hrc }, knife: { toughness } }: Laid) => ({
  apexAngleDeg,
  hrc,
  toughness,
});

function rowsOf(comparison: Comparison, laid: readonly Laid[], reading: Reading): Row[] {
  // Unreachable: the baseline was found among the knives.
  const baseline =
    laid.find(({ knife }) => knife.id === comparison.baseline) ?? refuse('the baseline is missing');
  return laid.map((own) => naming(own.point.name, () => rowOf(comparison, own, baseline, reading)));
}

/**
 * Every knife of a comparison against its baseline: seven factors, three totals, shares and notes. Quantities count with
 * their middle. The three totals differ in how the factors combine: all multiplied; wedge, thickness and grind added as
 * forces; or the force reaching a limit. For every total a/b · b/a and a/b · b/c · c/a are 1, whichever knife is the
 * baseline, and every total is continuous in every input.
 *
 * By the quick sum `multiplied` holds the quick sum, and so do the other two totals.
 *
 * @param comparison one or more knives, the baseline among them; angles per side, lengths in mm
 * @param options.reading `quick`, sums one can do in the head, or `careful` (the default)
 * @returns one row a knife, in the order of the comparison; the baseline's own factors are exactly 1
 * @throws RangeError naming knife, parameter, value and range for input outside what the model takes
 */
export function compare(comparison: Comparison, options?: { reading: Reading }): { rows: Row[] } {
  const reading = options?.reading ?? 'careful';
  if (!['quick', 'careful'].includes(reading)) refuse(`reading ${reading} is not one of quick, careful`);
  return { rows: rowsOf(comparison, lay(comparison), reading) };
}

/**
 * The rows of `compare` by both readings, for the price of laying the comparison out once.
 *
 * @param comparison as `compare` takes it
 * @returns one row a knife, in the order of the comparison, under the name of each reading
 * @throws RangeError where `compare` does
 */
export function compareBoth(comparison: Comparison): Record<Reading, Row[]> {
  const laid = lay(comparison);
  return { quick: rowsOf(comparison, laid, 'quick'), careful: rowsOf(comparison, laid, 'careful') };
}
