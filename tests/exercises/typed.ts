import { modeOf } from '../../src/exercises/index.ts';
import type { Asks } from '../../src/exercises/index.ts';

/** An answer as a careful reader types it. */
export function typed(value: number, asks: Asks): string {
  switch (modeOf(asks)) {
    case 'letter':
      return 'ABCD'.charAt(value - 1);
    case 'share':
      return `${(value * 100).toFixed(6)} %`;
    case 'quantity':
      return value.toFixed(6);
    default:
      return `×${value.toFixed(6)}`;
  }
}
