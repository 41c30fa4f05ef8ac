import { describe, expect, test } from 'vitest';
import { compare } from '../../../src/model/index.ts';
import type { Knife, Comparison, Reading, Row, Term, TermId } from '../../../src/model/index.ts';
import { plover } from '../knives.ts';

const dunlin: Knife = {
  ...plover,
  id: 'dunlin',
  name: 'Dunlin',
  angleDeg: 15,
  edgeMm: 0.4,
  finish: { um: 35 },
  hrc: 60,
  carbideVolPercent: { CrC: 9 },
};
const comparison = (
  a: Partial<Knife>,
  b: Partial<Knife> = {},
  more: Partial<Comparison> = {},
): Comparison => ({
  knives: [
    { ...plover, ...b },
    { ...dunlin, ...a },
  ],
  baseline: 'plover',
  ...more,
});
const row = (of: Comparison, reading: Reading = 'careful', knife = 'dunlin'): Row => {
  const found = compare(of, { reading }).rows.find((candidate) => candidate.knife === knife);
  if (!found) throw new Error(`no row ${knife}`);
  return found;
};
const term = (of: Comparison, id: TermId): Term => {
  const found = row(of).terms.find((candidate) => candidate.id === id);
  if (!found) throw new Error(`no term ${id}`);
  return found;
};

describe('what each term says of where it stands', () => {
  const statuses = (of: Comparison, reading: Reading) =>
    row(of, reading).terms.map(({ id, status }) => [id, status]);

  test('in the quick sum', () => {
    expect(statuses(comparison({}), 'quick')).toEqual([
      ['wedge', 'angle against angle'],
      ['apex', 'angle against angle'],
      ['thickness', 'thickness against thickness'],
      ['grind', 'a tenth for each halving; common practice, no source'],
      ['finish', 'grain size against grain size; slicing only'],
      ['hardness', 'hardness squared'],
      ['carbide', 'twenty volume per cent doubles; assumed'],
    ]);
  });

  test('in the careful estimate', () => {
    expect(statuses(comparison({}), 'careful')).toEqual([
      ['wedge', 'derived; equal spread force and friction assumed'],
      ['apex', 'calibrated on the published regression'],
      ['thickness', 'exponent assumed'],
      ['grind', 'derived; contact depth and friction assumed'],
      ['finish', 'exponent assumed; slicing only'],
      ['hardness', 'published regression to an assumed power, halves exchanged'],
      ['carbide', 'published regression to an assumed power, halves exchanged'],
    ]);
  });
});

describe('hardness and carbide', () => {
  test('together are the ratio of the lives, and agree through a third knife', () => {
    const knives: Knife[] = [
      plover,
      { ...plover, id: 'dunlin', hrc: 61, carbideVolPercent: { CrC: 13 } },
      { ...plover, id: 'curlew', hrc: 47, carbideVolPercent: { MC: 4, CrC: 2 } },
    ];
    const steel = (a: string, baseline: string): number =>
      compare({ knives, baseline }).rows.find(({ knife }) => knife === a)?.families.steel ?? Number.NaN;
    expect(Math.log(steel('dunlin', 'plover') * steel('curlew', 'dunlin'))).toBeCloseTo(
      Math.log(steel('curlew', 'plover')),
      12,
    );
    // Thomas's coefficients by hand at 30° included: −157 + 15.8·61 − 534 + 11.2·13 over … 58 and 6; p 1.5 (assumed).
    expect(steel('dunlin', 'plover')).toBeCloseTo((418.4 / 292.6) ** 1.5, 10);
  });

  test('of one hardness the carbide tells all, of one carbide the hardness', () => {
    const [harder, richer] = [comparison({ carbideVolPercent: { CrC: 6 } }), comparison({ hrc: 58 })];
    expect(term(harder, 'carbide').factor).toBe(1);
    expect(term(harder, 'hardness').factor).toBeCloseTo(row(harder).families.steel, 12);
    expect(term(richer, 'hardness').factor).toBe(1);
    expect(term(richer, 'carbide').factor).toBeCloseTo(row(richer).families.steel, 12);
  });

  test('two steels that differ in kind and not in what the regression adds differ in no carbide', () => {
    // 11.2·5 = 5.0·11.2 mm of card.
    const alike = term(
      comparison({ carbideVolPercent: { CrC: 5 } }, { carbideVolPercent: { Fe3C: 11.2 } }),
      'carbide',
    );
    expect(alike).toMatchObject({ factor: 1, low: 1, high: 1 });
  });

  test('their ends are those of the power of a life, with one coefficient of variation to either side', () => {
    const apart = term(comparison({}), 'carbide');
    const card = apart.factor ** (1 / 1.5);
    // p 0.5 to 2.2; a residual of 10% where none is stated, before the power.
    expect(apart.high).toBeCloseTo(card ** 2.2 * 1.1 ** 1.5, 10);
    expect(apart.low).toBeCloseTo(card ** 0.5 / 1.1 ** 1.5, 10);
    const strokes = term(comparison({}, {}, { outcome: 'fixed-strokes' }), 'carbide');
    expect(strokes.factor).toBeCloseTo(card, 10);
    expect([strokes.low, strokes.high]).toEqual([
      expect.closeTo(card / 1.1, 10),
      expect.closeTo(card * 1.1, 10),
    ]);
  });

  test('beyond 66 HRC the exponent on HV gives the ends of the hardness too', () => {
    const assumptions = { lifeExponent: 1, residualCv: 0 };
    const hard = term(
      comparison({ hrc: 68, carbideVolPercent: { CrC: 6 } }, { hrc: 66 }, { assumptions }),
      'hardness',
    );
    // HV = (223 HRC + 14500)/(100 − HRC), the closed form of ASTM E140 table 1; 1.2 (0.6–2) assumed.
    const vickers = (223 * 68 + 14500) / 32 / ((223 * 66 + 14500) / 34);
    expect(hard.factor).toBeCloseTo(vickers ** 1.2, 10);
    expect([hard.low, hard.high]).toEqual([
      expect.closeTo(vickers ** 0.6, 10),
      expect.closeTo(vickers ** 2, 10),
    ]);
  });
});

test('a microbevel moves the apex and the side load, not the wedge', () => {
  const plain = row(comparison({}));
  const micro = row(comparison({ microbevelAngleDeg: 25 }));
  const factor = ({ terms }: Row, id: TermId) =>
    terms.find((candidate) => candidate.id === id)?.factor ?? NaN;
  expect(factor(micro, 'wedge')).toBe(factor(plain, 'wedge'));
  expect(factor(micro, 'apex')).toBeLessThan(factor(plain, 'apex'));
  for (const end of ['low', 'high'] as const)
    expect(micro.sideLoad.rolling[end]).toBeGreaterThan(plain.sideLoad.rolling[end]);
});

describe('the range of the grind’s factor', () => {
  const tan = (degrees: number) => Math.tan((degrees * Math.PI) / 180);
  /** tan of a flat grind's wedge half angle over the 8 mm of contact: (T − t)/2H. */
  const tanOf = (spineMm: number, edgeMm: number) => (spineMm - edgeMm) / (2 * 15);
  const frictionless = { friction: { value: 0.2, plusMinus: 0.2 } } as const;

  test('reaches down to no friction where both grinds are wedges', () => {
    const { high } = term(comparison({ edgeMm: 1 }, {}, frictionless), 'grind');
    // Without friction the forces are as the tangents alone.
    expect(high).toBeCloseTo(tanOf(3, 0.5) / tanOf(3, 1), 12);
  });

  test('a grind that is none counts as half a degree, friction or not', () => {
    const parallel = (edgeMm: number) =>
      ({ edgeMm, grind: { form: 'flat', spineMm: edgeMm, heightMm: 15 } }) as const;
    expect(term(comparison(parallel(0.5), {}, frictionless), 'grind').high).toBeCloseTo(
      tanOf(3, 0.5) / tan(0.5),
      9,
    );
    expect(term(comparison({ edgeMm: 0.5 }, parallel(0.5), frictionless), 'grind').low).toBeCloseTo(
      tan(0.5) / tanOf(3, 0.5),
      9,
    );
  });
});
