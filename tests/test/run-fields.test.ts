import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planFieldNamed, planFieldNames } from '../../src/test/plan-fields.ts';
import { readRun, runFields, showRun } from '../../src/test/run-fields.ts';
import type { RunTexts } from '../../src/test/run-fields.ts';
import { namedRuns } from '../../src/comparison/knife-names.ts';
import { firstPlan } from '../../src/comparison/first-plan.ts';
import { aRun } from '../runs/runs.ts';
import { anyEntry } from '../comparison/entries.ts';

const texts = (change: Partial<RunTexts> = {}): RunTexts => ({ ...showRun(aRun()), ...change });

describe('a run typed into fields', () => {
  test('comes back equal, whatever it is', () => {
    fc.assert(
      fc.property(anyEntry, ({ runs = [], knives }) => {
        for (const run of namedRuns(knives, runs)) expect(readRun(showRun(run))).toEqual({ ok: true, run });
      }),
      { numRuns: 60 },
    );
  });

  test('empty fields are not recorded', () => {
    const read = readRun(
      texts({ batch: ' ', judge: '', angleDeg: '', startSharpness: '', checkedEvery: '' }),
    );
    expect(read.ok && read.run).toMatchObject({
      batch: 'not recorded',
      judge: 'not recorded',
      angleDeg: 'not recorded',
      startSharpness: 'not recorded',
      checkedEvery: 'not recorded',
    });
  });

  test.each([
    ['reach', '', /How far/],
    ['reach', '0', /not above 0/],
    ['reach', '1O', /letter O/],
    ['reach', 'NaN', /not readable/],
    ['reach', '1e308', /not between|not above/],
    ['angleDeg', '50', /above 45°/],
    ['checkedEvery', '-3', /not between 0 and/],
    ['batch', 'x'.repeat(200), /at most 80/],
    ['endPoint', 'a\u0000b', /cannot be shown/],
    ['knife', '', /Choose the knife/],
  ] as const)('%s “%s” is refused at its field', (field, text, message) => {
    const read = readRun(texts({ [field]: text }));
    expect(read.ok).toBe(false);
    expect(read.ok ? [] : read.problems.map((problem) => problem.field)).toContain(field);
    expect(read.ok ? '' : read.problems.find((problem) => problem.field === field)?.message).toMatch(message);
  });

  test('a comma is a decimal sign', () => {
    const read = readRun(texts({ angleDeg: '14,5' }));
    expect(read.ok && read.run.angleDeg).toBe(14.5);
  });

  test('readings and depths are typed as a file holds them, and say how far a run went', () => {
    const counted = readRun(texts({ reach: '', unit: 'cuts', series: '0@100 50@92,5 120@81' }));
    expect(counted.ok && counted.run).toMatchObject({
      cuts: 120,
      series: [
        { cut: 0, sharpness: 100 },
        { cut: 50, sharpness: 92.5 },
        { cut: 120, sharpness: 81 },
      ],
    });
    const card = readRun(texts({ reach: '', unit: 'mm', cycles: '11.2  10.8 10.1' }));
    expect(card.ok && card.run).toMatchObject({ cycles: [11.2, 10.8, 10.1] });
    expect(card.ok && 'cutMm' in card.run).toBe(false);
    // A stop between two readings is a number of its own.
    const between = readRun(texts({ reach: '100', unit: 'mm', series: '0@100 50@92 120@81' }));
    expect(between.ok && between.run.cutMm).toBe(100);
  });

  test.each([
    ['series', { series: '0@100 50' }, /sharpness/],
    ['series', { series: '50@92 20@95' }, /do not grow/],
    ['series', { series: '0@1OO' }, /sharpness/],
    ['cycles', { reach: '', cycles: '11 -2' }, /below 0/],
    ['cycles', { reach: '', cycles: 'deep' }, /must be a number/],
    ['reach', { reach: '33', cycles: '11.2 10.8' }, /says twice/],
  ] as const)('%s is refused at its field: %o', (field, change, message) => {
    const read = readRun(texts(change));
    expect(read.ok ? [] : read.problems.map((problem) => problem.field)).toEqual([field]);
    expect(read.ok ? '' : read.problems[0]?.message).toMatch(message);
  });
});

describe('the plan’s fields', () => {
  const shown = {
    ...firstPlan,
    cv: 0.2,
    from: 'assumed' as const,
    seen: null,
    usualLife: null,
    total: 0.2,
    looksRefused: null,
    family: 1,
  };

  test.each(planFieldNames.filter((name) => name !== 'cv'))('%s writes what it shows', (name) => {
    const field = planFieldNamed(name);
    expect(field.write(firstPlan, field.show(shown))).toEqual({ ok: true, plan: firstPlan });
  });

  test('the scatter is typed in per cent, and left out again by an empty field', () => {
    const written = planFieldNamed('cv').write(firstPlan, '12,5 %');
    expect(written).toEqual({ ok: true, plan: { ...firstPlan, cv: 0.125 } });
    expect(planFieldNamed('cv').write({ ...firstPlan, cv: 0.125 }, ' ')).toEqual({
      ok: true,
      plan: firstPlan,
    });
  });

  test('the window of the start is typed from where to where, and shown so', () => {
    const field = planFieldNamed('start');
    const written = field.write(firstPlan, '90–110,5');
    expect(written).toEqual({ ok: true, plan: { ...firstPlan, start: { low: 90, high: 110.5 } } });
    expect(field.show({ ...shown, start: { low: 90, high: 110.5 } })).toBe('90–110.5');
    expect(field.write({ ...firstPlan, start: { low: 90, high: 110.5 } }, '')).toEqual({
      ok: true,
      plan: firstPlan,
    });
  });

  test.each([
    ['start', '90', /from where to where/],
    ['start', '110–90', /runs backwards/],
    ['start', '0–90', /not between/],
    ['cv', '0', /not between/],
    ['ratio', '1', /not between/],
    ['runs', '2.5', /not a whole number/],
    ['batches', 'three', /not readable/],
  ])('%s “%s” is refused', (name, text, message) => {
    const written = planFieldNamed(name).write(firstPlan, text);
    expect(written.ok ? '' : written.message).toMatch(message);
  });
});

test('every field has a name of its own', () => {
  const names = runFields.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
});
