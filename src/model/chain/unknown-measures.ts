import { isUnknown } from '../quantities.ts';
import type { Knife, Quantity } from '../types.ts';

/** A measure of a knife that is not known, and the range that stands for it, in its unit. */
export interface UnknownMeasure {
  what: string;
  low: number;
  high: number;
  /** Written straight after a number. */
  unit: string;
}

/** The measures of a knife that are not known; every kind of its carbide is one. */
export function unknownMeasures(knife: Knife): UnknownMeasure[] {
  const { grind } = knife;
  const all: [string, Quantity | undefined, string][] = [
    ['edge angle', knife.angleDeg, '° per side'],
    ['microbevel angle', knife.microbevelAngleDeg, '° per side'],
    ['thickness behind the edge', knife.edgeMm, ' mm'],
    ['thickness at the spine', grind.spineMm, ' mm'],
    ['height of the grind', grind.heightMm, ' mm'],
    ['radius of the grind', grind.form === 'flat' ? undefined : grind.radiusMm, ' mm'],
    ['finish', 'um' in knife.finish ? knife.finish.um : undefined, ' µm'],
    ['hardness', knife.hrc, ' HRC'],
    ...Object.values(knife.carbideVolPercent).map((volume): [string, Quantity, string] => [
      'carbide volume',
      volume,
      '%',
    ]),
    ['toughness', knife.toughness, ''],
  ];
  return all.flatMap(([what, quantity, unit]) =>
    quantity !== undefined && isUnknown(quantity)
      ? [{ what, low: quantity.low, high: quantity.high, unit }]
      : [],
  );
}
