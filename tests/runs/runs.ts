import type { Run } from '../../src/runs/log.ts';

/** A run of the invented loft, to change in tests. */
export const aRun = (change: Partial<Run> = {}): Run => ({
  knife: 'Plover',
  batch: 'coil 1',
  sharpening: '1',
  cuts: 120,
  endPoint: 'a strand tears',
  checkedEvery: 'not recorded',
  startSharpness: 'not recorded',
  angleDeg: 20,
  burrChecked: true,
  judge: 'not recorded',
  ...change,
});
