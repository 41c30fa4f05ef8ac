import type { RenderFunction } from '@observablehq/plot';
import { inDecimals } from '../scene/show.ts';

const svg = 'http://www.w3.org/2000/svg';

/** A name in bold with what is said of it behind it, in one line. */
export interface NamedText {
  /** Where the line begins, in the values of the axes. */
  x: number;
  y: number;
  name: string;
  rest: string;
}

/** Lines that begin with a name. They are one text each, so that the rest follows the name however wide that comes out. */
export const namedText =
  (lines: readonly NamedText[]): RenderFunction =>
  (_index, scales, _values, _dimensions, { document }) => {
    const group = document.createElementNS(svg, 'g');
    for (const { x, y, name, rest } of lines) {
      const text = document.createElementNS(svg, 'text');
      text.setAttribute('class', 'kf-on-paper');
      text.setAttribute('text-anchor', 'start');
      text.setAttribute('x', String(inDecimals(Number(scales.x?.(x)), 1)));
      text.setAttribute('y', String(inDecimals(Number(scales.y?.(y)), 1)));
      const parts = [
        ['kf-name', name],
        ['kf-rest', rest],
      ] as const;
      for (const [of, words] of parts) {
        const part = document.createElementNS(svg, 'tspan');
        part.setAttribute('class', of);
        if (of === 'kf-rest') part.setAttribute('dx', '8');
        part.textContent = words;
        text.append(part);
      }
      group.append(text);
    }
    return group;
  };
