import * as Plot from '@observablehq/plot';
import type { Family, TermId } from '../../model/index.ts';
import type { Drawing, Figure, Size } from '../../figure-kit/figure.ts';
import { hatch, ink } from '../../figure-kit/inks.ts';
import { textWidthPx } from '../../figure-kit/text-width.ts';
import { factorName } from '../../phrases/factor-names.ts';
import { familyName } from '../../phrases/family-names.ts';
import { capital } from '../../phrases/list.ts';
import { readingName } from '../../phrases/reading-name.ts';
import type { Headline } from '../../scene/headline.ts';
import type { Scene } from '../../scene/scene.ts';
import { countInWords, short, times } from '../../scene/show.ts';
import { differs } from '../../scene/terms.ts';
import { factorText, markText } from './figures-of-ratio.ts';
import { guessOn, headClaims, overhangPx, rulerHead, typeOf } from './head.ts';
import type { TypeSizes } from './head.ts';
import { labelledTicks, scaleFor } from './log-scale.ts';
import type { LogScale } from './log-scale.ts';
import { penOn, sheetOf } from './pen.ts';
import type { Label, Line, Pen } from './pen.ts';
import { allReasons, rangeOf, refused, rulerCaption, stripName } from './says.ts';
import { familySteps, stepsOf } from './steps.ts';
import type { FamilySteps, Step } from './steps.ts';

const sliders: Partial<Record<TermId, string>> = {
  wedge: 'subject.angle',
  apex: 'subject.angle',
  thickness: 'subject.edge',
};

const rowPx = 25;
const barPx = 16;
const noDifference = 'no difference';

/** Where the ruler begins and ends, px: names at its left, brackets at its right where there is room. */
const placeOf = ({ width, narrow }: Size): readonly [fromPx: number, toPx: number] =>
  narrow ? [106, width - 14] : [160, width - 128];

/** All that the drawing shows, and where it lies. */
interface Laid {
  steps: Step[];
  families: FamilySteps[];
  total: number;
  headline: Headline;
  guess: number | null;
  far: string;
  scale: LogScale;
  pen: Pen;
  type: TypeSizes;
  size: Size;
}

function laidOut(scene: Scene, size: Size, headline: Headline): Laid {
  const { careful } = scene.row;
  const steps = stepsOf(careful);
  const total = careful.multiplied;
  const type = typeOf(size.narrow);
  const beside = (step: Step) => textWidthPx(valueText(step), type.word, true) + 6;
  const reach = [1, headline.low, headline.high, total, ...steps.map(({ to }) => to)];
  const { at: guess, far } = guessOn(scene.guess, Math.min(...reach), Math.max(...reach));
  const [fromPx, toPx] = placeOf(size);
  const room = [fromPx - overhangPx, toPx + overhangPx] as const;
  const scale = scaleFor(
    [
      ...headClaims(headline, guess, type),
      ...steps.map((step) => ({ at: Math.max(step.from, step.to), leftPx: 0, rightPx: beside(step) })),
      { at: total, leftPx: 6, rightPx: 6 },
    ],
    [fromPx, toPx],
    room,
  );
  return {
    steps,
    families: familySteps(steps),
    total,
    headline,
    guess,
    far,
    scale,
    pen: penOn(scale),
    type,
    size,
  };
}

const valueText = (step: Step): string => (differs(step) ? factorText(step.factor) : noDifference);

/** The middle of a row below the strip, px. */
const rowY = (stripEnd: number, index: number): number => stripEnd + 22 + index * rowPx;

const rowName = (step: Step, narrow: boolean): string => {
  const { onRuler, onNarrowRuler } = factorName(step.id);
  return narrow ? onNarrowRuler : onRuler;
};

/** The bars with their names and factors; a short line leads from the end of each to the next. */
function stepMarks({ steps, scale, pen, type, size }: Laid, stripEnd: number): Plot.RenderableMark[] {
  const y = (index: number): number => rowY(stripEnd, index);
  const bars = steps.map((step, index) => ({
    step,
    x1: scale.px(Math.min(step.from, step.to)),
    x2: scale.px(Math.max(step.from, step.to)),
    y1: y(index) - barPx / 2,
    y2: y(index) + barPx / 2,
  }));
  const leads: Line[] = steps.slice(0, -1).map(({ to }, index) => {
    const x = scale.px(to);
    return { x1: x, y1: y(index) + barPx / 2, x2: x, y2: y(index + 1) - barPx / 2 };
  });
  const names: Label[] = steps.map((step, index) => ({
    x: scale.fromPx - overhangPx - 6,
    y: y(index),
    text: rowName(step, size.narrow),
    anchor: 'end',
    sizePx: type.word,
  }));
  const values: Label[] = bars.map(({ step, x2 }, index) => ({
    x: x2 + 6,
    y: y(index),
    text: valueText(step),
    anchor: 'start',
    sizePx: type.word - 0.5,
    className: differs(step) ? 'kf-ruler-halo' : 'kf-faint kf-ruler-halo',
    bold: differs(step),
  }));
  return [
    pen.lines(leads, 'kf-ruler-lead'),
    hatched(
      bars.filter(({ step }) => differs(step)).map(({ step, ...box }) => ({ ...box, family: step.family })),
      pen,
    ),
    ...pen.labels(names),
    ...pen.labels(values),
  ];
}

type FamilyBox = Line & { family: Family };

/** Boxes in the ink and the hatch of their families. */
const hatched = (boxes: readonly FamilyBox[], pen: Pen): Plot.RenderableMark =>
  pen.boxes(boxes, {
    fill: ({ family }: FamilyBox) => hatch(family),
    stroke: ({ family }: FamilyBox) => ink(family),
    strokeWidth: 1.3,
  });

/** The label of the total: left of its mark, else right of it, else below it where neither side has room. */
function totalLabel({ total, scale, type, size }: Laid, y: number): { label: Label; below: boolean } {
  const text = `${markText(total)}, if all multiply`;
  const width = textWidthPx(text, type.word, true) + 11;
  const x = scale.px(total);
  const label = { y, text, sizePx: type.word, className: 'kf-ruler-halo', bold: true };
  if (x - width >= scale.fromPx - overhangPx)
    return { label: { ...label, x: x - 11, anchor: 'end' }, below: false };
  const last = size.narrow ? size.width - 2 : scale.toPx + overhangPx;
  if (x + width <= last) return { label: { ...label, x: x + 11, anchor: 'start' }, below: false };
  const half = width / 2;
  const inside = Math.min(Math.max(x, scale.fromPx - overhangPx + half), last - half);
  return { label: { ...label, x: inside, y: y + 20, anchor: 'middle' }, below: true };
}

/** The last row: where the factors end, with a line up to the strip. */
function totalMarks(laid: Laid, scene: Scene, strip: number, stripEnd: number): Plot.RenderableMark[] {
  const { steps, total, scale, pen, type, size } = laid;
  const y = rowY(stripEnd, steps.length);
  const x = scale.px(total);
  const name = size.narrow ? allReasons(scene).replace(' reasons', '') : allReasons(scene);
  return [
    pen.lines([{ x1: x, y1: strip, x2: x, y2: y - 7 }], 'kf-ruler-drop'),
    Plot.dot([total], { x: total, y, r: 6, symbol: 'diamond', className: 'kf-ruler-total' }),
    ...pen.labels([
      { x: scale.fromPx - overhangPx - 6, y, text: capital(name), anchor: 'end', sizePx: type.word },
      totalLabel(laid, y).label,
    ]),
  ];
}

/** Whether a family makes a difference. */
const isFelt = ({ product }: FamilySteps): boolean => differs({ factor: product });

/** Brackets at the right, each with what its family makes. */
function bracketMarks({ families, scale, pen, type }: Laid, stripEnd: number): Plot.RenderableMark[] {
  const felt = families.filter(isFelt);
  const [near, far] = [scale.toPx + overhangPx + 4, scale.toPx + overhangPx + 10];
  const lines = felt.flatMap(({ first, count }): Line[] => {
    const [y1, y2] = [rowY(stripEnd, first) - 7, rowY(stripEnd, first + count - 1) + 7];
    return [
      { x1: far, y1, x2: far, y2 },
      { x1: near, y1, x2: far, y2: y1 },
      { x1: near, y1: y2, x2: far, y2 },
    ];
  });
  const x = far + 8;
  return [
    pen.lines(lines, 'kf-ruler-bracket'),
    ...pen.labels(
      felt.flatMap(({ family, first, count, product }): Label[] => {
        const y = (rowY(stripEnd, first) + rowY(stripEnd, first + count - 1)) / 2;
        const value = factorText(product);
        const both = { anchor: 'start', sizePx: type.word } as const;
        const name = { ...both, text: familyName[family].name.toLowerCase(), className: 'kf-faint' };
        const number = { ...both, x, text: value, bold: true };
        return count === 1
          ? [
              { ...number, y },
              { ...name, x: x + textWidthPx(value, type.word, true) + 4, y },
            ]
          : [
              { ...number, y: y - 9 },
              { ...name, x, y: y + 9 },
            ];
      }),
    ),
  ];
}

/** The key of a narrow drawing: a piece of each hatch, and what its family makes; as many lines as it needs. */
function keyItems({ families, type, size }: Laid): { item: FamilySteps; x: number; line: number }[] {
  const sizePx = type.tick;
  let [x, line] = [2, 0];
  return families.filter(isFelt).map((item) => {
    const width = 24 + textWidthPx(keyText(item), sizePx) + 8;
    if (x > 2 && x + width - 8 > size.width) [x, line] = [2, line + 1];
    const placed = { item, x, line };
    x += width;
    return placed;
  });
}

const keyText = ({ family, product }: FamilySteps): string =>
  `${familyName[family].name.toLowerCase()} ${factorText(product)}`;

function keyMarks(laid: Laid, top: number): Plot.RenderableMark[] {
  const { pen, type } = laid;
  const items = keyItems(laid).map(({ item, x, line }) => ({ item, x, y: top + line * 20 }));
  return [
    hatched(
      items.map(({ item: { family }, x, y }) => ({ family, x1: x, x2: x + 18, y1: y - 6, y2: y + 6 })),
      pen,
    ),
    ...pen.labels(
      items.map(({ item, x, y }) => ({
        x: x + 23,
        y,
        text: keyText(item),
        anchor: 'start',
        sizePx: type.tick,
      })),
    ),
  ];
}

function drawn(laid: Laid, scene: Scene): Drawing {
  const { scale, pen, type, size, steps, headline, guess, far } = laid;
  const names = { range: 'Range', strip: stripName(scene) };
  const head = rulerHead({ headline, guess, far, scale, pen, type, names });
  const totalY = rowY(head.endPx, steps.length);
  const below = totalY + (totalLabel(laid, totalY).below ? 20 : 0) + 12;
  const keyLines = size.narrow ? 1 + Math.max(-1, ...keyItems(laid).map(({ line }) => line)) : 0;
  const grid = labelledTicks(scale, type.tick).map((tick) => {
    const x = scale.px(tick);
    return { x1: x, y1: head.endPx, x2: x, y2: below };
  });
  return sheetOf(scale, below + keyLines * 20 + (keyLines > 0 ? 8 : 2), [
    pen.lines(grid, 'kf-grid'),
    ...head.marks,
    ...totalMarks(laid, scene, head.stripPx, head.endPx),
    ...stepMarks(laid, head.endPx),
    ...(size.narrow ? keyMarks(laid, below + 14) : bracketMarks(laid, head.endPx)),
  ]);
}

/** A ruler with nothing on it, for work whose end no slicing estimate tells. */
export function emptyRuler(scene: Scene, size: Size): Drawing {
  const type = typeOf(size.narrow);
  const [fromPx, toPx] = placeOf(size);
  const scale = scaleFor([{ at: 10, leftPx: 0, rightPx: 0 }], [fromPx, toPx], [0, size.width]);
  const pen = penOn(scale);
  const names = { range: '', strip: stripName(scene) };
  const head = rulerHead({ headline: null, guess: null, far: '', scale, pen, type, names });
  return sheetOf(scale, head.endPx + 40, [
    ...head.marks,
    ...pen.labels([
      { x: size.width / 2, y: head.endPx + 22, text: refused, anchor: 'middle', sizePx: type.word },
    ]),
  ]);
}

/** The ruler that a viewer learns once: the range, its middle, the factors end to end from 1, and the guess. */
export const ruler: Figure = {
  id: 'ruler',
  title: ({ subject, baseline }) => `${subject.name} beside ${baseline.name} on one ruler`,
  units: 'times as long as the baseline',
  scale: 'logarithmic ruler',
  reading: () => readingName.careful,
  source: 'factor model',
  options(scene, size) {
    const headline = rangeOf(scene);
    return headline ? drawn(laidOut(scene, size, headline), scene) : emptyRuler(scene, size);
  },
  /** A bar by its end, where one slider sets it. */
  drag(scene, size, { y }) {
    const headline = rangeOf(scene);
    if (!headline) return undefined;
    const laid = laidOut(scene, size, headline);
    const { endPx } = rulerHead(laid);
    const step = laid.steps[Math.floor((y - rowY(endPx, 0) + rowPx / 2) / rowPx)];
    const control = step && sliders[step.id];
    const endIn = (other: Scene) => stepsOf(other.row.careful).find(({ id }) => id === step?.id)?.to;
    return control ? { control, typed: true, stands: (other) => endIn(other) ?? 1 } : undefined;
  },
  table(scene) {
    const { careful } = scene.row;
    const headline = rangeOf(scene);
    const columns = ['On the ruler', 'Family', stripName(scene), 'Low', 'High'];
    if (!headline) return { columns, rows: [[refused, '', '', '', '']] };
    const count = countInWords(careful.terms.length);
    const guess = scene.guess === null ? [] : [['Your guess', '', short(scene.guess), '', '']];
    return {
      columns,
      rows: [
        ['Range', '', short(headline.middle), short(headline.low), short(headline.high)],
        ...stepsOf(careful).map((step) => [
          factorName(step.id).onRuler,
          step.family,
          times(step.factor),
          times(step.low),
          times(step.high),
        ]),
        [`All ${count}, if they multiply`, '', times(careful.multiplied), '', ''],
        ...guess,
      ],
    };
  },
  caption: rulerCaption,
};
