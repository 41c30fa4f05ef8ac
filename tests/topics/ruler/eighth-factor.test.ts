import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import type { Factor } from '../../../src/model/chain/factors.ts';
import { loft } from '../../comparison/entries.ts';
import { eighth, worth } from '../../model/eighth-factor.ts';

const table = '../../../src/model/chain/factors.ts';

beforeAll(() => {
  vi.resetModules();
  vi.doMock(table, async (original) => {
    const real = await original<{ factors: readonly Factor[] }>();
    return { ...real, factors: [...real.factors, eighth] };
  });
});

afterAll(() => {
  vi.doUnmock(table);
  vi.resetModules();
});

test('a factor put into the table has a row, a bar and its part of the total on the ruler', async () => {
  const { sceneOf } = await import('../../../src/scene/scene.ts');
  const { ruler } = await import('../../../src/topics/ruler/figure-ruler.ts');
  const { drawingOf, labelsOf } = await import('./svg-labels.ts');
  const scene = sceneOf(loft());
  const svg = drawingOf(ruler, scene, 'wide');
  const texts = labelsOf(svg).map(({ text }) => text);
  expect(svg.querySelectorAll('rect[fill^="url(#hatch"]')).toHaveLength(8);
  expect(texts).toContain('Height');
  expect(texts).toContain('All eight reasons');
  expect(texts).toContain(`×${worth.toPrecision(2)}`);
  expect(texts).toContain(`${Number(scene.row.careful.multiplied.toPrecision(2))}, if all multiply`);
});
