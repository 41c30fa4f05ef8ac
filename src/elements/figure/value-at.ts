import type { Control } from '../../topics/base/controls.ts';
import { sceneOf } from '../../scene/scene.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { settled } from '../../topics/base/settled.ts';
import type { Handle, Place } from '../../figure-kit/figure.ts';
import { inDecimals } from '../../scene/show.ts';

/**
 * The value of its slider at which a handle would stand at a place, or as near to it as the slider goes.
 *
 * A handle that is told by where it stands is searched for among the slider's steps, each look halving what is left.
 *
 * @param entry the comparison as it is, all of which stays but what the control writes
 * @throws RangeError where the model refuses a value that is looked at
 */
export function valueAt(handle: Handle, control: Control, entry: ComparisonEntry, at: Place): number {
  if ('value' in handle) {
    const { low: min = control.min, high: max = control.max } = handle.within ?? {};
    return settled({ ...control, min, max }, entry, handle.value(at));
  }
  const aim = handle.aim ? handle.aim(at) : at.x;
  const valueOf = (step: number): number => inDecimals(control.min + step * control.step, 6);
  const beyond = (step: number): number =>
    handle.stands(sceneOf(control.write(entry, valueOf(step))), at) - aim;
  let [low, high] = [0, Math.round((settled(control, entry, control.max) - control.min) / control.step)];
  let [short, far] = [beyond(low), beyond(high)];
  // It stands there whatever the value.
  if (short === far) return control.read(entry);
  const rising = far > short;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const off = beyond(middle);
    if (off > 0 === rising) [high, far] = [middle, off];
    else [low, short] = [middle, off];
  }
  return valueOf(Math.abs(short) < Math.abs(far) ? low : high);
}
