import { nominal } from '../../model/index.ts';
import type { Family, Reading } from '../../model/index.ts';
import { drawLevel } from '../../scene/draw-level.ts';
import type { Level } from '../../scene/draw-level.ts';
import { groundRoom, ordinary, roomIn, roomOfFamilies } from '../../scene/ranges.ts';
import type { Scene } from '../../scene/scene.ts';
import {
  brief,
  fixed,
  percent,
  plain,
  ratioInWords,
  readAlike,
  readsAsOne,
  times,
} from '../../scene/show.ts';
import { readingName } from '../../phrases/reading-name.ts';
import { familyName } from '../../phrases/family-names.ts';

/** Where the baseline draws level, in a sentence that never hides that there is no such angle. */
function meeting({ baseline, baselineKnife }: Scene, { now, answer }: Level, against: string): string {
  const present = nominal(baselineKnife.angleDeg);
  const from = `${baseline.name} at ${plain(present)}° per side cuts ${ratioInWords(now)} as ${against} (${times(now)})`;
  if (readsAsOne(now))
    return `${baseline.name} at ${plain(present)}° per side and ${against} are level already.`;
  if (answer.value === null)
    return `${from}, and by the angle alone level is not in reach: no angle from 4° to 45° does it.`;
  const at = `${plain(answer.value)}°`;
  if (answer.note === 'below the floor')
    return `${from}. It would draw level at ${at}, but that is below the floor: such an edge breaks away before it wears.`;
  return answer.value < present
    ? `${from}. It draws level at ${at}${answer.value < 6 ? ', which is at the floor: whether such an edge stands is doubtful' : ''}.`
    : `${from}: it is ahead, and only at ${at} would the lead be gone.`;
}

/** What the meeting costs in steel taken off and in stiffness of the edge. */
function cost({ baseline, baselineKnife }: Scene, level: Level): string {
  const { removedMm2, rolling, answer } = level;
  if (removedMm2 === null || rolling === null || answer.value === null || readsAsOne(level.now))
    return `There is nothing to grind off ${baseline.name} for it.`;
  const edge = plain(nominal(baselineKnife.edgeMm), 2);
  return `At ${edge} mm behind the edge that takes ${plain(removedMm2)} mm² off the section of ${baseline.name}: ${plain(removedMm2 * 100)} mm³ for every 100 mm of edge. The new edge stands ${readAlike(rolling.low, rolling.high) ? percent(rolling.low) : `${fixed(rolling.low * 100, 0)} to ${percent(rolling.high)}`} of the side load before it rolls.`;
}

/** Which family holds most of the pair's difference, and how that compares with the ordinary room of it. */
function holdsMost(scene: Scene, reading: Reading): string {
  const { row, subject, baseline, comparison } = scene;
  const [first] = (Object.entries(row[reading].families) as [Family, number][]).sort(
    (a, b) => Math.abs(Math.log(b[1])) - Math.abs(Math.log(a[1])),
  );
  if (!first || readsAsOne(first[1]))
    return `By the ${readingName[reading]} ${subject.name} and ${baseline.name} do not differ in any family.`;
  const [family, factor] = first;
  const room = roomIn(roomOfFamilies(comparison)[reading], family).factor;
  const used = readsAsOne(room) ? null : Math.abs(Math.log(factor)) / Math.abs(Math.log(room));
  const whom = factor > 1 ? subject.name : baseline.name;
  const how =
    used === null
      ? ''
      : used > 1
        ? `, more than the ordinary room of that family, ${times(room)}`
        : `, ${percent(used)} of the ordinary room of that family on a log axis (${times(room)})`;
  return `By the ${readingName[reading]} most of the difference lies in ${familyName[family].inSentence}, in favour of ${whom}: ${times(factor)} for ${subject.name}${how}.`;
}

/** Where the baseline draws level with the subject's steel, and with the whole of it. */
export function drawLevelWords(scene: Scene): string[] {
  const { whole, steel } = drawLevel(scene);
  const { subject } = scene;
  return [
    meeting(scene, steel, `a knife like itself in the steel of ${subject.name}`),
    meeting(scene, whole, `${subject.name} as it is`),
  ];
}

export const rangeWords: Record<string, (scene: Scene) => string[]> = {
  /** The ordinary ranges themselves, from where they stand. */
  'range-given': () => {
    const { geometry, finish, steel } = ordinary;
    const { worst, best } = geometry;
    return [
      `Geometry: an edge angle from ${brief(worst.angleDeg)}° down to ${brief(best.angleDeg)}° per side, a thickness behind the edge from ${brief(worst.edgeMm)} down to ${brief(best.edgeMm)} mm, and a flat grind from stout (${brief(worst.grind.spineMm)} mm thick over ${brief(worst.grind.heightMm)} mm of height) to slim (${brief(best.grind.spineMm)} mm over ${brief(best.grind.heightMm)} mm).`,
      `Finish: from P${finish.worst.finish.grit} to P${finish.best.finish.grit}, the coarser the longer in a slice.`,
      `Steel: from ${brief(steel.worst.hrc)} HRC without carbide to ${brief(steel.best.hrc)} HRC with ${brief(steel.best.carbideVolPercent.CrC)} volume per cent of chromium carbide.`,
    ];
  },

  /** Who wins, by each reading; no claim that only one of them supports goes without its name. */
  ranges: ({ comparison }) => {
    const rooms = roomOfFamilies(comparison);
    const steel = { quick: roomIn(rooms.quick, 'steel'), careful: roomIn(rooms.careful, 'steel') };
    const finish = { quick: roomIn(rooms.quick, 'finish'), careful: roomIn(rooms.careful, 'finish') };
    const ground = { quick: groundRoom(rooms.quick), careful: groundRoom(rooms.careful) };
    const order = (a: number, b: number) =>
      readAlike(a, b) ? 'as much as' : a > b ? 'more than' : 'less than';
    return [
      `Geometry and finish together: ${times(ground.quick.factor)} by the quick sum, ${times(ground.careful.factor)} by the careful estimate if all multiply.`,
      `Steel: ${times(steel.quick.factor)} by the quick sum, ${times(steel.careful.factor)} by the careful estimate.`,
      `Finish alone has ${order(finish.quick.factor, steel.quick.factor)} steel by the quick sum and ${order(finish.careful.factor, steel.careful.factor)} steel by the careful estimate.`,
    ];
  },

  /** Over the stated ranges and under all three structures: how far the answer holds. */
  'ranges-doubt': ({ comparison }) => {
    const { careful } = roomOfFamilies(comparison);
    const ground = groundRoom(careful);
    const steel = roomIn(careful, 'steel');
    const finish = roomIn(careful, 'finish');
    const geometry = roomIn(careful, 'geometry');
    const holds =
      ground.low > steel.high
        ? 'Even there geometry and finish keep more room than steel has at its most.'
        : 'At those ends steel can have as much room as the other two together: then the race is open.';
    const against = (factor: number): string =>
      readAlike(factor, steel.factor) ? 'as much as' : factor > steel.factor ? 'more than' : 'less than';
    return [
      `Every factor of the careful estimate has a range. With each at its least, geometry and finish together have ${times(ground.low)}; with each at its most, ${times(ground.high)}. Steel has from ${times(steel.low)} to ${times(steel.high)}.`,
      holds,
      `Finish alone has from ${times(finish.low)} to ${times(finish.high)}.`,
      `Geometry alone, against the ${times(steel.factor)} of steel: ${times(geometry.factor)} if the factors multiply, ${against(geometry.factor)} steel.`,
      `If the forces add, geometry has ${times(geometry.added)}, ${against(geometry.added)} steel; if the force has a limit, ${times(geometry.toLimit)}, ${against(geometry.toLimit)} steel.`,
      `Geometry and finish together have ${times(ground.added)} if the forces add, ${against(ground.added)} steel, and ${times(ground.toLimit)} if the force has a limit, ${against(ground.toLimit)} steel.`,
    ];
  },

  'draw-level': drawLevelWords,

  'level-cost': (scene) => [cost(scene, drawLevel(scene).steel)],

  /** With a visitor's own knives. */
  'range-race': (scene) => {
    const { row, subject, baseline } = scene;
    return [
      `At the middle settings, if all factors multiply, ${subject.name} cuts ${ratioInWords(row.careful.multiplied)} as ${baseline.name}.`,
      holdsMost(scene, 'quick'),
      holdsMost(scene, 'careful'),
    ];
  },
};
