/** A label to be placed below a mark: to the left or right of its stem, in one of several rows. */
export interface Wanted {
  x: number;
  widthPx: number;
}

export interface Placed {
  row: number;
  side: 'left' | 'right';
}

/** Between a stem and its own label, between two labels, and between a label and the stem of another, px. */
const gaps = { own: 6, labels: 8, stem: 4 };

interface Box extends Placed {
  x: number;
  from: number;
  to: number;
}

const boxOf = ({ x, widthPx }: Wanted, { row, side }: Placed): Box =>
  side === 'left'
    ? { row, side, x, from: x - gaps.own - widthPx, to: x - gaps.own }
    : { row, side, x, from: x + gaps.own, to: x + gaps.own + widthPx };

/** Whether two labels, each with the stem down to its row, keep clear of each other. */
function keepClear(a: Box, b: Box): boolean {
  if (a.row === b.row) return a.to + gaps.labels <= b.from || b.to + gaps.labels <= a.from;
  const [upper, lower] = a.row < b.row ? [a, b] : [b, a];
  // The stem of the lower one passes the row of the upper one.
  return lower.x <= upper.from - gaps.stem || lower.x >= upper.to + gaps.stem;
}

/**
 * Places for labels below a ruler in as few rows as there can be, so that none runs into another or through a stem.
 *
 * @param wanted from left to right
 * @param widthPx of the drawing
 * @returns null where there are no such places
 */
export function placeLabels(wanted: readonly Wanted[], widthPx: number): Placed[] | null {
  for (let rows = 1; rows <= wanted.length + 1; rows += 1) {
    const placed = placeIn(wanted, rows, widthPx, []);
    if (placed) return placed.map(({ row, side }) => ({ row, side }));
  }
  return null;
}

function placeIn(
  wanted: readonly Wanted[],
  rows: number,
  widthPx: number,
  placed: readonly Box[],
): Box[] | null {
  const next = wanted[placed.length];
  if (!next) return [...placed];
  const sides =
    placed.length < wanted.length / 2 ? (['left', 'right'] as const) : (['right', 'left'] as const);
  for (let row = 0; row < rows; row += 1)
    for (const side of sides) {
      const box = boxOf(next, { row, side });
      if (box.from < 0 || box.to > widthPx || !placed.every((other) => keepClear(other, box))) continue;
      const all = placeIn(wanted, rows, widthPx, [...placed, box]);
      if (all) return all;
    }
  return null;
}
