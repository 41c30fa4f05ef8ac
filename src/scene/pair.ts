import type { Comparison } from '../model/index.ts';
import { pairIn } from '../comparison/predicted.ts';
import type { Scene } from './scene.ts';

/** The two knives that are looked at. */
export const pairOf = ({ comparison, entry }: Scene): Comparison => pairIn(comparison, entry.subject);
