import { nominal } from '../../model/index.ts';
import {
  anglesOf,
  exponentReadAt,
  exponentsOf,
  frictionAngleAt,
  frictionLeft,
  routesOf,
} from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain, times } from '../../scene/show.ts';
import type { Worked, WorkedStep } from '../worked.ts';

/** Four digits where a value goes on into the next step, so that the reader's own sum agrees with the page. */
const on = (value: number): string => plain(value, 4);

/** What the slice leaves of the friction, for either knife. */
function frictionSteps(scene: Scene): WorkedStep[] {
  const { entry, subject, baseline } = scene;
  const angles = anglesOf(scene);
  const step = (say: string, letter: 'a' | 'b', bevelDeg: number): WorkedStep => ({
    say,
    tex: `\\begin{gathered} \\frac{{{m}}}{\\sqrt{1 + {{x}}^2 \\cos^2 {{${letter}}}^\\circ}} \\approx {{left}} \\\\ \\arctan({{left}}) \\approx {{p${letter}}}^\\circ \\end{gathered}`,
    values: {
      m: brief(nominal(entry.friction)),
      x: brief(entry.slicePush),
      [letter]: brief(bevelDeg),
      left: on(frictionLeft(scene, bevelDeg)),
      [`p${letter}`]: on(frictionAngleAt(scene, bevelDeg)),
    },
  });
  return [
    step(
      `What the slice leaves of the friction for ${subject.name}, first as a coefficient, then as an angle.`,
      'a',
      angles.subject.bevel,
    ),
    step(`The same for ${baseline.name}.`, 'b', angles.baseline.bevel),
  ];
}

/** The power that is left for the apex, and the careful estimate with it. */
function dampedSteps(scene: Scene): WorkedStep[] {
  const { wedge, tooth, apex, careful } = routesOf(scene);
  const exponents = exponentsOf(scene);
  return [
    {
      say: `At 15°, with a friction of ${brief(exponentReadAt.friction)} and a draw of ${brief(exponentReadAt.slicePush)} to 1, the wedge has the first exponent below. The tooth depth in full has the second. Multiplying factors adds exponents.`,
      tex: '{{w}} + {{s}} \\approx {{sum}}',
      values: {
        w: plain(exponents.wedge),
        s: plain(exponents.tooth),
        sum: plain(exponents.wedge + exponents.tooth),
      },
    },
    {
      say: `The angle in all is given the exponent E = ${brief(exponents.total)}. Take off the wedge’s, and divide by that of the tooth depth: the power that is left for the apex. It stays the same at any friction.`,
      tex: '\\frac{{{total}} - {{w}}}{{{s}}} \\approx {{e}}',
      values: {
        total: brief(exponents.total),
        w: on(exponents.wedge),
        s: on(exponents.tooth),
        e: on(exponents.apex),
      },
    },
    {
      say: `The careful estimate: the wedge in full, the apex to that power, ${times(apex)}.`,
      tex: '{{wedge}} \\times {{tooth}}^{{{e}}} \\approx {{careful}}',
      values: { wedge: on(wedge), tooth: on(tooth), e: on(exponents.apex), careful: plain(careful) },
    },
  ];
}

/** Wedge, apex and their product; then the same with the apex to the power that is left for it. */
function twoRoutes(scene: Scene): Worked {
  const { entry, subject, baseline } = scene;
  const angles = anglesOf(scene);
  const [a, b] = [angles.subject, angles.baseline];
  const { wedge, tooth, wear, full } = routesOf(scene);
  const friction = brief(nominal(entry.friction));
  const phi = { pa: on(frictionAngleAt(scene, a.bevel)), pb: on(frictionAngleAt(scene, b.bevel)) };
  const given = (name: string, { bevel, apex: atApex }: { bevel: number; apex: number }) =>
    `${name} ${brief(bevel)}° per side${atApex === bevel ? '' : `, ${brief(atApex)}° at its microbevel`}`;

  return {
    givens: `${given(subject.name, a)}; ${given(baseline.name, b)}; friction coefficient ${friction}; slice to push ${brief(entry.slicePush)}.`,
    steps: [
      ...frictionSteps(scene),
      {
        say: `The first route, the wedge: the push that ${baseline.name} needs over the push that ${subject.name} needs.`,
        tex: '\\frac{\\tan({{b}}^\\circ + {{pb}}^\\circ)}{\\tan({{a}}^\\circ + {{pa}}^\\circ)} \\approx {{wedge}}',
        values: { a: brief(a.bevel), b: brief(b.bevel), ...phi, wedge: on(wedge) },
      },
      {
        say: `The second route, the apex, by tooth depth. By steel to wear away it would be tangents instead of sines, and ${times(wear)}.`,
        tex: '\\frac{\\sin {{b}}^\\circ}{\\sin {{a}}^\\circ} \\approx {{tooth}}',
        values: { a: brief(a.apex), b: brief(b.apex), tooth: on(tooth) },
      },
      {
        say: 'Both in full, if the second works on what the first left: multiply.',
        tex: '{{wedge}} \\times {{tooth}} \\approx {{full}}',
        values: { wedge: on(wedge), tooth: on(tooth), full: plain(full) },
      },
      ...dampedSteps(scene),
    ],
  };
}

export const routesWorked: Record<string, (scene: Scene) => Worked> = { 'two-routes': twoRoutes };
