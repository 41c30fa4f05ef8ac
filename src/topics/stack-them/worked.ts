import { nominal, parameters } from '../../model/index.ts';
import type { Row, TermId } from '../../model/index.ts';
import { factorOf } from '../../comparison/found.ts';
import { anglesOf } from '../../scene/routes.ts';
import { limitOf } from './limit.ts';
import { baselinePush, subjectPush } from './push.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain, times } from '../../scene/show.ts';
import type { Worked, WorkedStep } from '../worked.ts';

/** Four digits where a value goes on into the next step, so that the reader's own sum agrees with the page. */
const on = (value: number): string => plain(value, 4);
/** Five, where a sum and a division follow. */
const finely = (value: number): string => plain(value, 5);

/** A link of the chain as the steps show it. */
const link = (row: Row, id: TermId): string => on(factorOf(row, id));

/** Edge angle, thickness and grind by the careful estimate. */
function geometrySteps({
  subject,
  baseline,
  subjectKnife,
  baselineKnife,
  comparison,
  row,
}: Scene): WorkedStep[] {
  const { careful } = row;
  const { geometry } = careful.families;
  const exponent = nominal(comparison.assumptions?.thicknessExponent ?? parameters.thicknessExponent.default);
  const angle = factorOf(careful, 'wedge') * factorOf(careful, 'apex');
  return [
    {
      say: 'The edge angle is two factors: a wedge, and the apex.',
      tex: '{{wedge}} \\times {{apex}} \\approx {{angle}}',
      values: { wedge: link(careful, 'wedge'), apex: link(careful, 'apex'), angle: on(angle) },
    },
    {
      say: `Thickness behind the edge: ${baseline.name}’s over ${subject.name}’s, to an assumed power.`,
      tex: '\\left(\\frac{{{tb}}}{{{ta}}}\\right)^{{{e}}} \\approx {{thickness}}',
      values: {
        tb: on(nominal(baselineKnife.edgeMm)),
        ta: on(nominal(subjectKnife.edgeMm)),
        e: brief(exponent),
        thickness: link(careful, 'thickness'),
      },
    },
    {
      say: 'The primary grind is the last factor of geometry.',
      tex: '{{angle}} \\times {{thickness}} \\times {{grind}} \\approx {{geometry}}',
      values: {
        angle: on(angle),
        thickness: link(careful, 'thickness'),
        grind: link(careful, 'grind'),
        geometry: on(geometry),
      },
    },
  ];
}

const quickStep = (quick: Row): WorkedStep => ({
  say: 'The same seven factors at face value: the quick sum.',
  tex: '{{w}} \\times {{a}} \\times {{t}} \\times {{g}} \\times {{f}} \\times {{h}} \\times {{c}} \\approx {{product}}',
  values: {
    w: link(quick, 'wedge'),
    a: link(quick, 'apex'),
    t: link(quick, 'thickness'),
    g: link(quick, 'grind'),
    f: link(quick, 'finish'),
    h: link(quick, 'hardness'),
    c: link(quick, 'carbide'),
    product: plain(quick.multiplied),
  },
});

/** The chain of the knife looked at, link by link, by the careful estimate; then at face value. */
function chain(scene: Scene): Worked {
  const { subject, baseline, row } = scene;
  const { careful, quick } = row;
  const { geometry, finish, steel } = careful.families;
  return {
    givens: `${subject.name} against ${baseline.name}, by the careful estimate at the middle settings; their measures stand in the list above.`,
    steps: [
      ...geometrySteps(scene),
      {
        say: 'Steel: hardness and carbide.',
        tex: '{{hardness}} \\times {{carbide}} \\approx {{steel}}',
        values: { hardness: link(careful, 'hardness'), carbide: link(careful, 'carbide'), steel: on(steel) },
      },
      {
        say: 'Geometry, finish and steel together, if all multiply.',
        tex: '{{geometry}} \\times {{finish}} \\times {{steel}} \\approx {{product}}',
        values: {
          geometry: on(geometry),
          finish: on(finish),
          steel: on(steel),
          product: plain(careful.multiplied),
        },
      },
      quickStep(quick),
    ],
  };
}

/** The forces added: the push of both knives in its parts, and the rest of the chain. */
function added(scene: Scene): Worked {
  const { subject, baseline, row } = scene;
  const { careful } = row;
  const [own, other] = [subjectPush(scene), baselinePush(scene)];
  const { finish, steel } = careful.families;
  const force = other.added / own.added;
  return {
    givens: `an ordinary blade’s push is 1, a third of it each wedge, thickness and grind. ${baseline.name} and ${subject.name} in the same parts stand in the list above.`,
    steps: [
      {
        say: 'Side by side the parts add.',
        tex: '\\begin{gathered} {{bw}} + {{bt}} + {{bg}} \\approx {{b}} \\\\ {{aw}} + {{at}} + {{ag}} \\approx {{a}} \\end{gathered}',
        values: {
          bw: finely(other.parts.wedge),
          bt: finely(other.parts.thickness),
          bg: finely(other.parts.grind),
          b: finely(other.added),
          aw: finely(own.parts.wedge),
          at: finely(own.parts.thickness),
          ag: finely(own.parts.grind),
          a: finely(own.added),
        },
      },
      {
        say: `The push of ${baseline.name} over that of ${subject.name} takes the place of the three factors.`,
        tex: '{{b}} \\div {{a}} \\approx {{force}}',
        values: { b: finely(other.added), a: finely(own.added), force: on(force) },
      },
      {
        say: `Apex, finish and steel are no part of the push, so they go on multiplying. With all seven multiplied it was ${times(careful.multiplied)}.`,
        tex: '{{force}} \\times {{apex}} \\times {{finish}} \\times {{steel}} \\approx {{total}}',
        values: {
          force: on(force),
          apex: link(careful, 'apex'),
          finish: on(finish),
          steel: on(steel),
          total: plain(careful.added),
        },
      },
    ],
  };
}

const tangent = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/** What wedging leaves of the force, in a formula: the width's two laws. */
const leftTex = (wedging: number, name: string): string =>
  wedging <= 0.7 ? `1 - {{${name}}}` : `0.09 \\div ({{${name}}} - 0.4)`;

/** To a limit: what wedging leaves of the last force, the width the edge may reach, and the life it stands for. */
function limit(scene: Scene): Worked {
  const { subject, baseline, row } = scene;
  const { careful } = row;
  const { share, power, subject: a, baseline: b } = limitOf(scene);
  const { finish, steel } = careful.families;
  const angles = anglesOf(scene);
  const cot = tangent(angles.baseline.apex) / tangent(angles.subject.apex);
  return {
    givens: `wedging takes ${plain(share)} of the last force for an ordinary blade (s), and life goes with the width of the blunt edge to the power ${plain(power)} (m).`,
    steps: [
      {
        say: 'Wedging in parts of the last force: s times the push of each knife.',
        tex: '\\begin{gathered} {{s}} \\times {{rb}} \\approx {{xb}} \\\\ {{s}} \\times {{ra}} \\approx {{xa}} \\end{gathered}',
        values: {
          s: plain(share),
          rb: finely(baselinePush(scene).added),
          xb: finely(b.wedging),
          ra: finely(subjectPush(scene).added),
          xa: finely(a.wedging),
        },
      },
      {
        say: `What is left is for the blunt edge: 1 less that share up to 0.7, and 0.09 over the share less 0.4 beyond. ${baseline.name} first.`,
        tex: `\\begin{gathered} ${leftTex(b.wedging, 'xb')} \\approx {{ub}} \\\\ ${leftTex(a.wedging, 'xa')} \\approx {{ua}} \\end{gathered}`,
        values: {
          xb: finely(b.wedging),
          ub: finely(b.width),
          xa: finely(a.wedging),
          ua: finely(a.width),
        },
      },
      {
        say: `A slimmer apex has more steel behind a flat of the same width, by the cotangent of its angle: ${subject.name} over ${baseline.name}.`,
        tex: '\\cot {{ta}}^\\circ \\div \\cot {{tb}}^\\circ \\approx {{cot}}',
        values: { ta: finely(angles.subject.apex), tb: finely(angles.baseline.apex), cot: on(cot) },
      },
      {
        say: 'That, the widths, finish and steel multiply.',
        tex: '{{cot}} \\times \\left(\\frac{{{ua}}}{{{ub}}}\\right)^{{{m}}} \\times {{finish}} \\times {{steel}} \\approx {{total}}',
        values: {
          cot: on(cot),
          ua: finely(a.width),
          ub: finely(b.width),
          m: plain(power),
          finish: on(finish),
          steel: on(steel),
          total: plain(careful.toLimit),
        },
      },
    ],
  };
}

export const stackWorked: Record<string, (scene: Scene) => Worked> = {
  'stack-chain': chain,
  'stack-added': added,
  'stack-limit': limit,
};
