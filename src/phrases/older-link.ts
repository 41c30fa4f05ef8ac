import { MODEL_NUMBER } from '../model/index.ts';
import type { OpenedLink } from '../comparison/link/codec.ts';
import type { EarlierRatios, Said, StatedRatios } from '../comparison/stated-ratios.ts';
import { headlineOf } from '../scene/headline.ts';
import { sceneOf } from '../scene/scene.ts';
import type { Scene } from '../scene/scene.ts';
import { short, shownRatio } from '../scene/show.ts';
import { headlineInWords } from './headline.ts';
import { modelChanges } from './model-changes.ts';

const earlier = [...new Set(['1', ...modelChanges.map(({ model }) => model)])];

/** What models 1 and 2 said, in words. */
const saidEarlierInWords = ({ careful, quick, rival }: EarlierRatios): string =>
  `${short(careful, 2)} times as long by the careful estimate, ${short(rival, 2)} if the forces add, and ${short(quick, 2)} by the quick sum`;

/** What this model or a later one said, in words. */
const saidInWords = ({ low, middle, high, quick }: StatedRatios): string =>
  `${headlineInWords({ low: shownRatio(low), middle: shownRatio(middle), high: shownRatio(high) })} (the quick sum gives ${short(quick, 2)})`;

/** What the model says of the pair now, in words. */
const nowInWords = (scene: Scene): string =>
  `${headlineInWords(headlineOf(scene))} (the quick sum gives ${short(scene.row.quick.multiplied, 2)})`;

/** What a link or a seal said when it was made; undefined where it does not carry it. */
export const saidThen = ({ said, saidEarlier }: Said): string | undefined =>
  said ? saidInWords(said) : saidEarlier ? saidEarlierInWords(saidEarlier) : undefined;

/**
 * Sentences for the reader of a link that another model made: what the model said then, what it says now, and why.
 *
 * @param link a link as `decodeLink` opened it
 * @returns sentences; empty where this model made the link
 */
export function olderLinkText(link: OpenedLink): string {
  const { modelNumber, sameModel, entry } = link;
  if (sameModel) return '';
  const scene = sceneOf(entry);
  const { subject, baseline } = scene;
  const who = `${subject.name} against ${baseline.name}`;
  const [then, now] = [saidThen(link), nowInWords(scene)];
  const thenAndNow =
    then === undefined
      ? `So old a link doesn’t carry what it said then. Now it says, for ${who}: ${now}.`
      : then === now
        ? `For ${who} it says what it said then: ${now}.`
        : `Then it said, for ${who}: ${then}. Now it says: ${now}.`;

  const at = earlier.indexOf(modelNumber);
  if (at < 0)
    return `This link was made with factor model no. ${modelNumber}. This page has no. ${MODEL_NUMBER} and doesn’t know it. ${thenAndNow} Reload the page for a newer one.`;
  const why = modelChanges
    .filter(({ model }) => earlier.indexOf(model) > at)
    .map(({ model, what }) => `With no. ${model}, ${what}.`);
  return [
    `This link was made with factor model no. ${modelNumber}; this page has no. ${MODEL_NUMBER}.`,
    thenAndNow,
    ...why,
  ].join(' ');
}
