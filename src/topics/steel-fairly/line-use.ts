import { regression } from '../../model/index.ts';
import { list } from '../../phrases/list.ts';
import type { Scene } from '../../scene/scene.ts';
import { bendMm, placeOf, steelsOf } from '../../scene/steel.ts';

/** Whose card the careful estimate does not read straight off the published line, and how it goes on there. */
export function lineUse(scene: Scene): string[] {
  const { subject, baseline } = steelsOf(scene);
  const both = [baseline, subject];
  const namesOf = (which: 'bent' | 'beyond'): string[] =>
    both.filter((steel) => placeOf(steel)[which]).map(({ name }) => name);
  const [bent, beyond] = [namesOf('bent'), namesOf('beyond')];
  const { low, high } = regression.hrc;
  return [
    beyond.length === 0
      ? ''
      : `The published line is used from ${low} to ${high} HRC. For ${list(beyond)} it goes on by Vickers, to an assumed power.`,
    bent.length === 0
      ? ''
      : `Below ${bendMm} mm of card the line is bent, for ${list(bent)}, so that it never reaches nothing. That is assumed too.`,
  ].filter((sentence) => sentence !== '');
}
