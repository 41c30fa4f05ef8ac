import { refuse } from './check.ts';
import { edgeAngleRange } from './geometry/geometry.ts';
import { leastAngleExponent } from './geometry/apex.ts';
import { rockwellRange } from './steel/hardness.ts';
import type { ExactGrind, Grind, Comparison, Quantity } from './types.ts';

/**
 * The middle of a quantity: its value, or the middle of the stated range where it is not known.
 *
 * @example nominal({ value: 15, plusMinus: 1 }) // → 15
 * @example nominal({ unknown: true, low: 56, high: 62 }) // → 59
 */
export const nominal = (quantity: Quantity): number => {
  if (typeof quantity === 'number') return quantity;
  return 'unknown' in quantity ? (quantity.low + quantity.high) / 2 : quantity.value;
};

/**
 * The ends of a quantity's range.
 *
 * @example rangeOf({ value: 15, plusMinus: 1 }) // → { low: 14, high: 16 }
 * @example rangeOf(15) // → { low: 15, high: 15 }
 */
export const rangeOf = (quantity: Quantity): { low: number; high: number } => {
  if (typeof quantity === 'number') return { low: quantity, high: quantity };
  if ('unknown' in quantity) return { low: quantity.low, high: quantity.high };
  return { low: quantity.value - quantity.plusMinus, high: quantity.value + quantity.plusMinus };
};

/** A primary grind with every measure at its middle. */
export const exactGrind = ({ form, spineMm, heightMm, radiusMm }: Grind): ExactGrind => ({
  form,
  spineMm: nominal(spineMm),
  heightMm: nominal(heightMm),
  ...(radiusMm === undefined ? {} : { radiusMm: nominal(radiusMm) }),
});

/** Whether a quantity is one that is not known beyond a stated range. */
export const isUnknown = (quantity: Quantity): quantity is { unknown: true; low: number; high: number } =>
  typeof quantity === 'object' && 'unknown' in quantity;

const shapes: readonly unknown[] = [undefined, 'uniform', 'triangular', 'normal'];

/**
 * The quantity, if its parts are finite and in order, its middle is within the range and its ends lie outside by at most
 * a quarter of that range: what is drawn there is drawn again.
 */
export function checkQuantity(name: string, quantity: Quantity, accepts: Accepts = {}): Quantity {
  const { low = -Infinity, high = Infinity, unit = '' } = accepts;
  if (typeof quantity !== 'number') {
    if (typeof quantity !== 'object' || (quantity as unknown) === null)
      refuse(`${name} ${String(quantity)} is not a number${inside(low, high, unit)}`);
    if ('unknown' in quantity) {
      if (!Number.isFinite(quantity.low) || !Number.isFinite(quantity.high) || quantity.low > quantity.high)
        refuse(
          `${name} range ${String(quantity.low)}–${String(quantity.high)}${unit} is not from a lower to a higher number`,
        );
    } else if (!Number.isFinite(quantity.plusMinus) || quantity.plusMinus < 0) {
      refuse(`${name} ± ${String(quantity.plusMinus)}${unit} is not a number of 0 or more`);
    } else if (!shapes.includes(quantity.shape)) {
      refuse(`${name} shape ${String(quantity.shape)} is not one of uniform, triangular, normal`);
    }
  }
  const middle = nominal(quantity);
  if (!Number.isFinite(middle))
    refuse(`${name} ${String(middle)}${unit} is not a finite number${inside(low, high, unit)}`);
  if (middle < low || middle > high)
    refuse(`${name} ${middle}${unit} is not between ${low}${unit} and ${high}${unit}`);
  // Unreachable for a plain number: its ends are its middle.
  const ends = rangeOf(quantity);
  const most = (high - low) / 4;
  if (low - ends.low > most || ends.high - high > most)
    refuse(
      `${name} ${ends.low} to ${ends.high}${unit} leaves ${low}${unit} to ${high}${unit} by more than a quarter of that range`,
    );
  return quantity;
}

interface Accepts {
  low?: number;
  high?: number;
  unit?: string;
}

const inside = (low: number, high: number, unit: string): string =>
  Number.isFinite(low) && Number.isFinite(high) ? ` between ${low}${unit} and ${high}${unit}` : '';

/** A measured attribute of a knife, and the values the model takes for it. */
export interface Measure {
  symbol: string;
  name: string;
  /** Written straight after the number. */
  unit: string;
  low: number;
  high: number;
  /** Decimals worth showing. */
  digits: number;
  /** The ± put to a value that comes without one: assumed, a careful hand with common tools. */
  plusMinus: number;
}

const angle = { symbol: 'θ', unit: '°', ...edgeAngleRange, digits: 1, plusMinus: 1 } as const;

/** The measured attributes of a knife. */
export const measures = {
  angleDeg: { ...angle, name: 'edge angle' },
  microbevelAngleDeg: { ...angle, name: 'microbevel angle' },
  edgeMm: {
    symbol: 't',
    name: 'thickness behind the edge',
    unit: ' mm',
    low: 0.001,
    high: 20,
    digits: 2,
    plusMinus: 0.03,
  },
  finishUm: {
    symbol: 'd',
    name: 'grain size',
    unit: ' µm',
    low: 0.01,
    high: 2000,
    digits: 1,
    plusMinus: 0,
  },
  spineMm: {
    symbol: 'T',
    name: 'spine thickness',
    unit: ' mm',
    low: 0.01,
    high: 50,
    digits: 1,
    plusMinus: 0.1,
  },
  heightMm: {
    symbol: 'H',
    name: 'grind height',
    unit: ' mm',
    low: 0.1,
    high: 500,
    digits: 1,
    plusMinus: 0.5,
  },
  radiusMm: { symbol: 'R', name: 'grind radius', unit: ' mm', low: 0.05, high: 1e5, digits: 0, plusMinus: 5 },
  hrc: { symbol: 'HRC', name: 'hardness', unit: ' HRC', ...rockwellRange, digits: 1, plusMinus: 1 },
  carbideVolPercent: {
    symbol: 'V',
    name: 'carbide volume',
    unit: '%',
    low: 0,
    high: 60,
    digits: 1,
    plusMinus: 2,
  },
  toughness: { symbol: 'K', name: 'toughness', unit: '', low: 1e-6, high: 1e6, digits: 0, plusMinus: 0 },
} as const satisfies Record<string, Measure>;

export type MeasureId = keyof typeof measures;

export interface Parameter {
  symbol: string;
  name: string;
  unit: string;
  default: number;
  /** The stated range: how far the value may reasonably be off. */
  low: number;
  high: number;
  /** How values scatter over the stated range; triangular where it is left out. */
  shape?: 'uniform';
  /** What the model takes at all. */
  accepts: { low: number; high: number };
  /** Decimals worth showing. */
  digits: number;
  /** The source a calibrated value rests on. */
  source?: string;
  status: 'assumed' | 'calibrated' | 'derived' | 'practice';
  why: string;
}

/** The parameters of the careful estimate, each with its default, its stated range and where it stands. */
export const parameters = {
  friction: {
    symbol: 'µ₀',
    name: 'friction coefficient',
    unit: '',
    default: 0.25,
    low: 0.1,
    high: 0.4,
    accepts: { low: 0, high: 2 },
    digits: 2,
    status: 'assumed',
    why: 'dry steel on rope, card or wood; no measurement on edges is known to us',
  },
  slicePush: {
    symbol: 'ξ',
    name: 'slice/push speed ratio',
    unit: '',
    default: 0,
    low: 0,
    high: 10,
    accepts: { low: 0, high: 1e6 },
    digits: 1,
    status: 'assumed',
    why: '0 takes the friction as already effective',
  },
  contactDepthMm: {
    symbol: 'D',
    name: 'contact depth',
    unit: 'mm',
    default: 8,
    low: 0.5,
    high: 60,
    accepts: { low: 0.1, high: 200 },
    digits: 1,
    status: 'assumed',
    why: 'how much of the primary grind touches the material',
  },
  angleExponent: {
    symbol: 'E',
    name: 'local exponent of the angle in all at 15°',
    unit: '',
    default: 1.3,
    low: 1.0,
    high: 2.4,
    accepts: { low: leastAngleExponent, high: 4 },
    digits: 2,
    source: 'thomas-2018-card',
    status: 'calibrated',
    why: 'the published line has 0.64 to 2.2 over its observed span, 1.3 near 410 mm; a life may be steeper',
  },
  thicknessExponent: {
    symbol: 'e',
    name: 'thickness exponent',
    unit: '',
    default: 0.5,
    low: 0.2,
    high: 1,
    accepts: { low: 0, high: 3 },
    digits: 2,
    status: 'assumed',
    why: '1 where the force is all spread over flanks of fixed length; the published study’s numbers were not at hand',
  },
  finishExponent: {
    symbol: 'e',
    name: 'finish exponent',
    unit: '',
    default: 0.3,
    low: 0,
    high: 0.7,
    accepts: { low: 0, high: 3 },
    digits: 2,
    status: 'assumed',
    why: 'a published card study of 2018 reports that finish matters; its numbers were not at hand here',
  },
  hardnessExponent: {
    symbol: 'e',
    name: 'hardness exponent on HV',
    unit: '',
    default: 1.2,
    low: 0.6,
    high: 2.0,
    accepts: { low: 0, high: 5 },
    digits: 2,
    status: 'assumed',
    why: 'used only beyond 50 to 66 HRC, where the published line does not reach',
  },
  lifeExponent: {
    symbol: 'p',
    name: 'life exponent',
    unit: '',
    default: 1.5,
    low: 0.5,
    high: 2.2,
    accepts: { low: 0, high: 5 },
    digits: 2,
    status: 'assumed',
    why: 'card in a fixed number of strokes makes ratios smaller than lives to one end point do',
  },
  wedgingShare: {
    symbol: 's',
    name: 'wedging’s share of the last force',
    unit: '',
    default: 0.35,
    low: 0.1,
    high: 0.6,
    shape: 'uniform',
    accepts: { low: 0, high: 1 },
    digits: 2,
    status: 'assumed',
    why: 'how much of the force at the end point an ordinary blade needs for wedging',
  },
  limitPower: {
    symbol: 'm',
    name: 'power of the width',
    unit: '',
    default: 1.5,
    low: 1,
    high: 2,
    shape: 'uniform',
    accepts: { low: 0, high: 5 },
    digits: 2,
    status: 'assumed',
    why: '2 where the wear per cut is constant, 1 where the edge’s width grows at a constant rate',
  },
  residualCv: {
    symbol: 'CV',
    name: 'residual of the regression',
    unit: '',
    default: 0.1,
    low: 0,
    high: 0.3,
    accepts: { low: 0, high: 1 },
    digits: 2,
    status: 'assumed',
    why: 'scatter of single knives about the published line',
  },
} as const satisfies Record<string, Parameter>;

export type ParameterId = keyof typeof parameters;

/** The depth of contact of a comparison, mm, at its middle. */
export const contactDepthMmOf = ({
  contactDepthMm = parameters.contactDepthMm.default,
}: Comparison): number => nominal(contactDepthMm);
