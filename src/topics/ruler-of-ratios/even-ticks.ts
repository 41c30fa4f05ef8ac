import { inFigures, short } from '../../scene/show.ts';
/** Evenly spaced round ticks of a linear axis, no more than have room for their labels side by side. */
export function evenTicks(low: number, high: number, widthPx: number): number[] {
  const labelPx = 16 + 8 * short(high).length;
  const most = Math.max(3, Math.min(9, Math.floor(widthPx / labelPx)));
  const rough = (high - low) / most;
  const decade = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((round) => round * decade >= rough) ?? 10) * decade;
  const first = Math.ceil(low / step);
  const count = Math.floor(high / step) - first + 1;
  return Array.from({ length: count }, (_, index) => inFigures((first + index) * step, 6)).filter(
    (tick) => tick >= low && tick <= high,
  );
}
