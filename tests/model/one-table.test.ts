import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import type * as Model from '../../src/model/index.ts';
import { structures } from '../../src/model/index.ts';
import type { Comparison, Row, Structure } from '../../src/model/index.ts';
import type { Factor } from '../../src/model/chain/factors.ts';
import { eighth, worth } from './eighth-factor.ts';
import { loft } from './loft.ts';
import { exact } from './knives.ts';

const table = '../../src/model/chain/factors.ts';
let model: typeof Model;

beforeAll(async () => {
  vi.resetModules();
  vi.doMock(table, async (original) => {
    const real = await original<{ factors: readonly Factor[] }>();
    return { ...real, factors: [...real.factors, eighth] };
  });
  model = await import('../../src/model/index.ts');
});

afterAll(() => {
  vi.doUnmock(table);
  vi.resetModules();
});

const comparison: Comparison = { ...loft, ...exact };
const row = (of: Comparison = comparison): Row => {
  const found = model.compare(of).rows.find(({ knife }) => knife === 'dunlin');
  if (!found) throw new Error('no row');
  return found;
};
const held = (structure: Structure): Comparison => ({
  ...comparison,
  // Everything known: the ± of the loft's knives is taken away.
  knives: comparison.knives.map((knife) => ({
    ...knife,
    angleDeg: knife.id === 'dunlin' ? 14 : 24,
    edgeMm: knife.id === 'dunlin' ? 0.25 : 0.6,
    hrc: knife.id === 'dunlin' ? 61 : 57,
    carbideVolPercent: { CrC: knife.id === 'dunlin' ? 13 : 4 },
  })),
  assumptions: {
    ...exact.assumptions,
    structureWeights: structures.map((of) => Number(of === structure)) as [number, number, number],
  },
});

describe('a factor put into the table', () => {
  test('is the eighth of a row, and in its family and shares', () => {
    expect(model.factors).toHaveLength(8);
    const { terms, families, logShares } = row();
    expect(terms.at(-1)).toMatchObject({ id: 'height', status: 'made up' });
    expect(terms.at(-1)?.factor).toBeCloseTo(worth, 12);
    // The loft's own finish, 68 against 15.3 µm to the power 0.3.
    expect(families.finish).toBeCloseTo(worth * (68 / 15.3) ** 0.3, 12);
    expect(Object.keys(logShares ?? {})).toContain('height');
  });

  // The loft's own totals at the middle settings (tests/reference/model-three.test.ts), and the eighth factor.
  test.each<[Structure, number]>([
    ['multiplied', 16.064],
    ['added', 6.63],
    ['toLimit', 8.0772],
  ])('counts in every total, in the samples, in what is solved for and in curves: %s', (structure, seven) => {
    const of = held(structure);
    const total = row(of)[structure];
    expect(total).toBeCloseTo(seven * worth, 2);

    const [, prediction] = model.predict(of, { samples: 100, seed: 1 });
    for (const point of ['low', 'median', 'high'] as const) {
      expect((prediction?.[point] ?? NaN) / total).toBeCloseTo(1, 12);
      expect((prediction?.byStructure[structure][point] ?? NaN) / total).toBeCloseTo(1, 12);
    }
    expect(model.firstOrderBand(of, 'dunlin').middle / total).toBeCloseTo(1, 12);
    expect(model.ratioUnder(of, 'dunlin', { structure }) / total).toBeCloseTo(1, 12);

    const question = { knife: 'dunlin', against: 'plover', attribute: 'angleDeg', structure } as const;
    const [at14, at20] = model.ratioCurve(of, { ...question, values: [14, 20] });
    expect((at14 ?? NaN) / total).toBeCloseTo(1, 12);
    const back = model.whatItTakes(of, { ...question, target: at20 ?? NaN });
    expect(back.value).toBeCloseTo(20, 9);
    const { low, high } = model.whatItTakesBand(of, { ...question, target: at20 ?? NaN }, { samples: 100 });
    expect([low, high]).toEqual([expect.closeTo(20, 9), expect.closeTo(20, 9)]);
  });
});
