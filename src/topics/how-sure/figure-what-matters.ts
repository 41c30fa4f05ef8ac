import * as Plot from '@observablehq/plot';
import { sureOf, together } from '../../scene/sure.ts';
import type { Matter } from '../../scene/sure.ts';
import { sureWords } from './words.ts';
import { percent } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { hatch } from '../../figure-kit/inks.ts';
import { shortName } from '../../figure-kit/short-name.ts';

const most = 9;

/** The largest shares, the rest of them as one, and last what only several explain together. */
function shown(matters: readonly Matter[]): Matter[] {
  if (matters.length <= most) return [...matters];
  const alone = matters.filter(({ what }) => what !== together);
  const last = matters.filter(({ what }) => what === together);
  const room = most - 1 - last.length;
  const rest = alone.slice(room).reduce((sum, { share }) => sum + share, 0);
  return [...alone.slice(0, room), { what: 'all others', family: 'shared', share: rest }, ...last];
}

/** What matters most: the share of the spread that each thing not known exactly explains alone. */
export const whatMatters: Figure = {
  id: 'what-matters',
  title: ({ subject, baseline }) => `What the doubt comes from: ${subject.name} against ${baseline.name}`,
  units: 'share of the variance of ln ratio',
  scale: 'bars to scale',
  reading: () => 'careful estimate',
  source: 'first-order shares of the samples',
  options(scene, { narrow }) {
    const bars = shown(sureOf(scene).matters);
    const line = 38;
    return {
      height: Math.max(1, bars.length) * line + 20,
      marginLeft: 6,
      marginRight: 46,
      marginTop: 6,
      marginBottom: 14,
      x: { domain: [0, Math.max(0.1, ...bars.map(({ share }) => share))], axis: null },
      y: { domain: bars.map(({ what }) => what), axis: null, padding: 0 },
      marks: [
        Plot.barX(bars, {
          x: 'share',
          y: 'what',
          insetTop: 20,
          insetBottom: 4,
          fill: ({ family }: Matter) => (family === 'shared' ? 'var(--hair)' : hatch(family)),
          stroke: ({ family }: Matter) => (family === 'shared' ? 'var(--text)' : `var(--${family})`),
        }),
        Plot.text(bars, {
          x: 0,
          y: 'what',
          text: ({ what }: Matter) => shortName(what, narrow ? 44 : 80),
          textAnchor: 'start',
          dy: -9,
        }),
        Plot.text(bars, {
          x: 'share',
          y: 'what',
          text: ({ share }: Matter) => percent(share),
          textAnchor: 'start',
          dx: 6,
          dy: 8,
          className: 'kf-value',
        }),
        ...(bars.length === 0
          ? [Plot.text(['nothing is uncertain'], { frameAnchor: 'middle', className: 'kf-faint' })]
          : []),
      ],
    };
  },
  table(scene) {
    return {
      columns: ['What is not known exactly', 'Family', 'Share of the spread'],
      rows: sureOf(scene).matters.map(({ what, family, share }) => [
        what,
        family === 'shared' ? 'shared by all knives' : family,
        percent(share, 1),
      ]),
    };
  },
  caption: (scene) => sureWords['band-matters']?.(scene).filter(Boolean).join(' ') ?? '',
};
