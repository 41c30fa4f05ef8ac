import type { ComparisonEntry } from '../../comparison/entry.ts';
import { shownNames } from '../../comparison/knife-names.ts';

/** Brings the two choices of the question to the knives there are. */
export function showRoles(root: HTMLElement, entry: ComparisonEntry): void {
  const names = shownNames(entry.knives);
  for (const select of root.querySelectorAll<HTMLSelectElement>('select[data-role]')) {
    const wanted = entry.knives.map(({ id, name }) => [id, names.get(id) ?? name] as const);
    const same =
      select.options.length === wanted.length &&
      wanted.every(([id, name], at) => select.options[at]?.value === id && select.options[at]?.text === name);
    if (!same) select.replaceChildren(...wanted.map(([id, name]) => new Option(name, id)));
    select.value = entry[select.dataset['role'] as 'subject' | 'baseline'];
  }
}
