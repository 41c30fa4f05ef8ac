import { describe, expect, test } from 'vitest';
import { validateRun } from '../../src/runs/log.ts';
import { aRun } from './runs.ts';

const messages = (input: unknown): string[] => {
  const checked = validateRun(input);
  return checked.ok ? [] : checked.problems.map(({ path, message }) => `${path}: ${message}`);
};
const { cuts: _cuts, ...noLife } = aRun();

describe('a run', () => {
  test('is taken as it stands', () => {
    const card = { ...noLife, cycles: [12, 10.5, 9] };
    const series = { ...noLife, series: [{ cut: 0, sharpness: 100 }], censored: true as const };
    for (const run of [aRun(), card, series]) expect(validateRun(run)).toEqual({ ok: true, run });
  });

  test('may leave unrecorded what was not recorded, but not the knife or how far it went', () => {
    const unrecorded = 'not recorded' as const;
    const bare = aRun({
      batch: unrecorded,
      sharpening: unrecorded,
      endPoint: unrecorded,
      angleDeg: unrecorded,
      burrChecked: unrecorded,
    });
    expect(messages(bare)).toEqual([]);
    expect(messages(noLife)).toEqual([
      ': the run says nowhere how far it went: give the cut in mm, the number of cuts, the cycles or a series',
    ]);
    expect(messages({ ...aRun(), knife: undefined })).toEqual(['knife: the knife must be text']);
  });

  test.each([
    [{ cuts: 0 }, 'cuts: the number of cuts 0 is not above 0 and up to 1000000000'],
    [{ cuts: -3 }, 'cuts: the number of cuts -3 is not above 0 and up to 1000000000'],
    [{ cuts: NaN }, 'cuts: the number of cuts (no value) is not a number'],
    [{ cuts: 1e308 }, 'cuts: the number of cuts 1e+308 is not above 0 and up to 1000000000'],
    [
      { cutMm: 3 },
      ': the run says twice how far it went: give the cut in mm, or the number of cuts, or the cycles',
    ],
    [{ angleDeg: 60 }, 'angleDeg: the edge angle 60° is above 45° per side'],
    [{ checkedEvery: 0 }, 'checkedEvery: checked every 0 is not above 0 and up to 1000000000'],
    [{ burrChecked: 'perhaps' }, 'burrChecked: burr checked must be yes or no'],
    [{ batch: ' ' }, 'batch: the lot is empty; write “not recorded” if it is not known'],
    [{ knife: 'a\u0000b' }, 'knife: the knife holds a character that cannot be shown'],
    [{ knife: 'x'.repeat(81) }, 'knife: the knife has 81 characters; at most 80 fit'],
    [
      {
        series: [
          { cut: 5, sharpness: 1 },
          { cut: 5, sharpness: 1 },
        ],
      },
      'series: the cuts of the series do not grow from reading to reading',
    ],
    [{ colour: 'red' }, 'colour: colour is not a column of a log'],
  ])('with %o is refused in words', (change, message) => {
    expect(messages({ ...aRun(), ...change })).toEqual([message]);
  });

  test.each([[null], [[]], ['run'], [undefined], [3]])('is not %o', (input) => {
    expect(messages(input)).toEqual([': this is not a run']);
  });

  test('without its columns is told which are missing', () => {
    const { batch: _lot, judge: _judge, ...run } = aRun();
    expect(messages(run)).toEqual(['batch: batch is missing', 'judge: judge is missing']);
  });
});
