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
  if (batches.length > mostBatches) return [{ batch: `${batches.length} lots`, lives: [...lives] }];
  return batches.map((batch) => ({ batch, lives: lives.filter((life) => (life.batch ?? '') === batch) }));
}

const batchName = (batch: string): string => (batch === '' ? 'lot not recorded' : batch);

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

const unitWord = ({ unit }: RunsOfTwo): string => (unit === 'mm' ? 'mm' : 'cuts');

/** Every sharpening as a dot, knife by knife and lot by lot, with the ratio and its interval between their middles. */
export const runDots: Figure = {
  id: 'run-dots',
  title: ({ subject, baseline }) => `The runs of ${subject.name} and ${baseline.name}`,
  units: 'cuts, or mm cut, until the stop',
  scale: 'logarithmic axis',
  reading: () => 'as logged; no model in it',
  source: 'the log',
  options(scene, { width, narrow }) {
    const runs = runsOf(scene);
    const { measured } = runs;
    const knives = [runs.baseline, runs.subject];
    const lives = knives.flatMap((knife) => knife.lives);
    const values = lives.flatMap(({ low, high }) => [high < Infinity ? high : low, low > 0 ? low : high]);
    const [first, second] = [middleOf(runs.baseline), middleOf(runs.subject)];
    const target =
      first !== null && measured !== null
        ? { at: first * measured.ratio, low: first * measured.low, high: first * measured.high }
        : null;
    const all = [...values, ...(target ? [target.low, target.high] : [])];
    const low = all.length > 0 ? Math.min(...all) / 1.3 : 10;
    const high = all.length > 0 ? Math.max(...all) * 1.3 : 1000;

    const [marginLeft, marginRight] = [narrow ? 66 : 104, 14];
    const pxPerLog = (width - marginLeft - marginRight) / Math.log(high / low);
    let y = 0;
    const dots: Dot[] = [];
    const numbers: Named[] = [];
    const names: { y: number; text: string }[] = [];
    const batches: { y: number; text: string }[] = [];
    const middles: { x: number; y1: number; y2: number }[] = [];
    for (const knife of knives) {
      names.push({
        y: y + 13,
        text: `${shortName(knife.name, narrow ? 26 : 50)}${knife.lives.length === 0 ? ': no runs' : ''}`,
      });
      y += namePx;
      const top = y;
      for (const { batch, lives: own } of batchRows(knife)) {
        batches.push({ y: y + rowPx / 2, text: shortName(batchName(batch), narrow ? 9 : 14) });
        const row = spread(own, y + rowPx / 2);
        dots.push(...row);
        numbers.push(...numbered(row, pxPerLog));
        y += rowPx;
      }
      const middle = middleOf(knife);
      if (middle !== null) middles.push({ x: middle, y1: top, y2: y });
      y += 8;
    }
    const strip = y + 22;
    const total = strip + 16;
    const text = measured === null ? 'no interval yet' : times(measured.ratio);
    const shown = (life: SharpenedLife): number => placeOf(life);
    return {
      height: total + 44,
      marginLeft,
      marginRight,
      marginTop: 4,
      marginBottom: 40,
      x: ratioAxisX(low, high, narrow, `${unitWord(runs)} until the stop`),
      y: { domain: [total, 0], axis: null },
      marks: [
        gridX(tickValues(low, high, narrow)),
        Plot.ruleX(middles, { x: 'x', y1: 'y1', y2: 'y2', className: 'kf-stem' }),
        // A life known only to lie between two looks, or to have gone on.
        Plot.link(
          dots.filter(({ life }) => life.low !== life.high && life.low > 0),
          {
            x1: ({ life }: Dot) => life.low,
            x2: ({ life }: Dot) => (life.high < Infinity ? life.high : Math.min(high, life.low * 1.15)),
            y1: 'y',
            y2: 'y',
            className: 'kf-cut',
          },
        ),
        Plot.dot(dots, {
          x: ({ life }: Dot) => shown(life),
          y: 'y',
          r: 4,
          className: 'kf-chance',
          stroke: 'currentColor',
          fill: ({ life }: Dot) => (ended(life) ? 'currentColor' : 'none'),
        }),
        Plot.text(lives.length > mostNamed ? [] : numbers, {
          x: 'x',
          y: 'y',
          text: 'text',
          dy: -9,
          className: 'kf-sharpening',
        }),
        Plot.text(names, {
          y: 'y',
          text: 'text',
          frameAnchor: 'left',
          textAnchor: 'start',
          dx: narrow ? -62 : -98,
          className: 'kf-value',
        }),
        Plot.text(batches, {
          y: 'y',
          text: 'text',
          frameAnchor: 'left',
          textAnchor: 'end',
          dx: -8,
          className: 'kf-faint',
        }),
        ...(target && first !== null
          ? [
              Plot.link([target], { x1: first, x2: 'at', y1: strip, y2: strip, className: 'kf-dimension' }),
              Plot.ruleX([first], { y1: strip - 6, y2: strip + 6, className: 'kf-stem' }),
              Plot.link([target], { x1: 'low', x2: 'high', y1: strip, y2: strip, className: 'kf-window' }),
            ]
          : []),
        Plot.text([text], {
          x: target && first !== null ? Math.sqrt(first * target.at) : Math.sqrt(low * high),
          y: strip,
          dy: -11,
          text: (said: string) => said,
          className: 'kf-value kf-on-paper',
        }),
        ...(second === null && first === null && lives.length === 0
          ? [Plot.tickX([low], { y: total, className: 'kf-grid' })]
          : []),
      ],
    };
  },
  table(scene) {
    const runs = runsOf(scene);
    const rows = [runs.subject, runs.baseline].flatMap((knife) =>
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
    return { columns: ['Knife', 'Lot', 'Sharpening', `Until the stop, ${unitWord(runs)}`], rows };
  },
  caption(scene) {
    const runs = runsOf(scene);
    const { subject, baseline, measured } = runs;
    const count = (knife: KnifeRuns) =>
      `${knife.lives.length === 1 ? 'one sharpening' : `${knife.lives.length} sharpenings`} of ${knife.name}`;
    if (subject.lives.length + baseline.lives.length === 0)
      return `No run of ${subject.name} and none of ${baseline.name} is in the log yet. Each sharpening will be a dot here.`;
    const odd = subject.far.length + baseline.far.length;
    return `Each dot is one sharpening: ${count(subject)}, ${count(baseline)}; hollow ones ended before the stop.${subject.lives.length + baseline.lives.length > mostNamed ? '' : ' The small numbers are those of the sharpenings.'} ${
      measured === null
        ? 'They give no interval yet.'
        : `The line below leads from the middle of ${baseline.name} to ${times(measured.ratio)} of it; the thick part is the 95 % interval, ${times(measured.low)} to ${times(measured.high)}.`
    }${odd === 0 ? '' : ` ${odd === 1 ? 'One lies' : `${odd} lie`} far from the others and ${odd === 1 ? 'is' : 'are'} drawn all the same.`}`;
  },
};

function lifeSaid({ low, high }: SharpenedLife): string {
  if (high === Infinity) return `more than ${brief(low)}`;
  return low === high ? brief(high) : `${brief(low)} to ${brief(high)}`;
}
