import { escaped } from '../check/html.ts';
import type { Move } from './moved.ts';
import { movedInWords } from './moved.ts';

const ROW = 46;
const TOP = 8;
const MARGIN = 16;
const FOOT = 44;

/**
 * Every idea as a line from an open ring, its part of the answers before, to a dot, its part after. Nothing without
 * counts.
 *
 * @param width of the drawing in px
 */
export function movedPicture(moves: readonly Move[], width: number): string {
  if (moves.length === 0) return '';
  const x = (share: number): string => (MARGIN + share * (width - 2 * MARGIN)).toFixed(1);
  const ground = TOP + moves.length * ROW;
  const rows = moves.map(({ idea, shareBefore, shareAfter }, index) => {
    const y = TOP + index * ROW + 32;
    return (
      `<text x="${MARGIN}" y="${y - 14}">${escaped(idea)}</text>` +
      `<path class="kf-thin" d="M${MARGIN} ${y}H${width - MARGIN}"></path>` +
      `<path class="kit-move" d="M${x(shareBefore)} ${y}H${x(shareAfter)}"></path>` +
      `<circle class="kit-ring" cx="${x(shareBefore)}" cy="${y}" r="6"></circle>` +
      `<circle class="kit-after" cx="${x(shareAfter)}" cy="${y}" r="5"></circle>`
    );
  });
  const ticks = [0, 0.25, 0.5, 0.75, 1].map(
    (share) =>
      `<path class="kf-thin" d="M${x(share)} ${ground}v5"></path><text x="${x(share)}" y="${ground + 19}" text-anchor="${share === 0 ? 'start' : share === 1 ? 'end' : 'middle'}">${share * 100}%</text>`,
  );
  return (
    `<svg class="kf-plot kit-dots" viewBox="0 0 ${width} ${ground + FOOT}" role="img" aria-label="${escaped(movedInWords(moves).join(' '))}">` +
    `${rows.join('')}<path class="kf-thin" d="M${MARGIN} ${ground}H${width - MARGIN}"></path>${ticks.join('')}` +
    `<text x="${MARGIN}" y="${ground + 38}">ring: before, dot: after</text></svg>`
  );
}
