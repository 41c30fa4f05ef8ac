import { shownNames } from '../../comparison/knife-names.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';

/** The knives a run can be of: those of the comparison, those a log names besides, and the codes of a blind sheet; each once. */
export const knifeChoices = (
  { knives }: ComparisonEntry,
  besides: readonly string[],
  codes: readonly string[],
): string[] => [...new Set([...shownNames(knives).values(), ...besides, ...codes])];

/** The comparison for another log: what was seen of the one before is not seen of it. */
export function withoutLooks({ plan, ...entry }: ComparisonEntry): ComparisonEntry {
  if (plan === undefined) return entry;
  const { looks: _looks, endPointLate: _late, ...rest } = plan;
  return { ...entry, plan: rest };
}

/** What is said once a run is in the log: `cells` is its row, `many` the runs there are now. */
export function runSaid(cells: readonly string[], isChange: boolean, many: number): string {
  const said = cells.slice(0, 4).join(', ');
  return isChange
    ? `Changed: ${said}.`
    : `Added: ${said}. The log has ${many} ${many === 1 ? 'run' : 'runs'}.`;
}
