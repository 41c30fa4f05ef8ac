import { contextIds, contextsFor, kinds, levels } from '../../exercises/index.ts';
import { FIRST_TALLY } from '../../teach/tally/tally-problems.ts';
import type { TallyChoice } from '../../teach/tally/tally-problems.ts';

/**
 * The problem that the texts of the fields ask for. What is not among the choices becomes the first choice. A seed is a
 * whole number below 2³²; without one, or with one that cannot be read, it is the worked example.
 */
export function tallyChoice(texts: Record<'kind' | 'context' | 'level' | 'seed', string>): {
  choice: TallyChoice;
  isSeedReadable: boolean;
} {
  const seed = texts.seed.trim();
  const isSeedReadable = seed === '' || (/^\d{1,10}$/.test(seed) && Number(seed) <= 0xffffffff);
  const kind = kinds.find((each) => each === texts.kind) ?? FIRST_TALLY.kind;
  const context = contextIds.find((each) => each === texts.context) ?? FIRST_TALLY.context;
  const allowed = contextsFor(kind);
  const choice = {
    kind,
    context: allowed.includes(context) ? context : (allowed[0] ?? FIRST_TALLY.context),
    level: levels.find((each) => String(each) === texts.level) ?? 1,
    seed: isSeedReadable && seed !== '' ? Number(seed) : null,
  };
  return { choice, isSeedReadable };
}
