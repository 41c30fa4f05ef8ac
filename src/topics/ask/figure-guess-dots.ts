import * as Plot from '@observablehq/plot';
import { tally } from './guesses.ts';
import type { Guess } from './guesses.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, short, times } from '../../scene/show.ts';
import type { Figure, Table } from '../../figure-kit/figure.ts';
import { baselineY, gridX } from '../../figure-kit/grid.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';
import type { Drawing } from '../../figure-kit/figure.ts';

/** What the guesses are compared with. */
export interface ComparedWith {
  /** The middle of the model's range. */
  answer: number;
  sum: number | null;
  /** What was measured, where anything was. */
  measured: number | null;
}

interface Dot {
  x: number;
  level: number;
}

const columns = 28;
const levelPx = 11;
const highest = 24;

/** Guesses heaped in columns of equal width on the logarithmic axis; one dot for so many of them. */
function heap(
  guesses: readonly Guess[],
  low: number,
  high: number,
): { dots: Dot[]; each: number; levels: number } {
  const width = Math.log(high / low) / columns;
  const counts = new Map<number, number>();
  for (const { ratio, count } of guesses) {
    const column = Math.min(columns - 1, Math.max(0, Math.floor(Math.log(ratio / low) / width)));
    counts.set(column, (counts.get(column) ?? 0) + count);
  }
  const each = Math.max(1, Math.ceil(Math.max(...counts.values()) / highest));
  const dots = [...counts].flatMap(([column, count]) =>
    Array.from({ length: Math.ceil(count / each) }, (_, level) => ({
      x: low * Math.exp((column + 0.5) * width),
      level: level + 0.5,
    })),
  );
  return { dots, each, levels: Math.max(...dots.map(({ level }) => level)) + 0.5 };
}

interface Answer {
  at: number;
  text: string;
  className: string;
}

/** What the guesses are compared with, from left to right. */
const answersOf = ({ sum, answer, measured }: ComparedWith): Answer[] =>
  [
    ...(sum === null ? [] : [{ at: sum, text: 'added', className: 'kf-guess-sum' }]),
    { at: answer, text: 'middle', className: 'kf-guess-answer' },
    ...(measured === null ? [] : [{ at: measured, text: 'measured', className: 'kf-guess-measured' }]),
  ].sort((one, other) => one.at - other.at);

/** The ends of the axis. */
function endsOf(guesses: readonly Guess[], { answer }: ComparedWith, answers: readonly Answer[]) {
  // A guess of a million must not press all others into a corner: it is heaped at the end of the axis.
  const reach = [
    1,
    ...answers.map(({ at }) => at),
    ...guesses.map(({ ratio }) => Math.min(answer * 50, Math.max(answer / 50, ratio))),
  ];
  const low = Math.min(...reach) / 1.3;
  // The last label needs room on its right, four tenths of a narrow sheet.
  const high = Math.max(Math.max(...reach) * 1.3, ((answers.at(-1)?.at ?? 1) / low ** 0.4) ** (1 / 0.6));
  return { low, high };
}

const rowPx = 16;

/** A line for each answer with its label above, each a row below the one before: none then lies across another's line. */
const answerMarks = (answers: readonly Answer[]): Plot.RenderableMark[] =>
  answers.flatMap((answer, index) => {
    const dy = -rowPx * (answers.length - index) + 4;
    return [
      Plot.ruleX([answer], { x: 'at', className: answer.className, insetTop: dy + 2 }),
      Plot.text([answer], {
        x: 'at',
        text: ({ text, at }: Answer) => `${text} ×${short(at, 2)}`,
        frameAnchor: 'top',
        dy,
        textAnchor: 'start',
        dx: 5,
        className: 'kf-value',
      }),
    ];
  });

function drawn(
  guesses: readonly Guess[],
  answers: readonly Answer[],
  low: number,
  high: number,
  narrow: boolean,
): Drawing {
  const { dots, levels } = heap(guesses, low, high);
  const marginTop = 10 + rowPx * answers.length;
  return {
    height: Math.max(60, levels * levelPx) + marginTop + 44,
    marginLeft: 16,
    marginRight: 16,
    marginTop,
    marginBottom: 44,
    x: ratioAxisX(low, high, narrow, 'times as long as the baseline'),
    y: { domain: [0, Math.max(levels, 60 / levelPx)], axis: null },
    marks: [
      gridX(tickValues(low, high, narrow)),
      baselineY(0),
      Plot.dot(dots, { x: 'x', y: 'level', r: 4, className: 'kf-guess' }),
      ...answerMarks(answers),
    ],
  };
}

function tableOf(guesses: readonly Guess[], comparedWith: ComparedWith): Table {
  const { guesses: total, added, called, otherKnife, median } = tally(guesses, comparedWith);
  return {
    columns: ['What', 'Value'],
    rows: [
      ['Guesses', String(total)],
      ['The guess in the middle', times(median)],
      ...(added === null ? [] : [['Gave the sum', String(added)]]),
      ['Gave the model’s middle', String(called)],
      ['Guessed the other knife', String(otherKnife)],
      ['Model, the middle of its range', times(comparedWith.answer)],
      ...(comparedWith.sum === null ? [] : [['Effects added', times(comparedWith.sum)]]),
      ...(comparedWith.measured === null ? [] : [['Measured', times(comparedWith.measured)]]),
    ],
  };
}

/** An audience's guesses as dots, with the sum, the model's answer and what was measured. */
export const guessDots = (guesses: readonly Guess[], comparedWith: ComparedWith): Figure => {
  const answers = answersOf(comparedWith);
  const { low, high } = endsOf(guesses, comparedWith, answers);
  return {
    id: 'guess-dots',
    title: ({ subject, baseline }) => `What was guessed of ${subject.name} against ${baseline.name}`,
    units: 'times as long as the baseline',
    scale: 'logarithmic axis',
    reading: () => 'middle of the model’s range',
    source: 'an audience',
    options: (_scene: Scene, { narrow }) => drawn(guesses, answers, low, high, narrow),
    table: () => tableOf(guesses, comparedWith),
    caption({ subject, baseline }) {
      const { guesses: total, added, called, median } = tally(guesses, comparedWith);
      const { each } = heap(guesses, low, high);
      const of = (many: number) => `${many} (${plain((many / total) * 100, 2)}%)`;
      return `Of ${total === 1 ? 'one guess' : `${total} guesses`} of ${subject.name} against ${baseline.name} the middle one is ${short(median, 2)}. ${added === null ? '' : `${of(added)} gave the sum, `}${of(called)} the middle of the model’s range, ${short(comparedWith.answer, 2)}${comparedWith.measured === null ? '' : `. Measured was ${short(comparedWith.measured, 2)}`}.${each > 1 ? ` A dot stands for ${each} guesses.` : ''}`;
    },
  };
};
