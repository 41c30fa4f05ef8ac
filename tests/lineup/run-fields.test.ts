import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planFieldNamed, planFieldNames } from '../../src/bench/plan-fields.ts';
import { readRun, runFields, showRun } from '../../src/bench/run-fields.ts';
import type { RunTexts } from '../../src/bench/run-fields.ts';
import { firstPlan } from '../../src/lineup/first-plan.ts';
import { aRun } from '../runs/runs.ts';
import { anyEntry } from './entries.ts';

const texts = (change: Partial<RunTexts> = {}): RunTexts => ({ ...showRun(aRun()), ...change });

describe('a run typed into fields', () => {
  test('comes back equal, whatever it is', () => {
    fc.assert(
      fc.property(anyEntry, ({ runs = [] }) => {
        for (const run of runs) expect(readRun(showRun(run), run)).toEqual({ ok: true, run });
      }),
      { numRuns: 60 },
    );
  });

  test('empty fields are not recorded', () => {
    const read = readRun(texts({ lot: ' ', judge: '', angleDeg: '', startSharpness: '', checkedEvery: '' }));
    expect(read.ok && read.run).toMatchObject({
      lot: 'not recorded',
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
    ['lot', 'x'.repeat(200), /at most 80/],
    ['stop', 'a\u0000b', /cannot be shown/],
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

  test('a series is kept where how far it went is left as it was', () => {
    const series = [{ cut: 10, sharpness: 3 }];
    const { cuts: _cuts, ...run } = aRun();
    const before = { ...run, cutMm: 10, series };
    const same = readRun({ ...showRun(before), judge: 'B.' }, before);
    expect(same.ok && same.run).toEqual({ ...before, judge: 'B.' });
    const other = readRun({ ...showRun(before), reach: '20' }, before);
    expect(other.ok && other.run.series).toBeUndefined();
  });
});

describe('the plan’s fields', () => {
  const shown = { ...firstPlan, cv: 0.2, from: 'assumed' as const };

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

  test.each([
    ['cv', '0', /not between/],
    ['ratio', '1', /not between/],
    ['runs', '2.5', /not a whole number/],
    ['lots', 'three', /not readable/],
  ])('%s “%s” is refused', (name, text, message) => {
    const written = planFieldNamed(name).write(firstPlan, text);
    expect(written.ok ? '' : written.message).toMatch(message);
  });
});

test('every field has a name of its own', () => {
  const names = runFields.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
});
