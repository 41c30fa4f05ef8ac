import { refuse } from './check.ts';
import type { Quantity } from './types.ts';

/** The middle of a quantity: its value, or the middle of the stated range where it is not known. */
export const nominal = (quantity: Quantity): number => {
  if (typeof quantity === 'number') return quantity;
  return 'unknown' in quantity ? (quantity.low + quantity.high) / 2 : quantity.value;
};

/** The ends of a quantity's range. */
export const rangeOf = (quantity: Quantity): { low: number; high: number } => {
  if (typeof quantity === 'number') return { low: quantity, high: quantity };
  if ('unknown' in quantity) return { low: quantity.low, high: quantity.high };
  return { low: quantity.value - quantity.plusMinus, high: quantity.value + quantity.plusMinus };
};

export const isUnknown = (quantity: Quantity): quantity is { unknown: true; low: number; high: number } =>
  typeof quantity === 'object' && 'unknown' in quantity;

/** A quantity whose parts are finite and in order. */
export function checkQuantity(name: string, quantity: Quantity): Quantity {
  if (typeof quantity === 'number') {
    if (!Number.isFinite(quantity)) refuse(`${name} ${String(quantity)} is not a finite number`);
  } else if ('unknown' in quantity) {
    const { low, high } = quantity;
    if (!Number.isFinite(low) || !Number.isFinite(high) || low > high)
      refuse(`${name} range ${String(low)}–${String(high)} is not from a lower to a higher number`);
  } else if (
    !Number.isFinite(quantity.value) ||
    !Number.isFinite(quantity.plusMinus) ||
    quantity.plusMinus < 0
  ) {
    refuse(
      `${name} ${String(quantity.value)} ± ${String(quantity.plusMinus)} is not a finite number with a ± of 0 or more`,
    );
  }
  return quantity;
}

export interface Parameter {
  symbol: string;
  name: string;
  unit: string;
  default: number;
  low: number;
  high: number;
  status: 'assumed' | 'calibrated' | 'derived' | 'practice';
  why: string;
}

/** The parameters of the close reading, each with its default, its stated range and where it stands. */
export const parameters = {
  friction: {
    symbol: 'µ₀',
    name: 'friction coefficient',
    unit: '',
    default: 0.25,
    low: 0.1,
    high: 0.4,
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
    status: 'assumed',
    why: 'how much of the primary grind touches the material',
  },
  angleExponent: {
    symbol: 'E',
    name: 'total local exponent of the angle at 15°',
    unit: '',
    default: 1.3,
    low: 1.0,
    high: 1.8,
    status: 'calibrated',
    why: 'the published regression has −2.2 to −0.64 over its observed span',
  },
  thicknessExponent: {
    symbol: 'e',
    name: 'thickness exponent',
    unit: '',
    default: 0.5,
    low: 0.2,
    high: 1,
    status: 'assumed',
    why: '1 where the force is all spread over flanks of fixed length',
  },
  finishExponent: {
    symbol: 'e',
    name: 'finish exponent',
    unit: '',
    default: 0.3,
    low: 0,
    high: 0.7,
    status: 'assumed',
    why: 'no published table of retention against grit is known to us',
  },
  hardnessExponent: {
    symbol: 'e',
    name: 'hardness exponent on HV',
    unit: '',
    default: 1.2,
    low: 0.6,
    high: 2.0,
    status: 'assumed',
    why: 'used only where the regression does not reach',
  },
  residualCv: {
    symbol: 'CV',
    name: 'residual of the regression',
    unit: '',
    default: 0.1,
    low: 0,
    high: 0.3,
    status: 'assumed',
    why: 'scatter of single knives about the published line',
  },
} as const satisfies Record<string, Parameter>;

export type ParameterId = keyof typeof parameters;
