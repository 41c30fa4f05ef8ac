/**
 * What a question asks for, and so how a bare number typed as its answer is meant. A ratio is asked for as a
 * number of times, as per cent more or less, or as a share in per cent; a quantity in its unit; a choice by letter.
 */
export type Asks = 'times' | `times as ${string}` | '% more' | '% less' | '%' | 'letter' | Quantity;

/** The units of answers that are no ratios. */
export type Quantity = 'm' | 'cm' | 'mm' | 'mm²' | 'µm' | 'ml' | 'HV' | 'cuts' | 'seedlings' | '°' | 'left';

export type Mode = 'times' | 'more' | 'less' | 'share' | 'letter' | 'quantity';

const modes: Partial<Record<Asks, Mode>> = {
  '% more': 'more',
  '% less': 'less',
  '%': 'share',
  letter: 'letter',
};

/**
 * How an answer to it is read.
 *
 * @example modeOf('times as long') // → 'times'
 * @example modeOf('m') // → 'quantity'
 */
export const modeOf = (asks: Asks): Mode => modes[asks] ?? (asks.startsWith('times') ? 'times' : 'quantity');
