import { MODEL_NUMBER } from '../model/index.ts';
import type { OpenedLink } from '../comparison/link/codec.ts';
import type { StatedRatios } from '../comparison/stated-ratios.ts';
import { modelChanges } from './model-changes.ts';
import { sceneOf } from '../scene/scene.ts';
import { times } from '../scene/show.ts';

const waysOfReading: Readonly<Record<keyof StatedRatios, string>> = {
  careful: 'by the close reading',
  quick: 'by the pocket reading',
  rival: 'by the close reading with the forces added',
};
const ways = Object.keys(waysOfReading) as (keyof StatedRatios)[];

const earlier = [...new Set(['1', ...modelChanges.map(({ model }) => model)])];

/**
 * Sentences for the reader of a link that another model made: what the model said then, what it says now, and why.
 *
 * @param link a link as `decodeLink` opened it
 * @returns sentences; empty where this model made the link
 */
export function olderLinkText(link: OpenedLink): string {
  const { modelNumber, sameModel, said, entry } = link;
  if (sameModel) return '';
  const { row, subject, baseline } = sceneOf(entry);
  const now: StatedRatios = {
    careful: row.careful.product,
    quick: row.quick.product,
    rival: row.careful.rival,
  };
  const who = `${subject.name} against ${baseline.name}`;
  const list = (values: StatedRatios, which: readonly (keyof StatedRatios)[]) =>
    which.map((way) => `${times(values[way])} ${waysOfReading[way]}`).join(', ');
  const moved = said ? ways.filter((way) => times(said[way]) !== times(now[way])) : [];

  const thenAndNow =
    said === undefined
      ? `A link of that age does not carry what was said then. Now, for ${who}, it is ${list(now, [entry.reading])}.`
      : moved.length === 0
        ? `For ${who} it says what it said then: ${list(now, [entry.reading])}.`
        : `Then it said, for ${who}: ${list(said, moved)}. Now it says: ${list(now, moved)}.`;

  const at = earlier.indexOf(modelNumber);
  if (at < 0)
    return `This link was made with factor model no. ${modelNumber}, which this page, with no. ${MODEL_NUMBER}, does not know. ${thenAndNow} Reload the page for a newer one.`;
  const why = modelChanges
    .filter(({ model }) => earlier.indexOf(model) > at)
    .map(({ model, what }) => `With no. ${model}, ${what}.`);
  return [
    `This link was made with factor model no. ${modelNumber}; this page has no. ${MODEL_NUMBER}.`,
    thenAndNow,
    ...why,
  ].join(' ');
}
