import type { RenderableMark } from '@observablehq/plot';
import { textWidthPx } from '../../figure-kit/text-width.ts';
import type { Headline } from '../../scene/headline.ts';
import { brief, short } from '../../scene/show.ts';
import { labelledTicks, smallTicks } from './log-scale.ts';
import type { Claim, LogScale } from './log-scale.ts';
import { reachOf } from './pen.ts';
import type { Label, Pen } from './pen.ts';

/** Sizes of type, px. */
export interface TypeSizes {
  word: number;
  tick: number;
  big: number;
}
export const typeOf = (narrow: boolean): TypeSizes =>
  narrow ? { word: 13.5, tick: 12.5, big: 21 } : { word: 14.5, tick: 13.5, big: 22.5 };

const bandPx = 26;
const capPx = 4;
const stripPx = 36;
/** How far the strip goes on beyond the first and the last ratio, px. */
export const overhangPx = 8;
/** Rows above the band, px: the guess, and the middle where the band is too short to hold it. */
const rowPx = { guess: 28, middle: 24 };

const besidePx = 7;

/** The room that the ends of the range need for their numbers, and the guess for its own. */
export function headClaims({ low, high }: Headline, guess: number | null, type: TypeSizes): Claim[] {
  const width = (text: string) => textWidthPx(text, type.word, true) + besidePx;
  const half = (text: string) => textWidthPx(text, type.word, true) / 2;
  return [
    { at: low, leftPx: width(short(low)), rightPx: 0 },
    { at: high, leftPx: 0, rightPx: width(short(high)) },
    ...(guess === null
      ? []
      : [{ at: guess, leftPx: half(guessText(guess)), rightPx: half(guessText(guess)) }]),
  ];
}

const guessText = (guess: number): string => `you: ${short(guess)}`;

/** The guess as it stands on the ruler: one far off what the model says stands at the end, with an arrow. */
export function guessOn(
  guess: number | null,
  first: number,
  last: number,
): { at: number | null; far: string } {
  if (guess === null) return { at: null, far: '' };
  const most = 20;
  if (guess > last * most) return { at: null, far: `${guessText(guess)} →` };
  if (guess < first / most) return { at: null, far: `← ${guessText(guess)}` };
  return { at: guess, far: '' };
}

/** Where the parts of the head lie, px from the top. */
interface Heights {
  guess: number;
  middle: number;
  band: number;
  strip: number;
  end: number;
}

/** Where the middle is written: in the band beside its line, or above it where the band is too short. */
function middleLabel(headline: Headline, scale: LogScale, type: TypeSizes): Label & { above: boolean } {
  const text = short(headline.middle);
  const [low, middle, high] = [headline.low, headline.middle, headline.high].map(scale.px) as [
    number,
    number,
    number,
  ];
  const width = textWidthPx(text, type.big, true);
  const label = { y: 0, text, sizePx: type.big, className: 'kf-ruler-middle', bold: true };
  if (middle + 6 + width <= high - 5) return { ...label, x: middle + 6, anchor: 'start', above: false };
  if (middle - 6 - width >= low + 5) return { ...label, x: middle - 6, anchor: 'end', above: false };
  return { ...label, x: middle, anchor: 'middle', above: true };
}

interface HeadOptions {
  headline: Headline | null;
  guess: number | null;
  /** What is written at an end of the ruler of a guess beyond it. */
  far: string;
  scale: LogScale;
  pen: Pen;
  type: TypeSizes;
  /** What stands left of band and strip; nothing where there is no room. */
  names?: { range: string; strip: string };
}

/** The band with its ends and its middle, the strip with its ticks, and the guess above both. */
export function rulerHead(options: HeadOptions): { marks: RenderableMark[]; stripPx: number; endPx: number } {
  const { headline, guess, far, scale, pen, type, names } = options;
  const middle = headline && middleLabel(headline, scale, type);
  const guessPx = guess !== null || far !== '' ? rowPx.guess : 0;
  const middlePx = middle?.above ? rowPx.middle : 0;
  const band = capPx + 2 + guessPx + middlePx;
  const at: Heights = {
    guess: 9,
    middle: guessPx + 13,
    band,
    strip: headline ? band + bandPx : guessPx + 2,
    end: (headline ? band + bandPx : guessPx + 2) + stripPx,
  };
  return {
    marks: [
      ...(headline ? bandMarks(options, headline, at) : []),
      ...stripMarks(scale, pen, type, at.strip),
      // Over the band, and under its numbers.
      ...guessMarks(options, at),
      ...(headline && middle ? bandLabels(options, headline, middle, at) : []),
      ...(names
        ? pen.labels([
            ...(headline ? [nameLabel(names.range, at.band + bandPx / 2, scale, type)] : []),
            nameLabel(names.strip, at.strip + stripPx / 2, scale, type),
          ])
        : []),
    ],
    stripPx: at.strip,
    endPx: at.end,
  };
}

const nameLabel = (text: string, y: number, { fromPx }: LogScale, { word }: TypeSizes): Label => ({
  x: fromPx - overhangPx - 6,
  y,
  text,
  anchor: 'end',
  sizePx: word,
  className: 'kf-faint',
});

function bandMarks(
  { scale, pen }: HeadOptions,
  { low, middle, high }: Headline,
  at: Heights,
): RenderableMark[] {
  const [top, bottom] = [at.band, at.band + bandPx];
  return [
    pen.boxes([{ x1: scale.px(low), y1: top, x2: scale.px(high), y2: bottom }], {
      className: 'kf-ruler-range',
    }),
    pen.lines(
      [low, middle, high].map((ratio) => {
        const x = scale.px(ratio);
        return { x1: x, y1: top - capPx, x2: x, y2: bottom };
      }),
      'kf-ruler-cap',
    ),
  ];
}

function bandLabels(
  { scale, pen, type }: HeadOptions,
  { low, high }: Headline,
  middle: Label & { above: boolean },
  at: Heights,
): RenderableMark[] {
  const y = at.band + bandPx / 2;
  const end = { y, sizePx: type.word, className: 'kf-ruler-halo', bold: true };
  return pen.labels([
    { ...end, x: scale.px(low) - besidePx, text: short(low), anchor: 'end' },
    { ...end, x: scale.px(high) + besidePx, text: short(high), anchor: 'start' },
    { ...middle, y: middle.above ? at.middle : y },
  ]);
}

function stripMarks(scale: LogScale, pen: Pen, type: TypeSizes, top: number): RenderableMark[] {
  const labelled = labelledTicks(scale, type.tick);
  const small = smallTicks(scale, labelled);
  const tick = (at: number, lengthPx: number) => {
    const x = scale.px(at);
    return { x1: x, y1: top, x2: x, y2: top + lengthPx };
  };
  const [x1, x2] = [scale.fromPx - overhangPx, scale.toPx + overhangPx];
  // A long number at an end of the strip would run off it.
  const staysOn = (at: number): boolean => {
    const half = textWidthPx(brief(at), type.tick) / 2;
    return scale.px(at) - half >= x1 - 1.5 && scale.px(at) + half <= x2 + 1.5;
  };
  return [
    pen.boxes([{ x1, y1: top, x2, y2: top + stripPx }], { className: 'kf-ruler-strip' }),
    pen.lines(
      small.map(({ at, lengthPx }) => tick(at, lengthPx)),
      'kf-ruler-small-tick',
    ),
    pen.lines(
      labelled.map((at) => tick(at, 10)),
      'kf-ruler-tick',
    ),
    ...pen.labels(
      labelled.filter(staysOn).map((at) => ({
        x: scale.px(at),
        y: top + 25,
        text: brief(at),
        anchor: 'middle',
        sizePx: type.tick,
      })),
    ),
  ];
}

function guessMarks({ guess, far, scale, pen, type }: HeadOptions, at: Heights): RenderableMark[] {
  const label = { y: at.guess, sizePx: type.word, className: 'kf-ruler-guess', bold: true };
  if (guess === null) {
    if (far === '') return [];
    const isLow = far.startsWith('←');
    const x = isLow ? scale.fromPx - overhangPx : scale.toPx + overhangPx;
    return pen.labels([{ ...label, x, text: far, anchor: isLow ? 'start' : 'end' }]);
  }
  const x = scale.px(guess);
  const placed: Label = { ...label, x, text: guessText(guess), anchor: 'middle' };
  const [left] = reachOf(placed);
  return [
    pen.lines([{ x1: x, y1: at.guess + 9, x2: x, y2: at.strip }], 'kf-ruler-guess-line'),
    ...pen.labels([left < 0 ? { ...placed, x: x - left } : placed]),
  ];
}
