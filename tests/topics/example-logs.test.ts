import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { runsOfKnives } from '../../src/comparison/knife-names.ts';
import { firstPlan } from '../../src/comparison/first-plan.ts';
import type { ComparisonEntry, PlanEntry } from '../../src/comparison/entry.ts';
import { validate } from '../../src/comparison/validate.ts';
import { readCsv } from '../../src/runs/csv.ts';
import { runsOf } from '../../src/scene/runs.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { topics } from '../../src/topics/all.ts';
import { alarmsAsked, simulate, simulatedSaid } from '../../src/topics/plan/simulated.ts';
import { loft } from '../comparison/entries.ts';

/** Five invented logs of the loft, as a spreadsheet has them, each with what its page says: read and approved. */
const logs: [name: string, pair: [string, string], plan: Partial<PlanEntry>][] = [
  ['balanced', ['curlew', 'avocet'], { runs: 6 }],
  ['disjoint-batches', ['curlew', 'avocet'], { runs: 3, batches: 2 }],
  ['one-shared-batch', ['curlew', 'avocet'], { runs: 6 }],
  ['topped-up', ['curlew', 'avocet'], { runs: 6, looks: [4] }],
  ['readings-only', ['dunlin', 'plover'], { runs: 4, batches: 2, endPoint: 40 }],
];

/** What the page of runs says of a log, in its order. */
const said = [
  ['runs', 'runs-verdict'],
  ['runs', 'runs-odd'],
  ['runs', 'runs-entered'],
  ['end-points', 'stops-ratio'],
  ['check-prediction', 'runs-square'],
  ['check-prediction', 'runs-combined'],
  ['plan', 'runs-needed'],
] as const;

function entryOf(
  name: string,
  [subject, baseline]: [string, string],
  plan: Partial<PlanEntry>,
): ComparisonEntry {
  const log = readCsv(readFileSync(`tests/topics/logs/${name}.csv`, 'utf8'));
  expect(log.problems).toEqual([]);
  const { knives, ...rest } = loft();
  const two = knives.filter(({ id }) => id === subject || id === baseline);
  const entry = {
    ...rest,
    subject,
    baseline,
    knives: two,
    runs: runsOfKnives(two, log.runs),
    plan: { ...firstPlan, ...plan },
  };
  expect(validate(entry)).toMatchObject({ ok: true });
  return entry;
}

const sentences = (text: string): string[] => text.split(/(?<=[.?!])\s+(?=[A-Z“])/);

describe.each(logs)('%s', (name, pair, plan) => {
  const scene = sceneOf(entryOf(name, pair, plan));
  const alarms = alarmsAsked(scene);
  const texts = said
    .filter(([topic]) => topic !== 'end-points' || name === 'readings-only')
    .map(
      ([topic, of]) =>
        [of, (topics[topic]?.words?.[of]?.(scene) ?? []).filter(Boolean)] as [string, string[]],
    );
  if (alarms) texts.splice(1, 0, ['simulated', [simulatedSaid(alarms, simulate(alarms))]]);

  test('says what was read and approved', async () => {
    const text = texts.map(([of, all]) => `## ${of}\n\n${all.join('\n')}\n`).join('\n');
    await expect(`# ${name}\n\n${text}`).toMatchFileSnapshot(`logs/${name}.md`);
  });

  test('says it in short sentences, in the words of the page', () => {
    for (const [of, all] of texts)
      for (const sentence of all.flatMap(sentences)) {
        expect(sentence, of).not.toMatch(/NaN|undefined|Infinity|null|told apart(?! by these)|×/);
        // The name of a method is a name, and a list of runs a list.
        if (!/^(Method|Not in the ratio):/.test(sentence))
          expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(25);
      }
  });
});

test('each log comes to what it was made for', () => {
  const verdicts = logs.map(([name, pair, plan]) => {
    const { log, promised } = runsOf(sceneOf(entryOf(name, pair, plan)));
    return [name, log.verdict, log.batches.length, log.by, promised.looks.length];
  });
  expect(verdicts).toEqual([
    // The truths are 176 and 170 cuts.
    ['balanced', expect.stringMatching(/as good as equal|not distinguished/), 3, 'counts', 0],
    ['disjoint-batches', 'cannot be separated', 0, 'counts', 0],
    ['one-shared-batch', expect.stringMatching(/not distinguished|as good as equal/), 1, 'counts', 0],
    ['topped-up', expect.any(String), 3, 'counts', 2],
    ['readings-only', 'longer', 2, 'readings', 0],
  ]);
});
