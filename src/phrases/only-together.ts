import type { Row } from '../model/index.ts';
import type { Scene } from '../scene/scene.ts';
import { readAlike, readsAsOne, short } from '../scene/show.ts';
import { productOf } from '../scene/terms.ts';

/** That the parts of a total each read as one and the total does not; nothing where the total reads as one too. */
export const onlyTogether = (
  { subject, baseline }: Scene,
  { multiplied }: Pick<Row, 'multiplied'>,
): string =>
  readsAsOne(multiplied)
    ? ''
    : `Each difference between ${subject.name} and ${baseline.name} is too small to show by itself. Together they make ${short(multiplied)}.`;

/** What has to be added where a total is given beside the parts that can be seen, and is another than theirs. */
export const smallParts = (seen: readonly { factor: number }[], total: number): string =>
  readAlike(productOf(seen), total) ? '' : ', counting what is too small to show';
