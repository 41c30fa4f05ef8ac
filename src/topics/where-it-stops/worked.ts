import { criticalFlawUm, nominal, vickersFromRockwellC } from '../../model/index.ts';
import type { Knife } from '../../model/index.ts';
import { floorDeg, limitsOf } from '../../scene/limits.ts';
import { knockMpa } from './numbers.ts';
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

/** Side load by the square of the tangent: rolling, chipping, and the angle at which the subject rolls no sooner. */
function sideLoad(scene: Scene): Worked {
  const { subject, baseline, subjectKnife, baselineKnife } = scene;
  const { subject: a, baseline: b } = anglesOf(scene);
  const { rolling, chipping } = limitsOf(scene);
  const [va, vb] = [vickers(subjectKnife), vickers(baselineKnife)];
  const hardness = { ha: angle(nominal(subjectKnife.hrc)), hb: angle(nominal(baselineKnife.hrc)) };
  const angles = { a: angle(a.apex), b: angle(b.apex) };
  const known = chipping !== null;
  const toughness = ({ toughness: k }: Knife): string => (k === undefined ? none : angle(nominal(k)));
  return {
    givens: `at the apex ${subject.name} has ${angles.a}° per side and ${hardness.ha} HRC, ${baseline.name} ${angles.b}° and ${hardness.hb} HRC.`,
    steps: [
      {
        say: 'The edge is a small beam, clamped a depth x behind its tip. There it is 2x tan θ thick. A side force F at the tip, on a width w, bends it with the stress:',
        tex: '\\sigma = \\frac{F x}{\\frac{1}{6} \\, w \\, (2 x \\tan \\theta)^2} = \\frac{1.5 \\, F}{w \\, x \\tan^2 \\theta}',
        values: {},
      },
      {
        say: `It yields at a stress in proportion to its Vickers hardness. First ${subject.name}, then ${baseline.name}:`,
        tex: '\\begin{gathered} \\frac{223 \\times {{ha}} + 14500}{100 - {{ha}}} \\approx {{va}} \\\\ \\frac{223 \\times {{hb}} + 14500}{100 - {{hb}}} \\approx {{vb}} \\end{gathered}',
        values: { ...hardness, va: on(va), vb: on(vb) },
        unit: 'HV',
      },
      {
        say: 'So the side load before rolling goes with the hardness and with the square of the tangent.',
        tex: '\\frac{{{va}}}{{{vb}}} \\times \\left( \\frac{\\tan {{a}}^\\circ}{\\tan {{b}}^\\circ} \\right)^2 \\approx {{rolling}}',
        values: { va: on(va), vb: on(vb), ...angles, rolling: plain(rolling) },
      },
      {
        say: 'For chipping the toughness takes the place of the hardness.',
        tex: '\\frac{{{ka}}}{{{kb}}} \\times \\left( \\frac{\\tan {{a}}^\\circ}{\\tan {{b}}^\\circ} \\right)^2 \\approx {{chipping}}',
        values: {
          ka: toughness(subjectKnife),
          kb: toughness(baselineKnife),
          ...angles,
          chipping: known ? plain(chipping) : none,
        },
      },
      {
        say: `Turned round: the angle at which ${subject.name}, with its own hardness, rolls no sooner than ${baseline.name}.`,
        tex: '\\arctan \\left( \\tan {{b}}^\\circ \\times \\sqrt{\\frac{{{vb}}}{{{va}}}} \\right) \\approx {{meets}}^\\circ',
        values: {
          b: angles.b,
          vb: on(vb),
          va: on(va),
          meets: plain((Math.atan(tan(b.apex) * Math.sqrt(vb / va)) * 180) / Math.PI),
        },
      },
    ],
  };
}

/** The floor of the angle for the hardness of the subject. */
function floor({ subject, subjectKnife }: Scene): Worked {
  const own = floorDeg(subjectKnife);
  return {
    givens: `${subject.name}, ${angle(nominal(subjectKnife.hrc))} HRC, which is ${on(vickers(subjectKnife))} HV.`,
    steps: [
      {
        say: 'The same side load, a harder steel: the tangent may shrink with the root of the hardness.',
        tex: '\\tan 5^\\circ \\times \\sqrt{\\frac{697}{{{v}}}} \\approx {{t}}',
        values: { v: on(vickers(subjectKnife)), t: on(tan(own)) },
      },
      {
        say: 'Back from the tangent to the angle: the floor.',
        tex: '\\arctan({{t}}) \\approx {{own}}^\\circ',
        values: { t: on(tan(own)), own: plain(own) },
      },
    ],
  };
}

/** The flaw at which the edge breaks under a knock, subject and baseline. */
function flaw({ subject, baseline, subjectKnife, baselineKnife }: Scene): Worked {
  const step = (knife: Knife, name: string) => {
    const k = knife.toughness === undefined ? null : nominal(knife.toughness);
    return {
      say: `${name}, the flaw in µm:`,
      tex: '\\frac{10^6}{\\pi} \\times \\left( \\frac{{{k}}}{1.12 \\times {{s}}} \\right)^2 \\approx {{flaw}}',
      values: {
        k: k === null ? none : angle(k),
        s: brief(knockMpa),
        flaw: k === null ? none : plain(criticalFlawUm({ toughness: k, stressMpa: knockMpa })),
      },
      unit: 'µm' as const,
    };
  };
  return {
    givens: `toughness in MPa√m, and a stress of ${knockMpa} MPa at the edge of ${subject.name} and of ${baseline.name}.`,
    steps: [step(subjectKnife, subject.name), step(baselineKnife, baseline.name)],
  };
}

export const limitsWorked: Record<string, (scene: Scene) => Worked> = {
  'limits-side-load': sideLoad,
  'limits-floor': floor,
  'limits-flaw': flaw,
};
