import * as Plot from '@observablehq/plot';
import type { Family, Reading } from '../../model/index.ts';
import { groundRoom, roomIn, roomOfFamilies } from '../../scene/ranges.ts';
import type { Room } from '../../scene/ranges.ts';
import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import type { Figure, Size } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';
import { hatch, ink } from '../../figure-kit/inks.ts';
import type { Drawing } from '../../figure-kit/figure.ts';
import { whisker } from '../../figure-kit/whisker.ts';
import { readingName } from '../../phrases/reading-name.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { valueText } from '../../figure-kit/value-text.ts';
import { familyName } from '../../phrases/family-names.ts';

interface Bar extends Room {
  reading: Reading;
  line: string;
}

const readings: readonly Reading[] = ['quick', 'careful'];
const title: Record<Reading, string> = { quick: 'Quick', careful: 'Careful' };
const lineOf = (reading: Reading, family: Family): string => `${title[reading]}: ${familyName[family].name}`;

const barsOf = ({ comparison }: Scene): Bar[] => {
  const rooms = roomOfFamilies(comparison);
  return readings.flatMap((reading) =>
    rooms[reading].map((room) => ({ ...room, reading, line: lineOf(reading, room.family) })),
  );
};

const table: Figure['table'] = ({ comparison }) => {
  const rooms = roomOfFamilies(comparison);
  return {
    columns: ['Family', 'Reading', 'Best over worst', 'Least', 'Most', 'Forces added', 'To a limit'],
    rows: readings.flatMap((reading) => {
      const line = (name: string, { factor, low, high, added, toLimit }: Omit<Room, 'family' | 'terms'>) => [
        name,
        readingName[reading],
        times(factor),
        times(low),
        times(high),
        times(added),
        times(toLimit),
      ];
      return [
        ...rooms[reading].map((room) => line(familyName[room.family].name, room)),
        line('Geometry and finish', groundRoom(rooms[reading])),
      ];
    }),
  };
};

/** The careful bar of the finish by its end: of all bars the only one that depends on a single exponent. */
const holdFinish =
  (line: number): NonNullable<Figure['drag']> =>
  (_scene, _size, { y }) =>
    y === line
      ? {
          control: 'finishExponent',
          stands: ({ comparison }) => roomIn(roomOfFamilies(comparison).careful, 'finish').factor,
        }
      : undefined;

interface Twin {
  id: string;
  title: string;
  scale: string;
  /** Where the careful bar of the finish stands, counted from the top. */
  finishRow: number;
  drawn(bars: readonly Bar[], size: Size): Drawing;
  caption(rooms: Record<Reading, Room[]>): string;
}

/** The bars by their lines, filled by family; `along` gives them their ends. */
const roomBars = (bars: readonly Bar[], along: Plot.BarXOptions) =>
  Plot.barX(bars, {
    y: 'line',
    fill: ({ family }: Bar) => hatch(family),
    stroke: ({ family }: Bar) => ink(family),
    insetTop: 5,
    ...along,
  });

/** The factor of each bar, beside its end. */
const factors = {
  y: 'line',
  x: 'factor',
  text: ({ factor }: Bar) => times(factor),
  textAnchor: 'start',
  dx: 7,
} as const;

/** The rooms of the families, by one axis or another. */
const roomsFigure = ({ id, title: own, scale, finishRow, drawn, caption }: Twin): Figure => ({
  id,
  title: () => own,
  units: 'times as long as the worst',
  scale,
  reading: () => 'quick sum and careful estimate',
  source: 'factor model; ordinary ranges assumed',
  options: (scene, size) => ({
    marginLeft: size.narrow ? 130 : 134,
    marginTop: 6,
    marginBottom: 42,
    ...drawn(barsOf(scene), size),
  }),
  drag: holdFinish(finishRow),
  table,
  caption: ({ comparison }) => caption(roomOfFamilies(comparison)),
});

function byRatio(bars: readonly Bar[], { narrow }: Size): Drawing {
  const low = Math.min(0.9, ...bars.map((bar) => bar.low));
  const high = Math.max(30, ...bars.map((bar) => Math.max(bar.high, bar.factor))) * (narrow ? 3 : 2);
  const lines = bars.map(({ line }) => line);
  return {
    height: bars.length * 36 + 62,
    marginRight: 12,
    x: ratioAxisX(low, high, true, 'best: times as long as the worst'),
    y: { domain: [...lines.slice(0, 3), ' ', ...lines.slice(3)], label: null, tickSize: 0 },
    marks: [
      gridX(tickValues(1, high, true)),
      roomBars(bars, { x1: 1, x2: 'factor', insetBottom: 8 }),
      baselineX(1),
      // The stated range of the parameters, under its bar: the quick sum has no parameters.
      ...whisker(
        bars.filter(({ reading }) => reading === 'careful'),
        { y: 'line', low: 'low', high: 'high', dy: 13, insetTop: 24 },
      ),
      Plot.dot(
        bars.filter(({ family, reading }) => family === 'geometry' && reading === 'careful'),
        { y: 'line', x: 'added', r: 5, symbol: 'diamond', className: 'kf-answer' },
      ),
      Plot.dot(
        bars.filter(({ family, reading }) => family === 'geometry' && reading === 'careful'),
        { y: 'line', x: 'toLimit', r: 4.5, symbol: 'square', className: 'kf-answer' },
      ),
      valueText(bars, { ...factors, dy: -2 }),
    ],
  };
}

function inProportion(bars: readonly Bar[], { narrow }: Size): Drawing {
  return {
    height: bars.length * 30 + 50,
    marginRight: narrow ? 52 : 60,
    x: {
      domain: [0, Math.max(...bars.map(({ factor }) => factor))],
      ...centredLabel('best: times as long as the worst'),
      ticks: 5,
    },
    y: { domain: bars.map(({ line }) => line), label: null, tickSize: 0 },
    marks: [
      gridX(5),
      roomBars(bars, { x: 'factor', insetBottom: 5 }),
      baselineX(1),
      Plot.text(bars, { ...factors, className: 'kf-value' }),
    ],
  };
}

/** Room of each family on a logarithmic axis, quick sum above, careful estimate below. */
export const rangeRace: Figure = roomsFigure({
  id: 'range-race',
  title: 'The room of each family: best over worst of the ordinary',
  scale: 'logarithmic axis',
  // Below the quick sum's three and a gap.
  finishRow: 5,
  drawn: byRatio,
  caption({ quick, careful }) {
    const said = (rooms: readonly Room[]) =>
      rooms.map(({ family, factor }) => `${family} ${times(factor)}`).join(', ');
    return `Quick sum: ${said(quick)}. Careful estimate: ${said(careful)}. The line under a bar is its stated range; the diamond is geometry with its forces added, the square geometry to a limit.`;
  },
});

/** The same rooms again, each as long as it is. */
export const rangeRaceLinear: Figure = roomsFigure({
  id: 'range-race-linear',
  title: 'The same rooms, drawn in proportion',
  scale: 'linear axis from 0',
  finishRow: 4,
  drawn: inProportion,
  caption({ quick, careful }) {
    const most = (rooms: readonly Room[]) => rooms.reduce((a, b) => (b.factor > a.factor ? b : a));
    const say = (reading: Reading, room: Room) =>
      `By the ${readingName[reading]} ${room.family} is longest, ${times(room.factor)}`;
    return `${say('quick', most(quick))}. ${say('careful', most(careful))}. The line at 1 is the worst knife of each pair.`;
  },
});
