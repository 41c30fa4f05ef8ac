import { densities, parameters, nominal, regression } from '../../model/index.ts';
import type { CarbideKind } from '../../model/index.ts';
import { factorOf } from '../../comparison/found.ts';
import { list } from '../../phrases/list.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain } from '../../scene/show.ts';
import { cardOf, lineSpeaks, middleOf, steelsOf, takenAtDeg, tieSteelOf } from '../../scene/steel.ts';
import type { Steel } from '../../scene/steel.ts';
import type { Worked, WorkedStep } from '../worked.ts';

/** Four digits where a value goes on into the next step. */
const on = (value: number): string => plain(value, 4);

const addedMm = ({ carbides }: Steel): number =>
  (Object.entries(carbides) as [CarbideKind, number][]).reduce(
    (sum, [kind, volume]) => sum + regression.perVolPercent[kind] * volume,
    0,
  );

const addedSaid = ({ carbides }: Steel): string => {
  const parts = (Object.entries(carbides) as [CarbideKind, number][])
    .filter(([, volume]) => volume > 0)
    .map(
      ([kind, volume]) => `${brief(volume)} % ${kind} at ${brief(regression.perVolPercent[kind])} mm each`,
    );
  return parts.length === 0 ? 'no carbide' : list(parts);
};

/** The card of a steel with the hardness of one and the carbide of another. */
const card = (hardness: Steel, carbide: Steel, speaks: boolean): string => {
  const mm = speaks ? cardOf(hardness, carbide) : null;
  return mm === null ? 'refused' : on(mm);
};

const factor = ({ row }: Scene, id: 'hardness' | 'carbide'): string => {
  const value = factorOf(row.careful, id);
  return value === null ? 'left out' : on(value);
};

const vickersStep = (of: Steel): WorkedStep => ({
  say: `Hardness of ${of.name} in Vickers, by a closed form through the standard’s table.`,
  tex: '\\frac{223 \\times {{h}} + 14500}{100 - {{h}}} \\approx {{v}}',
  values: { h: brief(of.hrc), v: on(of.vickers) },
  unit: 'HV',
});

const cardStep = (of: Steel, speaks: boolean): WorkedStep => ({
  say: `Card of ${of.name}, in mm. Its carbide adds what it adds: ${addedSaid(of)}.`,
  tex: '{{k}} \\times {{h}} - {{perDegree}} \\times {{angle}} + {{carbide}} - {{constant}} \\approx {{mm}}',
  values: {
    k: brief(regression.perHrc),
    h: brief(of.hrc),
    perDegree: brief(-regression.perIncludedDegree),
    angle: brief(takenAtDeg),
    carbide: on(addedMm(of)),
    constant: brief(-regression.constant),
    mm: card(of, of, speaks),
  },
  unit: 'mm',
});

/** Hardness alone and carbide alone: each exchanged once with either of the other, and the geometric mean taken. */
function exchangeSteps(scene: Scene, speaks: boolean): WorkedStep[] {
  const { subject: a, baseline: b } = steelsOf(scene);
  const exponent = brief(
    nominal(scene.comparison.assumptions?.hardnessExponent ?? parameters.hardnessExponent.default),
  );
  const cards = {
    aa: card(a, a, speaks),
    ba: card(b, a, speaks),
    ab: card(a, b, speaks),
    bb: card(b, b, speaks),
  };
  return [
    {
      say: speaks
        ? `Hardness alone: exchange it once with the carbide of ${a.name} and once with that of ${b.name}, and take the geometric mean, so that neither order is preferred.`
        : `The line is not used for this line-up, so hardness goes by Vickers over Vickers to the assumed power ${exponent}.`,
      tex: '\\sqrt{\\frac{{{aa}}}{{{ba}}} \\times \\frac{{{ab}}}{{{bb}}}} \\approx {{hardness}}',
      values: { ...cards, hardness: factor(scene, 'hardness') },
    },
    {
      say: speaks ? 'Carbide alone, the same way.' : 'Carbide has no other rule to go by.',
      tex: '\\sqrt{\\frac{{{aa}}}{{{ab}}} \\times \\frac{{{ba}}}{{{bb}}}} \\approx {{carbide}}',
      values: { ...cards, carbide: factor(scene, 'carbide') },
    },
  ];
}

/** Hardness, then card by the published line, then the two factors. */
function steel(scene: Scene): Worked {
  const { subject: a, baseline: b } = steelsOf(scene);
  const speaks = lineSpeaks(scene);
  return {
    givens: `${a.name}, ${brief(a.hrc)} HRC, ${addedSaid(a)}; ${b.name}, ${brief(b.hrc)} HRC, ${addedSaid(b)}; included angle ${takenAtDeg}°.`,
    steps: [
      vickersStep(a),
      vickersStep(b),
      cardStep(a, speaks),
      cardStep(b, speaks),
      ...exchangeSteps(scene, speaks),
      {
        say: 'Both together: multiply.',
        tex: '{{hardness}} \\times {{carbide}} \\approx {{both}}',
        values: {
          hardness: factor(scene, 'hardness'),
          carbide: factor(scene, 'carbide'),
          both: plain(scene.row.careful.families.steel),
        },
      },
    ],
  };
}

/** The lever rule on the tie line of the steel drawn. */
function lever(scene: Scene): Worked {
  const steelDrawn = tieSteelOf(scene);
  const { celsius, estimate } = middleOf(steelDrawn);
  const { matrix, whole, carbide, formula, massFraction } = estimate.tieLine;
  const { plusMinus } = estimate.austeniteCarbon;
  const [heavy, light] = [densities[formula], densities.matrix];
  const step = (poor: number) => {
    const end = Math.min(whole, Math.max(0, poor));
    return {
      tex: '\\frac{{{whole}} - {{poor}}}{{{rich}} - {{poor}}} \\approx {{mass}}',
      values: {
        whole: on(whole),
        poor: on(end),
        rich: on(carbide),
        mass: on((whole - end) / (carbide - end)),
      },
    };
  };
  const volume = massFraction / heavy / (massFraction / heavy + (1 - massFraction) / light);
  const { MC = 0, M6C = 0 } = estimate.volPercent;
  const bound = Object.entries({ MC, M6C }).filter(([, percent]) => percent > 0);
  const apart =
    bound.length > 0
      ? ` Beside it ${bound.length > 1 ? 'stand' : 'stands'} ${list(bound.map(([kind, percent]) => `${plain(percent, 2)} % ${kind}`))} by volume, bound before.`
      : '';
  return {
    givens: `${steelDrawn.designation} hardened from ${celsius} °C; ${on(whole)} % carbon is left for the lever, the austenite holds ${on(matrix)} ± ${plain(plusMinus, 2)} % (from memory), and ${formula} has ${on(carbide)} %.`,
    steps: [
      { say: `The short arm over the whole lever: the share of ${formula} by mass.`, ...step(matrix) },
      {
        say: `From mass to volume by the densities, ${formula} ${brief(heavy)} and matrix ${brief(light)} g/cm³${formula === 'Fe3C' ? ' (the matrix from memory)' : ' (both from memory)'}.${apart}`,
        tex: '\\frac{{{m}} / {{heavy}}}{{{m}} / {{heavy}} + {{rest}} / {{light}}} \\approx {{volume}}',
        values: {
          m: on(massFraction),
          rest: on(1 - massFraction),
          heavy: brief(heavy),
          light: brief(light),
          volume: plain(volume),
        },
      },
      { say: 'The austenite may hold more than that. Then less is left over.', ...step(matrix + plusMinus) },
      { say: 'Or less.', ...step(matrix - plusMinus) },
    ],
  };
}

export const steelWorked: Record<string, (scene: Scene) => Worked> = { steel, 'steel-lever': lever };
