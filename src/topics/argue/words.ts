import { nominal } from '../../model/index.ts';
import type { Dispute } from '../../model/index.ts';
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
import { floorDeg } from '../../scene/limits.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { list } from '../../phrases/list.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, plain, ratioInWords, readAlike, short, times } from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** How a position is named in a sentence. */
export const optionName: Record<Dispute, Record<string, string>> = {
  apex: {
    between: 'the apex lies between the two routes, as calibrated',
    tooth: 'tooth depth counts in full',
    wear: 'steel to wear away counts in full',
  },
  push: {
    spread: 'the stock parts at one spread force',
    bed: 'the edge sinks equally deep into an elastic bed',
    buried: 'the bevel is buried to equal thickness',
  },
  forces: { multiply: 'wedge, thickness and grind multiply', add: 'their forces add' },
  floor: { moving: 'the floor moves with hardness', still: 'the floor is 5° for every steel' },
};

// Unreachable: every position has its name; only the compiler cannot tell.
const nameOf = (dispute: Dispute, value: string): string => optionName[dispute][value] ?? value;

/** The trial that would settle a dispute, in a sentence. */
const trial: Record<Dispute, string> = {
  apex: `two knives alike but for the angle, ${trialAngles.wide}° and ${trialAngles.slim}° per side, cut to the same stop`,
  push: `straight pushes of fresh edges at ${trialAngles.wide}° and ${trialAngles.slim}° per side on a force gauge`,
  forces: `two knives that differ in angle and in thickness at once, ${trialAngles.wide}° and 0.5 mm against ${trialAngles.slim}° and 0.25 mm, cut to the same stop`,
  floor: `edges of ${floorSteels[0]} and ${floorSteels[1]} HRC taken lower step by step until the bevel breaks away`,
};

const counted: Record<Dispute, string> = {
  apex: 'sharpenings of each knife',
  push: 'pushes of each edge',
  forces: 'sharpenings of each knife',
  floor: 'edges of each hardness',
};

function settling(scene: Scene, dispute: Dispute): string[] {
  const rows = trialsOf(scene).filter((row) => row.dispute === dispute);
  return rows.map(({ between, says, runs }) => {
    const [a, b] = between;
    const runsText =
      runs === null
        ? 'no number of runs tells, for both say the same'
        : `about ${short(runs, 2)} ${counted[dispute]} tell`;
    return `If ${nameOf(dispute, a)}, it gives ${times(says[0])}; if ${nameOf(dispute, b)}, ${times(says[1])}: ${runsText}.`;
  });
}

export const argueWords: Record<string, WordsOf> = {
  /** What follows from the visitor's position. */
  'argue-follows': (scene) => {
    const { subject, baseline, row } = scene;
    const position = positionOf(scene);
    const held = ratioHeld(scene);
    const own = readAlike(held, row.careful.product);
    const moved = (Object.keys(position) as Dispute[]).filter(
      (dispute) => dispute !== 'floor' && scene.entry.position?.[dispute] !== undefined,
    );
    return [
      refusedWork(scene),
      moved.length === 0
        ? `The close reading’s own forms: ${subject.name} cuts ${ratioInWords(held)} as ${baseline.name}, ${times(held)}.`
        : `You hold that ${list(moved.map((dispute) => nameOf(dispute, position[dispute])))}. Then ${subject.name} cuts ${ratioInWords(held)} as ${baseline.name}: ${times(held)}${own ? ', the same as by the close reading' : `, where the close reading has ${times(row.careful.product)}`}.`,
    ];
  },

  /** How far each dispute could move the ratio. */
  'argue-swings': (scene) => {
    const { subject, baseline } = scene;
    const spans = swings(scene).map(({ dispute, options }) => {
      const ratios = options.map(({ ratio }) => ratio);
      return { dispute, low: Math.min(...ratios), high: Math.max(...ratios) };
    });
    const size = ({ low, high }: { low: number; high: number }) => Math.log(high / low);
    const largest = spans.reduce((best, span) => (size(span) > size(best) ? span : best));
    const about: Record<Dispute, string> = {
      apex: 'the apex',
      push: 'the push',
      forces: 'the forces',
      floor: 'the floor',
    };
    if (readAlike(largest.low, largest.high))
      return [
        `For ${subject.name} against ${baseline.name} nothing hangs on any of these: the angles and thicknesses hardly differ.`,
      ];
    return [
      `For ${subject.name} against ${baseline.name} most hangs on ${about[largest.dispute]}: from ${times(largest.low)} to ${times(largest.high)}.`,
      `The others: ${spans
        .filter((span) => span !== largest)
        .map(
          ({ dispute, low, high }) =>
            `${about[dispute]}, ${readAlike(low, high) ? 'nothing' : `${times(low)} to ${times(high)}`}`,
        )
        .join('; ')}.`,
    ];
  },

  /** The floor by the position held. */
  'argue-floor': (scene) => {
    const { subjectKnife, baselineKnife, subject, baseline } = scene;
    const still = positionOf(scene).floor === 'still';
    const floor = (knife: typeof subjectKnife) => (still ? 5 : floorDeg(knife));
    const lies = (knife: typeof subjectKnife, name: string) => {
      const angle = nominal(knife.microbevelAngleDeg ?? knife.angleDeg);
      return `${name} at ${plain(angle)}° stands ${angle < floor(knife) ? 'below' : 'above'} its floor of ${plain(floor(knife))}°`;
    };
    return [
      `${still ? 'With one floor for every steel' : 'With a floor that moves with hardness'}, ${lies(subjectKnife, subject.name)}, and ${lies(baselineKnife, baseline.name)}.`,
    ];
  },

  ...Object.fromEntries(
    (['apex', 'push', 'forces', 'floor'] as const).map((dispute) => [
      `argue-settle-${dispute}`,
      (scene: Scene) => [
        `The trial: ${trial[dispute]}${dispute === 'apex' || dispute === 'forces' ? `; finish and steel of both like ${scene.baseline.name}’s, on one flat grind` : ''}.`,
        ...settling(scene, dispute),
      ],
    ]),
  ),

  /** With what scatter and at what power the runs are counted. */
  'argue-scatter': () => [
    `Runs are counted for a power of 80 %, two-sided at 5 %, with a scatter of ${percent(assumedCv)} from sharpening to sharpening, ${percent(assumedForceCv)} from push to push and ${percent(assumedFloorCv)} of the angle at which an edge breaks away. All three are assumed: put your own in on the page of runs.`,
  ],
};
