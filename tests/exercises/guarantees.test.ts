import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { answerInWords, contextsFor, judge, kinds, levels, makeProblem } from '../../src/exercises/index.ts';
import { gritTable } from '../../src/model/index.ts';
import { recompute } from './recompute.ts';
import { problems } from './seeds.ts';
import { typed } from './typed.ts';

const SEEDS = 10_000;

describe.each(kinds)('%s over ten thousand seeds', { timeout: 60_000 }, (kind) => {
  const all = problems(kind, SEEDS);
  /** Reading what is typed takes far longer than the sums, and depends on the digits alone: a fifth of them. */
  const read = all.slice(0, SEEDS / 5);

  test('the key equals an independent recomputation', () => {
    const worst = all.map((problem) => Math.abs(problem.answer / recompute[kind](problem) - 1));
    expect(worst.filter((off) => !(off < 1e-8))).toEqual([]);
  });

  test('no misstep would be taken for the key or for another misstep', () => {
    let fewest = Infinity;
    let nearest = Infinity;
    for (const { answer, missteps, tolerance } of all) {
      const answers = [answer, ...missteps.map((misstep) => misstep.answer)].sort((a, b) => a - b);
      fewest = Math.min(fewest, missteps.length);
      // Two bands of ± the tolerance stay clear of each other, so that no typed number falls into both.
      answers.slice(1).forEach((larger, index) => {
        const smaller = Number(answers[index]);
        nearest = Math.min(
          nearest,
          (larger * (1 - tolerance.relative)) / (smaller * (1 + tolerance.relative)),
        );
      });
    }
    expect(fewest).toBeGreaterThanOrEqual(3);
    expect(nearest).toBeGreaterThan(1);
  });

  test('the key and every misstep, typed, are known for what they are', () => {
    const unknown = read.flatMap((problem) => {
      const { answer, missteps, unit } = problem;
      if (judge(problem, typed(answer, unit)).verdict !== 'right') return [`${problem.seed}: the key`];
      return missteps.flatMap((misstep) => {
        const judged = judge(problem, typed(misstep.answer, unit));
        // The reader tries again before the key is told. A longer number may end in the key's digits.
        const told = ` ${judged.message}`.includes(` ${answerInWords(problem)}`);
        return judged.misstep === misstep.id && judged.step === misstep.step && !told
          ? []
          : [`${problem.seed}: ${misstep.id} is ${judged.misstep ?? judged.verdict}: ${judged.message}`];
      });
    });
    expect(unknown).toEqual([]);
  });

  test('the key as it is told is read back as right', () => {
    const lost = read.filter((problem) => {
      const told = answerInWords(problem).replace(/^([A-D]): .*/, '$1');
      return judge(problem, told).verdict !== 'right';
    });
    expect(lost.map(answerInWords)).toEqual([]);
  });

  test('numbers are pretty, and the steps end at the key', () => {
    for (const problem of all) {
      for (const { value, unit } of problem.givens) {
        const grain = unit === '%' ? 5 : unit === '°' || unit === 'grit' ? 1 : 0;
        const fits = grain
          ? Math.abs(value / grain - Math.round(value / grain)) < 1e-9
          : Number(value.toPrecision(3)) === value || problem.kind === 'share-of-factor';
        if (!fits) expect.fail(`${value} ${unit} is not pretty`);
      }
      const last = problem.steps.at(-1);
      if (last?.values.at(-1) !== problem.answer)
        expect.fail(`the steps end at ${last?.values}, the key is ${problem.answer}`);
      for (const { id, step } of problem.missteps)
        if (!problem.steps[step]) expect.fail(`${id} points at no step`);
      if (
        new Set(problem.missteps.map(({ id, answer }) => `${id}${problem.options ? answer : ''}`)).size <
        problem.missteps.length
      )
        expect.fail(`two missteps of ${problem.seed} share a name`);
    }
  });

  test('seeds give many different problems', () => {
    for (const level of levels) {
      const questions = Array.from({ length: 100 }, (_, seed) => {
        const { question, options = [] } = makeProblem(kind, seed, { level });
        return [question, ...options].join('\n');
      });
      expect(new Set(questions).size).toBeGreaterThan(40);
    }
  });

  test('every formula can be set, and every sentence is whole', () => {
    for (const { question, steps, missteps } of all.slice(0, 300)) {
      for (const { tex } of steps)
        katex.renderToString(tex, { output: 'mathml', strict: 'error', throwOnError: true });
      for (const text of [question, ...steps.map((step) => step.text), ...missteps.map(({ idea }) => idea)]) {
        expect(text).toMatch(/^[A-ZÀ-Ý"].*[.?]$/);
        expect(text).not.toMatch(/undefined|NaN|\.\.| {2}|\bthe the\b|longer/);
      }
    }
  });
});

// The tables of the four scales, whose sources the model names.
test('grain sizes are those of the grits named', () => {
  const named = /grain, (FEPA P|FEPA F|JIS |CAMI )(\d+)/;
  for (const { givens } of problems('grit-by-scale', 500)) {
    for (const { name, value, unit } of givens) {
      if (unit !== 'µm') continue;
      const [, scale = '', grit] = named.exec(name) ?? [];
      const { rows } = gritTable(scale.trim().replace(' ', '-') as 'JIS');
      expect(rows).toContainEqual([Number(grit), value]);
    }
  }
});

// What a filter in a school looks for.
const blades =
  /knif|knives|blade|edge|steel|bevel|apex|wedge|\bcut|sharp|grind|grit|slic|\bhon(e|ing)\b|carbide|hrc/i;

test.each(kinds)('%s has no word of blades in a context without them', (kind) => {
  for (const context of contextsFor(kind).filter((id) => id !== 'rigging-loft')) {
    for (const level of levels) {
      for (let seed = 0; seed < 50; seed += 1)
        expect(JSON.stringify(makeProblem(kind, seed, { context, level }))).not.toMatch(blades);
    }
  }
});
