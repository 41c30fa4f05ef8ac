import * as Plot from '@observablehq/plot';
import type { Drawing } from '../../figure-kit/figure.ts';
import { textWidthPx } from '../../figure-kit/text-width.ts';
import type { LogScale } from './log-scale.ts';

/** A word or number of the drawing; places in px, `y` at the middle of the letters. */
export interface Label {
  x: number;
  y: number;
  text: string;
  anchor: 'start' | 'middle' | 'end';
  sizePx: number;
  className?: string;
  /** Written heavier: it is wider. */
  bold?: boolean;
}

/** A straight line, px. */
export interface Line {
  x1: number;
  y1: number;
  x2: number;
  y2: number;
}

/** How far a label reaches to the left and right, px. */
export function reachOf({ x, text, anchor, sizePx, bold }: Label): readonly [left: number, right: number] {
  const width = textWidthPx(text, sizePx, bold);
  const left = { start: x, middle: x - width / 2, end: x - width }[anchor];
  return [left, left + width];
}

/** What draws on the ruler: places in px, which Plot takes as ratios along the ruler and as px down the sheet. */
export interface Pen {
  lines(of: readonly Line[], className: string): Plot.RenderableMark;
  boxes(of: readonly Line[], options: Plot.RectOptions): Plot.RenderableMark;
  labels(of: readonly Label[]): Plot.RenderableMark[];
}

export function penOn(scale: LogScale): Pen {
  const ends = {
    x1: ({ x1 }: Line) => scale.ratio(x1),
    x2: ({ x2 }: Line) => scale.ratio(x2),
    y1: 'y1',
    y2: 'y2',
  };
  return {
    lines: (of, className) => Plot.link(of, { ...ends, className }),
    boxes: (of, options) => Plot.rect(of, { ...ends, ...options } as Plot.RectOptions),
    labels: (of) => {
      const groups = new Map<string, Label[]>();
      for (const label of of) {
        const group = `${label.anchor} ${label.sizePx} ${label.bold} ${label.className}`;
        groups.set(group, [...(groups.get(group) ?? []), label]);
      }
      return [...groups.values()].map((group) => {
        const [{ anchor, sizePx, bold, className } = {} as Partial<Label>] = group;
        const classes = [bold ? 'kf-value' : '', className ?? ''].filter(Boolean).join(' ');
        return Plot.text(group, {
          x: ({ x }: Label) => scale.ratio(x),
          y: 'y',
          text: 'text',
          textAnchor: anchor ?? 'start',
          fontSize: sizePx ?? 0,
          ...(classes === '' ? {} : { className: classes }),
        });
      });
    },
  };
}

/** A drawing on the ruler, so many px high. */
export const sheetOf = (scale: LogScale, height: number, marks: Drawing['marks']): Drawing => ({
  height,
  margin: 0,
  x: {
    type: 'log',
    domain: [scale.low, scale.high],
    range: [scale.fromPx, scale.toPx],
    axis: null,
  },
  y: { type: 'linear', domain: [0, height], range: [0, height], axis: null },
  marks,
});
