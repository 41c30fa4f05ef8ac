import type { Reading } from '../../model/index.ts';
import { jobOf } from '../../phrases/job.ts';
import { list } from '../../phrases/list.ts';
import { leftOut } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import { isExact, sureOf } from '../../scene/sure.ts';
import { readingName } from '../../phrases/reading-name.ts';

/** Whether wear does not end the edge in the work of the scene, so that its slicing chain is refused. */
export const isRefused = ({ entry }: Scene): boolean => !jobOf(entry).slicingChain;

/** The ratio by one reading with the band about it, which only the careful estimate has. */
function ratioSaid(scene: Scene, reading: Reading): string {
  const sure = sureOf(scene);
  const { quick, careful } = scene.row;
  const band = isExact(sure) ? null : `${times(sure.low)} to ${times(sure.high)}`;
  return reading === 'careful'
    ? `${times(careful.product)} (${band === null ? 'no band' : `band ${band}`})`
    : `${times(quick.product)} (no band; the close one’s ${times(careful.product)} has ${band ?? 'none'})`;
}

/**
 * Opens an answer: whom it covers, how it reads them and the ratio with its band, with what has to be said of that.
 * The names stand here and nowhere else in it, so that long ones do not make it long.
 */
export function opening(scene: Scene, reading: Reading = scene.entry.reading): string {
  const { subject, baseline, row } = scene;
  const missing = leftOut(row[reading]);
  const as = isRefused(scene) ? ', as they would slice, which this work is not' : '';
  const without = missing.length > 0 ? `, without ${list(missing)}` : '';
  return `${subject.name} against ${baseline.name}, ${readingName[reading]} reading${as}${without}: ${ratioSaid(scene, reading)}.`;
}
