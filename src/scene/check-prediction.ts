import { square } from '../model/index.ts';
import type { Squared } from '../model/index.ts';
import { runsOf } from './runs.ts';
import type { Scene } from './scene.ts';
import { isExact, sureOf } from './sure.ts';

/** Prediction and measurement squared; null where one of them has no band. */
export function squareOf(scene: Scene): Squared | null {
  const { measured } = runsOf(scene);
  const sure = sureOf(scene);
  if (measured === null || isExact(sure)) return null;
  return square({ predicted: sure, measured });
}
