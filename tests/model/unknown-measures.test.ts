import { expect, test } from 'vitest';
import type { Knife } from '../../src/model/types.ts';
import { unknownMeasures } from '../../src/model/chain/unknown-measures.ts';
import { plover } from './knives.ts';

const range = (low: number, high: number) => ({ unknown: true, low, high }) as const;

test('what is not known of a knife is named with its range and its unit, each kind of carbide by itself', () => {
  const nothing: Knife = {
    id: 'tern',
    angleDeg: range(10, 20),
    microbevelAngleDeg: range(20, 25),
    edgeMm: range(0.2, 0.6),
    finish: { um: range(5, 40) },
    grind: { form: 'hollow', spineMm: range(2, 4), heightMm: range(10, 30), radiusMm: range(80, 200) },
    hrc: range(56, 62),
    carbideVolPercent: { CrC: range(0, 8), MC: range(0, 4) },
    toughness: range(10, 30),
  };
  expect(unknownMeasures(nothing)).toEqual([
    { what: 'edge angle', low: 10, high: 20, unit: '° per side' },
    { what: 'microbevel angle', low: 20, high: 25, unit: '° per side' },
    { what: 'thickness behind the edge', low: 0.2, high: 0.6, unit: ' mm' },
    { what: 'thickness at the spine', low: 2, high: 4, unit: ' mm' },
    { what: 'height of the grind', low: 10, high: 30, unit: ' mm' },
    { what: 'radius of the grind', low: 80, high: 200, unit: ' mm' },
    { what: 'finish', low: 5, high: 40, unit: ' µm' },
    { what: 'hardness', low: 56, high: 62, unit: ' HRC' },
    { what: 'carbide volume', low: 0, high: 8, unit: '%' },
    { what: 'carbide volume', low: 0, high: 4, unit: '%' },
    { what: 'toughness', low: 10, high: 30, unit: '' },
  ]);
  // A flat grind has no radius to know.
  const flat = unknownMeasures({ ...nothing, grind: { ...nothing.grind, form: 'flat' } });
  expect(flat.map(({ what }) => what)).not.toContain('radius of the grind');
  expect(flat).toHaveLength(10);
});

test('what is known, to within a ± or left out is not among it', () => {
  expect(unknownMeasures(plover)).toEqual([]);
  expect(
    unknownMeasures({
      ...plover,
      angleDeg: { value: 15, plusMinus: 1 },
      finish: { scale: 'JIS', grit: 1000 },
      hrc: range(56, 62),
    }),
  ).toEqual([{ what: 'hardness', low: 56, high: 62, unit: ' HRC' }]);
});
