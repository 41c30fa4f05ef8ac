import type { Choice } from './choice.ts';
import type { Control } from './base/controls.ts';
import type { NumberOf } from './base/numbers.ts';
import type { WordsOf } from '../phrases/sentences-of.ts';
import type { WorkedOf } from './worked.ts';
import type { Figure } from '../figure-kit/figure.ts';
import type { GuessOf, Topic } from './topic.ts';

/** Everything the topics at hand can show, by name. At build all are at hand; in the browser those of the page. */
export interface Registry {
  number(name: string): NumberOf;
  words(name: string): WordsOf;
  worked(name: string): WorkedOf;
  control(name: string): Control;
  choice(name: string): Choice;
  guess(name: string): GuessOf;
  figure(name: string): Figure;
}

/**
 * The registry of some topics.
 *
 * @throws RangeError (its members) for a name that none of them has: a mistake in the page, which fails the build.
 */
export function registryOf(topics: readonly Topic[]): Registry {
  const merged = <T>(part: (topic: Topic) => Readonly<Record<string, T>> | undefined): Map<string, T> =>
    new Map(topics.flatMap((topic) => Object.entries(part(topic) ?? {})));
  const named =
    <T>(what: string, all: ReadonlyMap<string, T>) =>
    (name: string): T => {
      const found = all.get(name);
      if (found === undefined)
        throw new RangeError(`no topic of src/topics has ${what} of the name "${name}"`);
      return found;
    };
  const sentences = named(
    'words',
    merged(({ words }) => words),
  );
  return {
    number: named(
      'a number',
      merged(({ numbers }) => numbers),
    ),
    // A sentence that does not apply is empty, and nobody reads it.
    words: (name) => (scene) => sentences(name)(scene).filter((sentence) => sentence !== ''),
    worked: named(
      'a worked example',
      merged(({ worked }) => worked),
    ),
    control: named(
      'a control',
      merged(({ controls }) => controls),
    ),
    choice: named(
      'a choice',
      merged(({ choices }) => choices),
    ),
    guess: named(
      'a guess',
      merged(({ guesses }) => guesses),
    ),
    figure: named(
      'a figure',
      merged(({ figures }) => Object.fromEntries((figures ?? []).map((figure) => [figure.id, figure]))),
    ),
  };
}
