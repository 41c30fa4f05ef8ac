import { grainSizeUm } from '../../model/index.ts';
import { inverted, restForLoss } from '../common-missteps.ts';
import { inFigures, result } from '../figures.ts';
import type { Maker, Scene } from '../maker.ts';
import type { Grit, NumbersOf } from '../numbers.ts';
import { perCentStep } from '../percent.ts';
import type { Misstep } from '../problem.ts';

const DIVIDE = 0;
const PER_CENT = 1;

/** Grits that stand in the tables of every scale they are drawn for. */
const grits: Record<Grit['scale'], readonly number[]> = {
  'FEPA-P': [120, 180, 220, 240, 320, 400, 600, 800, 1000, 1200, 2000],
  'FEPA-F': [120, 180, 220, 240, 320, 400, 600, 800],
  JIS: [240, 320, 400, 600, 800, 1000, 1200, 2000, 3000, 4000],
  CAMI: [120, 180, 220, 240, 320, 400, 600, 800, 1000, 1200],
};
const scales = Object.keys(grits) as Grit['scale'][];
const named = ({ scale, grit }: Grit): string =>
  `${scale === 'FEPA-P' ? 'FEPA P' : scale === 'FEPA-F' ? 'FEPA F' : `${scale} `}${grit}`;

function misstepsOf(
  { own, other }: NumbersOf['grit-by-scale'],
  { level, subject, baseline }: Scene,
): Misstep[] {
  const [coarse, fine] = [grainSizeUm(own), grainSizeUm(other)];
  const ratio = level === 3 ? fine / coarse : coarse / fine;
  return [
    {
      id: 'grit numbers as sizes',
      answer: own.grit / other.grit,
      idea: 'You took the grit numbers for sizes. They count the other way: the finer the grain, the larger the number.',
      step: DIVIDE,
    },
    {
      id: 'grit numbers inverted',
      answer: other.grit / own.grit,
      idea: 'You took the grit numbers as exact inverses of the size. Each scale has its own table of sizes.',
      step: DIVIDE,
    },
    inverted(
      ratio,
      `the grain of ${level === 3 ? baseline : subject}`,
      `the grain of ${level === 3 ? subject : baseline}`,
      DIVIDE,
    ),
    ...(level === 3
      ? [
          restForLoss(ratio, PER_CENT),
          {
            id: 'took it of the wrong base',
            answer: 2 - 1 / ratio,
            idea: 'You took the difference as a part of the finer grain. Per cent smaller is counted from the coarser.',
            step: PER_CENT,
          },
        ]
      : [
          {
            id: 'difference for ratio',
            answer: coarse - fine,
            idea: 'You took one size from the other. "How many times" asks for a quotient.',
            step: DIVIDE,
          },
        ]),
  ];
}

/**
 * Two grits and the grain sizes behind them: how do the grains compare?
 * Level 1 stays on one scale; level 2 has two scales; level 3 two scales, and asks for per cent less.
 */
export const gritByScale: Maker<NumbersOf['grit-by-scale']> = {
  contexts: ['rigging-loft'],
  example: { own: { scale: 'FEPA-P', grit: 220 }, other: { scale: 'FEPA-P', grit: 1200 } },

  draw: (dice, level) => {
    const [one = 'FEPA-P', other = 'JIS'] = dice.several(scales, 2);
    const pick = (scale: Grit['scale']): Grit => ({ scale, grit: dice.pick(grits[scale]) });
    const [first, second] = [pick(one), pick(level === 1 ? one : other)];
    return grainSizeUm(first) >= grainSizeUm(second)
      ? { own: first, other: second }
      : { own: second, other: first };
  },

  set: (numbers, scene) => {
    const { own, other } = numbers;
    const { context, level, subject, baseline } = scene;
    const [coarse, fine] = [grainSizeUm(own), grainSizeUm(other)];
    const ratio = level === 3 ? fine / coarse : coarse / fine;
    const [top, below] = level === 3 ? [fine, coarse] : [coarse, fine];
    return {
      question: `${context.place}, ${subject} is finished with ${named(own)}, whose grain is ${inFigures(coarse)} µm, and ${baseline} with ${named(other)}, whose grain is ${inFigures(fine)} µm. ${
        level === 3
          ? `What percentage smaller is the grain used on ${baseline} than that used on ${subject}?`
          : `How many times as coarse is the grain used on ${subject} as that used on ${baseline}?`
      }`,
      givens: [
        { name: `finish of ${subject}`, value: own.grit, unit: 'grit' },
        { name: `grain, ${named(own)}`, value: coarse, unit: 'µm' },
        { name: `finish of ${baseline}`, value: other.grit, unit: 'grit' },
        { name: `grain, ${named(other)}`, value: fine, unit: 'µm' },
      ],
      unit: level === 3 ? '% less' : 'times as coarse',
      answer: ratio,
      steps: [
        {
          text: `Take the sizes of the grains, not the grit numbers: divide the size used on ${level === 3 ? baseline : subject} by the other.`,
          tex: `\\frac{${inFigures(top)}}{${inFigures(below)}} ${result(ratio)}`,
          values: [ratio],
        },
        ...(level === 3 ? [perCentStep(ratio, '% less')] : []),
      ],
      missteps: misstepsOf(numbers, scene),
    };
  },
};
