import * as Plot from '@observablehq/plot';
import { chanceAlike, chanceInPairs, chanceOf, neededOf, planOf } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, thousands, times, wholePercent } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineY, gridY } from '../../figure-kit/grid.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { valueText } from '../../figure-kit/value-text.ts';

/** The chance that is planned for: common practice, four in five. */
const planned = 0.8;

interface Point {
  runs: number;
  chance: number;
}

/** How far the axis goes, and where it is looked at: at most 60 places. */
function placesOf(scene: Scene): number[] {
  const { apart } = neededOf(planOf(scene));
  const most = Math.max(10, Math.ceil(apart * 1.6));
  const step = Math.max(1, Math.ceil(most / 60));
  const places = [2, apart];
  for (let runs = step; runs <= most; runs += step) if (runs > 2) places.push(runs);
  return [...new Set(places)].sort((a, b) => a - b);
}

function curve(scene: Scene, ratio: number): Point[] {
  const plan = planOf(scene);
  return placesOf(scene).map((runs) => ({ runs, chance: chanceOf(plan, ratio, runs) }));
}

/** The chance at the ratio asked for where both are cut in pairs; nothing where they are not. */
function inPairs(scene: Scene): Point[] {
  const plan = planOf(scene);
  const { correlation } = plan;
  if (correlation === undefined) return [];
  return placesOf(scene).map((runs) => ({ runs, chance: chanceInPairs(plan, runs, correlation) }));
}

/** A few of the places, that of the plan and the last among them: for the table, and for what takes long to compute. */
function fewPlacesOf(scene: Scene): number[] {
  const { apart } = neededOf(planOf(scene));
  const places = placesOf(scene);
  const step = Math.ceil(places.length / 15);
  return places.filter((runs, index) => index % step === 0 || runs === apart || index === places.length - 1);
}

/** The chance of showing knives as good as equal that are, to within the ratio asked for. */
function shownAlike(scene: Scene): Point[] {
  const plan = planOf(scene);
  return fewPlacesOf(scene).map((runs) => ({ runs, chance: chanceAlike(plan, runs) }));
}

/** Never rounded up to certainty. */
const chanceSaid = (chance: number): string => (chance > 0.99 ? 'over 99%' : percent(chance));

/** Half and twice as far from equal, on the axis of ratios. */
const nearer = (ratio: number): number => Math.sqrt(ratio);
const further = (ratio: number): number => ratio ** 2;

const at = { x: 'runs', y: 'chance' } as const;

/** The chances at three ratios, of showing as good as equal, and in pairs, each with its name. */
function chanceMarks(scene: Scene): Plot.RenderableMark[] {
  const { ratio } = planOf(scene);
  const lines = [
    { own: further(ratio), className: 'kf-route-tooth' },
    { own: ratio, className: 'kf-route-careful' },
    { own: nearer(ratio), className: 'kf-route-wear' },
  ].map((line) => ({ ...line, points: curve(scene, line.own) }));
  const alike = shownAlike(scene);
  const paired = inPairs(scene);
  return [
    ...lines.map(({ points, className }) => Plot.line(points, { ...at, className })),
    Plot.line(alike, { ...at, className: 'kf-plan-alike' }),
    valueText(alike.filter(({ chance }) => chance > 0.3).slice(0, 1), {
      ...at,
      text: () => 'equal',
      dx: 10,
      dy: 24,
    }),
    Plot.line(paired, { ...at, className: 'kf-route-full' }),
    valueText(paired.slice(1, 2), { ...at, text: () => 'in pairs', dx: 8, dy: 8 }),
    // The upper two curves end side by side near certainty: one is named above its end, one below.
    ...lines.map(({ points, own }) =>
      Plot.text(points.slice(-1), {
        ...at,
        text: () => times(own),
        textAnchor: 'start',
        dx: 6,
        dy: own > ratio ? -8 : 8,
        className: 'kf-value',
      }),
    ),
  ];
}

/** How many sharpenings the plan needs, with a line up to its chance. */
function planMarks(scene: Scene): Plot.RenderableMark[] {
  const plan = planOf(scene);
  const { apart } = neededOf(plan);
  const chance = chanceOf(plan, plan.ratio, apart);
  return [
    Plot.ruleX([apart], { y1: 0, y2: chance, className: 'kf-stem' }),
    Plot.dot([{ x: apart, y: chance }], { x: 'x', y: 'y', r: 5, className: 'kf-answer' }),
    valueText([apart], {
      x: (runs: number) => runs,
      y: 0.06,
      text: (runs: number) => `${thousands(runs)} of each`,
      dx: 6,
    }),
  ];
}

/** The chances of noticing a difference and of showing knives as good as equal, by the number of sharpenings of each. */
export const planCurve: Figure = {
  id: 'plan-curve',
  title: ({ subject, baseline }) =>
    `How many runs would show a difference between ${subject.name} and ${baseline.name}`,
  units: 'chance, by sharpenings of each',
  scale: 'both axes even',
  reading: () => 'by the noncentral t; below 6 of each the page adds a simulation',
  source: 'derived; 95% confidence for all pairs, lives lognormal',
  options(scene, { narrow }) {
    const last = placesOf(scene).at(-1) ?? 10;
    return {
      height: narrow ? 270 : 310,
      marginLeft: 48,
      marginRight: narrow ? 52 : 64,
      marginTop: 22,
      marginBottom: 42,
      x: {
        domain: [0, last],
        ...centredLabel('sharpenings of each knife'),
        ticks: narrow ? 4 : 8,
        tickFormat: thousands,
      },
      y: {
        domain: [0, 1],
        label: 'chance of an answer',
        labelArrow: 'none',
        ticks: [0, 0.2, 0.4, 0.6, 0.8, 1],
        tickFormat: wholePercent,
      },
      marks: [
        gridY([0.2, 0.4, 0.6, 0.8, 1]),
        baselineY(0),
        Plot.ruleY([planned], { className: 'kf-dimension' }),
        ...chanceMarks(scene),
        ...planMarks(scene),
      ],
    };
  },
  table(scene) {
    const plan = planOf(scene);
    const { ratio, correlation } = plan;
    const ratios = [further(ratio), ratio, nearer(ratio)];
    return {
      columns: [
        'Sharpenings of each',
        ...ratios.map((own) => `Chance at ${times(own)}`),
        ...(correlation === undefined ? [] : [`In pairs, at ${times(ratio)}`]),
        `Chance of as good as equal, to within ${times(ratio)}`,
      ],
      rows: fewPlacesOf(scene).map((runs) => [
        thousands(runs),
        ...ratios.map((own) => chanceSaid(chanceOf(plan, own, runs))),
        ...(correlation === undefined ? [] : [chanceSaid(chanceInPairs(plan, runs, correlation))]),
        chanceSaid(chanceAlike(plan, runs)),
      ]),
    };
  },
  caption(scene) {
    const { ratio, total, correlation, family } = planOf(scene);
    const { apart } = neededOf(planOf(scene));
    const paired =
      correlation === undefined ? '' : ' The curve named “in pairs” is for pairs on the same stock.';
    return `Where one knife’s runs scatter by ${percent(total)}, ${thousands(apart)} sharpenings of each notice, in four of five tries, that one knife lasts ${times(ratio)} as long as the other. The curves beside it are for ${times(further(ratio))} and ${times(nearer(ratio))}.${paired} “Equal” is the chance of showing that equal knives differ by no more than ${times(ratio)}.${family > 1 ? ` All ${family} pairs on the sheet are judged at once.` : ''}`;
  },
};
