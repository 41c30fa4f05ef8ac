import * as Plot from '@observablehq/plot';
import { abrasiveOverPhase, quartzHv, quartzOver } from '../../model/index.ts';
import { short } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';
import { steelsOf } from '../../scene/steel.ts';
import type { Steel } from '../../scene/steel.ts';
import { overPhaseSaid } from './over-phase.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { hatch, ink } from '../../figure-kit/inks.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { valueText } from '../../figure-kit/value-text.ts';

/** How many times as hard as a phase quartz is, as a range: quartz itself has no one hardness. */
interface Phase {
  line: string;
  name: string;
  said: string;
  low: number;
  high: number;
}

/** From the softest to the hardest. */
function phasesOf(scene: Scene): Phase[] {
  const { subject, baseline } = steelsOf(scene);
  const ofSteel = (line: string, { name, hrc, vickers }: Steel): Phase => ({
    line,
    name,
    said: `${short(hrc)} HRC, ${short(vickers)} HV`,
    ...quartzOver(vickers),
  });
  const { cementite, Cr7C3, VC } = abrasiveOverPhase;
  const phase = (name: string, said: string, over: { low: number; high: number }): Phase => ({
    line: name,
    name,
    said,
    ...over,
  });
  return [
    ofSteel('baseline', baseline),
    ofSteel('subject', subject),
    phase('Cementite', 'Fe₃C', cementite),
    phase('Chromium carbide', 'Cr₇C₃', Cr7C3),
    phase('Vanadium carbide', 'VC', VC),
  ].sort((a, b) => b.high - a.high);
}

/** Why carbide helps: how many times as hard as each phase the quartz in the work is. */
export const phaseBars: Figure = {
  id: 'phase-bars',
  title: ({ subject, baseline }) =>
    `Quartz against the steels of ${baseline.name} and ${subject.name}, and against carbides`,
  units: 'hardness of quartz over hardness of the phase',
  scale: 'linear axis from 0',
  reading: () => 'as entered',
  source: 'ASTM E140; quartz and carbides from memory',
  options(scene, { narrow }) {
    const phases = phasesOf(scene);
    const most = Math.max(2.2, ...phases.map(({ high }) => high * 1.04));
    return {
      height: phases.length * 46 + 58,
      marginLeft: 8,
      marginRight: 14,
      marginTop: 22,
      marginBottom: 40,
      x: {
        domain: [0, most],
        ...centredLabel('times as hard as the phase'),
        ticks: narrow ? 4 : 8,
      },
      y: { domain: phases.map(({ line }) => line), axis: null, padding: 0 },
      marks: [
        gridX(narrow ? 4 : 8),
        Plot.barX(phases, {
          y: 'line',
          x1: 0,
          x2: 'low',
          insetTop: 22,
          insetBottom: 6,
          fill: hatch('steel'),
          stroke: ink('steel'),
        }),
        Plot.barX(phases, {
          y: 'line',
          x1: 'low',
          x2: 'high',
          insetTop: 22,
          insetBottom: 6,
          className: 'kf-may-be',
        }),
        Plot.ruleX([1], { className: 'kf-dimension' }),
        baselineX(0),
        Plot.text([1], {
          x: (at: number) => at,
          text: () => 'as hard as quartz',
          frameAnchor: 'top',
          dy: -14,
          className: 'kf-faint',
        }),
        valueText(phases, {
          y: 'line',
          x: 0,
          text: (phase: Phase) =>
            `${shortName(phase.name, narrow ? 16 : 34)}, ${phase.said}: ${overPhaseSaid(phase)}`,
          dx: 6,
          dy: -12,
        }),
      ],
    };
  },
  /** The bar of either steel by its far end. */
  drag(scene, _size, { y }) {
    const line = phasesOf(scene)[y]?.line;
    return line === 'subject' || line === 'baseline'
      ? { control: `${line}.hrc`, stands: (other) => quartzHv.high / steelsOf(other)[line].vickers }
      : undefined;
  },
  table: (scene) => ({
    columns: ['Phase', 'What it is', 'Quartz over it'],
    rows: phasesOf(scene).map((phase) => [phase.name, phase.said, overPhaseSaid(phase)]),
  }),
  caption(scene) {
    const { subject, baseline } = steelsOf(scene);
    const over = (vickers: number): string => overPhaseSaid(quartzOver(vickers));
    return `Quartz is ${over(baseline.vickers)} as hard as the steel of ${baseline.name} and ${over(subject.vickers)} as hard as that of ${subject.name}. It is only ${overPhaseSaid(abrasiveOverPhase.VC)} as hard as vanadium carbide. The hardest steel just reaches the softest quartz; carbides can be far harder.`;
  },
};
