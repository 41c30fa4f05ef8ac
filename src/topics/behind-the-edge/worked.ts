import { flattestGrindDeg, nominal, parameters } from '../../model/index.ts';
import { behindFactors, behindOf, contactDepthOf, countedAngleDeg, regrindOf, removedMm2 } from './values.ts';
import type { Behind } from './values.ts';
import { frictionAngleAt } from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain } from '../../scene/show.ts';
import type { Worked } from '../worked.ts';

/** Four digits where a value goes on into the next step. */
const on = (value: number): string => plain(value, 4);
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Angle from the caliper, then thickness and grind as factors. */
function behind(scene: Scene): Worked {
  const { subject: a, baseline: b } = behindOf(scene);
  const { careful } = behindFactors(scene);
  const depth = contactDepthOf(scene);
  const exponent = brief(
    nominal(scene.comparison.assumptions?.thicknessExponent ?? parameters.thicknessExponent.default),
  );
  // The greatest thickness within the depth, which a bulging grind may have below its end.
  const opened = ({ edgeMm, grindAngleDeg }: Behind) => edgeMm + 2 * depth * Math.tan(radians(grindAngleDeg));
  const grind = (blade: Behind) => ({
    say: `How stout the grind of ${blade.name} is: half of what it gains in thickness, over the depth of contact. The angle comes from the tangent.`,
    tex: '\\arctan\\frac{{{top}} - {{t}}}{2 \\times {{d}}} \\approx {{angle}}^\\circ',
    values: {
      top: plain(opened(blade), 5),
      t: on(blade.edgeMm),
      d: brief(depth),
      angle: on(blade.grindAngleDeg),
    },
  });
  const counted = { a: countedAngleDeg(a.grindAngleDeg), b: countedAngleDeg(b.grindAngleDeg) };
  const phi = { a: frictionAngleAt(scene, counted.a), b: frictionAngleAt(scene, counted.b) };
  const flatter = counted.a !== a.grindAngleDeg || counted.b !== b.grindAngleDeg;
  return {
    givens: `${a.name}, ${on(a.edgeMm)} mm across the shoulder, bevels ${on(a.bevelWidthMm)} mm wide; ${b.name}, ${on(b.edgeMm)} mm across the shoulder; depth of contact ${brief(depth)} mm.`,
    steps: [
      {
        say: `The edge angle of ${a.name} from the caliper: thickness over twice the width of the bevel is a sine.`,
        tex: '\\arcsin\\frac{{{t}}}{2 \\times {{w}}} \\approx {{angle}}^\\circ',
        values: { t: on(a.edgeMm), w: on(a.bevelWidthMm), angle: plain(a.angleDeg) },
      },
      {
        say: `Thickness over thickness, to the power of the thickness exponent, which is assumed.`,
        tex: '\\left(\\frac{{{b}}}{{{a}}}\\right)^{{{e}}} \\approx {{factor}}',
        values: { a: on(a.edgeMm), b: on(b.edgeMm), e: exponent, factor: on(careful.thickness) },
      },
      grind(a),
      grind(b),
      {
        say: `The grind is a wedge like the bevel. Friction adds about as much to both.${flatter ? ` A flatter grind than ${brief(flattestGrindDeg)}° counts as ${brief(flattestGrindDeg)}°.` : ''}`,
        tex: '\\frac{\\tan({{b}}^\\circ + {{pb}}^\\circ)}{\\tan({{a}}^\\circ + {{pa}}^\\circ)} \\approx {{factor}}',
        values: {
          a: on(counted.a),
          b: on(counted.b),
          pa: on(phi.a),
          pb: on(phi.b),
          factor: on(careful.grind),
        },
      },
      {
        say: 'Both together, if they multiply.',
        tex: '{{thickness}} \\times {{grind}} \\approx {{both}}',
        values: { thickness: on(careful.thickness), grind: on(careful.grind), both: plain(careful.both) },
      },
    ],
  };
}

/** Steel to take off for a lower bevel, at both thicknesses. */
function regrind(scene: Scene): Worked {
  const { subject: a, baseline: b } = behindOf(scene);
  const job = regrindOf(scene);
  const cot = (degrees: number) => 1 / Math.tan(radians(degrees));
  const growth = on(cot(job.toDeg) - cot(job.fromDeg));
  const area = (blade: Behind) => ({
    say: `Off either side comes a triangle. Both together, at the thickness of ${blade.name}, in mm² of the section:`,
    tex: '\\frac{{{t}}^2}{4} \\times {{growth}} \\approx {{area}}',
    values: { t: on(blade.edgeMm), growth, area: plain(removedMm2(blade.edgeMm, job)) },
    unit: 'mm²' as const,
  });
  return {
    givens: `a bevel to be taken from ${plain(job.fromDeg, 5)}° to ${plain(job.toDeg, 5)}° per side${job.madeUp ? ', which is made up, since both knives have one angle' : ''}; ${a.name} ${on(a.edgeMm)} mm behind the edge, ${b.name} ${on(b.edgeMm)} mm.`,
    steps: [
      {
        say: 'How much higher the bevel gets for every millimetre of half the thickness: cotangent less cotangent.',
        tex: '\\cot {{to}}^\\circ - \\cot {{from}}^\\circ \\approx {{growth}}',
        values: { to: plain(job.toDeg, 5), from: plain(job.fromDeg, 5), growth },
      },
      area(a),
      area(b),
    ],
  };
}

export const behindWorked: Record<string, (scene: Scene) => Worked> = { behind, 'behind-regrind': regrind };
