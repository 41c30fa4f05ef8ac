import { readFileSync } from 'node:fs';
import { parse, stringify } from 'yaml';
import { describe, expect, it } from 'vitest';
import { readPublished } from '../../src/comparison/published.ts';
import { comparisonsFile } from '../../src/comparison/files.ts';
import { loft, loftDocument } from './entries.ts';

const read = (value: unknown, file = 'content/comparisons/own.json') =>
  readPublished(file, JSON.stringify(value));
const saved = () => JSON.parse(comparisonsFile([{ name: 'Loft', entry: loft() }])) as Record<string, unknown>;

describe('a comparison', () => {
  it('is read from what Saved saves, from the fields alone, from JSON and from YAML', () => {
    expect(read(saved()).entry).toEqual(loft());
    expect(read(loftDocument()).entry).toEqual(loft());
    const yaml = readPublished('content/comparisons/own-two.yaml', `\uFEFF${stringify(loftDocument())}`);
    expect(yaml).toEqual({ name: 'own-two', entry: loft(), note: [], revisions: [] });
  });

  it('has a note in paragraphs, and its revisions with the newest first', () => {
    const revision = { changed: 'The angle.', reason: 'Misread.' };
    const { note, revisions } = read({
      ...saved(),
      note: 'One\nline.\n\nAnother.',
      revisions: [
        { ...revision, date: '2026-02-28' },
        { ...revision, date: '2026-11-25' },
      ],
    });
    expect(note).toEqual(['One line.', 'Another.']);
    expect(revisions.map(({ date }) => date)).toEqual(['2026-11-25', '2026-02-28']);
  });

  it('is read from a file of version 1, which is older than what is saved now', () => {
    expect(read({ ...saved(), version: 1 }).entry).toEqual(loft());
  });

  it.each(['loft.yaml', 'curlew-and-avocet.json'])('of the site, %s, is invented and says so', (file) => {
    const path = `content/comparisons/${file}`;
    const { entry, note } = readPublished(path, readFileSync(path, 'utf8'));
    expect(entry.invented).toBe(true);
    expect(note.length).toBeGreaterThan(0);
  });

  const damaged = (change: (document: Record<string, unknown>) => unknown): unknown => {
    const document = saved();
    return change(document) ?? document;
  };
  const comparisons = (document: Record<string, unknown>) =>
    document['comparisons'] as {
      comparison: { knives: Record<string, unknown>[]; [field: string]: unknown };
    }[];
  const first = (document: Record<string, unknown>) => {
    const [item] = comparisons(document);
    if (!item) throw new Error('the saved file holds no comparison');
    return item;
  };
  const knife = (document: Record<string, unknown>) =>
    first(document).comparison.knives[1] as Record<string, unknown>;

  it.each<[string, (document: Record<string, unknown>) => unknown, RegExp]>([
    [
      'a number out of its range',
      (d) => void (knife(d)['edgeMm'] = 25),
      /comparisons\.0\.comparison\.knives\.1\.edgeMm: .*25 mm is not between 0\.01 mm and 5 mm\. Change it/,
    ],
    [
      'a number out of its range, in a file of version 1',
      (d) => {
        d['version'] = 1;
        knife(d)['hrc'] = 80;
      },
      /comparisons\.0\.comparison\.knives\.1\.hrc: .*80 HRC is not between 20 HRC and 68 HRC\. Change it/,
    ],
    [
      'nothing where its comparison stands',
      (d) => ({ ...d, comparisons: [null] }),
      /own\.json: comparisons\.0\.comparison: .*not a comparison\. Mend it/,
    ],
    [
      'a field there is not',
      (d) => void (knife(d)['brand'] = 'x'),
      /knives\.1\.brand: .* is not a field of a comparison\. Take it out/,
    ],
    [
      'a field that is missing',
      (d) => void delete knife(d)['hrc'],
      /knives\.1\.hrc: .* is missing .*comparison\.schema\.json/,
    ],
    [
      'a baseline that is not there',
      (d) => void (first(d).comparison['baseline'] = 'tern'),
      /baseline: .*“tern” is not among the knives/,
    ],
    [
      'two comparisons',
      (d) => void comparisons(d).push(first(d)),
      /comparisons: it holds 2 comparisons\. A page shows one/,
    ],
    ['no comparison', () => [], /it holds no comparison\. Save one/],
    ['another file', () => ({ keenfold: 'seal' }), /holds no comparisons of this site\. Save/],
    ['a file from later', (d) => void (d['version'] = 99), /version 99/],
    ['a note that is none', (d) => void (d['note'] = 3), /note: it is not text/],
    ['revisions that are no list', (d) => void (d['revisions'] = 'none'), /revisions: they are not a list/],
    [
      'a revision without reason',
      (d) => void (d['revisions'] = [{ date: '2026-01-01', changed: 'x' }]),
      /revisions\.0\.reason: it is missing/,
    ],
    [
      'a day there is not',
      (d) => void (d['revisions'] = [{ date: '2026-02-30', changed: 'x', reason: 'y' }]),
      /revisions\.0\.date: “2026-02-30” is no day/,
    ],
    [
      'a revision with more',
      (d) => void (d['revisions'] = [{ date: '2026-02-03', changed: 'x', reason: 'y', by: 'z' }]),
      /revisions\.0\.by: it is no part/,
    ],
  ])('with %s stops the build and says where and what to do', (_what, change, message) => {
    expect(() => read(damaged(change))).toThrow(message);
    expect(() => read(damaged(change))).toThrow(/^content\/comparisons\/own\.json: /);
  });

  it('has its revisions with the newest first, in whatever order they stand', () => {
    const dates = ['2026-03-01', '2026-11-25', '2026-02-28'];
    const revisions = dates.map((date) => ({ date, changed: 'The angle.', reason: 'Misread.' }));
    for (const all of [revisions, [...revisions].reverse()])
      expect(read({ ...saved(), revisions: all }).revisions.map(({ date }) => date)).toEqual([
        '2026-11-25',
        '2026-03-01',
        '2026-02-28',
      ]);
  });

  it.each<[string, Record<string, unknown>, RegExp]>([
    ['fields alone with a baseline that is not there', { baseline: 'tern' }, /own\.json: baseline: .*“tern”/],
    ['a revision that is a word', { revisions: ['changed'] }, /revisions\.0\.date: it is missing\./],
    [
      'a finish that is a word',
      { knives: [{ ...loft().knives[0], finish: 'fine' }, loft().knives[1]] },
      /knives\.0\.finish: .* Mend it, or save the comparison from Compare again\.$/,
    ],
  ])('with %s stops the build too', (_what, change, message) => {
    expect(() => read({ ...loftDocument(), ...change })).toThrow(message);
  });

  it('that is cut short names the line', () => {
    const text = readFileSync('content/comparisons/curlew-and-avocet.json', 'utf8').slice(0, 400);
    expect(() => readPublished('content/comparisons/own.json', text)).toThrow(
      /^content\/comparisons\/own\.json: line \d+, column \d+: .*Mend the file there/,
    );
  });

  it('of a name that is no address says how to name it', () => {
    for (const file of ['My Knives.json', 'x.txt', 'ü.yaml'])
      expect(() => read(parse('{}'), `content/comparisons/${file}`)).toThrow(
        /small letters, digits and hyphens/,
      );
  });
});
