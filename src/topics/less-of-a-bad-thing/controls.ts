import type { Control } from '../base/controls.ts';
import { lessPercentOf } from './values.ts';
import { inFigures } from '../../scene/show.ts';

/** How much less of the harmful thing; written as the comparison's first typed percentage, a fall. */
export const lessControls: Record<string, Control> = {
  less: {
    label: () => 'Less of what is in the way',
    min: 0,
    max: 90,
    step: 1,
    unit: ' % less',
    read: (entry) => inFigures(lessPercentOf(entry)),
    write: (entry, value) => ({
      ...entry,
      faceValues: [value === 0 ? 0 : -value, ...(entry.faceValues ?? []).slice(1)],
    }),
  },
};
