import {
  angleFloorDeg,
  disputes,
  nominal,
  ratioUnder,
  runsNeeded,
  vickersFromRockwellC,
  wedgeFactor,
} from '../../model/index.ts';
import type { Dispute, Knife, Comparison, Position, Structure } from '../../model/index.ts';
import { pairOf } from '../../scene/pair.ts';
import type { Scene } from '../../scene/scene.ts';
import { readAlike } from '../../scene/show.ts';

/** What the subject's ratio to the baseline is under each option of a dispute, the rest of the position held. */
export interface Swing {
  dispute: Dispute;
  held: string;
  options: { value: string; ratio: number }[];
}

const own = (dispute: Dispute): string => disputes[dispute][0];

/** Where the visitor stands, every dispute named. */
export function positionOf({ entry }: Scene): Required<Position> {
  return Object.fromEntries(
    (Object.keys(disputes) as Dispute[]).map((dispute) => [
      dispute,
      entry.position?.[dispute] ?? own(dispute),
    ]),
  ) as Required<Position>;
}

/** The ratio as somebody of the visitor's position has it. */
export const ratioHeld = (scene: Scene): number =>
  ratioUnder(pairOf(scene), scene.entry.subject, positionOf(scene));

/** How far each disputed form moves the ratio at the middle settings. The floor moves no ratio. */
export function swings(scene: Scene): Swing[] {
  const position = positionOf(scene);
  const pair = pairOf(scene);
  return (['apex', 'push', 'structure'] as const).map((dispute) => ({
    dispute,
    held: position[dispute],
    options: disputes[dispute].map((value) => ({
      value,
      ratio: ratioUnder(pair, scene.entry.subject, { ...position, [dispute]: value }),
    })),
  }));
}

/** Scatter from one sharpening to the next that the numbers of runs compute with, as a coefficient of variation. */
export const assumedCv = 0.2;
/** The same of single cuts with a force gauge. */
export const assumedForceCv = 0.1;
/** The same of the angle at which a bevel breaks away. */
export const assumedFloorCv = 0.08;

/** A measurement that would settle a dispute: two forms, what each says would come out, and the runs that tell. */
export interface Settling {
  dispute: Dispute;
  between: readonly [string, string];
  says: readonly [number, number];
  cv: number;
  /** Sharpenings, cuts or edges of each kind; null where the two say the same. */
  runs: number | null;
}

/** A knife in the baseline's steel and finish on a plain flat grind, and another that differs only in what is asked. */
function alike(scene: Scene, change: Partial<Knife>, base: Partial<Knife> = {}): Comparison {
  const { microbevelAngleDeg: _micro, ...plain } = scene.baselineKnife;
  const grind = { form: 'flat', spineMm: 3, heightMm: 20 } as const;
  const first: Knife = { ...plain, grind, edgeMm: 0.4, ...base, id: 'first' };
  return { ...scene.comparison, baseline: 'first', knives: [first, { ...first, ...change, id: 'second' }] };
}

const needed = (a: number, b: number, cv: number): number | null =>
  readAlike(a, b) ? null : runsNeeded({ cv, ratio: a / b, power: 0.8 });

/** The two angles of the trials, per side: far apart, and both such as people have. */
export const trialAngles = { wide: 24, slim: 12 } as const;

/** The cheapest trial that would settle each dispute, with the runs it takes at a power of 0.8, two-sided 5%. */
export function trialsOf(scene: Scene): Settling[] {
  const { wide, slim } = trialAngles;
  const angles = alike(scene, { angleDeg: slim }, { angleDeg: wide });
  const under = (comparison: Comparison, position: Position) => ratioUnder(comparison, 'second', position);
  const apex = (value: 'between' | 'tooth' | 'wear') => under(angles, { apex: value });
  // Straight pushes on fresh edges, with a force gauge: no slice, no wear, the wedge alone.
  const friction = nominal(scene.entry.friction);
  const spread = wedgeFactor({ angleDeg: slim, baselineAngleDeg: wide, friction });
  const flare = Math.tan(radians(wide)) / Math.tan(radians(slim));

  const both = alike(scene, { angleDeg: slim, edgeMm: 0.25 }, { angleDeg: wide, edgeMm: 0.5 });

  const [soft, hard] = floorSteels;
  const floor = (hrc: number) => angleFloorDeg(vickersFromRockwellC(hrc));
  // The least the moving floor says: the softer edge's low end over the harder one's high end.
  const moving = floor(soft).low / floor(hard).high;
  const row = (
    dispute: Dispute,
    between: readonly [string, string],
    says: readonly [number, number],
    cv: number,
  ): Settling => ({ dispute, between, says, cv, runs: needed(...says, cv) });
  const structures = (one: Structure, other: Structure): Settling =>
    row(
      'structure',
      [one, other],
      [under(both, { structure: one }), under(both, { structure: other })],
      assumedCv,
    );
  return [
    row('apex', ['between', 'tooth'], [apex('between'), apex('tooth')], assumedCv),
    row('apex', ['tooth', 'wear'], [apex('tooth'), apex('wear')], assumedCv),
    row('push', ['spread', 'bed'], [spread, spread * flare], assumedForceCv),
    row('push', ['spread', 'buried'], [spread, spread / flare], assumedForceCv),
    structures('multiplied', 'added'),
    structures('multiplied', 'toLimit'),
    structures('added', 'toLimit'),
    row('floor', ['moving', 'still'], [moving, 1], assumedFloorCv),
  ];
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** The hardnesses, HRC, of the two edges that would settle whether the floor moves. */
export const floorSteels = [57, 63] as const;
