import * as Plot from '@observablehq/plot';
import { carbideWithPlusMinus } from '../../phrases/hardened-carbide.ts';
import { plain } from '../../scene/show.ts';
import type { Hardened } from '../../scene/steel.ts';
import type { Figure, Size, Table } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import type { Drawing } from '../../figure-kit/figure.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { valueText } from '../../figure-kit/value-text.ts';
import type { Scene } from '../../scene/scene.ts';

/** A lever as it is drawn: carbon, weight %, along it. */
interface Lever {
  line: string;
  poor: number;
  least: number;
  most: number;
  whole: number;
  rich: number;
  said: string;
}

const from = ({ celsius }: Hardened): string =>
  celsius === null ? 'temperature not known' : `from ${celsius} °C`;

function leverOf(hardened: Hardened): Lever {
  const { tieLine, austeniteCarbon } = hardened.estimate;
  const { value, plusMinus } = austeniteCarbon;
  return {
    line: from(hardened),
    poor: tieLine.matrix,
    least: Math.max(0, value - plusMinus),
    most: Math.min(tieLine.whole, value + plusMinus),
    whole: tieLine.whole,
    rich: tieLine.carbide,
    said: `${from(hardened)}: ${carbideWithPlusMinus(hardened)}`,
  };
}

/** Levers of carbon, one below the other: pivot at the steel's carbon, one end in the matrix, the other in the carbide. */
function leversDrawn(rows: readonly Hardened[], { narrow }: Size): Drawing {
  const levers = rows.map(leverOf);
  const [first] = levers;
  const end = (first?.rich ?? 7) * 1.06;
  const ends = levers.slice(0, 1).flatMap(({ line, rich }) => [{ line, at: rich, text: 'carbide' }]);
  return {
    height: levers.length * 66 + 56,
    marginLeft: 14,
    marginRight: 14,
    marginTop: 8,
    marginBottom: 42,
    x: {
      domain: [0, end],
      ...centredLabel('carbon, % by mass'),
      ticks: narrow ? 5 : 10,
    },
    y: { type: 'band', domain: levers.map(({ line }) => line), axis: null, padding: 0 },
    marks: [
      gridX(narrow ? 5 : 10),
      baselineX(0),
      // What the austenite may hold, then the two arms.
      Plot.barX(levers, {
        y: 'line',
        x1: 'least',
        x2: 'most',
        insetTop: 26,
        insetBottom: 20,
        className: 'kf-may-be',
      }),
      Plot.ruleY(levers, { y: 'line', x1: 'poor', x2: 'rich', dy: 3, className: 'kf-stem' }),
      Plot.ruleY(levers, { y: 'line', x1: 'poor', x2: 'whole', dy: 3, className: 'kf-short-arm' }),
      Plot.dot(levers, { y: 'line', x: 'poor', dy: 3, r: 4, className: 'kf-stem kf-open' }),
      Plot.dot(levers, { y: 'line', x: 'rich', dy: 3, r: 5, className: 'kf-answer' }),
      Plot.dot(levers, { y: 'line', x: 'whole', dy: 12, r: 6, symbol: 'triangle', className: 'kf-answer' }),
      valueText(levers, {
        y: 'line',
        x: 0,
        text: 'said',
        dx: 4,
        dy: -20,
      }),
      Plot.text(ends, {
        y: 'line',
        x: 'at',
        text: 'text',
        textAnchor: 'end',
        dx: 4,
        dy: 20,
        className: 'kf-faint kf-on-paper',
      }),
    ],
  };
}

/** The numbers of the same. */
const leversTable = (rows: readonly Hardened[]): Table => ({
  columns: [
    'Hardened',
    'Carbon in the matrix',
    'Pivot: carbon of the steel',
    'Carbon in the carbide',
    'Short arm over lever',
    'Carbide, by volume',
  ],
  rows: rows.map((hardened) => {
    const { matrix, whole, carbide, formula, massFraction } = hardened.estimate.tieLine;
    return [
      from(hardened),
      `${plain(matrix, 2)} ± ${plain(hardened.estimate.austeniteCarbon.plusMinus, 1)}%`,
      `${plain(whole)}%`,
      `${plain(carbide)}% (${formula})`,
      plain(massFraction, 2),
      carbideWithPlusMinus(hardened),
    ];
  }),
});

interface Levers {
  id: string;
  title: Figure['title'];
  hardenedOf(scene: Scene): readonly Hardened[];
  caption: Figure['caption'];
}

/** The lever of carbon in a steel, hardened one way or several. */
export const leverFigure = ({ id, title, hardenedOf, caption }: Levers): Figure => ({
  id,
  title,
  units: 'carbon, % by mass; carbide, % by volume',
  scale: 'to scale along the axis',
  reading: () => 'carbon balance at the hardening temperature',
  source: 'IUPAC, 2021; saturation, composition and densities from memory',
  options: (scene, size) => leversDrawn(hardenedOf(scene), size),
  table: (scene) => leversTable(hardenedOf(scene)),
  caption,
});
