import { refuse, within } from '../check.ts';
import type { CarbideKind, CarbideVolPercent } from '../types.ts';

/** The published card-test regression (Thomas 2018, restated 2019): mm of card in 60 cycles. */
export const regression = {
  source: 'thomas-2018-card',
  constant: -157,
  perHrc: 15.8,
  perIncludedDegree: -17.8,
  perVolPercent: {
    Fe3C: 5.0,
    CrC: 11.2,
    CrVC: 14.6,
    MC: 26.2,
    M6C: 9.5,
    MN: 20.9,
    CrN: 19.4,
  } satisfies Record<CarbideKind, number>,
  /** Where we use it: the hardness range is assumed. */
  hrc: { low: 50, high: 66 },
  includedAngleDeg: { low: 20, high: 40 },
  leastMm: 100,
} as const;

/** The kinds of carbide and nitride the regression knows. */
export const carbideKinds = Object.keys(regression.perVolPercent) as CarbideKind[];

/**
 * What the regression adds for carbide, mm.
 *
 * @throws RangeError for a kind it does not know, or a volume outside 0–60%
 */
export function carbideCardMm(volumes: Partial<Record<CarbideKind, number>>): number {
  for (const kind of Object.keys(volumes)) {
    if (!Object.hasOwn(regression.perVolPercent, kind))
      refuse(`carbide kind ${kind} is not one of ${carbideKinds.join(', ')}`);
  }
  return carbideKinds.reduce(
    (sum, kind) =>
      sum + regression.perVolPercent[kind] * within(`${kind} volume`, volumes[kind] ?? 0, 0, 60, '%'),
    0,
  );
}

/** The regression without its limits: what `cardCutMm` and the hardness and carbide terms share. */
export const cardLineMm = (hrc: number, includedAngleDeg: number, carbideMm: number): number =>
  regression.constant + regression.perHrc * hrc + regression.perIncludedDegree * includedAngleDeg + carbideMm;

/**
 * Silica-loaded card cut in 60 cycles of the test of ISO 8442-5, mm, by a published regression. M23C6 has no
 * coefficient there and counts as CrC. It was fitted at one kind of finish and is additive; card in a fixed number
 * of strokes is not life to a blunting stop and compresses ratios.
 *
 * @param p.hrc 50–66 (assumed range)
 * @param p.includedAngleDeg **included**, 20–40°
 * @throws RangeError outside these ranges, or where the result would be below 100 mm
 * @source thomas-2018-card
 * @source iso-8442-5-card
 * @example cardCutMm({ hrc: 62, includedAngleDeg: 30, carbideVolPercent: { CrVC: 13, MC: 9 } }) // → 714.2
 */
export function cardCutMm(p: {
  hrc: number;
  includedAngleDeg: number;
  carbideVolPercent: Partial<Record<CarbideKind, number>>;
}): number {
  within('hardness', p.hrc, regression.hrc.low, regression.hrc.high, ' HRC');
  within(
    'included angle',
    p.includedAngleDeg,
    regression.includedAngleDeg.low,
    regression.includedAngleDeg.high,
    '°',
  );
  const mm = cardLineMm(p.hrc, p.includedAngleDeg, carbideCardMm(p.carbideVolPercent));
  if (mm < regression.leastMm)
    refuse(
      `card cut ${mm.toFixed(0)} mm is not at least ${regression.leastMm} mm: outside what the regression was made for`,
    );
  return mm;
}

const typical = (kind: CarbideKind, low: number, high: number): CarbideVolPercent => {
  const value = (low + high) / 2;
  // Either the range of the handbook figures as remembered, or 30% of their middle, whichever is wider.
  return { [kind]: { value, plusMinus: Number(Math.max((high - low) / 2, 0.3 * value).toFixed(3)) } };
};

/** Typical hardened carbide volume by standard designation, vol %, ±30% (from memory). Never a maker's grade. */
export const carbidesByDesignation: Record<string, CarbideVolPercent> = {
  'AISI 1095': typical('Fe3C', 2, 4),
  'AISI W1': typical('Fe3C', 2, 4),
  'AISI O1': typical('Fe3C', 2, 4),
  'AISI 52100': typical('Fe3C', 4, 6),
  'AISI A2': typical('CrC', 5, 6),
  'AISI D2': typical('CrC', 11, 15),
  'AISI M2': typical('M6C', 7, 10),
  'AISI 420': typical('CrC', 0, 1),
  'AISI 440A': typical('CrC', 3, 5),
  'AISI 440B': typical('CrC', 7, 9),
  'AISI 440C': typical('CrC', 10, 13),
  'EN 1.4116': typical('CrC', 1, 2),
};
