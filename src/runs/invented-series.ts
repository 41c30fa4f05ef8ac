/** Readings along edges that nobody cut with, for two knives that blunt along unlike curves. */
import type { SeriesReading } from './log.ts';

/** Where a reading is taken, in shares of the cuts that halve the sharpness. */
const places = [0, 0.1, 0.25, 0.5, 1, 1.75, 3];
/** How far each reading lies off its curve, and each sharpening off its knife: invented, once and for all. */
const offReading = [1.006, 0.985, 1.012, 0.992, 1.015, 0.988, 1.004, 0.997];
const offSharpening = [0.94, 1.09, 0.98];

/** S = start/(1 + (x/half)^b): invented, so that the ratio of the two depends on the stop. */
const knives = {
  x: { start: 100, half: 100, b: 0.85, shift: 0 },
  y: { start: 94, half: 100, b: 1.2, shift: 3 },
} as const;

/** Three sharpenings of each of two invented knives; both halve at 100 cuts, about which their sharpenings scatter. */
export function inventedSeries(knife: keyof typeof knives): SeriesReading[][] {
  const { start, half, b, shift } = knives[knife];
  return offSharpening.map((factor, sharpening) =>
    places.map((place, index) => ({
      cut: place * half * factor,
      sharpness:
        (start / (1 + place ** b)) *
        (offReading[(index * 3 + sharpening * 5 + shift) % offReading.length] ?? 1),
    })),
  );
}
