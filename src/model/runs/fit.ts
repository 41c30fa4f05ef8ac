/** Least squares for a power law through readings of blunting. */

/** y = a·x^b with standard deviations of a and b and the residual sum of squares, in the units of x and y. */
export interface PowerFit {
  a: number;
  b: number;
  aSd: number;
  bSd: number;
  rss: number;
}

/**
 * Fits y = a·x^b by least squares on y itself, by Levenberg–Marquardt steps from the log–log line.
 * (The log–log line alone minimises relative errors, which is another question.)
 *
 * @param x e.g. metres of material cut, all above 0, at least two different
 * @param y e.g. cutting force in newtons, as many as x and at least three, not all 0
 * @throws RangeError for readings outside those limits, or where no best b is found between −50 and 50
 * @example fitPower([1, 2, 4], [3, 12, 48]).b // → 2.000000000
 */
export function fitPower(x: readonly number[], y: readonly number[]): PowerFit {
  check(x, y);
  const n = x.length;
  // x over its geometric mean and y over its size: a and b then hardly pull on each other, and units do not matter.
  const logX = x.map(Math.log);
  const centre = logX.reduce((sum, v) => sum + v, 0) / n;
  const u = logX.map((v) => v - centre);
  const size = Math.max(...y.map(Math.abs));
  const v = y.map((value) => value / size);

  const rssAt = (a: number, b: number): number =>
    u.reduce((sum, ui, i) => sum + (at(v, i) - a * Math.exp(b * ui)) ** 2, 0);

  let [a, b] = start(u, v);
  let rss = rssAt(a, b);
  let damping = 1e-3;
  for (let step = 0; step < 500 && damping < 1e12; step += 1) {
    const { aa, ab, bb, ra, rb } = normalEquations(u, v, a, b);
    const [daa, dbb] = [aa * (1 + damping), bb * (1 + damping)];
    const det = daa * dbb - ab * ab;
    const nextA = a + (ra * dbb - rb * ab) / det;
    const nextB = b + (rb * daa - ra * ab) / det;
    const next = Math.abs(nextB) > 50 ? Infinity : rssAt(nextA, nextB);
    if (next <= rss) {
      const settled =
        Math.abs(nextB - b) < 1e-15 * (1 + Math.abs(b)) && Math.abs(nextA - a) < 1e-15 * Math.abs(a);
      [a, b, rss] = [nextA, nextB, next];
      damping /= 10;
      if (settled) break;
    } else damping *= 10;
  }

  const { aa, ab, bb, ra, rb } = normalEquations(u, v, a, b);
  const flat = Math.abs(ra) <= 1e-6 * Math.sqrt(aa) && Math.abs(rb) <= 1e-6 * Math.sqrt(bb);
  const det = aa * bb - ab * ab;
  if (!flat || !(det > 0)) {
    throw new RangeError('y follows no power law in x: no best exponent b was found between -50 and 50');
  }
  const s2 = rss / (n - 2);
  // Back to the units of x: a_x = size·a·exp(−b·centre), whose derivatives carry the covariance along.
  const scale = size * Math.exp(-b * centre);
  const toB = -a * centre;
  const aVariance = (s2 * (bb - 2 * toB * ab + toB * toB * aa)) / det;
  return {
    a: a * scale,
    b,
    aSd: scale * Math.sqrt(aVariance),
    bSd: Math.sqrt((s2 * aa) / det),
    rss: rss * size * size,
  };
}

function at(values: readonly number[], i: number): number {
  return values[i] ?? Number.NaN;
}

/** The sums of JᵀJ and Jᵀr for v = a·exp(b·u). */
function normalEquations(u: readonly number[], v: readonly number[], a: number, b: number) {
  let [aa, ab, bb, ra, rb] = [0, 0, 0, 0, 0];
  u.forEach((ui, i) => {
    const byA = Math.exp(b * ui);
    const byB = a * ui * byA;
    const residual = at(v, i) - a * byA;
    aa += byA * byA;
    ab += byA * byB;
    bb += byB * byB;
    ra += byA * residual;
    rb += byB * residual;
  });
  return { aa, ab, bb, ra, rb };
}

/** The log–log line where every v is above 0, else a straight proportion. */
function start(u: readonly number[], v: readonly number[]): [number, number] {
  let b = 1;
  if (v.every((value) => value > 0)) {
    const logV = v.map(Math.log);
    b = u.reduce((sum, ui, i) => sum + ui * at(logV, i), 0) / u.reduce((sum, ui) => sum + ui * ui, 0);
    b = Math.min(20, Math.max(-20, b));
  }
  const shape = u.map((ui) => Math.exp(b * ui));
  const a = shape.reduce((sum, s, i) => sum + s * at(v, i), 0) / shape.reduce((sum, s) => sum + s * s, 0);
  return [a === 0 ? 1e-3 : a, b];
}

function check(x: readonly number[], y: readonly number[]): void {
  if (x.length !== y.length)
    throw new RangeError(`y has ${y.length} readings, as many as x (${x.length}) are needed`);
  if (x.length < 3) throw new RangeError(`x has ${x.length} readings, at least 3 are needed`);
  x.forEach((value, i) => {
    if (!(value > 0 && Number.isFinite(value)))
      throw new RangeError(`x[${i}] ${value} is not a finite number above 0`);
  });
  y.forEach((value, i) => {
    if (!Number.isFinite(value)) throw new RangeError(`y[${i}] ${value} is not a finite number`);
  });
  if (x.every((value) => value === x[0]))
    throw new RangeError(`x is ${x[0]} throughout, at least 2 different are needed`);
  if (y.every((value) => value === 0))
    throw new RangeError('y is 0 throughout, at least one other reading is needed');
}
