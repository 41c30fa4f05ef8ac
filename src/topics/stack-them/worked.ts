import { nominal, parameters } from '../../model/index.ts';
import type { Row, TermId } from '../../model/index.ts';
import { factorOf } from '../../comparison/found.ts';
import { pushShares, subjectPush } from './push.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain, times } from '../../scene/show.ts';
import type { Worked, WorkedStep } from '../worked.ts';

/** Four digits where a value goes on into the next step, so that the reader's own sum agrees with the page. */
const on = (value: number): string => plain(value, 4);
/** Five, where a sum and a division follow. */
const finely = (value: number): string => plain(value, 5);

/** A link of the chain as the steps show it. */
function link(row: Row, id: TermId): string {
  const factor = factorOf(row, id);
  return factor === null ? 'left out' : on(factor);
}

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
  const angle = (factorOf(careful, 'wedge') ?? Number.NaN) * (factorOf(careful, 'apex') ?? Number.NaN);
  return [
    {
      say: 'The edge angle is two links: a wedge, and the apex.',
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
      say: 'The primary grind is the last link of geometry.',
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
  say: 'The same seven links at face value: the pocket reading.',
  tex: '{{w}} \\times {{a}} \\times {{t}} \\times {{g}} \\times {{f}} \\times {{h}} \\times {{c}} \\approx {{product}}',
  values: {
    w: link(quick, 'wedge'),
    a: link(quick, 'apex'),
    t: link(quick, 'thickness'),
    g: link(quick, 'grind'),
    f: link(quick, 'finish'),
    h: link(quick, 'hardness'),
    c: link(quick, 'carbide'),
    product: plain(quick.product),
  },
});

/** The chain of the knife looked at, link by link, by the careful estimate; then at face value. */
function chain(scene: Scene): Worked {
  const { subject, baseline, row } = scene;
  const { careful, quick } = row;
  const { geometry, finish, steel } = careful.families;
  const short = careful.complete ? '' : ' A link that is left out takes no part.';
  return {
    givens: `${subject.name} against ${baseline.name}, close reading; their measures stand in the list above.`,
    steps: [
      ...geometrySteps(scene),
      {
        say: `Steel: hardness and carbide.${short}`,
        tex: '{{hardness}} \\times {{carbide}} \\approx {{steel}}',
        values: { hardness: link(careful, 'hardness'), carbide: link(careful, 'carbide'), steel: on(steel) },
      },
      {
        say: 'Geometry, finish and steel together.',
        tex: '{{geometry}} \\times {{finish}} \\times {{steel}} \\approx {{product}}',
        values: {
          geometry: on(geometry),
          finish: on(finish),
          steel: on(steel),
          product: plain(careful.product),
        },
      },
      quickStep(quick),
    ],
  };
}

/** The rival: the baseline's push in its parts, each divided by its factor, and the rest of the chain. */
function rival(scene: Scene): Worked {
  const { subject, baseline, row } = scene;
  const { careful } = row;
  const shares = pushShares(scene);
  const { parts, added } = subjectPush(scene);
  const apex = factorOf(careful, 'apex');
  const { finish, steel } = careful.families;
  return {
    givens: `the push of ${baseline.name} is 1, of which ${plain(shares.wedge)} is wedge, ${plain(shares.thickness)} thickness and ${plain(shares.grind)} grind.`,
    steps: [
      {
        say: `Each part of the push, divided by its own factor: what ${subject.name} needs for it.`,
        tex: '\\begin{gathered} {{cw}} \\div {{w}} \\approx {{pw}} \\\\ {{ct}} \\div {{t}} \\approx {{pt}} \\\\ {{cg}} \\div {{g}} \\approx {{pg}} \\end{gathered}',
        values: {
          cw: finely(shares.wedge),
          w: finely(factorOf(careful, 'wedge')),
          pw: finely(parts.wedge),
          ct: finely(shares.thickness),
          t: finely(factorOf(careful, 'thickness')),
          pt: finely(parts.thickness),
          cg: finely(shares.grind),
          g: finely(factorOf(careful, 'grind')),
          pg: finely(parts.grind),
        },
      },
      {
        say: 'Side by side they add. The factor is 1 over the sum.',
        tex: '\\begin{gathered} {{pw}} + {{pt}} + {{pg}} \\\\ \\approx {{added}} \\\\ 1 \\div {{added}} \\approx {{force}} \\end{gathered}',
        values: {
          pw: finely(parts.wedge),
          pt: finely(parts.thickness),
          pg: finely(parts.grind),
          added: finely(added),
          force: on(1 / added),
        },
      },
      {
        say: `Apex, finish and steel are no part of the push, so they go on multiplying. Multiplied throughout, the chain was ${times(careful.product)}.`,
        tex: '{{force}} \\times {{apex}} \\times {{finish}} \\times {{steel}} \\approx {{rival}}',
        values: {
          force: on(1 / added),
          apex: on(apex),
          finish: on(finish),
          steel: on(steel),
          rival: plain(careful.rival),
        },
      },
    ],
  };
}

export const stackWorked: Record<string, (scene: Scene) => Worked> = {
  'stack-chain': chain,
  'stack-rival': rival,
};
