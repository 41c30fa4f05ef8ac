type Point = readonly [x: number, y: number];

/** How far from the line a point is that may be left out, px: no screen shows it. */
const nearPx = 0.04;

/** How far a point lies from the stretch between two others. */
function fromStretch([x, y]: Point, [x1, y1]: Point, [x2, y2]: Point): number {
  const [dx, dy] = [x2 - x1, y2 - y1];
  const squared = dx * dx + dy * dy;
  const part = squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - x1) * dx + (y - y1) * dy) / squared));
  return Math.hypot(x - x1 - part * dx, y - y1 - part * dy);
}

/** The points that a line needs to run where it runs (Douglas and Peucker, The Canadian Cartographer 10, 1973). */
function needed(points: readonly Point[]): readonly Point[] {
  const [first, last] = [points[0], points.at(-1)];
  if (points.length < 3 || !first || !last) return points;
  const far = points.slice(1, -1).map((point) => fromStretch(point, first, last));
  const most = Math.max(...far);
  if (most <= nearPx) return [first, last];
  const at = far.indexOf(most) + 1;
  return [...needed(points.slice(0, at + 1)).slice(0, -1), ...needed(points.slice(at))];
}

/**
 * The same path with fewer points, where it is made of straight lines only; any other path as it is.
 *
 * @example thinned('M0,0L1,0.001L2,0L2,5') // 'M0,0L2,0L2,5'
 */
export const thinned = (path: string): string =>
  /^(?:[ML]-?[\d.]+,-?[\d.]+|Z)+$/.test(path)
    ? path.replaceAll(/M[^MZ]+/g, (line) => {
        const points = line
          .slice(1)
          .split('L')
          .map((pair): Point => {
            const [x = 0, y = 0] = pair.split(',').map(Number);
            return [x, y];
          });
        return `M${needed(points).join('L')}`;
      })
    : path;
