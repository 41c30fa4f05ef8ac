import * as Plot from '@observablehq/plot';
import { abrasiveOverPhase } from '../../model/index.ts';
import { short, times } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';
import { steelsOf } from '../../scene/steel.ts';
import type { Steel } from '../../scene/steel.ts';
import { quartzHv } from './numbers.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { hatch, ink } from '../../figure-kit/inks.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { valueText } from '../../figure-kit/value-text.ts';

/** How many times as hard as a phase quartz is: a range where it is known no better. */
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
  const ofSteel = (line: string, { name, hrc, vickers }: Steel): Phase => {
    const ratio = quartzHv / vickers;
    return { line, name, said: `${short(hrc)} HRC, ${short(vickers)} HV`, low: ratio, high: ratio };
  };
  const { cementite, Cr7C3, VC } = abrasiveOverPhase;
  const phase = (name: string, said: string, low: number, high = low): Phase => ({
    line: name,
    name,
    said,
    low,
    high,
  });
  return [
    ofSteel('baseline', baseline),
    ofSteel('subject', subject),
    phase('Cementite', 'Fe₃C', cementite),
    phase('Chromium carbide', 'Cr₇C₃', Cr7C3.low, Cr7C3.high),
    phase('Vanadium carbide', 'VC', VC),
  ].sort((a, b) => b.high - a.high);
}

const ratioSaid = ({ line, low, high }: Phase): string =>
  low < high
    ? `${times(low, 2)} to ${times(high, 2)}`
    : times(low, line === 'subject' || line === 'baseline' ? 3 : 2);

/** Why carbide helps: how many times as hard as each phase the quartz in the work is. */
export const phaseBars: Figure = {
  id: 'phase-bars',
  title: ({ subject, baseline }) =>
    `Quartz against the steels of ${baseline.name} and ${subject.name}, and against carbides`,
  units: 'hardness of quartz over hardness of the phase',
  scale: 'linear axis from 0',
  reading: () => 'as entered',
  source: 'astm-e140-hardness; carbides from memory',
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
        Plot.barX(
          phases.filter(({ low, high }) => low < high),
          { y: 'line', x1: 'low', x2: 'high', insetTop: 22, insetBottom: 6, className: 'kf-may-be' },
        ),
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
            `${shortName(phase.name, narrow ? 16 : 34)}, ${phase.said}: ${ratioSaid(phase)}`,
          dx: 6,
          dy: -12,
        }),
      ],
    };
  },
  /** The bar of either steel by its end. */
  drag(scene, _size, { y }) {
    const line = phasesOf(scene)[y]?.line;
    return line === 'subject' || line === 'baseline'
      ? { control: `${line}.hrc`, stands: (other) => quartzHv / steelsOf(other)[line].vickers }
      : undefined;
  },
  table: (scene) => ({
    columns: ['Phase', 'What it is', 'Quartz over it'],
    rows: phasesOf(scene).map((phase) => [phase.name, phase.said, ratioSaid(phase)]),
  }),
  caption(scene) {
    const { subject, baseline } = steelsOf(scene);
    const { VC } = abrasiveOverPhase;
    const harder = [subject, baseline].filter(({ vickers }) => vickers >= quartzHv);
    return `Quartz is ${times(quartzHv / baseline.vickers)} as hard as the steel of ${baseline.name} and ${times(quartzHv / subject.vickers)} as hard as that of ${subject.name}, but only ${times(VC, 2)} as hard as vanadium carbide. ${harder.length > 0 ? '' : 'No hardening brings a steel to 1; its carbides can be there.'}`.trim();
  },
};
