import type { Ends } from '../model/index.ts';
import type { Scene } from '../scene/scene.ts';
import { jobDone, jobOf } from './job.ts';
import { capital } from './list.ts';
import { sideLoadInWords, sideOf } from './side-load.ts';

const before = { rolling: ['rolls', 'roll'], chipping: ['chips', 'chip'] } as const;

/** Which of two knives bears more side load before its edge gives, and how many times as much. */
export function resists(load: Ends, what: 'rolling' | 'chipping', name: string, other: string): string {
  const [one, both] = before[what];
  if (sideOf(load) === 'same') return `${name} and ${other} bear the same side load before they ${both}`;
  // The one that bears more is named first, so that nobody has to turn a fraction over.
  return sideOf(load) === 'less'
    ? `${other} bears ${sideLoadInWords({ low: 1 / load.high, high: 1 / load.low })} the side load of ${name} before it ${one}`
    : `${name} bears ${sideLoadInWords(load)} the side load of ${other} before it ${one}`;
}

/** Whether the work has a slicing estimate; where it has none, why not, and what counts there. */
export function aboutJob({ entry, row, subject, baseline }: Scene): string[] {
  const job = jobOf(entry);
  if (job.slicingChain)
    return [
      `In ${job.name}, ${job.reason}.`,
      `So the estimate of ${subject.name} against ${baseline.name} fits this work.`,
    ];
  const { rolling, chipping } = row.careful.sideLoad;
  const whatDecides =
    job.endsBy === 'rolling'
      ? [
          'What counts is how much side load an edge bears before it rolls over.',
          `${resists(rolling, 'rolling', subject.name, baseline.name)}.`,
        ]
      : [
          'What counts is how much side load an edge bears before it chips.',
          chipping === null
            ? `To compare ${subject.name} with ${baseline.name} in that, the toughness of both is needed.`
            : `${resists(chipping, 'chipping', subject.name, baseline.name)}.`,
        ];
  return [
    `There’s no slicing estimate of ${subject.name} against ${baseline.name} for ${jobDone(entry)}.`,
    `${capital(job.reason)}.`,
    ...whatDecides,
  ];
}
