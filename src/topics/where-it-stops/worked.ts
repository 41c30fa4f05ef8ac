import { nominal, vickersFromRockwellC } from '../../model/index.ts';
import type { Ends, Knife } from '../../model/index.ts';
import { floorDeg, limitsOf } from '../../scene/limits.ts';
import { anglesOf } from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain } from '../../scene/show.ts';
import type { Worked } from '../worked.ts';

/** Four digits where a value goes on into the next step, so that the reader's own sum agrees with the page. */
const on = (value: number): string => plain(value, 4);
const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
const vickers = ({ hrc }: Knife): number => vickersFromRockwellC(nominal(hrc));
const angle = (value: number): string => brief(Number(on(value)));

const none = 'not known';

/** Both ends of a side load: at equal depth, by the square of the tangents, and at equal width of the tip. */
function bothEnds(range: Ends | null, tangents: number): { depth: string; width: string } {
  if (range === null) return { depth: none, width: none };
  const [depth, width] = tangents < 1 ? [range.low, range.high] : [range.high, range.low];
  return { depth: plain(depth), width: plain(width) };
}

/** Side load by the tangent, or its square: rolling, chipping, and the angles at which the subject rolls no sooner. */
function sideLoad(scene: Scene): Worked {
  const { subject, baseline, subjectKnife, baselineKnife } = scene;
  const { subject: a, baseline: b } = anglesOf(scene);
  const { rolling, chipping } = limitsOf(scene).sideLoad;
  const [va, vb] = [vickers(subjectKnife), vickers(baselineKnife)];
  const hardness = { ha: angle(nominal(subjectKnife.hrc)), hb: angle(nominal(baselineKnife.hrc)) };
  const angles = { a: angle(a.apex), b: angle(b.apex) };
  const tangents = tan(a.apex) / tan(b.apex);
  const toughness = ({ toughness: k }: Knife): string => (k === undefined ? none : angle(nominal(k)));
  const meets = (power: number): string =>
    plain((Math.atan(tan(b.apex) * (vb / va) ** power) * 180) / Math.PI);
  return {
    givens: `at the apex ${subject.name} has ${angles.a}° per side and ${hardness.ha} HRC, ${baseline.name} ${angles.b}° and ${hardness.hb} HRC.`,
    steps: [
      {
        say: 'The edge is a small beam, clamped a depth x behind its tip. There it is 2x tan θ thick. A side force F at the tip, on a width w, bends it with the stress:',
        tex: '\\sigma = \\frac{F x}{\\frac{1}{6} \\, w \\, (2 x \\tan \\theta)^2} = \\frac{1.5 \\, F}{w \\, x \\tan^2 \\theta}',
        values: {},
      },
      {
        say: 'That compares two edges at one depth. Two edges that are equally sharp have one width b at the tip instead. The stress is then highest where the edge is twice as thick as its tip:',
        tex: '\\sigma = \\frac{6 \\, F x}{w \\, (b + 2 x \\tan \\theta)^2} \\le \\frac{0.75 \\, F}{w \\, b \\tan \\theta}',
        values: {},
      },
      {
        say: `It yields at a stress in proportion to its Vickers hardness. First ${subject.name}, then ${baseline.name}:`,
        tex: '\\begin{gathered} \\frac{223 \\times {{ha}} + 14500}{100 - {{ha}}} \\approx {{va}} \\\\ \\frac{223 \\times {{hb}} + 14500}{100 - {{hb}}} \\approx {{vb}} \\end{gathered}',
        values: { ...hardness, va: on(va), vb: on(vb) },
        unit: 'HV',
      },
      {
        say: 'How the tangents compare.',
        tex: '\\frac{\\tan {{a}}^\\circ}{\\tan {{b}}^\\circ} \\approx {{q}}',
        values: { ...angles, q: on(tangents) },
      },
      {
        say: 'So the side load before rolling goes with the hardness, and with the square of the tangents or with the tangents alone.',
        tex: '\\begin{gathered} \\frac{{{va}}}{{{vb}}} \\times {{q}}^2 \\approx {{depth}} \\\\ \\frac{{{va}}}{{{vb}}} \\times {{q}} \\approx {{width}} \\end{gathered}',
        values: { va: on(va), vb: on(vb), q: on(tangents), ...bothEnds(rolling, tangents) },
      },
      {
        say: 'For chipping the toughness takes the place of the hardness.',
        tex: '\\begin{gathered} \\frac{{{ka}}}{{{kb}}} \\times {{q}}^2 \\approx {{depth}} \\\\ \\frac{{{ka}}}{{{kb}}} \\times {{q}} \\approx {{width}} \\end{gathered}',
        values: {
          ka: toughness(subjectKnife),
          kb: toughness(baselineKnife),
          q: on(tangents),
          ...bothEnds(chipping, tangents),
        },
      },
      {
        say: `Turned round: the angle at which ${subject.name}, with its own hardness, rolls no sooner than ${baseline.name}, by the square and by the tangents alone.`,
        tex: '\\begin{gathered} \\arctan \\left( \\tan {{b}}^\\circ \\times \\sqrt{\\frac{{{vb}}}{{{va}}}} \\right) \\approx {{square}}^\\circ \\\\ \\arctan \\left( \\tan {{b}}^\\circ \\times \\frac{{{vb}}}{{{va}}} \\right) \\approx {{alone}}^\\circ \\end{gathered}',
        values: { b: angles.b, vb: on(vb), va: on(va), square: meets(0.5), alone: meets(1) },
      },
    ],
  };
}

/** The floor of the angle for the hardness of the subject. */
function floor({ subject, subjectKnife }: Scene): Worked {
  const v = vickers(subjectKnife);
  const { low, high } = floorDeg(subjectKnife);
  // The root moves the tangent less: below 60 HRC it is the lower end, above it the upper.
  const [root, alone] = v < 697 ? [low, high] : [high, low];
  return {
    givens: `${subject.name}, ${angle(nominal(subjectKnife.hrc))} HRC, which is ${on(v)} HV.`,
    steps: [
      {
        say: 'The same side load, another hardness: by the square the tangent goes with the root of the hardness, else with the hardness itself.',
        tex: '\\begin{gathered} \\tan 5^\\circ \\times \\sqrt{\\frac{697}{{{v}}}} \\approx {{t}} \\\\ \\tan 5^\\circ \\times \\frac{697}{{{v}}} \\approx {{u}} \\end{gathered}',
        values: { v: on(v), t: on(tan(root)), u: on(tan(alone)) },
      },
      {
        say: 'Back from the tangents to the angles: both ends of the floor.',
        tex: '\\begin{gathered} \\arctan({{t}}) \\approx {{root}}^\\circ \\\\ \\arctan({{u}}) \\approx {{alone}}^\\circ \\end{gathered}',
        values: { t: on(tan(root)), u: on(tan(alone)), root: plain(root), alone: plain(alone) },
      },
    ],
  };
}

export const limitsWorked: Record<string, (scene: Scene) => Worked> = {
  'limits-side-load': sideLoad,
  'limits-floor': floor,
};
