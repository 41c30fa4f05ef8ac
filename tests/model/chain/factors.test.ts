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

  test('in the careful estimate, the published regression speaking', () => {
    expect(statuses(comparison({}), 'careful')).toEqual([
      ['wedge', 'derived; equal spread force and friction assumed'],
      ['apex', 'calibrated on the published regression'],
      ['thickness', 'exponent assumed'],
      ['grind', 'derived; contact depth and friction assumed'],
      ['finish', 'exponent assumed; slicing only'],
      ['hardness', 'published regression, halves exchanged'],
      ['carbide', 'published regression, halves exchanged'],
    ]);
  });

  test('in the careful estimate, outside the published regression', () => {
    const outside = 'Dunlin has 67 HRC, and the published regression is used for 50–66 HRC';
    expect(statuses(comparison({ hrc: 67 }), 'careful').slice(-2)).toEqual([
      ['hardness', 'exponent on HV assumed: outside the published regression'],
      ['carbide', `left out: ${outside}`],
    ]);
    expect(statuses(comparison({ hrc: 67, carbideVolPercent: { CrC: 6 } }), 'careful').at(-1)).toEqual([
      'carbide',
      'the same carbide in both',
    ]);
  });
});

describe('where the published regression speaks', () => {
  const speaks = (...knives: Knife[]): string => {
    const all = knives.map((knife, i) => ({ ...knife, id: String(i) }));
    const { rows } = compare({
      knives: [{ ...plover, carbideVolPercent: { CrC: 1 } }, ...all],
      baseline: 'plover',
    });
    const statuses = rows.slice(1).map(({ terms }) => terms.at(-1)?.status ?? '');
    // Decided for the comparison as a whole.
    expect(new Set(statuses).size).toBe(1);
    return statuses[0] ?? '';
  };
  const knife = (name: string, hrc: number, CrC = 9): Knife => ({
    ...dunlin,
    name,
    hrc,
    carbideVolPercent: { CrC },
  });
  const spoken = 'published regression, halves exchanged';

  test.each([50, 66])('it is used at %d HRC, an end of its range', (hrc) => {
    expect(speaks(knife('Tern', hrc))).toBe(spoken);
  });

  test.each([49.9, 66.1])('it is not used at %d HRC', (hrc) => {
    const why = `left out: Tern has ${hrc} HRC, and the published regression is used for 50–66 HRC`;
    expect(speaks(knife('Tern', hrc))).toBe(why);
    expect(speaks(knife('Tern', hrc), knife('Curlew', 60))).toBe(why);
    expect(speaks(knife('Curlew', 50), knife('Tern', hrc), knife('Avocet', 66))).toBe(why);
  });

  test('of several outside the first by name is named, whatever their order', () => {
    const [tern, curlew, snipe] = [knife('Tern', 45), knife('Curlew', 67), knife('Snipe', 48)];
    for (const order of [
      [tern, curlew, snipe],
      [snipe, curlew, tern],
      [curlew, tern, snipe],
      [snipe, tern, curlew],
    ])
      expect(speaks(...order)).toMatch(/^left out: Curlew has 67 HRC/);
  });

  test('it is used down to 100 mm of card, which the softest with the least carbide must cut', () => {
    // By Thomas's coefficients at 30° included: −157 + 15.8·50 − 17.8·30 + 5.0·0.2 = 100.
    const lean = (Fe3C: number) =>
      comparison({ hrc: 50, carbideVolPercent: { Fe3C } }, { hrc: 50, carbideVolPercent: { Fe3C: 0.2 } });
    expect(term(lean(0.2), 'hardness').status).toBe(spoken);
    expect(term(lean(0.1), 'hardness').status).not.toBe(spoken);
    // 99 mm: the hardness of one with the carbide of another, both named, of equals the first by name.
    const why = (...names: string[]) =>
      speaks(...names.map((name, i) => knife(name, i < 2 ? 50 : 60, 9)), knife('Avocet', 58, 0));
    for (const names of [
      ['Tern', 'Curlew', 'Snipe'],
      ['Curlew', 'Tern', 'Snipe'],
    ])
      expect(why(...names)).toBe(
        'left out: the hardness of Curlew with the carbide of Avocet would cut 99 mm of card, below the 100 mm the published regression is used from',
      );
  });

  test('two steels that differ in kind and not in what the regression adds have no residual in carbide', () => {
    // 11.2·5 = 5.0·11.2 mm of card.
    const alike = term(
      comparison({ carbideVolPercent: { CrC: 5 } }, { carbideVolPercent: { Fe3C: 11.2 } }),
      'carbide',
    );
    expect(alike).toMatchObject({ factor: 1, low: 1, high: 1 });
    // One coefficient of variation to either side, 10 % where none is stated.
    const apart = term(comparison({}), 'carbide');
    expect(apart.high).toBeCloseTo((apart.factor ?? NaN) * 1.1, 12);
    expect(apart.low).toBeCloseTo((apart.factor ?? NaN) / 1.1, 12);
  });
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

  test('stops at a friction of 0.01 where either is none', () => {
    const parallel = (edgeMm: number) =>
      ({ edgeMm, grind: { form: 'flat', spineMm: edgeMm, heightMm: 15 } }) as const;
    const slight = (Math.atan(0.01) * 180) / Math.PI;
    const wedge = (Math.atan(tanOf(3, 0.5)) * 180) / Math.PI;
    expect(term(comparison(parallel(0.5), {}, frictionless), 'grind').high).toBeCloseTo(
      tan(wedge + slight) / 0.01,
      9,
    );
    expect(term(comparison({ edgeMm: 0.5 }, parallel(0.5), frictionless), 'grind').low).toBeCloseTo(
      0.01 / tan(wedge + slight),
      9,
    );
  });
});
