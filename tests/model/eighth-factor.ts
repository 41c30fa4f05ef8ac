import type { Factor } from '../../src/model/chain/factors.ts';
import { logs } from '../../src/model/chain/loops.ts';

/** A made-up eighth factor: a knife cuts as long as its grind is high. It stands in the table, and nowhere else. */
export const eighth: Factor = {
  id: 'height' as Factor['id'],
  family: 'finish',
  combines: 'multiplies',
  quick: () => 0,
  quickStatus: 'made up',
  careful: (k) => {
    const height = k.measured('heightMm');
    return k.part('eighth', [height], (old) => logs(height, old));
  },
  parameters: [],
  status: 'made up',
};

/** What it makes of the loft's two knives: Dunlin's grind is 18 mm high, Plover's 14. */
export const worth = 18 / 14;
