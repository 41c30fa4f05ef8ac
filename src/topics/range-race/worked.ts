import { nominal } from '../../model/index.ts';
import type { TermId } from '../../model/index.ts';
import { drawLevel } from '../../scene/draw-level.ts';
import { factorOf } from '../../comparison/found.ts';
import { groundRoom, ordinary, roomIn, roomOfFamilies } from '../../scene/ranges.ts';
import type { Room } from '../../scene/ranges.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain, times } from '../../scene/show.ts';
import type { Worked, WorkedStep } from '../worked.ts';

/** Four digits where a value goes on into the next step, so that the reader's own sum agrees with the page. */
const on = (value: number): string => plain(value, 4);

const shownFactor = (room: Room, id: TermId): string => on(factorOf(room, id));

/** The rooms of geometry and steel by the quick sum. */
function quickSteps(quickGeometry: Room, quickSteel: Room): WorkedStep[] {
  const { geometry, steel } = ordinary;
  return [
    {
      say: 'Quick sum, geometry: the angle counts twice, then thickness, then the grind.',
      tex: '\\left(\\frac{{{wide}}}{{{slim}}}\\right)^2 \\times \\frac{{{thick}}}{{{thin}}} \\times {{grind}} = {{g}}',
      values: {
        wide: brief(geometry.worst.angleDeg),
        slim: brief(geometry.best.angleDeg),
        thick: brief(geometry.worst.edgeMm),
        thin: brief(geometry.best.edgeMm),
        grind: shownFactor(quickGeometry, 'grind'),
        g: on(quickGeometry.factor),
      },
    },
    {
      say: 'Quick sum, steel: hardness squared, and twenty volume per cent of carbide doubles.',
      tex: '\\left(\\frac{{{hard}}}{{{soft}}}\\right)^2 \\times 2^{{{rich}}/20} = {{s}}',
      values: {
        hard: brief(steel.best.hrc),
        soft: brief(steel.worst.hrc),
        rich: brief(steel.best.carbideVolPercent.CrC - steel.worst.carbideVolPercent.CrC),
        s: on(quickSteel.factor),
      },
    },
  ];
}

/** The same by the careful estimate. */
const carefulSteps = (carefulGeometry: Room, carefulSteel: Room): WorkedStep[] => [
  {
    say: 'Careful estimate, geometry, if all multiply: wedge, apex, thickness, grind.',
    tex: '{{wedge}} \\times {{apex}} \\times {{thickness}} \\times {{grind}} = {{g}}',
    values: {
      wedge: shownFactor(carefulGeometry, 'wedge'),
      apex: shownFactor(carefulGeometry, 'apex'),
      thickness: shownFactor(carefulGeometry, 'thickness'),
      grind: shownFactor(carefulGeometry, 'grind'),
      g: on(carefulGeometry.factor),
    },
  },
  {
    say: 'Careful estimate, steel: hardness and carbide, from the published regression to an assumed power.',
    tex: '{{hardness}} \\times {{carbide}} = {{s}}',
    values: {
      hardness: shownFactor(carefulSteel, 'hardness'),
      carbide: shownFactor(carefulSteel, 'carbide'),
      s: on(carefulSteel.factor),
    },
  },
];

/** The rooms by both readings, and the contest of a well-ground plain knife with a badly ground rich one. */
function race({ comparison }: Scene): Worked {
  const { quick, careful } = roomOfFamilies(comparison);
  const [quickGeometry, quickFinish, quickSteel] = [
    roomIn(quick, 'geometry'),
    roomIn(quick, 'finish'),
    roomIn(quick, 'steel'),
  ];
  const [carefulGeometry, carefulFinish, carefulSteel] = [
    roomIn(careful, 'geometry'),
    roomIn(careful, 'finish'),
    roomIn(careful, 'steel'),
  ];
  const contest = (which: typeof quick, finish: Room, ground: Room, steelRoom: Room) => ({
    tex: '\\frac{{{g}} \\times {{f}}}{{{s}}} = {{answer}}',
    values: {
      g: on(ground.factor),
      f: on(finish.factor),
      s: on(steelRoom.factor),
      answer: plain(groundRoom(which).factor / steelRoom.factor),
    },
  });
  return {
    givens:
      'two knives, one with the best ordinary geometry and finish in the poorest ordinary steel, one the other way round.',
    steps: [
      ...quickSteps(quickGeometry, quickSteel),
      {
        say: 'One knife has the room of geometry and finish, the other that of steel. Divide.',
        ...contest(quick, quickFinish, quickGeometry, quickSteel),
      },
      ...carefulSteps(carefulGeometry, carefulSteel),
      {
        say: `The same contest by the careful estimate. The quick sum said ${times(groundRoom(quick).factor / quickSteel.factor)}.`,
        ...contest(careful, carefulFinish, carefulGeometry, carefulSteel),
      },
    ],
  };
}

/** The steel to grind off when the baseline draws level with the subject's steel. */
function grinding(scene: Scene): Worked {
  const { baseline, subject, baselineKnife } = scene;
  const { steel } = drawLevel(scene);
  const present = nominal(baselineKnife.angleDeg);
  const { value } = steel.answer;
  const t = nominal(baselineKnife.edgeMm);
  const cot = (degrees: number) => 1 / Math.tan((degrees * Math.PI) / 180);
  const ground = steel.removedMm2 !== null && value !== null;
  const none = 'none';
  return {
    givens: `${baseline.name}, ${on(t)} mm behind the edge, ${plain(present, 5)}° per side, ${
      value === null
        ? `and no angle at which it draws level with the steel of ${subject.name}.`
        : ground
          ? `to be taken to the ${plain(value, 5)}° at which it draws level with the steel of ${subject.name}${steel.answer.note ? ` (${steel.answer.note})` : ''}.`
          : `not behind the steel of ${subject.name}: there is nothing to grind.`
    }`,
    steps: [
      {
        say: 'How much higher the bevel becomes, for every millimetre of half the thickness: cotangent less cotangent.',
        tex: '\\cot {{to}}^\\circ - \\cot {{from}}^\\circ = {{growth}}',
        values: {
          to: ground ? plain(value, 5) : none,
          from: plain(present, 5),
          growth: ground ? on(cot(value) - cot(present)) : none,
        },
      },
      {
        say: 'Off each side comes a triangle with half the thickness as its base. The two together, in mm² of the section:',
        tex: '\\frac{{{t}}^2}{4} \\times {{growth}} = {{area}}',
        values: {
          t: on(t),
          growth: ground ? on(cot(value) - cot(present)) : none,
          area: steel.removedMm2 === null ? none : plain(steel.removedMm2),
        },
        unit: 'mm²',
      },
    ],
  };
}

export const rangeWorked: Record<string, (scene: Scene) => Worked> = {
  'range-race': race,
  'level-cost': grinding,
};
