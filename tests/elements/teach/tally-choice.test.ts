import { describe, expect, test } from 'vitest';
import { contextsFor, kinds } from '../../../src/exercises/index.ts';
import { tallyChoice } from '../../../src/elements/teach/tally-choice.ts';

const texts = { kind: 'forward-chain', context: 'tides', level: '2', seed: '' };

describe('the seed', () => {
  test.each([
    ['', null],
    [' 7 ', 7],
    ['0', 0],
    // The largest number of 32 bits.
    ['4294967295', 4294967295],
  ])('“%s” is read as %s', (seed, read) => {
    expect(tallyChoice({ ...texts, seed })).toMatchObject({ choice: { seed: read }, isSeedReadable: true });
  });
  test.each(['4294967296', '-1', '1.5', '1e3', 'seven', '99999999999'])(
    '“%s” is refused, and the worked example stands',
    (seed) => {
      expect(tallyChoice({ ...texts, seed })).toMatchObject({
        choice: { seed: null },
        isSeedReadable: false,
      });
    },
  );
});

test('what was chosen is taken', () => {
  expect(tallyChoice(texts).choice).toMatchObject({ kind: 'forward-chain', context: 'tides', level: 2 });
});

test('what is not among the choices becomes one that is', () => {
  const { choice } = tallyChoice({ kind: 'herring', context: 'herring', level: '9', seed: '' });
  expect(kinds).toContain(choice.kind);
  expect(contextsFor(choice.kind)).toContain(choice.context);
  expect(choice.level).toBe(1);
});

test.each(kinds)('%s is asked in no context it does not have', (kind) => {
  for (const context of ['rigging-loft', 'seed-trays', 'bicycle-gears', 'sourdough', 'tides'])
    expect(contextsFor(kind)).toContain(tallyChoice({ ...texts, kind, context }).choice.context);
});
