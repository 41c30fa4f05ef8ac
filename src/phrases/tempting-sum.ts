import { additiveGuess } from '../model/index.ts';
import type { Row } from '../model/index.ts';
import { standing } from './lists.ts';

/** What the terms of a row would come to if each only added its own part to 1. It can fall to 0 or below. */
export const temptingSum = (row: Row): number =>
  additiveGuess(standing(row).map(({ factor }) => (factor - 1) * 100));
