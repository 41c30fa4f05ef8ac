import { describe, expect, test } from 'vitest';
import {
  addressStep,
  carriesComparison,
  carriesSet,
  refusedSaid,
} from '../../../src/elements/start/address.ts';

test.each([
  ['#with=2.abc', true, false],
  ['#set=abc', false, true],
  ['#do=abc', false, true],
  ['#forms=abc', false, true],
  ['#within', false, false],
  ['#setting=1', false, false],
  ['#a-heading', false, false],
  ['', false, false],
])('“%s” carries a comparison: %s, a set or forms: %s', (hash, comparison, set) => {
  expect([carriesComparison(hash), carriesSet(hash)]).toEqual([comparison, set]);
});

describe('an address', () => {
  const [link, other, anchor] = ['#with=2.abc', '#with=2.xyz', '#a-heading'];
  test.each([
    ['opened with a comparison', link, undefined, 'open', false],
    ['opened without one', '', undefined, 'nothing', false],
    ['that gets a comparison', link, anchor, 'open', true],
    ['that gets another comparison', other, link, 'open', false],
    ['that loses its comparison', '', link, 'go back', false],
    ['whose comparison gives way to a heading', anchor, link, 'go back', false],
    ['that moves from heading to heading', '#another', anchor, 'nothing', true],
  ] as const)('%s', (_what, hash, before, act, leaves) => {
    expect(addressStep(hash, before)).toEqual({ act, leaves });
  });
});

test('a link that cannot be opened is said with its reason and with what stands there instead', () => {
  expect(refusedSaid('It ends before its end.', true)).toMatch(
    /: It ends before its end\. What you see is .*opened before\.$/,
  );
  expect(refusedSaid('It ends before its end.', false)).toMatch(/own example\.$/);
});
