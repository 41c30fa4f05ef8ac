/** What knives are called where they are shown, and whose a run is. */
import type { KnifeRef, NamedRun, Run } from '../runs/log.ts';
import type { ComparisonEntry, KnifeEntry } from './entry.ts';

type Named = Pick<KnifeEntry, 'id' | 'name'>;

/** The same name, however it was typed: no space around it, one form of accented letters. */
const plain = (name: string): string => name.trim().normalize('NFC');

/**
 * The name each knife is shown by: its own, and with a number behind it where another knife has the same.
 *
 * @returns names by id, no two alike
 */
export function shownNames(knives: readonly Named[]): Map<string, string> {
  const own = knives.map(({ name }) => plain(name));
  const taken = new Set(own);
  const given = new Map<string, string>();
  knives.forEach(({ id }, index) => {
    const name = own[index] ?? '';
    let shown = name;
    if (own.indexOf(name) !== own.lastIndexOf(name)) {
      let number = 1;
      while (taken.has(`${name} (${number})`)) number += 1;
      shown = `${name} (${number})`;
      taken.add(shown);
    }
    given.set(id, shown);
  });
  return given;
}

/** The knives with the names they are shown by; the same list where no two are called alike. */
export function withShownNames(knives: readonly KnifeEntry[]): readonly KnifeEntry[] {
  if (new Set(knives.map(({ name }) => plain(name))).size === knives.length) return knives;
  const names = shownNames(knives);
  return knives.map((knife) => ({ ...knife, name: names.get(knife.id) ?? knife.name }));
}

/** The knife a name in a log means: the one shown by it, else none of the comparison's. */
export function knifeCalled(knives: readonly Named[], name: string): KnifeRef {
  const called = plain(name);
  for (const [id, shown] of shownNames(knives)) if (shown === called) return id;
  return { called };
}

/** What a log calls the knife of a run. */
export const nameOfRun = (knives: readonly Named[], knife: KnifeRef): string =>
  typeof knife === 'string' ? (shownNames(knives).get(knife) ?? knife) : knife.called;

/** Runs of a file as the comparison's own. */
export const runsOfKnives = (knives: readonly Named[], runs: readonly NamedRun[]): Run[] =>
  runs.map((run) => ({ ...run, knife: knifeCalled(knives, run.knife) }));

/** The comparison's runs as a file has them: each knife by the name it is shown by. */
export const namedRuns = (knives: readonly Named[], runs: readonly Run[]): NamedRun[] =>
  runs.map((run) => ({ ...run, knife: nameOfRun(knives, run.knife) }));

/** The comparison with other knives: runs of one that went keep its name, and those under the name of one that came are its. */
export function withKnives(entry: ComparisonEntry, knives: readonly KnifeEntry[]): ComparisonEntry {
  if (entry.runs === undefined) return { ...entry, knives };
  const runs = entry.runs.map((run) => {
    if (typeof run.knife === 'string' && knives.some(({ id }) => id === run.knife)) return run;
    const knife = knifeCalled(knives, nameOfRun(entry.knives, run.knife));
    return typeof run.knife === 'object' && typeof knife === 'object' ? run : { ...run, knife };
  });
  return { ...entry, knives, runs: runs.some((run, i) => run !== entry.runs?.[i]) ? runs : entry.runs };
}
