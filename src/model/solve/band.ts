/** How well the answer to "what would it take" is known: solved again on samples of everything that is uncertain. */

import { refuse } from '../check.ts';
import { compare } from '../chain/compare.ts';
import { carbidesOf } from '../chain/calculation.ts';
import { noMemory } from '../chain/memory.ts';
import { structures } from '../chain/structures.ts';
import { at } from '../chain/values.ts';
import { gaugeOf } from '../uncertainty/inputs.ts';
import { quantiles } from '../statistics/quantiles.ts';
import { readerOf, runOf } from '../uncertainty/sampled-run.ts';
import { attributeSearch, attributeValue, changedKnife, withAttribute } from './attributes.ts';
import { gapOf } from './gap.ts';
import { nearestRoot } from './roots.ts';
import { breaksAway, checkQuestion, type Question } from './what-it-takes.ts';
import { sorted } from '../statistics/sorted.ts';
import type { Knife, Comparison, Quantity } from '../types.ts';

/** The answers over all samples. */
export interface AnswerBand {
  /** The 5%, 50% and 95% points of the values that were found; null where none was. */
  low: number | null;
  median: number | null;
  high: number | null;
  /** Share of the samples in which there is such a value, 0 to 1. */
  inReach: number;
  /** Share of the samples in which there is one, but the edge would break away there, 0 to 1. */
  belowFloor: number;
}

/**
 * Solves `whatItTakes` on samples of every uncertain input but the one solved for: the comparison's own ±, friction,
 * exponents, gauges' biases, the regression's residual and, unless the question names one, the structure, all drawn as
 * `predict` draws them. The band holds the central 90% of the values found; where `inReach` is below 1 it says nothing of
 * the other samples.
 *
 * @param options samples, whole, 100 to 10000, 300 if left out; seed, whole, 0 to 4294967295, 1 if left out
 * @throws RangeError for what `whatItTakes` and `predict` refuse, and for options outside those limits
 * @example whatItTakesBand({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }, { id: 'dunlin', angleDeg: 15, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, { knife: 'plover', against: 'dunlin', attribute: 'angleDeg' }).median // → 15.000000
 */
export function whatItTakesBand(
  comparison: Comparison,
  question: Question,
  options: { samples?: number; seed?: number } = {},
): AnswerBand {
  const { samples = 300, seed = 1 } = options;
  if (!Number.isInteger(samples) || samples < 100 || samples > 10_000)
    refuse(`samples ${samples} is not a whole number from 100 to 10000`);
  const { changing, target } = checkQuestion(comparison, question);
  const { knife: id, against, attribute } = question;
  compare(comparison);

  // At an exact value the solved attribute is no input, and nothing of it is drawn.
  const present = attributeValue(changing, attribute);
  const exact = withAttribute(comparison, id, attribute, present);
  const { inputs, drawn, lives } = runOf(exact, samples, seed, noMemory);
  const read = readerOf(inputs, drawn);
  const place = (of: string): number => exact.knives.findIndex((knife) => knife.id === of);
  const k = place(id);
  const [a, b] = [lives.residuals[k] ?? 0, lives.residuals[place(against)] ?? 0];

  const found: number[] = [];
  let broken = 0;
  for (let i = 0; i < samples; i += 1) {
    const sample = sampleOf(exact, (owner, name) => at(read(owner, name), i));
    const knife = sample.knives[k] ?? changing;
    const residual = Math.exp(at(b, i) - at(a, i));
    const structure = question.structure ?? structures[at(lives.structure, i)];
    const gap = gapOf(sample, { ...question, structure, target: target * residual });
    const value = nearestRoot(gap, attributeValue(knife, attribute), attributeSearch(knife, attribute));
    if (value === null) continue;
    found.push(value);
    if (breaksAway(changedKnife(knife, attribute, value), attribute)) broken += 1;
  }
  const shares = { inReach: found.length / samples, belowFloor: broken / samples };
  if (found.length === 0) return { low: null, median: null, high: null, ...shares };
  const [low = null, median = null, high = null] = quantiles(
    sorted(Float64Array.from(found)),
    [0.05, 0.5, 0.95],
  );
  return { low, median, high, ...shares };
}

/** The comparison of one sample: every input at its drawn value, a gauge's bias added to what it measured. */
function sampleOf(
  comparison: Comparison,
  valueOf: (knife: string | null, name: string) => number,
): Comparison {
  const knives = comparison.knives.map((knife): Knife => {
    const { microbevelAngleDeg, finish, grind } = knife;
    const read = (name: string, quantity: Quantity): number => {
      const gauge = gaugeOf(comparison, name, quantity);
      return valueOf(knife.id, name) + (gauge === null ? 0 : valueOf(null, `gauge.${gauge}`));
    };
    return {
      ...knife,
      angleDeg: read('angleDeg', knife.angleDeg),
      ...(microbevelAngleDeg === undefined
        ? {}
        : { microbevelAngleDeg: read('microbevelAngleDeg', microbevelAngleDeg) }),
      edgeMm: read('edgeMm', knife.edgeMm),
      grind: {
        form: grind.form,
        spineMm: read('spineMm', grind.spineMm),
        heightMm: read('heightMm', grind.heightMm),
        ...(grind.form === 'flat' || grind.radiusMm === undefined
          ? {}
          : { radiusMm: read('radiusMm', grind.radiusMm) }),
      },
      finish: 'um' in finish ? { um: read('finish', finish.um) } : finish,
      hrc: read('hrc', knife.hrc),
      carbideVolPercent: Object.fromEntries(
        carbidesOf(knife).map((kind) => [
          kind,
          read(`carbideVolPercent.${kind}`, knife.carbideVolPercent[kind] ?? 0),
        ]),
      ),
    };
  });
  const shared = (name: string): number => valueOf(null, name);
  return {
    ...comparison,
    knives,
    friction: shared('friction'),
    contactDepthMm: shared('contactDepthMm'),
    assumptions: {
      lifeExponent: shared('lifeExponent'),
      wedgingShare: shared('wedgingShare'),
      limitPower: shared('limitPower'),
      angleExponent: shared('angleExponent'),
      thicknessExponent: shared('thicknessExponent'),
      finishExponent: shared('finishExponent'),
      hardnessExponent: shared('hardnessExponent'),
    },
  };
}
