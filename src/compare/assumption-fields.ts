import { isUnknown, parameters } from '../model/index.ts';
import type { ParameterId, Quantity } from '../model/index.ts';
import { readNumber, readQuantity, showQuantity } from '../comparison/read.ts';
import type { Unit } from '../comparison/read.ts';
import type { ComparisonEntry } from '../comparison/entry.ts';
import { brief, inFigures } from '../scene/show.ts';
import type { WorkField } from './work-field.ts';

type AssumptionName = keyof ComparisonEntry['assumptions'];
type AssumptionId = Extract<ParameterId, AssumptionName>;
type FieldId = AssumptionName | 'gaugeAngle' | 'gaugeEdge' | 'gaugeHrc';

/** So many of the field's unit make one of the comparison's: a share is typed as per cent. */
const scaled = (quantity: Quantity, by: number): Quantity => {
  const times = (value: number): number => inFigures(value * by, 10);
  if (typeof quantity === 'number') return times(quantity);
  if (isUnknown(quantity)) return { unknown: true, low: times(quantity.low), high: times(quantity.high) };
  return { ...quantity, value: times(quantity.value), plusMinus: times(quantity.plusMinus) };
};

/**
 * One assumption of the model. Left out of the comparison it is the model's own: its likeliest value with its stated
 * range, shown as `0.3 (0–0.7)`. An empty text is another thing: not known, anything within that range alike.
 */
function assumption(id: AssumptionId, label: string, hint: string, unit?: '%'): WorkField {
  const by = unit === '%' ? 100 : 1;
  const { default: own, low, high, accepts } = parameters[id];
  const ownText = `${brief(own * by)} (${brief(low * by)}–${brief(high * by)})`;
  const bare = (text: string): string => text.replaceAll(/[\s%]/g, '').replaceAll('-', '–');
  return {
    kind: 'text',
    label,
    hint: `${hint} The model’s own: ${ownText}.`,
    ...(unit ? { unit } : {}),
    show: ({ assumptions: { [id]: value } }) =>
      value === undefined ? ownText : showQuantity(scaled(value, by), 4),
    write(entry, text) {
      const { [id]: _before, ...others } = entry.assumptions;
      if (bare(text) === bare(ownText)) return { ok: true, entry: { ...entry, assumptions: others } };
      const read = readQuantity(text, {
        what: label.toLowerCase(),
        ...(unit ? { unit } : {}),
        low: accepts.low * by,
        high: accepts.high * by,
        unknown: { low: low * by, high: high * by },
      });
      return read.ok
        ? { ok: true, entry: { ...entry, assumptions: { ...others, [id]: scaled(read.value, 1 / by) } } }
        : read;
    },
  };
}

const third = '1 : 1 : 1';

/** How likely each way to combine the factors is held to be, as three numbers. */
const weightsField: WorkField = {
  kind: 'text',
  label: 'The three ways count',
  hint: 'Multiplied : forces added : to a limit. Nobody has measured which holds. The model’s own: 1 : 1 : 1, a choice.',
  show: ({ assumptions: { structureWeights } }) => structureWeights?.map(brief).join(' : ') ?? third,
  write(entry, text) {
    const { structureWeights: _before, ...others } = entry.assumptions;
    const typed = text.trim();
    if (typed === '' || typed === third) return { ok: true, entry: { ...entry, assumptions: others } };
    const parts = typed.split(/\s*[:;/]\s*|\s+/);
    const read = parts.map((part) => readNumber(part, { what: 'a weight', low: 0, high: 1000 }));
    const numbers = read.flatMap((one) => (one.ok ? [one.value] : []));
    const [multiplied, added, toLimit] = numbers;
    if (multiplied === undefined || added === undefined || toLimit === undefined || parts.length !== 3)
      return { ok: false, message: `“${typed}” is not three numbers of 0 or more, such as 1 : 1 : 1.` };
    if (multiplied + added + toLimit === 0)
      return { ok: false, message: 'The three weights are all 0; at least one must be above 0.' };
    return {
      ok: true,
      entry: { ...entry, assumptions: { ...others, structureWeights: [multiplied, added, toLimit] } },
    };
  },
};

type Gauge = keyof NonNullable<ComparisonEntry['gaugeBias']>;

/**
 * How far one gauge may be off for all knives alike. Nothing typed is not known, for which a wide ± stands (assumed).
 */
function gauge(id: Gauge, label: string, unit: Unit, notKnown: number): WorkField {
  const notKnownText = `not known (±${brief(notKnown)})`;
  const withBias = (entry: ComparisonEntry, plusMinus: number): ComparisonEntry => {
    const { gaugeBias, ...rest } = entry;
    const { [id]: _before, ...others } = gaugeBias ?? {};
    const now = plusMinus === 0 ? others : { ...others, [id]: plusMinus };
    return Object.keys(now).length === 0 ? rest : { ...rest, gaugeBias: now };
  };
  return {
    kind: 'text',
    label,
    hint: `Its ± for all knives alike, or 0. Empty: not known, and we use ±${brief(notKnown)}.`,
    unit: `± ${unit}`,
    show: ({ gaugeBias }) => {
      const plusMinus = gaugeBias?.[id] ?? 0;
      return plusMinus === notKnown ? notKnownText : brief(plusMinus);
    },
    write(entry, text) {
      const typed = text.trim().replace(/^(?:±|\+\/?-)\s*/, '');
      if (typed === '' || /^(?:\?|unknown|not known.*)$/i.test(typed))
        return { ok: true, entry: withBias(entry, notKnown) };
      const read = readNumber(typed, { what: label.toLowerCase(), unit });
      return read.ok ? { ok: true, entry: withBias(entry, read.value) } : read;
    },
  };
}

/**
 * What the careful estimate assumes of all knives alike, and how far their gauges may be off together. An assumption
 * that is missing here does not compile.
 */
export const assumptionFields = {
  angleExponent: assumption('angleExponent', 'What an angle is worth', 'The exponent E, for 15° per side.'),
  thicknessExponent: assumption(
    'thicknessExponent',
    'What thickness is worth',
    'The exponent of the thickness behind the edge.',
  ),
  finishExponent: assumption(
    'finishExponent',
    'What finish is worth',
    'The exponent of the grain size, in slicing.',
  ),
  hardnessExponent: assumption(
    'hardnessExponent',
    'What hardness is worth',
    'The exponent used below 50 and above 66 HRC, where the published line ends.',
  ),
  lifeExponent: assumption(
    'lifeExponent',
    'From card to rope',
    'The power p that turns a ratio of card into a ratio of lives. A fixed number of strokes needs none.',
  ),
  wedgingShare: assumption(
    'wedgingShare',
    'How much force goes into wedging',
    'The share s of the last force, for an ordinary blade, if the force has a limit.',
  ),
  limitPower: assumption(
    'limitPower',
    'How fast an edge gets wide',
    'The power m by which life grows with the width of the edge, if the force has a limit.',
  ),
  structureWeights: weightsField,
  residualCv: assumption(
    'residualCv',
    'How far steels lie off the line',
    'The scatter of single steels about the published line (coefficient of variation).',
    '%',
  ),
  gaugeAngle: gauge('angleDeg', 'How far the angle gauge may be off', '°', 3),
  gaugeEdge: gauge('edgeMm', 'How far the caliper may be off', 'mm', 0.1),
  gaugeHrc: gauge('hrc', 'How far the hardness tester may be off', 'HRC', 3),
} satisfies Record<FieldId, WorkField>;
