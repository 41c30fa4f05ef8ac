import { nominal } from '../../model/index.ts';
import type { Dispute, Ends, Knife } from '../../model/index.ts';
import {
  assumedCv,
  assumedFloorCv,
  assumedForceCv,
  floorSteels,
  positionOf,
  ratioHeld,
  trialsOf,
  swings,
  trialAngles,
} from './numbers.ts';
import type { Settling } from './numbers.ts';
import { floorDeg } from '../../scene/limits.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { capital, list } from '../../phrases/list.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, plain, ratioInWords, readAlike, readsAsOne, short } from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** How a position is named in a sentence. */
export const optionName: Record<Dispute, Record<string, string>> = {
  apex: {
    between: 'the apex lies between the two routes',
    tooth: 'tooth depth counts in full',
    wear: 'steel to wear away counts in full',
  },
  push: {
    spread: 'the material parts at one spread force',
    bed: 'the edge sinks equally deep into an elastic bed',
    buried: 'the bevel is buried to equal thickness',
  },
  structure: {
    multiplied: 'all factors multiply',
    added: 'the forces add',
    toLimit: 'the force has a limit',
  },
  floor: { moving: 'the floor moves with hardness', still: 'the floor is 5° for every steel' },
};

// Unreachable: every position has its name; only the compiler cannot tell.
const nameOf = (dispute: Dispute, value: string): string => optionName[dispute][value] ?? value;

const restAlike = ({ baseline }: Scene): string =>
  `Both have the finish and steel of ${baseline.name}, on one flat grind, and are cut to the same end point.`;

/** The trial that would settle a dispute, in sentences. */
const trial: Record<Dispute, (scene: Scene) => string[]> = {
  apex: (scene) => [
    `The trial: two knives that differ in the angle alone, ${trialAngles.wide}° and ${trialAngles.slim}° per side.`,
    restAlike(scene),
    'What follows holds if all factors multiply.',
  ],
  push: () => [
    `The trial: straight pushes of fresh edges at ${trialAngles.wide}° and ${trialAngles.slim}° per side on a force gauge.`,
  ],
  structure: (scene) => [
    `The trial: two knives that differ in angle and thickness at once, ${trialAngles.wide}° and 0.5 mm against ${trialAngles.slim}° and 0.25 mm.`,
    restAlike(scene),
  ],
  floor: () => [
    `The trial: edges of ${floorSteels[0]} and ${floorSteels[1]} HRC taken lower step by step until the bevel breaks away.`,
  ],
};

const counted: Record<Dispute, string> = {
  apex: 'sharpenings of each knife',
  push: 'pushes of each edge',
  structure: 'sharpenings of each knife',
  floor: 'edges of each hardness',
};

/** What comes out of a trial, with its number. */
const outcome: Record<Dispute, (ratio: string) => string> = {
  apex: (ratio) => `the slim edge cuts ${ratio} times as long`,
  push: (ratio) => `the wide edge needs ${ratio} times the force`,
  structure: (ratio) => `the slim, thin edge cuts ${ratio} times as long`,
  floor: (ratio) => `the floor of the softer edge is at least ${ratio} times as high`,
};

/** Two values in two figures, or in three where two would make them one. */
function shownApart([one, other]: Settling['says']): [string, string] {
  const figures = plain(one, 2) === plain(other, 2) ? 3 : 2;
  return [plain(one, figures), plain(other, figures)];
}

function settling(scene: Scene, dispute: Dispute): string[] {
  const rows = trialsOf(scene).filter((row) => row.dispute === dispute);
  return rows.map(({ between: [a, b], says, runs }) => {
    const [one, other] = shownApart(says);
    const runsText =
      runs === null
        ? 'No number of runs can tell: both say the same.'
        : `About ${short(runs, 2)} ${counted[dispute]} would tell.`;
    return `If ${nameOf(dispute, a)}, ${outcome[dispute](one)}. If ${nameOf(dispute, b)}, ${dispute === 'floor' && readsAsOne(says[1]) ? 'both floors are the same' : `it’s ${other}`}. ${runsText}`;
  });
}

/** What follows from the visitor's position. */
function follows(scene: Scene): string[] {
  const { subject, baseline, row } = scene;
  const position = positionOf(scene);
  const held = ratioHeld(scene);
  const own = row.careful.multiplied;
  const moved = (Object.keys(position) as Dispute[]).filter(
    (dispute) => dispute !== 'floor' && scene.entry.position?.[dispute] !== undefined,
  );
  const cuts = `${subject.name} cuts ${ratioInWords(held)} as ${baseline.name}, at the middle settings`;
  return [
    refusedWork(scene),
    ...(moved.length === 0
      ? [`As the switches stand, with all factors multiplied, ${cuts}.`]
      : [
          `You hold that ${list(moved.map((dispute) => nameOf(dispute, position[dispute])))}.`,
          `Then ${cuts}.`,
          readAlike(held, own)
            ? 'That is the same as with the switches untouched.'
            : `With the switches untouched it is ${ratioInWords(own)}.`,
        ]),
    position.structure === 'toLimit' && position.apex !== 'wear'
      ? 'Where the force has a limit, the apex counts as steel to wear away, whatever you hold.'
      : '',
  ];
}

const about: Record<Dispute, string> = {
  apex: 'the apex',
  push: 'the push',
  structure: 'how the effects combine',
  floor: 'the floor',
};

/** How far each dispute could move the ratio. */
function swung(scene: Scene): string[] {
  const { subject, baseline } = scene;
  const pair = `For ${subject.name} against ${baseline.name}`;
  const spans = swings(scene).map(({ dispute, options }) => {
    const ratios = options.map(({ ratio }) => ratio);
    return { dispute, low: Math.min(...ratios), high: Math.max(...ratios) };
  });
  const size = ({ low, high }: Ends) => Math.log(high / low);
  const largest = spans.reduce((best, span) => (size(span) > size(best) ? span : best));
  if (readAlike(largest.low, largest.high))
    return [`${pair} none of these changes anything: the angles and thicknesses hardly differ.`];
  const said = ({ dispute, low, high }: (typeof spans)[number]): string =>
    readAlike(low, high)
      ? `${capital(about[dispute])} makes no difference.`
      : `${capital(about[dispute])} makes it ${shownApart([low, high]).join(' to ')}.`;
  return [
    `${pair} ${about[largest.dispute]} matters most: ${shownApart([largest.low, largest.high]).join(' to ')} times as long.`,
    ...spans.filter((span) => span !== largest).map(said),
  ];
}

/** The floor by the position held. */
function floors(scene: Scene): string[] {
  const { subjectKnife, baselineKnife, subject, baseline } = scene;
  const still = positionOf(scene).floor === 'still';
  const floor = (knife: Knife): Ends => (still ? { low: 5, high: 5 } : floorDeg(knife));
  const stands = (knife: Knife, name: string): string => {
    const angle = nominal(knife.microbevelAngleDeg ?? knife.angleDeg);
    const { low, high } = floor(knife);
    const place = angle < low ? 'below' : angle <= high ? 'on' : 'above';
    const [least, greatest] = [short(low, 2), short(high, 2)];
    const from = least === greatest ? least : `${least}° to ${greatest}`;
    return `${name} at ${short(angle)}° stands ${place} its floor of ${from}°.`;
  };
  return [
    still ? 'You hold one floor for every steel.' : 'If the floor moves with hardness, it is a range.',
    stands(subjectKnife, subject.name),
    stands(baselineKnife, baseline.name),
  ];
}

export const argueWords: Record<string, WordsOf> = {
  'argue-follows': follows,
  'argue-swings': swung,
  'argue-floor': floors,

  /** The position taken in each dispute, in a few words. */
  ...Object.fromEntries(
    (['apex', 'push', 'structure', 'floor'] as const).map((dispute): [string, WordsOf] => [
      `short-held-${dispute}`,
      (scene) => [nameOf(dispute, positionOf(scene)[dispute])],
    ]),
  ),

  ...Object.fromEntries(
    (['apex', 'push', 'structure', 'floor'] as const).map((dispute): [string, WordsOf] => [
      `argue-settle-${dispute}`,
      (scene) => [...trial[dispute](scene), ...settling(scene, dispute)],
    ]),
  ),

  /** With what scatter and at what power the runs are counted. */
  'argue-scatter': () => [
    'Runs are counted for a power of 80%, two-sided at 5%.',
    `The scatter is ${percent(assumedCv)} from sharpening to sharpening and ${percent(assumedForceCv)} from push to push.`,
    `It is ${percent(assumedFloorCv)} of the angle at which an edge breaks away.`,
    'All three are assumed: put your own in on Test.',
  ],
};
