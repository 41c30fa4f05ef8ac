import * as Plot from '@observablehq/plot';
import { ended } from '../../model/index.ts';
import type { SharpenedLife } from '../../runs/lives.ts';
import { middleOf, placeOf, runsOf } from '../../scene/runs.ts';
import type { KnifeRuns, RunsOfTwo } from '../../scene/runs.ts';
import { brief, inFigures, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { gridX } from '../../figure-kit/grid.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { span } from '../../figure-kit/span.ts';
import { rangeSaid } from '../../phrases/judged-runs.ts';
import { batchName } from '../../phrases/batch-name.ts';

/** More batches than this share one row: the figure would otherwise outgrow its sheet. */
const mostBatches = 6;
const rowPx = 22;
/** With more sharpenings than this their numbers would run into each other; the table has them all. */
const mostNamed = 24;
const namePx = 26;

interface Dot {
  life: SharpenedLife;
  y: number;
}

/** The batches of a knife's lives in their order, as rows. */
function batchRows({ lives }: KnifeRuns): { batch: string; lives: SharpenedLife[] }[] {
  const batches = [...new Set(lives.map(({ batch }) => batch ?? ''))];
  if (batches.length > mostBatches) return [{ batch: `${batches.length} batches`, lives: [...lives] }];
  return batches.map((batch) => ({ batch, lives: lives.filter((life) => (life.batch ?? '') === batch) }));
}

/** Sharpenings that cut the same far lie beside each other, not on top of each other. */
function spread(lives: readonly SharpenedLife[], y: number): Dot[] {
  const seen = new Map<number, number>();
  return lives.map((life) => {
    const key = inFigures(placeOf(life), 2);
    const place = seen.get(key) ?? 0;
    seen.set(key, place + 1);
    const step = Math.ceil(place / 2) * (place % 2 === 0 ? 1 : -1);
    return { life, y: y + Math.max(-2, Math.min(2, step)) * 4 };
  });
}

/** Nearer than this the numbers of two sharpenings would run into each other, and are written as one. */
const apartPx = 11;

interface Named {
  x: number;
  y: number;
  text: string;
  end: number;
}

/** The numbers of the sharpenings of one row, above their dots. */
function numbered(row: readonly Dot[], pxPerLog: number): Named[] {
  const out: Named[] = [];
  for (const { life, y } of [...row].sort((a, b) => placeOf(a.life) - placeOf(b.life))) {
    const [at, text] = [placeOf(life), shortName(life.sharpening ?? '', 5)];
    const last = out.at(-1);
    if (text === '') continue;
    if (last === undefined || Math.log(at / last.end) * pxPerLog >= apartPx)
      out.push({ x: at, y, text, end: at });
    else
      Object.assign(last, {
        x: Math.sqrt(last.x * at),
        y: Math.min(last.y, y),
        text: `${last.text}, ${text}`,
        end: at,
      });
  }
  return out;
}

const unitWord = ({ log: { unit } }: RunsOfTwo): string => (unit === 'mm' ? 'mm' : 'cuts');

/** From the middle of the baseline to the ratio of it that was measured, with its interval; null where there is none. */
interface Between {
  from: number;
  at: number;
  low: number;
  high: number;
}

function intervalOf({ baseline, measured }: RunsOfTwo): Between | null {
  const from = middleOf(baseline);
  if (from === null || measured === null) return null;
  return { from, at: from * measured.ratio, low: from * measured.low, high: from * measured.high };
}

/** The ends of the axis: they hold all lives and the interval. */
function endsOf({ baseline, subject }: RunsOfTwo, between: Between | null): { low: number; high: number } {
  const values = [...baseline.lives, ...subject.lives].flatMap(({ low, high }) => [
    high < Infinity ? high : low,
    low > 0 ? low : high,
  ]);
  const all = [...values, ...(between ? [between.low, between.high] : [])];
  if (all.length === 0) return { low: 10, high: 1000 };
  return { low: Math.min(...all) / 1.3, high: Math.max(...all) * 1.3 };
}

interface Label {
  y: number;
  text: string;
}

interface Rows {
  dots: Dot[];
  numbers: Named[];
  knives: { y: number; knife: KnifeRuns }[];
  batches: Label[];
  middles: { x: number; y1: number; y2: number }[];
  height: number;
}

/** The knives one below the other, and below the name of each a row for every batch; places in px from the top. */
function rowsOf(knives: readonly KnifeRuns[], pxPerLog: number): Rows {
  const rows: Rows = { dots: [], numbers: [], knives: [], batches: [], middles: [], height: 0 };
  for (const knife of knives) {
    rows.knives.push({ y: rows.height + 13, knife });
    rows.height += namePx;
    const top = rows.height;
    for (const { batch, lives } of batchRows(knife)) {
      const y = rows.height + rowPx / 2;
      rows.batches.push({ y, text: batchName(batch) });
      const row = spread(lives, y);
      rows.dots.push(...row);
      rows.numbers.push(...numbered(row, pxPerLog));
      rows.height += rowPx;
    }
    const middle = middleOf(knife);
    if (middle !== null) rows.middles.push({ x: middle, y1: top, y2: rows.height });
    rows.height += 8;
  }
  return rows;
}

/** The middle of each knife, and its sharpenings as dots with their numbers. */
const sharpeningMarks = ({ dots, numbers, middles }: Rows, high: number): Plot.RenderableMark[] => [
  Plot.ruleX(middles, { x: 'x', y1: 'y1', y2: 'y2', className: 'kf-stem' }),
  // A life known only to lie between two looks, or to have gone on.
  span(
    dots.filter(({ life }) => life.low !== life.high && life.low > 0),
    {
      low: ({ life }: Dot) => life.low,
      high: ({ life }: Dot) => (life.high < Infinity ? life.high : Math.min(high, life.low * 1.15)),
      y: 'y',
      className: 'kf-cut',
    },
  ),
  ...[true, false].map((whole) =>
    Plot.dot(
      dots.filter(({ life }) => ended(life) === whole),
      {
        x: ({ life }: Dot) => placeOf(life),
        y: 'y',
        r: 4,
        className: 'kf-chance',
        stroke: 'currentColor',
        fill: whole ? 'currentColor' : 'none',
      },
    ),
  ),
  Plot.text(dots.length > mostNamed ? [] : numbers, {
    x: 'x',
    y: 'y',
    text: 'text',
    dy: -9,
    className: 'kf-sharpening',
  }),
];

/** The names of the knives and of their batches, at the left. */
const nameMarks = ({ knives, batches }: Rows, narrow: boolean): Plot.RenderableMark[] => [
  Plot.text(knives, {
    y: 'y',
    text: ({ knife }: Rows['knives'][number]) =>
      `${shortName(knife.name, narrow ? 26 : 50)}${knife.lives.length === 0 ? ': no runs' : ''}`,
    frameAnchor: 'left',
    textAnchor: 'start',
    dx: narrow ? -62 : -98,
    className: 'kf-value',
  }),
  Plot.text(batches, {
    y: 'y',
    text: ({ text }: Label) => shortName(text, narrow ? 9 : 14),
    frameAnchor: 'left',
    textAnchor: 'end',
    dx: -8,
    className: 'kf-faint',
  }),
];

/** From the baseline's middle to the ratio measured, and the interval about it, in a strip below the rows. */
const intervalMarks = (between: Between | null, strip: number): Plot.RenderableMark[] =>
  between
    ? [
        span([between], { low: 'from', high: 'at', y: strip, className: 'kf-dimension' }),
        Plot.ruleX([between.from], { y1: strip - 6, y2: strip + 6, className: 'kf-stem' }),
        span([between], { low: 'low', high: 'high', y: strip, className: 'kf-window' }),
      ]
    : [];

/** What stands at the interval, or in its place. */
function intervalLabel({ measured, promised }: RunsOfTwo): string {
  if (measured !== null) return times(measured.ratio);
  return promised.waiting ? `${promised.reached} of ${promised.planned ?? 0} planned` : 'no interval yet';
}

/** Every sharpening as a dot, knife by knife and batch by batch, with the ratio and its interval between their middles. */
export const runDots: Figure = {
  id: 'run-dots',
  title: ({ subject, baseline }) => `The runs of ${subject.name} and ${baseline.name}`,
  units: 'cuts, or mm cut, until the end point',
  scale: 'logarithmic axis',
  reading: (scene) => `as logged; ${runsOf(scene).log.method}`,
  source: 'the log',
  options(scene, { width, narrow }) {
    const logged = runsOf(scene);
    const between = intervalOf(logged);
    const { low, high } = endsOf(logged, between);
    const [marginLeft, marginRight] = [narrow ? 66 : 104, 14];
    const pxPerLog = (width - marginLeft - marginRight) / Math.log(high / low);
    const rows = rowsOf([logged.baseline, logged.subject], pxPerLog);
    const strip = rows.height + 22;
    const total = strip + 16;
    return {
      height: total + 44,
      marginLeft,
      marginRight,
      marginTop: 4,
      marginBottom: 40,
      x: ratioAxisX(low, high, narrow, `${unitWord(logged)} until the end point`),
      y: { domain: [total, 0], axis: null },
      marks: [
        gridX(tickValues(low, high, narrow)),
        ...sharpeningMarks(rows, high),
        ...nameMarks(rows, narrow),
        ...intervalMarks(between, strip),
        Plot.text([intervalLabel(logged)], {
          x: between ? Math.sqrt(between.from * between.at) : Math.sqrt(low * high),
          y: strip,
          dy: -11,
          text: (said: string) => said,
          className: 'kf-value kf-on-paper',
        }),
        ...(rows.dots.length === 0 ? [Plot.tickX([low], { y: total, className: 'kf-grid' })] : []),
      ],
    };
  },
  table(scene) {
    const logged = runsOf(scene);
    const rows = [logged.subject, logged.baseline].flatMap((knife) =>
      knife.lives.length === 0
        ? [[knife.name, 'no runs', '', '']]
        : knife.lives
            .slice(0, 400)
            .map((life) => [
              knife.name,
              batchName(life.batch ?? ''),
              life.sharpening ?? 'not recorded',
              lifeSaid(life),
            ]),
    );
    return { columns: ['Knife', 'Batch', 'Sharpening', `Until the end point, ${unitWord(logged)}`], rows };
  },
  caption(scene) {
    const logged = runsOf(scene);
    const { subject, baseline, measured } = logged;
    const count = (knife: KnifeRuns) =>
      `${knife.lives.length === 1 ? 'one sharpening' : `${knife.lives.length} sharpenings`} of ${knife.name}`;
    if (subject.lives.length + baseline.lives.length === 0)
      return `No run of ${subject.name} and none of ${baseline.name} is in the log yet. Each sharpening will be a dot here.`;
    const odd = subject.far.length + baseline.far.length;
    return `Each dot is one sharpening: ${count(subject)}, ${count(baseline)}; hollow ones ended before the end point.${subject.lives.length + baseline.lives.length > mostNamed ? '' : ' The small numbers are those of the sharpenings.'} ${
      measured === null
        ? logged.promised.waiting
          ? 'The verdict waits for the number planned.'
          : 'They give no interval yet.'
        : `The line below leads from the middle of ${baseline.name} to that of ${subject.name}. Its thick part is the ${logged.log.family === 1 ? '95%' : `95% for all ${logged.log.family} pairs`} interval, ${rangeSaid(measured.low, measured.high)}.`
    }${odd === 0 ? '' : ` ${odd === 1 ? 'One lies' : `${odd} lie`} far from the others and ${odd === 1 ? 'is' : 'are'} drawn all the same.`}`;
  },
};

function lifeSaid({ low, high }: SharpenedLife): string {
  if (high === Infinity) return `more than ${brief(low)}`;
  return low === high ? brief(high) : `${brief(low)} to ${brief(high)}`;
}
