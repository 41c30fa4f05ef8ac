import { carbideWithPlusMinus, hardenedFrom, leverFormula } from '../../phrases/hardened-carbide.ts';
import { list } from '../../phrases/list.ts';
import { brief, plain } from '../../scene/show.ts';
import type { Hardened } from '../../scene/steel.ts';
import type { contents } from './entry.ts';
import { designationsHold } from '../../model/index.ts';

/** What a content left empty is taken for. */
export const contentNotKnownSaid =
  'Leave a field empty if you don’t know it: it may then be anything the steels of the list hold. The ± grows with it. Where the steel has none, write 0.';

/** What the designations hold of a content, for the hint of its field: `0.3 to 1.5% among the steels of the list.` */
export function heldByDesignations(of: (typeof contents)[number]): string {
  const { low, high } = designationsHold(of);
  return `The list has ${brief(low)} to ${brief(high)}%.`;
}

/** What a composition comes to, in words. */
export function compositionSaid(hardened: Hardened): string[] {
  const { volPercent, austeniteCarbon, basis, notes } = hardened.estimate;
  const formula = leverFormula(hardened);
  const names = { Fe3C: formula, CrC: formula, MC: 'MC', M6C: 'M6C' } as const;
  const kinds = (Object.keys(names) as (keyof typeof names)[]).flatMap((kind) => {
    const volume = volPercent[kind];
    return volume === undefined ? [] : [`${plain(volume, 2)}% ${names[kind]}`];
  });
  return [
    `Carbide ${hardenedFrom(hardened)}: ${carbideWithPlusMinus(hardened)} by volume${kinds.length > 1 ? `, of it ${list(kinds)}` : kinds.length === 1 ? `, all of it ${tieLineName(volPercent, names)}` : ''}.`,
    ...(basis === 'table'
      ? []
      : [
          `The matrix keeps ${plain(austeniteCarbon.value, 2)} ± ${plain(austeniteCarbon.plusMinus, 1)}% carbon by mass. That is from a table we know from memory.`,
        ]),
    ...notes,
  ];
}

/** The one kind there is. */
const tieLineName = <Kind extends string>(
  volPercent: Partial<Record<Kind, number>>,
  names: Record<Kind, string>,
): string =>
  (Object.keys(names) as Kind[])
    .filter((kind) => volPercent[kind])
    .map((kind) => names[kind])
    .join();

/** The button that puts it into the comparison. */
export const takeSaid = (name: string): string => `Take it as the carbide of ${name}`;

/** That it was. */
export const carbideTaken = (name: string, hardened: Hardened): string =>
  `The carbide of ${name} is now ${carbideWithPlusMinus(hardened)} by volume. Undo takes it back.`;
