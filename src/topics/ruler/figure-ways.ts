import * as Plot from '@observablehq/plot';
import { structures } from '../../model/index.ts';
import type { Structure } from '../../model/index.ts';
import type { Drawing, Figure, Size } from '../../figure-kit/figure.ts';
import { textWidthPx } from '../../figure-kit/text-width.ts';
import { list } from '../../phrases/list.ts';
import { readingName } from '../../phrases/reading-name.ts';
import type { Headline } from '../../scene/headline.ts';
import type { Scene } from '../../scene/scene.ts';
import { short } from '../../scene/show.ts';
import { sureOf } from '../../scene/sure.ts';
import { emptyRuler } from './figure-ruler.ts';
import { markText } from './figures-of-ratio.ts';
import { headClaims, overhangPx, rulerHead, typeOf } from './head.ts';
import { scaleFor } from './log-scale.ts';
import type { LogScale } from './log-scale.ts';
import { penOn, sheetOf } from './pen.ts';
import type { Label, Line } from './pen.ts';
import { placeLabels } from './place-labels.ts';
import { rangeOf, refused, refusedCaption } from './says.ts';

/** How a structure is called beside its mark. */
const structureName: Record<Structure, string> = {
  multiplied: 'if all multiply',
  added: 'if the forces add',
  toLimit: 'to a limit',
};
const quickName = 'quick sum';
/** The same in fewer words, for marks that stand too near to each other. */
const briefly: Readonly<Record<string, string>> = {
  'if all multiply': 'multiply',
  'if the forces add': 'forces add',
  'to a limit': 'limit',
};

/** A mark below the ruler, with all that stands at it. */
export interface WayMark {
  names: string[];
  ratio: number;
}

/** Each structure's middle: that of the samples that took it, or the middle settings where none did. */
function middlesOf(scene: Scene): { name: string; ratio: number; sampled: boolean }[] {
  const { byStructure } = sureOf(scene);
  return structures.map((structure) => {
    const { median } = byStructure[structure];
    const sampled = median > 0 && Number.isFinite(median);
    const ratio = sampled ? median : scene.row.careful[structure];
    return { name: `${structureName[structure]}${sampled ? '' : ' (middle settings)'}`, ratio, sampled };
  });
}

/** The marks from low to high; those shown with the same number are one. */
export function wayMarks(scene: Scene): WayMark[] {
  const all = [...middlesOf(scene), { name: quickName, ratio: scene.row.quick.multiplied }];
  const marks: WayMark[] = [];
  for (const { name, ratio } of [...all].sort((a, b) => a.ratio - b.ratio)) {
    const same = marks.find((mark) => markText(mark.ratio) === markText(ratio));
    if (same) same.names.push(name);
    else marks.push({ names: [name], ratio });
  }
  return marks;
}

const namesText = (names: readonly string[]): string => {
  const every = structures.map((structure) => structureName[structure]);
  if (every.every((name) => names.includes(name)))
    return list(['all three ways', ...names.filter((name) => !every.includes(name))]);
  return list(names);
};

const markLabel = ({ names, ratio }: WayMark): string => `${namesText(names)}: ${markText(ratio)}`;
const briefLabel = ({ names, ratio }: WayMark): string =>
  `${names.length < 3 ? list(names.map((name) => briefly[name] ?? name)) : namesText(names)}: ${markText(ratio)}`;

/** A quick sum this much beyond all else would press the rest together: an arrow leads to it instead. */
const mostBeyond = 4;

/** Marks that have a place on the ruler, and the quick sum where it lies too far off. */
function onRuler(marks: readonly WayMark[], { low, high }: Headline): { on: WayMark[]; off: WayMark[] } {
  const careful = marks.filter(({ names }) => names.some((name) => name !== quickName));
  const ratios = [1, low, high, ...careful.map(({ ratio }) => ratio)];
  const [first, last] = [Math.min(...ratios) / mostBeyond, Math.max(...ratios) * mostBeyond];
  const isOn = (mark: WayMark): boolean =>
    careful.includes(mark) || (mark.ratio >= first && mark.ratio <= last);
  return { on: marks.filter(isOn), off: marks.filter((mark) => !isOn(mark)) };
}

const rowPx = 20;

/** The words of the marks with their places: in full where they fit, else in fewer words. */
function placedTexts(marks: readonly WayMark[], scale: LogScale, sizePx: number, widthPx: number) {
  const inFull = marks.map(markLabel);
  const inBrief = marks.map(briefLabel);
  const placesOf = (texts: readonly string[]) =>
    placeLabels(
      texts.map((text, index) => ({
        x: scale.px(marks[index]?.ratio ?? 1),
        widthPx: textWidthPx(text, sizePx),
      })),
      widthPx,
    );
  const places = placesOf(inFull);
  if (places) return { texts: inFull, places };
  return {
    texts: inBrief,
    places: placesOf(inBrief) ?? marks.map((_, row) => ({ row, side: 'right' as const })),
  };
}

/** The stems below the strip with their points and words. */
function stemsOf(marks: readonly WayMark[], scale: LogScale, sizePx: number, widthPx: number, top: number) {
  const { texts, places } = placedTexts(marks, scale, sizePx, widthPx);
  const rows = 1 + Math.max(-1, ...places.map(({ row }) => row));
  const stems: Line[] = [];
  const labels: Label[] = [];
  marks.forEach((mark, index) => {
    const { row, side } = places[index] ?? { row: 0, side: 'right' };
    const x = scale.px(mark.ratio);
    const y = top + 16 + row * rowPx;
    stems.push({ x1: x, y1: top, x2: x, y2: y + 5 });
    const [at, anchor] = side === 'left' ? ([x - 6, 'end'] as const) : ([x + 6, 'start'] as const);
    labels.push({ x: at, y, text: texts[index] ?? '', anchor, sizePx });
  });
  return { stems, labels, rows };
}

function drawn(scene: Scene, size: Size, headline: Headline): Drawing {
  const type = typeOf(size.narrow);
  const { on, off } = onRuler(wayMarks(scene), headline);
  const [fromPx, toPx] = [20, size.width - 20];
  const scale = scaleFor(
    [...headClaims(headline, null, type), ...on.map(({ ratio }) => ({ at: ratio, leftPx: 4, rightPx: 4 }))],
    [fromPx, toPx],
    [fromPx - overhangPx, toPx + overhangPx],
  );
  const pen = penOn(scale);
  const head = rulerHead({ headline, guess: null, far: '', scale, pen, type });
  const { stems, labels, rows } = stemsOf(on, scale, type.word, size.width, head.endPx);
  const arrowY = head.endPx + 16 + rows * rowPx;
  const arrows = off.map((mark): Label => {
    const isHigh = mark.ratio > 1;
    return {
      x: isHigh ? size.width - 2 : 2,
      y: arrowY,
      text: isHigh ? `${markLabel(mark)} →` : `← ${markLabel(mark)}`,
      anchor: isHigh ? 'end' : 'start',
      sizePx: type.word,
    };
  });
  const lines = rows + (arrows.length > 0 ? 1 : 0);
  return sheetOf(scale, head.endPx + 10 + lines * rowPx, [
    ...head.marks,
    pen.lines(stems, 'kf-ruler-stem'),
    Plot.dot(on, { x: 'ratio', y: head.endPx, r: 3, className: 'kf-ruler-point' }),
    ...pen.labels([...labels, ...arrows]),
  ]);
}

/** The range on a small ruler, with the middle of each way to combine the factors, and the quick sum. */
export const ways: Figure = {
  id: 'ways',
  title: ({ subject, baseline }) => `Ways to combine the factors of ${subject.name} and ${baseline.name}`,
  units: 'times as long as the baseline',
  scale: 'logarithmic ruler',
  reading: () => readingName.careful,
  source: 'factor model',
  options(scene, size) {
    const headline = rangeOf(scene);
    return headline ? drawn(scene, size, headline) : emptyRuler(scene, size);
  },
  table(scene) {
    const headline = rangeOf(scene);
    const columns = ['Way', 'Times as long', 'Low', 'High'];
    if (!headline) return { columns, rows: [[refused, '', '', '']] };
    const { low, middle, high } = headline;
    return {
      columns,
      rows: [
        ['Range of all samples', short(middle), short(low), short(high)],
        ...middlesOf(scene).map(({ name, ratio, sampled }) => [
          sampled ? `${name}: middle of its samples` : name,
          markText(ratio),
          '',
          '',
        ]),
        [quickName, markText(scene.row.quick.multiplied), '', ''],
      ],
    };
  },
  caption(scene) {
    if (!rangeOf(scene)) return refusedCaption(scene);
    const marks = wayMarks(scene).map(({ names, ratio }) => ({
      names: names.filter((name) => name !== quickName),
      ratio: markText(ratio),
    }));
    const ways = marks.filter(({ names }) => names.length > 0);
    const quick = markText(scene.row.quick.multiplied);
    if (ways.length === 1 && ways[0]?.ratio === '1')
      return quick === '1'
        ? 'All three ways and the quick sum see no difference.'
        : `All three ways see no difference; the quick sum makes ${quick}.`;
    const said = ways.map(
      ({ names, ratio }, index) =>
        `${ratio}${index === 0 ? ' times as long' : ''} ${namesText(names).replace(/^all/, 'in all').replace(' and ', ' or ')}`,
    );
    return `The middle is ${list(said)}; the quick sum makes ${quick}.`;
  },
};
