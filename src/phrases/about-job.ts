import type { Ends } from '../model/index.ts';
import type { Scene } from '../scene/scene.ts';
import { jobOf } from './job.ts';
import { sideLoadInWords, sideOf } from './side-load.ts';

/** What load a knife bears before its edge gives, beside the baseline. */
export function resists(load: Ends, what: 'rolling' | 'chipping', name: string, baseline: string): string {
  if (sideOf(load) === 'same') return `${name} and ${baseline} bear the same load before ${what}`;
  return `${name} bears ${sideLoadInWords(load)} the load of ${baseline} before ${what}`;
}

/** What the work says to the chain: refused, with the reason, where wear does not end the edge. */
export function aboutJob({ entry, row, subject, baseline }: Scene): string[] {
  const job = jobOf(entry);
  if (job.slicingChain)
    return [
      `In ${job.name}, ${job.reason}: the estimate of ${subject.name} against ${baseline.name} holds for this work.`,
    ];
  const { rolling, chipping } = row.careful.sideLoad;
  const whatDecides =
    job.endsBy === 'rolling'
      ? `What counts is resistance to rolling: ${resists(rolling, 'rolling', subject.name, baseline.name)}.`
      : chipping === null
        ? `What counts is resistance to chipping. To compare ${subject.name} with ${baseline.name} in that, the toughness of both is needed.`
        : `What counts is resistance to chipping: ${resists(chipping, 'chipping', subject.name, baseline.name)}.`;
  return [`The slicing estimate is refused for this work (${job.name}): ${job.reason}.`, whatDecides];
}
