import { expect, test } from 'vitest';
import { workedExample } from '../../../src/exercises/index.ts';
import { readSetCode } from '../../../src/teach/set/address.ts';
import { tallyInWords, tallyOf } from '../../../src/teach/tally/tally.ts';
import { forEveryNaughty } from '../../naughty/strings.ts';

test('no naughty string is a code of a set, and each is refused in words', () => {
  forEveryNaughty((text) => {
    const read = readSetCode(text);
    expect(read.ok ? '' : read.why).toMatch(/^it .*\.$|^one .*\.$/);
  });
});

test('every naughty guess is counted or named, and none is lost', () => {
  forEveryNaughty((text) => {
    const tally = tallyOf(workedExample('forward-chain'), `1.8\n${text}\n1.96`);
    const lines = `1.8\n${text}\n1.96`.split(/[\n\r;\t]+/).filter((line) => line.trim() !== '');
    expect(tally.values.length + tally.unreadable.length + tally.beyond).toBe(lines.length);
    expect(tally.values.every(Number.isFinite)).toBe(true);
    expect(tallyInWords(tally)).toContain('multiplied');
  });
});
