/** What it would take, as the reader is told: the sentence above the table and its cells. */

import { angleFloorDeg, nearestGrade, nominal, vickersFromRockwellC } from '../../model/index.ts';
import type { AnswerBand, Knife } from '../../model/index.ts';
import { found } from '../../comparison/found.ts';
import { asLongAs } from '../../phrases/as-long-as.ts';
import { finishText } from '../../phrases/measures.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, plain, ratioInWords, readsAsOne, short, times } from '../../scene/show.ts';
import { asEntered, ratioNow } from './values.ts';
import type { Asked, Take } from './values.ts';
import { attributeNamed, valueSaid } from './attributes.ts';

const knifeOf = ({ comparison }: Pick<Scene, 'comparison'>, id: string): Knife =>
  found(comparison.knives, id, 'knife');

export const knifeName = ({ knives }: Scene, id: string): string => found(knives, id, 'knife').name;

/** Where the knife stands now, and what is asked of it. */
export function askedSaid(scene: Scene, asked: Asked): string {
  const [name, other] = [knifeName(scene, asked.knife), knifeName(scene, asked.against)];
  const now = ratioNow(asEntered(scene), asked);
  const wanted = readsAsOne(asked.target)
    ? `would draw level with ${other}`
    : `would cut ${short(asked.target)} times as long as ${other}`;
  return `At the middle settings, if the factors multiply, ${name} now cuts ${ratioInWords(now)} as ${other}. Each row changes one thing about ${name}, and nothing else, until it ${wanted}.${
    scene.entry.madeEqual.length === 0
      ? ''
      : ' The knives count as you entered them, before anything is made equal.'
  }`;
}

/** What it takes, with what must be said of it. */
function valueCell(scene: Scene, asked: Asked, { attribute, now, answer, nearest, holds }: Take): string {
  const named = attributeNamed(attribute);
  const said = (value: number): string => valueSaid(named, value, scene.entry);
  const { value, note } = answer;
  if (value === null)
    return nearest === null
      ? 'out of reach'
      : `out of reach: ${said(nearest.value)} comes to ${times(nearest.ratio)}${breaks(scene, asked, attribute, nearest.value) ? ', below the floor' : ''}`;
  if (said(value) === said(now)) return `${said(value)}, as it is`;
  const grade = attribute === 'finish' ? gradeSaid(scene, asked, value) : '';
  const noted =
    note === 'below the floor'
      ? ', below the floor: the edge breaks away'
      : note === 'out of the regression'
        ? ', beyond the published line (assumed)'
        : '';
  const refused = holds
    ? ''
    : `: a comparison takes ${said(named.low)} to ${said(named.high)}, so this is out of reach too`;
  return `${said(value)}${grade}${noted}${refused}`;
}

/** Whether an edge of the knife at this angle would break away before it wears. */
function breaks(scene: Scene, { knife }: Asked, attribute: Take['attribute'], value: number): boolean {
  const own = knifeOf(scene, knife);
  if (attribute !== 'angleDeg' || own.microbevelAngleDeg !== undefined) return false;
  return value < angleFloorDeg(vickersFromRockwellC(nominal(own.hrc))).low;
}

/** The grade to buy, on the knife's own scale. */
function gradeSaid(scene: Scene, { knife }: Asked, um: number): string {
  const { finish } = knifeOf(scene, knife);
  const scale = 'um' in finish ? 'FEPA-P' : finish.scale;
  const { name, um: own, beyond } = nearestGrade(um, scale);
  return `, ${beyond ? 'beyond the scale, whose end is' : 'nearest grade'} ${scale} ${name} (${plain(own)} µm)`;
}

/** The band as a cell: where the values lie, and how often there is one. */
export function bandCell(scene: Scene, attribute: Take['attribute'], band: AnswerBand): string {
  const { low, high, inReach, belowFloor } = band;
  if (low === null || high === null) return 'none of the tries';
  const named = attributeNamed(attribute);
  const said = (value: number): string => valueSaid(named, value, scene.entry);
  const outside =
    high < named.low || low > named.high
      ? ['beyond what a comparison takes']
      : low < named.low || high > named.high
        ? ['partly beyond what a comparison takes']
        : [];
  return [
    `${said(low)} to ${said(high)}`,
    ...outside,
    ...(inReach < 1 ? [`only ${percent(inReach)} of the tries`] : []),
    ...(belowFloor > 0 ? [`below the floor in ${percent(belowFloor)}`] : []),
  ].join('; ');
}

export const takesColumns = ['What changes', 'Now', 'What it takes', 'Nine tries in ten'] as const;

/** A row of the table without its band. */
export function takeCells(scene: Scene, asked: Asked, take: Take): [string, string, string] {
  const named = attributeNamed(take.attribute);
  const { finish } = knifeOf(scene, asked.knife);
  const grade = take.attribute === 'finish' && !('um' in finish) ? ` (${finishText(finish)})` : '';
  return [named.name, `${valueSaid(named, take.now, scene.entry)}${grade}`, valueCell(scene, asked, take)];
}

/** Whether the row has a value that can be put into the comparison. */
export const canPut = ({ answer, holds, now }: Take): boolean =>
  answer.value !== null && holds && Math.abs(answer.value / now - 1) > 1e-6;

/** What its button does: `Put 14.2° in`. */
export const putSaid = (scene: Scene, { attribute, answer }: Take): string =>
  `Put ${valueSaid(attributeNamed(attribute), answer.value ?? 0, scene.entry)} in`;

/** What became of it, read from the comparison it was put into. */
export function putDone(scene: Scene, asked: Asked, attribute: Take['attribute']): string {
  const named = attributeNamed(attribute);
  const comparison = asEntered(scene);
  const value = valueSaid(named, named.now(knifeOf({ comparison }, asked.knife)), scene.entry);
  const now = asLongAs(ratioNow(comparison, asked), knifeName(scene, asked.against));
  return `${knifeName(scene, asked.knife)}, ${named.name.toLowerCase()}: ${value} is in the comparison. It now cuts ${now}. Undo takes it back.`;
}
