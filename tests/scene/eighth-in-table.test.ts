import { parseHTML } from 'linkedom';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import type { Factor } from '../../src/model/chain/factors.ts';
import { loft } from '../comparison/entries.ts';
import { eighth, worth } from '../model/eighth-factor.ts';

const table = '../../src/model/chain/factors.ts';

const site = async () => ({
  ...(await import('../../src/comparison/link/codec.ts')),
  ...(await import('../../src/scene/scene.ts')),
  ...(await import('../../src/scene/headline.ts')),
  ...(await import('../../src/scene/show.ts')),
  ...(await import('../../src/figure-kit/draw.ts')),
  ...(await import('../../src/figure-kit/figure.ts')),
  ...(await import('../../src/topics/overview/figure-chain.ts')),
  ...(await import('../../src/topics/overview/words.ts')),
  ...(await import('../../src/topics/stack-them/words.ts')),
});
let seven: Awaited<ReturnType<typeof site>>;
let eight: Awaited<ReturnType<typeof site>>;

beforeAll(async () => {
  seven = await site();
  vi.resetModules();
  vi.doMock(table, async (original) => {
    const real = await original<{ factors: readonly Factor[] }>();
    return { ...real, factors: [...real.factors, eighth] };
  });
  eight = await site();
});

afterAll(() => {
  vi.doUnmock(table);
  vi.resetModules();
});

test('a factor put into the table has one number in sentences, figure, table, link and headline', () => {
  const [before, scene] = [seven.sceneOf(loft()), eight.sceneOf(loft())];
  const total = before.row.careful.multiplied * worth;
  expect(scene.row.careful.multiplied).toBeCloseTo(total, 9);

  const [own, all] = [eight.times(worth), eight.times(total)];
  const stacked = eight.stackWords['stack']?.(scene).join(' ') ?? '';
  expect(stacked).toContain(`height ${own}`);
  expect(stacked).toContain(all);

  const { rows } = eight.chain.table(scene);
  expect(rows.find(([name]) => name === 'Height')?.slice(1, 3)).toEqual(['finish', own]);
  expect(rows.find(([name]) => name === 'Multiplied')?.[2]).toBe(all);
  const { document } = parseHTML('<!doctype html><html><body></body></html>');
  const drawn = eight.draw(eight.chain, scene, eight.sizes.wide, document, 'chain').outerHTML;
  expect(drawn).toContain(own);
  expect(drawn).toContain(all);

  const link = eight.decodeLink(eight.encodeLink(loft()));
  expect(link.ok && link.said?.multiplied).toBe(Number(total.toPrecision(4)));
  // The samples take it too: the whole band moves up with it.
  expect(eight.headlineOf(scene).middle).toBeGreaterThan(seven.headlineOf(before).middle);
});
