import {
  carbideFromComposition,
  cardCutMm,
  cardForChainMm,
  compositionsByDesignation,
  lifeRatioFromCardMm,
  nominal,
  parameters,
  regression,
  tensileStrengthMpa,
  usualHardening,
  vickersFromRockwellC,
} from '../model/index.ts';
import type { CarbideEstimate, CarbideKind, Contents, Knife } from '../model/index.ts';
import type { Role } from '../comparison/role.ts';
import type { Scene } from './scene.ts';
import type { KnifeEntry } from '../comparison/entry.ts';
import { unlessRefused } from '../comparison/unless-refused.ts';

/** The steel of one knife, every quantity at its middle. */
export interface Steel {
  name: string;
  hrc: number;
  vickers: number;
  /** Tensile strength, MPa; null beyond the table of the standard. */
  mpa: number | null;
  carbides: Partial<Record<CarbideKind, number>>;
  /** All kinds together, volume %. */
  carbidePercent: number;
  /** Null where the carbide was entered by volume. */
  designation: string | null;
}

const designationOf = ({ carbide }: KnifeEntry): string | null =>
  'designation' in carbide ? carbide.designation : null;

function steelOf(name: string, { hrc, carbideVolPercent }: Knife, entry: KnifeEntry): Steel {
  const vickers = vickersFromRockwellC(nominal(hrc));
  const carbides = Object.fromEntries(
    Object.entries(carbideVolPercent).map(([kind, volume]) => [kind, nominal(volume)]),
  ) as Partial<Record<CarbideKind, number>>;
  return {
    name,
    hrc: nominal(hrc),
    vickers,
    mpa: unlessRefused(() => tensileStrengthMpa(vickers)),
    carbides,
    carbidePercent: Object.values(carbides).reduce((sum, volume) => sum + volume, 0),
    designation: designationOf(entry),
  };
}

/** The steels of subject and baseline. A subject whose carbide is made equal has the baseline's steel. */
export function steelsOf(scene: Scene): Record<Role, Steel> {
  const { subject, baseline, subjectKnife, baselineKnife, entry } = scene;
  const equalised = entry.madeEqual.includes('carbideVolPercent');
  return {
    subject: steelOf(subject.name, subjectKnife, equalised ? baseline : subject),
    baseline: steelOf(baseline.name, baselineKnife, baseline),
  };
}

/** The included angle the careful estimate takes the card at, degrees. */
export const takenAtDeg = 30;

/** Card cut by one hardness with one carbide by the bare published line, mm; null where that is not used. */
export const cardOf = (hardness: Steel, carbide: Steel, includedAngleDeg = takenAtDeg): number | null =>
  unlessRefused(() =>
    cardCutMm({ hrc: hardness.hrc, includedAngleDeg, carbideVolPercent: carbide.carbides }),
  );

/** The hardness exponent of the comparison, at its middle: used beyond the hardness of the published line. */
export const hardnessExponentOf = ({ comparison }: Scene): number =>
  nominal(comparison.assumptions?.hardnessExponent ?? parameters.hardnessExponent.default);

/** The power that turns card into life, at its middle: 1 where the comparison counts card in fixed strokes. */
export const lifeExponentOf = ({ comparison }: Scene): number =>
  comparison.outcome === 'fixed-strokes'
    ? 1
    : nominal(comparison.assumptions?.lifeExponent ?? parameters.lifeExponent.default);

/** Card of one hardness with one carbide as the careful estimate takes it, mm: bent and continued, never refused. */
export const chainCardOf = (scene: Scene, hrc: number, carbide: Steel): number =>
  cardForChainMm({
    hrc,
    carbideVolPercent: carbide.carbides,
    hardnessExponent: hardnessExponentOf(scene),
  });

/** Card below which the careful estimate bends the published line, mm. */
export const bendMm = 200;

/** Where the careful estimate takes the card of a steel from. */
export interface LinePlace {
  /** The hardness the line is read at, HRC: that of the steel, or the nearer end of the line. */
  readAt: number;
  /** The bare line there, mm; it may be below 0. */
  lineMm: number;
  bent: boolean;
  /** Beyond the hardness of the line. */
  beyond: boolean;
}

/** What the carbide of a steel adds on the published line, mm of card. */
export const carbideAddsMm = ({ carbides }: Steel): number =>
  (Object.entries(carbides) as [CarbideKind, number][]).reduce(
    (sum, [kind, volume]) => sum + regression.perVolPercent[kind] * volume,
    0,
  );

/** How the careful estimate comes to the card of a steel. */
export function placeOf(steel: Steel): LinePlace {
  const { low, high } = regression.hrc;
  const { hrc } = steel;
  const readAt = Math.min(high, Math.max(low, hrc));
  const { constant, perHrc, perIncludedDegree } = regression;
  const lineMm = constant + perHrc * readAt + perIncludedDegree * takenAtDeg + carbideAddsMm(steel);
  return { readAt, lineMm, bent: lineMm < bendMm, beyond: readAt !== hrc };
}

/** What one steel is worth against another on two edges of one angle. */
export interface Worth {
  includedAngleDeg: number;
  /** Card over card, in a fixed number of strokes. */
  card: number;
  /** Life over life to one end point, by a law of even blunting: an upper view. */
  life: number;
  /** Life over life as the careful estimate takes it: the card ratio to a power. */
  taken: number;
}

/** The subject's steel against the baseline's at one included angle; null where the published line is not used. */
export function worthAt(scene: Scene, includedAngleDeg: number): Worth | null {
  const { subject, baseline } = steelsOf(scene);
  const [mm, baselineMm] = [
    cardOf(subject, subject, includedAngleDeg),
    cardOf(baseline, baseline, includedAngleDeg),
  ];
  if (mm === null || baselineMm === null) return null;
  const card = mm / baselineMm;
  const life = lifeRatioFromCardMm({ mm, baselineMm });
  return { includedAngleDeg, card, life, taken: card ** lifeExponentOf(scene) };
}

/** The included angles the published line is used for, degree by degree. */
export const usedAnglesDeg: readonly number[] = Array.from(
  { length: regression.includedAngleDeg.high - regression.includedAngleDeg.low + 1 },
  (_, step) => regression.includedAngleDeg.low + step,
);

/** The worth at each of these angles that the published line is used for. */
export const worthsOf = (scene: Scene, angles: readonly number[] = usedAnglesDeg): Worth[] =>
  angles.flatMap((angle) => worthAt(scene, angle) ?? []);

/** The steel a tie line is drawn of: the subject's where it has a designation, else the baseline's, else an example. */
export interface TieSteel {
  designation: string;
  composition: Contents;
  /** Whose steel it is; null for an example that is neither's. */
  of: Role | null;
}

/** The steel of the published calculation is of this kind. */
const example = 'AISI 440C';

export function tieSteelOf(scene: Scene): TieSteel {
  const steels = steelsOf(scene);
  for (const role of ['subject', 'baseline'] as const) {
    const { designation } = steels[role];
    const composition = designation === null ? undefined : compositionsByDesignation[designation];
    if (designation !== null && composition) return { designation, composition, of: role };
  }
  const composition = compositionsByDesignation[example];
  // Unreachable: the example is one of the table.
  if (!composition) throw new RangeError(`the model has no composition of ${example}`);
  return { designation: example, composition, of: null };
}

/** The carbide of a steel hardened from one temperature, or from one that is not known. */
export interface Hardened {
  /** °C; null where it is not known. */
  celsius: number | null;
  estimate: CarbideEstimate;
  /** All kinds together, volume %. */
  percent: number;
}

/** That steel hardened from the lowest, a middle and the highest usual temperature, and from one not known. */
export function hardenedOf({ composition }: TieSteel): Hardened[] {
  const { low, high } = usualHardening(composition.chromium ?? 0);
  return [low, (low + high) / 2, high, null].map((exact) => {
    const celsius = exact === null ? null : Math.round(exact / 5) * 5;
    const estimate = carbideFromComposition(
      celsius === null ? composition : { ...composition, austenitizingC: celsius },
    );
    const percent = Object.values(estimate.volPercent).reduce((sum, volume) => sum + volume, 0);
    return { celsius, estimate, percent };
  });
}

/** The same at the middle temperature: the one a worked example follows. */
export function middleOf(steel: TieSteel): Hardened & { celsius: number } {
  const middle = hardenedOf(steel)[1];
  // Unreachable: the second of four has its temperature.
  if (middle?.celsius == null) throw new RangeError('there is no middle temperature');
  return { ...middle, celsius: middle.celsius };
}
