import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { describe, expect, it } from 'vitest';

const words = parse(readFileSync('content/words.yaml', 'utf8')) as Record<string, Record<string, unknown>>;
const entries = Object.entries(words);

describe('the glossary', () => {
  it.each(entries)('%s is well formed', (id, entry) => {
    expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(entry['word']).toEqual(expect.stringMatching(/^\S.*\S$/));
    expect(entry['meaning']).toEqual(expect.stringMatching(/^[A-Z0-9“×].*[.!?”)]$/s));
    expect(Object.keys(entry).filter((key) => !['word', 'meaning', 'ours'].includes(key))).toEqual([]);
    if ('ours' in entry) expect(entry['ours']).toBe(true);
  });

  it('has each word once', () => {
    const all = entries.map(([, { word }]) => String(word).toLowerCase());
    expect(all.filter((word, index) => all.indexOf(word) !== index)).toEqual([]);
  });

  // The words of this site's own; each must be explained to a stranger.
  it.each(['comparison', 'chain', 'quick sum', 'careful estimate', 'if the forces add', 'compare', 'explained', 'factor', 'guess first', 'make one thing equal', 'scope', 'run', 'material', 'check the prediction', 'misstep'])(
    'explains “%s” and marks it as ours',
    (word) => {
      const entry = entries.map(([, each]) => each).find((each) => String(each['word']).toLowerCase().startsWith(word));
      expect(entry?.['ours']).toBe(true);
    },
  );
});
