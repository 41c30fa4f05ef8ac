/**
 * How the scatter of single runs reaches the ratio of two knives compared within batches. It depends only on which edge
 * was cut in which batch, not on the lives.
 */

import type { Cell } from './judge-log.ts';

/** Of runs of one edge in two batches, the share of their variance that is the edge's: an assumption for weights only. */
const EDGE_SHARE = 0.5;

/** What one edge adds to the estimate, and what the fit takes off it. Columns are the batches, then the knife. */
interface EdgePart {
  knife: 0 | 1;
  cells: number[];
  /** The share of the edge's weighted cells that the fit explains, by column. */
  fitted: number[];
  /** The covariance of the columns with the edge's weighted cells, for a scatter of 1. */
  shared: number[];
  /** The variance of the edge's weighted cells, for a scatter of 1. */
  own: number;
}

export interface Design {
  columns: number;
  /** Weight of each cell: their sum with the logarithms of the lives is the logarithm of the ratio. */
  weights: number[];
  /** Knife 1 for the one looked at, 0 for the other, less its mean in the batch. */
  contrast: number[];
  edges: EdgePart[];
  /** For each knife, the covariance of the columns for a scatter of 1. */
  columnCovariance: [number[][], number[][]];
  /** Variance of the logarithm of the ratio if one knife's runs have a variance of 1 and the other's none. */
  ratioVariance: [number, number];
  /** Expected squared residuals of one knife's edges (row) for a scatter of 1 of each knife alone (column). */
  expected: [[number, number], [number, number]];
}

const at = (values: readonly number[], i: number): number => values[i] ?? 0;
const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * at(b, i), 0);
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Matrix times column. */
const times = (matrix: readonly (readonly number[])[], column: readonly number[]): number[] =>
  matrix.map((row) => dot(row, column));

/** How many batches cells come from, the batches counted from 0 without a gap. */
export const batchCount = (cells: readonly Cell[]): number =>
  cells.reduce((most, { batch }) => Math.max(most, batch + 1), 0);

/** The knife as a number, less its mean within the batch: what is left of it once the batches are fitted. */
function contrastOf(cells: readonly Cell[]): number[] {
  const counts = Array.from({ length: batchCount(cells) }, () => ({ all: 0, looked: 0 }));
  for (const { knife, batch } of cells) {
    const count = counts[batch];
    if (!count) continue;
    count.all += 1;
    count.looked += 1 - knife;
  }
  return cells.map(({ knife, batch }) => {
    const { all, looked } = counts[batch] ?? { all: 1, looked: 0 };
    return 1 - knife - looked / all;
  });
}

/** The last design asked for: simulated logs come by the thousand with the same runs in the same batches. */
let last: { layout: string; design: Design } | undefined;

/** The design of a blocked comparison; every batch holds both knives. */
export function designOf(cells: readonly Cell[]): Design {
  const layout = cells.map(({ knife, edge, batch }) => `${knife} ${edge} ${batch}`).join();
  if (last?.layout !== layout) last = { layout, design: newDesign(cells) };
  return last.design;
}

function newDesign(cells: readonly Cell[]): Design {
  const batches = batchCount(cells);
  const columns = batches + 1;
  const contrast = contrastOf(cells);
  const squares = dot(contrast, contrast);
  const weights = contrast.map((value) => value / squares);
  const batchSizes = Array.from(
    { length: batches },
    (_, b) => cells.filter(({ batch }) => batch === b).length,
  );
  /** The column sums of some cells, each times its factor. */
  const columnSums = (of: readonly number[], factor: (cell: number) => number): number[] => {
    const sums = Array.from({ length: columns }, () => 0);
    for (const i of of) {
      const batch = cells[i]?.batch ?? 0;
      sums[batch] = at(sums, batch) + factor(i);
      sums[batches] = at(sums, batches) + factor(i) * at(contrast, i);
    }
    return sums;
  };
  const one = (): number => 1;
  const groups = new Map<number, number[]>();
  cells.forEach(({ edge }, i) => {
    groups.set(edge, [...(groups.get(edge) ?? []), i]);
  });
  const columnCovariance: [number[][], number[][]] = [empty(columns), empty(columns)];
  const edges = [...groups.values()].map((of): EdgePart => {
    const knife = cells[of[0] ?? 0]?.knife ?? 0;
    const weight = sum(of.map((i) => at(weights, i)));
    const add = (column: readonly number[], by: number): void =>
      addOuter(columnCovariance[knife], column, column, by);
    for (const i of of) add(columnSums([i], one), 1 - EDGE_SHARE);
    add(columnSums(of, one), EDGE_SHARE);
    return {
      knife,
      cells: of,
      fitted: columnSums(of, (i) => at(weights, i)).map((value, c) =>
        c === batches ? value / squares : value / at(batchSizes, c),
      ),
      shared: columnSums(of, (i) => (1 - EDGE_SHARE) * at(weights, i) + EDGE_SHARE * weight),
      own: sum(of.map((i) => (1 - EDGE_SHARE) * at(weights, i) ** 2)) + EDGE_SHARE * weight ** 2,
    };
  });
  const design = { columns, weights, contrast, edges, columnCovariance };
  return { ...design, ratioVariance: ratioVarianceOf(edges), expected: expectedOf(edges, columnCovariance) };
}

const empty = (size: number): number[][] =>
  Array.from({ length: size }, () => Array.from({ length: size }, () => 0));

/** Adds a column times a row, times a factor, to a matrix. */
function addOuter(
  matrix: number[][],
  column: readonly number[],
  across: readonly number[],
  by: number,
): void {
  matrix.forEach((line, i) => {
    const factor = by * at(column, i);
    if (factor !== 0) across.forEach((value, j) => (line[j] = at(line, j) + factor * value));
  });
}

function ratioVarianceOf(edges: readonly EdgePart[]): [number, number] {
  const variance: [number, number] = [0, 0];
  for (const { knife, own } of edges) variance[knife] += own;
  return variance;
}

function expectedOf(
  edges: readonly EdgePart[],
  columnCovariance: Design['columnCovariance'],
): Design['expected'] {
  const expected: Design['expected'] = [
    [0, 0],
    [0, 0],
  ];
  for (const { knife, fitted, shared, own } of edges)
    for (const from of [0, 1] as const)
      expected[knife][from] +=
        dot(fitted, times(columnCovariance[from], fitted)) +
        (from === knife ? own - 2 * dot(shared, fitted) : 0);
  return expected;
}

/**
 * Satterthwaite's degrees of freedom of the estimated variance: how sure it is, given that each edge's squared residual
 * enters it with the share of its knife.
 *
 * @param variance of one run of each knife
 * @param share with which each knife's squared residuals enter the variance of the estimate
 */
export function freedom(
  design: Design,
  variance: readonly [number, number],
  share: readonly number[],
): number {
  const [first, second] = design.columnCovariance;
  const covariance = first.map((row, i) =>
    row.map((value, j) => variance[0] * value + variance[1] * at(second[i] ?? [], j)),
  );
  // Residuals of an edge have a variance of their own, and any two share −(half·fitted + fitted·half) through the
  // columns; the squares of those products, summed over all pairs, are traces of products of three small matrices.
  const [halves, fits, mixed] = [empty(design.columns), empty(design.columns), empty(design.columns)];
  let [trace, square] = [0, 0];
  for (const { knife, fitted, shared, own } of design.edges) {
    const back = times(covariance, fitted);
    const half = shared.map((value, c) => variance[knife] * value - at(back, c) / 2);
    const factor = at(share, knife);
    const common = 2 * dot(half, fitted);
    const whole = variance[knife] * own - common;
    trace += factor * whole;
    square += factor ** 2 * (whole ** 2 - common ** 2);
    addOuter(halves, half, half, factor);
    addOuter(fits, fitted, fitted, factor);
    addOuter(mixed, fitted, half, factor);
  }
  for (let i = 0; i < design.columns; i += 1)
    for (let j = 0; j < design.columns; j += 1)
      square +=
        2 * (at(halves[i] ?? [], j) * at(fits[i] ?? [], j) + at(mixed[i] ?? [], j) * at(mixed[j] ?? [], i));
  return trace ** 2 / square;
}
