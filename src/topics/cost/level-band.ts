/** How well the angle of drawing level is known, and what offers for the knife behind would cost instead. */

import { memoizeByObject, nominal, whatItTakesBand } from '../../model/index.ts';
import type { AnswerBand, Comparison, Knife } from '../../model/index.ts';
import { costAskedFirst, costsOf } from './values.ts';
import { costVerdict, offerInWords } from './words.ts';
import { drawLevel } from '../../scene/draw-level.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, percent, short } from '../../scene/show.ts';

/** Few, so that a page does not stand still for it: the ends of the band are good to about a tenth of its width. */
const samples = 100;

/** The two are the same knife but for the steel: what is not known of the one's shape is not known of the other's. */
const sameShape = (comparison: Comparison): Comparison => ({
  ...comparison,
  knives: comparison.knives.map((knife): Knife => ({
    ...knife,
    angleDeg: nominal(knife.angleDeg),
    edgeMm: nominal(knife.edgeMm),
    finish: 'um' in knife.finish ? { um: nominal(knife.finish.um) } : knife.finish,
    ...(knife.microbevelAngleDeg === undefined
      ? {}
      : { microbevelAngleDeg: nominal(knife.microbevelAngleDeg) }),
  })),
});

/** The band of the angle at which the baseline draws level with the subject's steel. */
export const levelBand = memoizeByObject((scene: Scene): AnswerBand => {
  const { baseline, subject } = scene.entry;
  const band = whatItTakesBand(
    sameShape(drawLevel(scene).steel.comparison),
    { knife: baseline, against: subject, attribute: 'angleDeg' },
    { samples },
  );
  return band;
});

/** The band in sentences: where the angle lies, and how often there is none, or none that stands. */
export function levelBandWords(scene: Scene): string[] {
  const { low, high, inReach, belowFloor } = levelBand(scene);
  const pair = `${scene.baseline.name} and a knife like it in the steel of ${scene.subject.name}`;
  const tries = [
    `Take ${pair}, and draw everything uncertain about them ${brief(samples)} times.`,
    'That is friction, exponents, both steels, the scatter of the published line, and how the effects combine.',
  ];
  if (low === null || high === null) return [...tries, 'No try has an angle at which the two draw level.'];
  const [from, to] = [short(low, 2), short(high, 2)];
  return [
    ...tries,
    from === to
      ? `The angle of drawing level is ${from}° in nine tries out of ten: nothing uncertain bears on it.`
      : `${inReach < 1 ? 'Where there is an angle of drawing level, it lies' : 'The angle of drawing level lies'} between ${from}° and ${to}° in nine tries out of ten.`,
    inReach < 1 ? `In ${percent(1 - inReach)} of the tries no angle does it.` : '',
    belowFloor > 0 ? `In ${percent(belowFloor)} of the tries it is below the floor.` : '',
  ];
}

/** What the Compare page's first offers would give and cost the baseline. */
export function levelOffersWords(scene: Scene): string[] {
  const asked = costAskedFirst(scene);
  const offered = costsOf(scene, asked);
  return [...offered.map(offerInWords), ...costVerdict(scene, asked, offered)];
}
