import type { Control } from './controls.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { inDecimals } from '../../scene/show.ts';

/** The nearest value a control's slider could stand at. */
export function settled({ min, max, last, step }: Control, entry: ComparisonEntry, value: number): number {
  const steps = Math.round((value - min) / step);
  const nearest = inDecimals(min + steps * step, 6);
  return Math.min(last?.(entry) ?? max, Math.max(min, nearest));
}
