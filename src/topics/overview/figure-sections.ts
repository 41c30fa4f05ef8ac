import * as Plot from '@observablehq/plot';
import { nominal } from '../../model/index.ts';
import type { Knife } from '../../model/index.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain, short } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { gridY } from '../../figure-kit/grid.ts';
import { edgeShape, halfOutline, thicknessAboveApexMm } from '../../figure-kit/outline.ts';

interface Point {
  x: number;
  y: number;
  knife: string;
}

/** How far above the apex the section is drawn, mm. */
const drawnMm = 10;

/** As much of a name as fits beside its section; the caption and the table have it whole. */
const shortened = (name: string, most: number): string => {
  const letters = [...name];
  return letters.length > most ? `${letters.slice(0, most - 1).join('')}…` : name;
};

/** Both edges in cross-section, side by side and to the same scale in both directions. */
export const sections: Figure = {
  id: 'sections',
  title: ({ subject, baseline }) => `Sections of ${baseline.name} and ${subject.name}`,
  units: 'mm',
  scale: 'to scale, both directions alike',
  reading: () => 'as entered',
  source: 'derived',
  options(scene, { width, narrow }) {
    const knives = [
      { knife: scene.baselineKnife, name: scene.baseline.name },
      { knife: scene.subjectKnife, name: scene.subject.name },
    ];
    const marginLeft = 34;
    const marginRight = 8;
    const height = narrow ? 350 : 420;
    const marginTop = 26;
    // The labels stand below the apexes, where no outline can run into them.
    const marginBottom = narrow ? 84 : 74;
    // One millimetre is as long across as up: the width in mm follows from the drawing's own proportions.
    const acrossMm = (drawnMm * (width - marginLeft - marginRight)) / (height - marginTop - marginBottom);
    const centres = [-acrossMm / 4, acrossMm / 4];
    const outlines = knives.map(({ knife, name }, index) => {
      const half = halfOutline(knife, drawnMm);
      const centre = centres[index] ?? 0;
      return [
        ...half.map(({ upMm, halfMm }): Point => ({ x: centre + halfMm, y: upMm, knife: name })).reverse(),
        ...half.map(({ upMm, halfMm }): Point => ({ x: centre - halfMm, y: upMm, knife: name })),
      ];
    });
    return {
      height,
      marginLeft,
      marginRight,
      marginTop,
      marginBottom,
      x: { domain: [-acrossMm / 2, acrossMm / 2], axis: null },
      y: { domain: [0, drawnMm], label: 'mm above the apex', ticks: 5 },
      marks: [
        gridY(5),
        ...outlines.map((points) =>
          Plot.line(points, { x: 'x', y: 'y', className: 'kf-section', clip: true }),
        ),
        Plot.ruleX(centres, { className: 'kf-centre' }),
        Plot.text(
          knives.map(({ knife, name }, index) => ({
            x: centres[index] ?? 0,
            text: [
              shortened(name, narrow ? 16 : 30),
              `${brief(nominal(knife.angleDeg))}° per side`,
              `${brief(nominal(knife.edgeMm))} mm${narrow ? '\n' : ' '}behind the edge`,
            ].join('\n'),
          })),
          {
            x: 'x',
            y: 0,
            text: 'text',
            dy: 14,
            lineAnchor: 'top',
            lineHeight: 1.2,
            className: 'kf-value kf-on-paper',
          },
        ),
      ],
    };
  },
  table(scene) {
    const column = ({ subjectKnife, baselineKnife }: Scene, of: (knife: Knife) => string) => [
      of(baselineKnife),
      of(subjectKnife),
    ];
    const at = (upMm: number) => (knife: Knife) => `${plain(thicknessAboveApexMm(knife, upMm), 2)} mm`;
    return {
      columns: ['Measure', scene.baseline.name, scene.subject.name],
      rows: [
        ['Edge angle per side', ...column(scene, (knife) => `${plain(nominal(knife.angleDeg))}°`)],
        ['Thickness behind the edge', ...column(scene, (knife) => `${plain(nominal(knife.edgeMm))} mm`)],
        ['Height of the bevel', ...column(scene, (knife) => `${plain(edgeShape(knife).shoulder.upMm)} mm`)],
        ...[1, 2, 4, 6, 8].map((up) => [`Thickness ${up} mm above the apex`, ...column(scene, at(up))]),
      ],
    };
  },
  caption: ({ subject, baseline, subjectKnife, baselineKnife }) =>
    [[baseline.name, baselineKnife] as const, [subject.name, subjectKnife] as const]
      .map(
        ([name, { angleDeg, edgeMm }]) =>
          `${name} has ${short(nominal(angleDeg))}° per side and ${short(nominal(edgeMm))} mm behind the edge.`,
      )
      .join(' '),
};
