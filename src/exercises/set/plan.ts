import { isAdditive, levels } from '../make.ts';
import type { Kind } from '../numbers.ts';
import type { Level } from '../problem.ts';
import type { Dice } from '../random.ts';

/** One place of a set: which kind stands there, and how hard it is. */
export interface Place {
  kind: Kind;
  level: Level;
}

/** Of all problems, about so many are additive where both are allowed: one in four. */
const ADDITIVE_SHARE = 1 / 4;

/**
 * The places of a set, kinds mixed and levels rising: what all versions of it have in common.
 * Where kinds that add and kinds that multiply are both allowed, about a quarter adds, of two problems at least one.
 */
export function planned(dice: Dice, kinds: readonly Kind[], count: number, level: Level | 'rising'): Place[] {
  const adding = kinds.filter(isAdditive);
  const others = kinds.filter((kind) => !isAdditive(kind));
  const fair = Math.max(count > 1 ? 1 : 0, Math.round(count * ADDITIVE_SHARE));
  const ofAdding = adding.length === 0 ? 0 : others.length === 0 ? count : fair;
  const mixed = dice.several(
    [...dealt(dice, adding, ofAdding), ...dealt(dice, others, count - ofAdding)],
    count,
  );
  return mixed.map((kind, index) => ({
    kind,
    level: level === 'rising' ? (levels[Math.floor((index * levels.length) / count)] ?? 1) : level,
  }));
}

/** So many kinds, none a second time before every one has had its turn. */
const dealt = (dice: Dice, kinds: readonly Kind[], count: number): Kind[] =>
  Array.from({ length: Math.ceil(count / (kinds.length || 1)) }, () => dice.several(kinds, kinds.length))
    .flat()
    .slice(0, count);
