import * as Plot from '@observablehq/plot';
import type { Family, Reading } from '../../model/index.ts';
import { groundRoom, roomIn, roomOfFamilies } from '../../scene/ranges.ts';
import type { Room } from '../../scene/ranges.ts';
import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import type { Figure, Size } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { ratioAxis, tickValues } from '../../figure-kit/ratio-axis.ts';
import { hatch, ink } from '../../figure-kit/inks.ts';
import { readingName } from '../../phrases/reading-name.ts';
import { familyName } from '../../phrases/family-names.ts';

interface Bar extends Room {
  reading: Reading;
  line: string;
}

const readings: readonly Reading[] = ['quick', 'careful'];
const title: Record<Reading, string> = { quick: 'Pocket', careful: 'Close' };
const lineOf = (reading: Reading, family: Family): string =>
  `${title[reading]}: ${familyName[family].name} ${familyName[family].letter}`;

const barsOf = ({ comparison }: Scene): Bar[] => {
  const rooms = roomOfFamilies(comparison);
  return readings.flatMap((reading) =>
    rooms[reading].map((room) => ({ ...room, reading, line: lineOf(reading, room.family) })),
  );
};

const table: Figure['table'] = ({ comparison }) => {
  const rooms = roomOfFamilies(comparison);
  return {
    columns: ['Family', 'Reading', 'Best over worst', 'Least', 'Most', 'Forces added'],
    rows: readings.flatMap((reading) => {
      const line = (
        name: string,
        { factor, low, high, rival }: Pick<Room, 'factor' | 'low' | 'high' | 'rival'>,
      ) => [name, readingName[reading], times(factor), times(low), times(high), times(rival)];
      return [
        ...rooms[reading].map((room) => line(familyName[room.family].name, room)),
        line('Geometry and finish', groundRoom(rooms[reading])),
      ];
    }),
  };
};

/** The close bar of the finish by its end: of all bars the only one that depends on a single exponent. */
const holdFinish =
  (line: number): NonNullable<Figure['drag']> =>
  (_scene, _size, { y }) =>
    y === line
      ? {
          control: 'finishExponent',
          stands: ({ comparison }) => roomIn(roomOfFamilies(comparison).careful, 'finish').factor,
        }
      : undefined;

const left = ({ narrow }: Size): number => (narrow ? 130 : 134);

/** Room of each family on a logarithmic axis, quick sum above, careful estimate below. */
export const rangeRace: Figure = {
  id: 'range-race',
  title: () => 'The room of each family: best over worst of the ordinary',
  units: 'times as long as the worst',
  scale: 'logarithmic axis',
  reading: () => 'both',
  source: 'factor model; ordinary ranges assumed',
  options(scene, size) {
    const bars = barsOf(scene);
    const high = Math.max(30, ...bars.map((bar) => Math.max(bar.high, bar.factor))) * (size.narrow ? 3 : 2);
    const ticks = tickValues(1, high, true);
    const careful = bars.filter(({ reading }) => reading === 'careful');
    return {
      height: bars.length * 36 + 62,
      marginLeft: left(size),
      marginRight: 12,
      marginTop: 6,
      marginBottom: 42,
      x: {
        ...ratioAxis(
          Math.min(0.9, ...bars.map(({ low }) => low)),
          high,
          true,
          'best: times as long as the worst',
        ),
        labelAnchor: 'center',
      },
      y: {
        domain: [...bars.slice(0, 3).map(({ line }) => line), ' ', ...bars.slice(3).map(({ line }) => line)],
        label: null,
        tickSize: 0,
      },
      marks: [
        gridX(ticks),
        Plot.barX(bars, {
          y: 'line',
          x1: 1,
          x2: 'factor',
          fill: ({ family }: Bar) => hatch(family),
          stroke: ({ family }: Bar) => ink(family),
          insetTop: 5,
          insetBottom: 8,
        }),
        baselineX(1),
        // The stated range of the parameters, as a whisker under its bar: the quick sum has no parameters.
        Plot.ruleY(careful, { y: 'line', x1: 'low', x2: 'high', dy: 13, className: 'kf-stem' }),
        Plot.tickX(careful, { y: 'line', x: 'low', insetTop: 24, className: 'kf-stem' }),
        Plot.tickX(careful, { y: 'line', x: 'high', insetTop: 24, className: 'kf-stem' }),
        Plot.dot(
          bars.filter(({ family }) => family === 'geometry'),
          { y: 'line', x: 'rival', r: 5, symbol: 'diamond', className: 'kf-answer' },
        ),
        Plot.text(bars, {
          y: 'line',
          x: 'factor',
          text: ({ factor }: Bar) => times(factor),
          textAnchor: 'start',
          dx: 7,
          dy: -2,
          className: 'kf-value kf-on-paper',
        }),
      ],
    };
  },
  // Below the quick sum's three and a gap.
  drag: holdFinish(5),
  table,
  caption({ comparison }) {
    const { quick, careful } = roomOfFamilies(comparison);
    const said = (rooms: readonly Room[]) =>
      rooms.map(({ family, factor }) => `${family} ${times(factor)}`).join(', ');
    return `Pocket reading: ${said(quick)}. Close reading: ${said(careful)}. The line under a close bar is what it becomes over the stated ranges of its parameters; the diamond is geometry with its forces added.`;
  },
};

/** The same rooms again, each as long as it is. */
export const rangeRaceLinear: Figure = {
  id: 'range-race-linear',
  title: () => 'The same rooms, drawn in proportion',
  units: 'times as long as the worst',
  scale: 'linear axis from 0',
  reading: () => 'both',
  source: 'factor model; ordinary ranges assumed',
  options(scene, size) {
    const bars = barsOf(scene);
    const high = Math.max(...bars.map(({ factor }) => factor));
    return {
      height: bars.length * 30 + 50,
      marginLeft: left(size),
      marginRight: size.narrow ? 52 : 60,
      marginTop: 6,
      marginBottom: 42,
      x: {
        domain: [0, high],
        label: 'best: times as long as the worst',
        labelAnchor: 'center',
        labelArrow: 'none',
        ticks: 5,
      },
      y: {
        domain: bars.map(({ line }) => line),
        label: null,
        tickSize: 0,
      },
      marks: [
        gridX(5),
        Plot.barX(bars, {
          y: 'line',
          x: 'factor',
          fill: ({ family }: Bar) => hatch(family),
          stroke: ({ family }: Bar) => ink(family),
          insetTop: 5,
          insetBottom: 5,
        }),
        baselineX(1),
        Plot.text(bars, {
          y: 'line',
          x: 'factor',
          text: ({ factor }: Bar) => times(factor),
          textAnchor: 'start',
          dx: 7,
          className: 'kf-value',
        }),
      ],
    };
  },
  drag: holdFinish(4),
  table,
  caption({ comparison }) {
    const { quick, careful } = roomOfFamilies(comparison);
    const most = (rooms: readonly Room[]) => rooms.reduce((a, b) => (b.factor > a.factor ? b : a));
    const say = (reading: Reading, room: Room) =>
      `By the ${readingName[reading]} reading ${room.family} is longest, ${times(room.factor)}`;
    return `${say('quick', most(quick))}. ${say('careful', most(careful))}. The line at 1 is the worst knife of each pair.`;
  },
};
