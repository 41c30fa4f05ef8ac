import { densities, regression, vickersFromRockwellC } from '../../model/index.ts';
import type { CarbideKind, TieLine } from '../../model/index.ts';
import { carbideWithPlusMinus } from '../../phrases/hardened-carbide.ts';
import { factorOf } from '../../comparison/found.ts';
import { list } from '../../phrases/list.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, inFigures, plain } from '../../scene/show.ts';
import {
  bendMm,
  carbideAddsMm,
  chainCardOf,
  hardnessExponentOf,
  lifeExponentOf,
  middleOf,
  placeOf,
  steelsOf,
  takenAtDeg,
  tieSteelOf,
} from '../../scene/steel.ts';
import type { Hardened, Steel } from '../../scene/steel.ts';
import type { Worked, WorkedStep } from '../worked.ts';

/** Four digits where a value goes on into the next step. */
const on = (value: number): string => plain(value, 4);

const addedSaid = ({ carbides }: Steel): string => {
  const parts = (Object.entries(carbides) as [CarbideKind, number][])
    .filter(([, volume]) => volume > 0)
    .map(([kind, volume]) => `${brief(volume)}% ${kind} at ${brief(regression.perVolPercent[kind])} mm each`);
  return parts.length === 0 ? 'no carbide' : list(parts);
};

const factor = ({ row }: Scene, id: 'hardness' | 'carbide'): string => on(factorOf(row.careful, id));

const vickersStep = (of: Steel): WorkedStep => ({
  say: `Hardness of ${of.name} in Vickers, by a closed form through the standard’s table.`,
  tex: '\\frac{223 \\times {{h}} + 14500}{100 - {{h}}} \\approx {{v}}',
  values: { h: brief(of.hrc), v: on(of.vickers) },
  unit: 'HV',
});

/** The card of a steel: by the published line, bent where that gives little, and continued beyond its hardness. */
function cardSteps(scene: Scene, of: Steel): WorkedStep[] {
  const { readAt, lineMm, bent, beyond } = placeOf(of);
  const held = beyond ? ` The line is read at its end, ${brief(readAt)} HRC.` : '';
  const bentMm = chainCardOf(scene, readAt, of);
  return [
    {
      say: `Card of ${of.name} by the published line. Its carbide adds what it adds: ${addedSaid(of)}.${held}`,
      tex: '{{k}} \\times {{h}} - {{perDegree}} \\times {{angle}} + {{carbide}} - {{constant}} \\approx {{mm}}',
      values: {
        k: brief(regression.perHrc),
        h: brief(readAt),
        perDegree: brief(-regression.perIncludedDegree),
        angle: brief(takenAtDeg),
        carbide: on(carbideAddsMm(of)),
        constant: brief(-regression.constant),
        mm: on(lineMm),
      },
      unit: 'mm',
    },
    ...(bent
      ? [
          {
            say: `Below ${bendMm} mm the line is bent, so that it never reaches nothing. That is assumed.`,
            tex: '{{bend}} \\times e^{({{mm}} - {{bend}}) / {{bend}}} \\approx {{bent}}',
            values: { bend: brief(bendMm), mm: on(lineMm), bent: on(bentMm) },
            unit: 'mm' as const,
          },
        ]
      : []),
    ...(beyond
      ? [
          {
            say: `From ${brief(readAt)} to ${brief(of.hrc)} HRC the card goes on by Vickers over Vickers, to an assumed power.`,
            tex: '{{card}} \\times \\left(\\frac{{{v}}}{{{end}}}\\right)^{{{e}}} \\approx {{mm}}',
            values: {
              card: on(bentMm),
              v: on(of.vickers),
              end: on(vickersFromRockwellC(readAt)),
              e: brief(hardnessExponentOf(scene)),
              mm: on(chainCardOf(scene, of.hrc, of)),
            },
            unit: 'mm' as const,
          },
        ]
      : []),
  ];
}

/** Hardness alone and carbide alone: each exchanged once with either of the other, and the geometric mean taken. */
function exchangeSteps(scene: Scene): WorkedStep[] {
  const { subject: a, baseline: b } = steelsOf(scene);
  const p = lifeExponentOf(scene);
  const card = (hardness: Steel, carbide: Steel): string => on(chainCardOf(scene, hardness.hrc, carbide));
  const cards = { aa: card(a, a), ba: card(b, a), ab: card(a, b), bb: card(b, b), p: brief(p) };
  const power =
    scene.comparison.outcome === 'fixed-strokes'
      ? 'The power is 1, since card in a fixed number of strokes is what is asked for.'
      : `The power ${brief(p)} turns card into life to one end point, and is assumed.`;
  return [
    {
      say: `Hardness alone: exchange it once with the carbide of ${a.name} and once with that of ${b.name}, and take the geometric mean. So neither order is preferred. ${power}`,
      tex: '\\left(\\sqrt{\\frac{{{aa}}}{{{ba}}} \\times \\frac{{{ab}}}{{{bb}}}}\\right)^{{{p}}} \\approx {{hardness}}',
      values: { ...cards, hardness: factor(scene, 'hardness') },
    },
    {
      say: 'Carbide alone, the same way.',
      tex: '\\left(\\sqrt{\\frac{{{aa}}}{{{ab}}} \\times \\frac{{{ba}}}{{{bb}}}}\\right)^{{{p}}} \\approx {{carbide}}',
      values: { ...cards, carbide: factor(scene, 'carbide') },
    },
  ];
}

/** Hardness, then card, then the two factors. */
function steel(scene: Scene): Worked {
  const { subject: a, baseline: b } = steelsOf(scene);
  return {
    givens: `${a.name}, ${brief(a.hrc)} HRC, ${addedSaid(a)}; ${b.name}, ${brief(b.hrc)} HRC, ${addedSaid(b)}; included angle ${takenAtDeg}°.`,
    steps: [
      vickersStep(a),
      vickersStep(b),
      ...cardSteps(scene, a),
      ...cardSteps(scene, b),
      ...exchangeSteps(scene),
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

/** The lever with so much carbon in the matrix, of the numbers as they are shown, so that a reader's sum comes out. */
function leverWith(tieLine: TieLine, poor: number) {
  const [whole, carbide] = [inFigures(tieLine.whole, 4), inFigures(tieLine.carbide, 4)];
  const end = Math.min(whole, Math.max(0, inFigures(poor, 4)));
  return { whole, carbide, end, mass: (whole - end) / (carbide - end) };
}

/** The short arm over the whole lever, with so much carbon in the matrix. */
function armStep(say: string, tieLine: TieLine, poor: number): WorkedStep {
  const { whole, carbide, end, mass } = leverWith(tieLine, poor);
  return {
    say,
    tex: '\\frac{{{whole}} - {{poor}}}{{{rich}} - {{poor}}} \\approx {{mass}}',
    values: {
      whole: on(whole),
      poor: on(end),
      rich: on(carbide),
      mass: on(mass),
    },
  };
}

/** From mass to volume. */
function volumeStep(tieLine: TieLine, then: string): WorkedStep {
  const { formula } = tieLine;
  const { mass: massFraction } = leverWith(tieLine, tieLine.matrix);
  const [heavy, light] = [densities[formula], densities.matrix];
  const volume = massFraction / heavy / (massFraction / heavy + (1 - massFraction) / light);
  return {
    say: `From mass to volume by the densities, ${formula} ${brief(heavy)} and matrix ${brief(light)} g/cm³${formula === 'Fe3C' ? ' (the matrix from memory)' : ' (both from memory)'}.${then}`,
    tex: '\\frac{{{m}} / {{heavy}}}{{{m}} / {{heavy}} + {{rest}} / {{light}}} \\approx {{volume}}',
    values: {
      m: on(massFraction),
      rest: on(1 - massFraction),
      heavy: brief(heavy),
      light: brief(light),
      volume: plain(volume),
    },
  };
}

/** What the volume of the lever is not all of. */
function besideLever(hardened: Hardened): string {
  const { basis, volPercent } = hardened.estimate;
  if (basis === 'table')
    return ` The volume of the table, ${carbideWithPlusMinus(hardened)}, is used instead.`;
  const { MC = 0, M6C = 0 } = volPercent;
  const bound = Object.entries({ MC, M6C }).filter(([, percent]) => percent > 0);
  return bound.length > 0
    ? ` Beside it ${bound.length > 1 ? 'stand' : 'stands'} ${list(bound.map(([kind, percent]) => `${plain(percent, 2)}% ${kind}`))} by volume, bound before.`
    : '';
}

/** The lever rule on the tie line of the steel drawn; on both, where either of two carbides may be. */
function lever(scene: Scene): Worked {
  const steelDrawn = tieSteelOf(scene);
  const middle = middleOf(steelDrawn);
  const { tieLine, otherTieLine, austeniteCarbon } = middle.estimate;
  const { matrix, whole, carbide, formula } = tieLine;
  const { plusMinus } = austeniteCarbon;
  return {
    givens: `${steelDrawn.designation} hardened from ${middle.celsius} °C; ${on(whole)}% carbon is left for the lever, the austenite holds ${on(matrix)} ± ${plain(plusMinus, 2)}% (from memory), and ${formula} has ${on(carbide)}%.`,
    steps: [
      armStep(`The short arm over the whole lever: the share of ${formula} by mass.`, tieLine, matrix),
      volumeStep(tieLine, besideLever(middle)),
      ...(otherTieLine === undefined
        ? []
        : [
            armStep(
              `The carbide may be ${otherTieLine.formula} instead, with a lever of another length.`,
              otherTieLine,
              otherTieLine.matrix,
            ),
            volumeStep(otherTieLine, ' The estimate is midway between the two.'),
          ]),
      armStep('The austenite may hold more than that. Then less is left over.', tieLine, matrix + plusMinus),
      armStep('Or less.', tieLine, matrix - plusMinus),
    ],
  };
}

export const steelWorked: Record<string, (scene: Scene) => Worked> = { steel, 'steel-lever': lever };
