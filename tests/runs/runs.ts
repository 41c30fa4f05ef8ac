import type { KnifeRef, Run } from '../../src/runs/log.ts';

type With<Knife> = Omit<Run, 'knife'> & { readonly knife: Knife };

/** A run of the invented loft, to change in tests: its knife by id, or by name where it stands in a file. */
export const aRun = <Knife extends KnifeRef = string>(
  change: Partial<With<Knife>> = {},
): With<Knife | string> => ({
  knife: 'plover',
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
