import { getDocumentProxy, getResolvedPDFJS } from 'unpdf';

interface Piece {
  str: string;
  /** The last two are where it begins, in points from the lower left corner. */
  transform: readonly number[];
}

/** Pieces of text as lines from the top, each from left to right: those whose feet differ by less than a point. */
function linesOf(pieces: readonly Piece[]): string {
  const placed = pieces
    .filter(({ str }) => str.trim() !== '')
    .map(({ str, transform }) => ({ str, x: transform[4] ?? NaN, y: transform[5] ?? NaN }));
  const lines: (typeof placed)[] = [];
  for (const piece of placed.sort((a, b) => b.y - a.y)) {
    const line = lines.at(-1);
    if (line && Math.abs((line[0]?.y ?? NaN) - piece.y) < 1) line.push(piece);
    else lines.push([piece]);
  }
  return lines
    .map((line) =>
      line
        .sort((a, b) => a.x - b.x)
        .map(({ str }) => str)
        .join(' '),
    )
    .join('\n');
}

/** The text of each page, as it can be selected; read by another program than the browser that printed it. */
export async function pdfPages(pdf: Buffer): Promise<string[]> {
  const document = await getDocumentProxy(new Uint8Array(pdf));
  const texts: string[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const { items } = await (await document.getPage(number)).getTextContent();
    texts.push(linesOf(items.filter((item) => 'str' in item)));
  }
  return texts;
}

type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + c * h,
  b * g + d * h,
  a * i + c * j,
  b * i + d * j,
  a * k + c * l + e,
  b * k + d * l + f,
];

const MM_PER_POINT = 25.4 / 72;

interface LineMm {
  x: number;
  y: number;
  x2: number;
  y2: number;
}

/** The straight lines of a page with their ends on the paper, in mm from its lower left corner. */
export async function pdfLinesMm(pdf: Buffer, number: number): Promise<LineMm[]> {
  const { OPS } = await getResolvedPDFJS();
  const page = await (await getDocumentProxy(new Uint8Array(pdf))).getPage(number);
  const { fnArray, argsArray } = await page.getOperatorList();
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  const kept: Matrix[] = [];
  const lines: LineMm[] = [];
  fnArray.forEach((operator, at) => {
    const given: unknown = argsArray[at];
    if (operator === OPS.save) kept.push(matrix);
    else if (operator === OPS.restore) matrix = kept.pop() ?? matrix;
    else if (operator === OPS.transform) matrix = times(matrix, given as Matrix);
    else if (operator === OPS.constructPath) {
      const [, [path]] = given as [number, [Record<number, number> | null]];
      const steps = Object.values(path ?? {});
      // A path of two points: 0 moves to the first, 1 draws to the second.
      if (steps.length !== 6 || steps[0] !== 0 || steps[3] !== 1) return;
      const [, fromX = NaN, fromY = NaN, , toX = NaN, toY = NaN] = steps;
      const [, , , , x, y] = times(matrix, [1, 0, 0, 1, fromX, fromY]);
      const [, , , , x2, y2] = times(matrix, [1, 0, 0, 1, toX, toY]);
      const [fromMm, toMm] = [
        { x: x * MM_PER_POINT, y: y * MM_PER_POINT },
        { x: x2 * MM_PER_POINT, y: y2 * MM_PER_POINT },
      ];
      lines.push({ ...fromMm, x2: toMm.x, y2: toMm.y });
    }
  });
  return lines;
}
