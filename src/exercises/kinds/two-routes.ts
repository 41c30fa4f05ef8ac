import { toothFactor, wedgeFactor } from '../../model/index.ts';
import { inverted } from '../common-missteps.ts';
import { inFigures, result } from '../figures.ts';
import type { Maker, Scene } from '../maker.ts';
import type { NumbersOf } from '../numbers.ts';
import type { Misstep, Step } from '../problem.ts';

const FRICTION = 0;
const WEDGE = 1;
const TOOTH = 2;
const TOGETHER = 3;

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/** The angles and the friction, and what either route makes of them. */
function routesOf({ angleDeg, baselineAngleDeg, friction }: NumbersOf['two-routes']) {
  const wedge = wedgeFactor({ angleDeg, baselineAngleDeg, friction });
  const tooth = toothFactor({ angleDeg, baselineAngleDeg });
  const frictionAngleDeg = (Math.atan(friction) * 180) / Math.PI;
  return { angleDeg, baselineAngleDeg, friction, frictionAngleDeg, wedge, tooth, together: wedge * tooth };
}

type Routes = ReturnType<typeof routesOf>;

function stepsOf(routes: Routes, { subject, baseline }: Scene): Step[] {
  const { angleDeg, baselineAngleDeg, friction, frictionAngleDeg, wedge, tooth, together } = routes;
  const phi = inFigures(frictionAngleDeg);
  return [
    {
      text: 'Find the friction angle: the angle whose tangent is the coefficient of friction.',
      tex: `\\varphi = \\arctan ${friction} ${result(frictionAngleDeg)}^\\circ`,
      values: [frictionAngleDeg],
      asks: '°',
    },
    {
      text: `The wedge: add the friction angle to both edge angles, and divide the tangent for ${baseline} by the tangent for ${subject}.`,
      tex: `\\frac{\\tan(${baselineAngleDeg}^\\circ + ${phi}^\\circ)}{\\tan(${angleDeg}^\\circ + ${phi}^\\circ)} ${result(wedge)}`,
      values: [wedge],
    },
    {
      text: `The apex: divide the sine of the edge angle of ${baseline} by the sine of that of ${subject}.`,
      tex: `\\frac{\\sin ${baselineAngleDeg}^\\circ}{\\sin ${angleDeg}^\\circ} ${result(tooth)}`,
      values: [tooth],
    },
    {
      text: 'Multiply the two, because the second route works on what the first left.',
      tex: `${inFigures(wedge)} \\times ${inFigures(tooth)} ${result(together)}`,
      values: [together],
    },
  ];
}

function misstepsOf(routes: Routes, { subject, baseline }: Scene): Misstep[] {
  const { angleDeg, baselineAngleDeg, wedge, tooth, together } = routes;
  return [
    {
      id: 'one route only: the wedge',
      answer: wedge,
      idea: 'That is the wedge alone. The angle counts once more, at the apex.',
      step: TOOTH,
    },
    {
      id: 'one route only: the apex',
      answer: tooth,
      idea: 'That is the apex alone. The angle also counts as a wedge.',
      step: WEDGE,
    },
    {
      id: 'added the routes',
      answer: wedge + tooth - 1,
      idea: 'You added what the two routes change. They work one on the other.',
      step: TOGETHER,
    },
    {
      id: 'added the factors',
      answer: wedge + tooth,
      idea: 'You added the two factors. Two factors of 1, no change at all, would then make 2.',
      step: TOGETHER,
    },
    {
      id: 'left friction out',
      answer: (tan(baselineAngleDeg) / tan(angleDeg)) * tooth,
      idea: 'You left friction out of the wedge. It adds the same angle to both edges and brings them closer together.',
      step: FRICTION,
    },
    inverted(together, subject, baseline, WEDGE),
    {
      id: 'face value of the change',
      answer: (1 + (baselineAngleDeg - angleDeg) / baselineAngleDeg) ** 2,
      idea: 'You took the percentage by which the angle changes for the percentage gained. The angle stands below the line, so its multiplier is turned over.',
      step: WEDGE,
    },
  ];
}

/**
 * An edge angle enters twice: as a wedge with friction, and at the apex by the depth of its teeth.
 * Level 1 has a thinner edge and a middling friction; level 2 any friction; level 3 a stouter edge.
 */
export const twoRoutes: Maker<NumbersOf['two-routes']> = {
  contexts: ['rigging-loft'],
  example: { angleDeg: 14, baselineAngleDeg: 24, friction: 0.25 },

  draw: (dice, level) => {
    const [slim, stout] = [dice.whole(9, 16), dice.whole(18, 28)];
    const friction = (level === 1 ? dice.whole(20, 30, 5) : dice.whole(10, 40, 5)) / 100;
    return level === 3
      ? { angleDeg: stout, baselineAngleDeg: slim, friction }
      : { angleDeg: slim, baselineAngleDeg: stout, friction };
  },

  set: (numbers, scene) => {
    const { angleDeg, baselineAngleDeg, friction } = numbers;
    const { context, subject, baseline } = scene;
    const routes = routesOf(numbers);
    return {
      question: `${context.place}, ${baseline} has an edge angle of ${baselineAngleDeg}° per side and ${subject} of ${angleDeg}°. All else is equal, and the coefficient of friction is ${friction}. The angle counts as a wedge, and once more at the apex by the depth of its teeth. By both routes together, ${context.timesAs(subject, baseline)}`,
      givens: [
        { name: `edge angle per side of ${subject}`, value: angleDeg, unit: '°' },
        { name: `edge angle per side of ${baseline}`, value: baselineAngleDeg, unit: '°' },
        { name: 'coefficient of friction', value: friction, unit: '' },
      ],
      unit: context.asks,
      answer: routes.together,
      steps: stepsOf(routes, scene),
      missteps: misstepsOf(routes, scene),
    };
  },
};
