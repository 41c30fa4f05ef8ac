import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { decodeLink } from '../../src/comparison/link/codec.ts';
import type { OpenedLink } from '../../src/comparison/link/codec.ts';
import { statedRatios } from '../../src/comparison/stated-ratios.ts';
import type { EarlierRatios, StatedRatios } from '../../src/comparison/stated-ratios.ts';
import { modelChanges } from '../../src/phrases/model-changes.ts';
import { olderLinkText } from '../../src/phrases/older-link.ts';
import { MODEL_NUMBER } from '../../src/model/index.ts';
import { loft } from '../comparison/entries.ts';

const folder = 'tests/comparison/link/links';

interface Given {
  /** The file of the link and its line in it. */
  link: string;
  model: string;
  /** What it gave then; of version 1, which did not carry it, as that model computed it. Never changed. */
  then: EarlierRatios | StatedRatios;
  now: StatedRatios;
  /** What the page says of it. */
  described: string;
}

const opened = (fragment: string): OpenedLink => {
  const read = decodeLink(fragment);
  if (!read.ok) throw new Error(read.why);
  return read;
};
const nowOf = ({ entry }: OpenedLink): StatedRatios => statedRatios(entry);

describe('every link of the examples', () => {
  const kept = JSON.parse(readFileSync(`${folder}/given.json`, 'utf8')) as Given[];
  const links = readdirSync(folder)
    .filter((file) => file.endsWith('.txt'))
    .flatMap((file) =>
      readFileSync(`${folder}/${file}`, 'utf8')
        .trim()
        .split('\n')
        .map((fragment, line) => ({ link: `${file} ${line + 1}`, fragment })),
    );

  // `UPDATE=1` writes anew what is given now; what was given then stays.
  if (process.env['UPDATE']) {
    const renewed = links.map(({ link, fragment }): Given => {
      const read = opened(fragment);
      const then = kept.find((given) => given.link === link)?.then ?? read.said ?? read.saidEarlier;
      if (!then) throw new Error(`${link}: write what it gave then into given.json by hand`);
      return { link, model: read.modelNumber, then, now: nowOf(read), described: olderLinkText(read) };
    });
    writeFileSync(`${folder}/given.json`, `${JSON.stringify(renewed, null, 2)}\n`);
  }

  test('has its line of what it gave then, gives now and why', () =>
    expect(kept.map(({ link }) => link)).toEqual(links.map(({ link }) => link)));

  test.each(links)('$link', ({ link, fragment }) => {
    const given = kept.find((candidate) => candidate.link === link);
    const read = opened(fragment);
    const said = read.said ?? read.saidEarlier;
    if (said) expect(said).toEqual(given?.then);
    expect(nowOf(read)).toEqual(given?.now);
    expect(olderLinkText(read)).toBe(given?.described);
    // The reader of an older link hears what it says now.
    if (!read.sameModel) expect(given?.described).toMatch(/ow it says/);
  });
});

test('every model after the first says what it changed', () => {
  const numbers = Array.from({ length: Number(MODEL_NUMBER) - 1 }, (_, index) => String(index + 2));
  expect(modelChanges.map(({ model }) => model)).toEqual(numbers);
  for (const { what } of modelChanges) expect(what).toMatch(/^[a-z].{40,}[^.]$/);
});

describe('a link is told', () => {
  const link = (change: Partial<OpenedLink>): OpenedLink => ({
    ok: true,
    entry: loft(),
    modelNumber: '1',
    sameModel: false,
    ...change,
  });
  const now = statedRatios(loft());

  test('nothing of where this model made it', () =>
    expect(olderLinkText(link({ modelNumber: MODEL_NUMBER, sameModel: true, said: now }))).toBe(''));

  test('what an earlier model said, what it says now, and why', () => {
    const saidEarlier = { careful: 12.53, quick: 56.16, rival: 5.17 };
    const text = olderLinkText(link({ modelNumber: '2', saidEarlier }));
    expect(text).toContain(
      'Then it said, for Dunlin against Plover: 13 times as long by the careful estimate, 5.2 if the forces add, and 56 by the quick sum.',
    );
    expect(text).toContain('Now it says: about 5 to 30 times as long; 10 is the middle');
    expect(text).toContain('With no. 3, ');
    expect(text).not.toContain('With no. 2, ');
  });

  test('that its age does not let it carry what was said', () => {
    const text = olderLinkText(link({ modelNumber: '1' }));
    expect(text).toContain('doesn’t carry what it said then. Now it says, for Dunlin against Plover:');
    expect(text).toContain('With no. 2, the ranges moved');
  });

  test('that it is of a model this page does not know', () => {
    const text = olderLinkText(link({ modelNumber: '<b>99', said: now }));
    expect(text).toContain(`no. <b>99. This page has no. ${MODEL_NUMBER} and doesn’t know it.`);
    expect(text).toContain('it says what it said then: about 5 to 30 times as long; 10 is the middle');
    expect(text).toContain('Reload');
  });
});
