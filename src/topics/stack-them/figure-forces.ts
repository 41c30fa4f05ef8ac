import * as Plot from '@observablehq/plot';
import { baselinePush, pushes, subjectPush } from './push.ts';
import type { Push } from './push.ts';
import { forceIds } from '../../scene/factors.ts';
import type { ForceId } from '../../scene/factors.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { hatch, ink } from '../../figure-kit/inks.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { valueText } from '../../figure-kit/value-text.ts';
import { factorName } from '../../phrases/factor-names.ts';

interface Part {
  name: string;
  id: ForceId;
  from: number;
  to: number;
}

/** The parts of a push, laid end to end. */
function partsOf({ parts, id: knife }: Push): Part[] {
  let reached = 0;
  return forceIds.map((id) => {
    const from = reached;
    reached += parts[id];
    return { name: knife, id, from, to: reached };
  });
}

/** The baseline first, then the others in the order of the comparison. */
const inOrder = (scene: Scene): Push[] => {
  const all = pushes(scene);
  const isBaseline = ({ id }: Push) => id === scene.entry.baseline;
  return [...all.filter(isBaseline), ...all.filter((push) => !isBaseline(push))];
};

/** The parts as bars, with the letter of each where there is room for it. */
const partBars = (parts: readonly Part[], unitPx: number): Plot.RenderableMark[] => [
  Plot.barX(parts, {
    y: 'name',
    x1: 'from',
    x2: 'to',
    fill: hatch('geometry'),
    stroke: ink('geometry'),
    insetTop: 5,
    insetBottom: 15,
  }),
  Plot.text(
    parts.filter(({ from, to }) => (to - from) * unitPx > 18),
    {
      y: 'name',
      x: ({ from, to }: Part) => (from + to) / 2,
      text: ({ id }: Part) => factorName(id).name.charAt(0),
      dy: -5,
      className: 'kf-value kf-on-paper',
    },
  ),
];

/** Where the push would be if it went with the product, below the bars. */
const multipliedMarks = (pushed: readonly Push[]): Plot.RenderableMark[] => {
  const place = { y: 'id', x: 'multiplied', dy: 12 } as const;
  return [
    Plot.dot(pushed, { ...place, r: 4.5, symbol: 'diamond', className: 'kf-answer' }),
    Plot.text(pushed, {
      ...place,
      text: ({ multiplied }: Push) => percent(multiplied),
      textAnchor: 'start',
      dx: 8,
      className: 'kf-faint kf-on-paper',
    }),
  ];
};

/** Three forces side by side: every knife's push as a sum, and where the product of its factors would put it. */
export const forces: Figure = {
  id: 'forces',
  title: () => 'Wedge, thickness and grind side by side, in parts of an ordinary blade’s push',
  units: 'parts of an ordinary blade’s push',
  scale: 'linear axis from 0',
  reading: () => 'careful estimate',
  source: 'a third of the push each assumed; forces from the model',
  options(scene, { narrow, width }) {
    const all = inOrder(scene);
    const parts = all.flatMap(partsOf);
    const high = Math.max(1, ...all.flatMap(({ added, multiplied }) => [added, multiplied]));
    const [marginLeft, marginRight] = [narrow ? 78 : 150, 50];
    return {
      height: all.length * 40 + 54,
      marginLeft,
      marginRight,
      marginTop: 6,
      marginBottom: 42,
      x: {
        domain: [0, high],
        ...centredLabel(narrow ? 'parts of an ordinary push' : 'push, in parts of an ordinary blade’s'),
        ticks: 5,
      },
      y: { domain: all.map(({ id }) => id), axis: null },
      marks: [
        Plot.axisY(
          all.map(({ id }) => id),
          { text: all.map(({ name }) => shortName(name, narrow ? 10 : 21)), label: null, tickSize: 0 },
        ),
        gridX(5),
        ...partBars(parts, (width - marginLeft - marginRight) / high),
        valueText(all, {
          y: 'id',
          x: 'added',
          text: ({ added }: Push) => percent(added),
          dx: 6,
          dy: -5,
        }),
        baselineX(1),
        ...multipliedMarks(all.filter(({ id }) => id !== scene.entry.baseline)),
      ],
    };
  },
  /** The subject's wedge and thickness, whichever end is nearer. */
  drag(scene, _size, { x, y }) {
    const push = inOrder(scene)[y];
    if (push?.id !== scene.entry.subject) return undefined;
    const [wedge = 0, thickness = 0] = partsOf(push).map(({ to }) => to);
    const part = x < (wedge + thickness) / 2 ? 0 : 1;
    return {
      control: part === 0 ? 'subject.angle' : 'subject.edge',
      stands: (other) => partsOf(subjectPush(other))[part]?.to ?? 0,
    };
  },
  table(scene) {
    const all = inOrder(scene);
    const baseline = baselinePush(scene);
    return {
      columns: [
        'Knife',
        ...forceIds.map((id) => `Push for ${id}`),
        'Added',
        'By the product',
        'Factor if they add',
        'Factor if they multiply',
      ],
      rows: all.map(({ name, parts, added, multiplied }) => [
        name,
        ...forceIds.map((id) => percent(parts[id], 1)),
        percent(added, 1),
        percent(multiplied, 1),
        times(baseline.added / added),
        times(baseline.multiplied / multiplied),
      ]),
    };
  },
  caption(scene) {
    const [{ added, multiplied, name }, baseline] = [subjectPush(scene), baselinePush(scene)];
    return `In parts of an ordinary blade’s push, ${baseline.name} needs ${percent(baseline.added)} and ${name} ${percent(added)} if wedge (W), thickness (T) and grind (G) add. The diamond shows where the product of the three factors would put ${name}: ${percent(multiplied)}.`;
  },
};
