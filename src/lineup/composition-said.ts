import { carbideWithPlusMinus, hardenedFrom } from './hardened-said.ts';
import { list } from './rows.ts';
import { plain } from './show.ts';
import type { Hardened } from './steel.ts';

/** What a composition comes to, in words. */
export function compositionSaid(hardened: Hardened): string[] {
  const { volPercent, tieLine, austeniteCarbon, notes } = hardened.estimate;
  const names = { Fe3C: tieLine.formula, CrC: tieLine.formula, MC: 'MC', M6C: 'M6C' } as const;
  const kinds = (Object.keys(names) as (keyof typeof names)[]).flatMap((kind) => {
    const volume = volPercent[kind];
    return volume === undefined ? [] : [`${plain(volume, 2)} % ${names[kind]}`];
  });
  return [
    `Carbide ${hardenedFrom(hardened)}: ${carbideWithPlusMinus(hardened)} by volume${kinds.length > 1 ? `, of it ${list(kinds)}` : kinds.length === 1 ? `, all of it ${tieLineName(volPercent, names)}` : ''}.`,
    `The matrix keeps ${plain(austeniteCarbon.value, 2)} ± ${plain(austeniteCarbon.plusMinus, 1)} % carbon by mass.`,
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

/** The button that puts it into the line-up. */
export const takeSaid = (name: string): string => `Take it as the carbide of ${name}`;

/** That it was. */
export const carbideTaken = (name: string, hardened: Hardened): string =>
  `The carbide of ${name} is now ${carbideWithPlusMinus(hardened)} by volume. Undo takes it back.`;
