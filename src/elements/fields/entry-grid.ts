import { inputName, unitOf } from '../../compare/entry-input.ts';
import { inInput } from '../../compare/field.ts';
import { knifeInputNamed, rowsAt } from '../../compare/knife-inputs.ts';
import type { Place } from '../../compare/knife-fields.ts';
import { shownNames } from '../../comparison/knife-names.ts';
import { shownKnives } from '../../comparison/shown-knives.ts';
import type { Scene } from '../../scene/scene.ts';

type Typed = HTMLInputElement | HTMLSelectElement;

/** Gives a cell, or the place of its messages, to another knife: its ids follow, what was wrong in it goes. */
function giveTo(part: HTMLElement, id: string): void {
  const before = part.dataset['knife'] ?? '';
  if (before === id) return;
  part.dataset['knife'] = id;
  for (const element of part.querySelectorAll('[id], [aria-describedby]'))
    for (const attribute of ['id', 'aria-describedby']) {
      const value = element.getAttribute(attribute);
      if (value?.startsWith(`${before}-`)) element.setAttribute(attribute, id + value.slice(before.length));
    }
  for (const input of part.querySelectorAll('[aria-invalid]')) input.removeAttribute('aria-invalid');
  for (const problem of part.querySelectorAll('[data-part="problem"]')) problem.textContent = '';
}

/** As many cells as there are knives, each with its knife; the last is copied for one more. */
function deal(parts: HTMLElement[], ids: readonly string[]): HTMLElement[] {
  const dealt = [...parts];
  while (dealt.length > ids.length) dealt.pop()?.remove();
  while (dealt.length < ids.length) {
    const last = dealt.at(-1);
    const copy = last?.cloneNode(true);
    if (!last || !(copy instanceof HTMLElement)) break;
    last.after(copy);
    dealt.push(copy);
  }
  // From the last to the first: a copy has the ids of the cell it was made from until it gets its own.
  for (const [index, part] of [...dealt.entries()].reverse()) giveTo(part, ids[index] ?? '');
  return dealt;
}

/** Puts text in an input, unless somebody is typing there or what they typed can't be read. */
function fill(
  input: Typed,
  { text, placeholder }: { text: string; placeholder: string },
  typing: Typed | null,
): void {
  if (input instanceof HTMLInputElement && input.placeholder !== placeholder) input.placeholder = placeholder;
  if (input === typing || input.getAttribute('aria-invalid') === 'true' || input.value === text) return;
  input.value = text;
}

/**
 * Brings the form to a comparison: a cell for each knife in each line, its inputs, its name and what is known besides.
 *
 * @param typing the field somebody is typing in: its text is theirs until they leave it
 */
export function showGrid(grid: HTMLElement, { entry, comparison }: Scene, typing: Typed | null): void {
  const ids = entry.knives.map(({ id }) => id);
  const shown = shownKnives(entry);
  const names = shownNames(entry.knives);
  grid.dataset['knives'] = String(shown.length);
  for (const { inputs, after } of rowsAt(grid.dataset['place'] as Place)) {
    const row = grid.querySelector<HTMLElement>(`[data-row="${inputs[0] ?? ''}"]`);
    if (!row) continue;
    const cells = deal([...row.querySelectorAll<HTMLElement>(':scope > .cell')], ids);
    const says = deal([...row.querySelectorAll<HTMLElement>(':scope > .says > [data-knife]')], ids);
    let applies = false;
    for (const [index, knife] of entry.knives.entries()) {
      const [cell, said] = [cells[index], says[index]];
      if (!cell || !said) continue;
      cell.hidden = said.hidden = !shown.includes(knife.id);
      for (const place of cell.querySelectorAll<HTMLElement>('[data-field]')) {
        const name = place.dataset['field'] ?? '';
        const field = knifeInputNamed(name);
        place.hidden = field.applies?.(knife) === false;
        if (place.hidden) continue;
        applies = true;
        const input = place.querySelector<Typed>('input, select');
        if (!input) continue;
        input.setAttribute('aria-label', inputName(name, names.get(knife.id) ?? knife.name, entry));
        if (field.kind === 'choice' && field.open?.(knife)) continue;
        fill(input, inInput(field, knife, entry), typing);
      }
      const known = cell.querySelector('[data-part="after"]');
      const model = comparison.knives[index];
      if (known && after && model) known.textContent = after(model, knife);
      const remove = cell.querySelector<HTMLElement>('[data-act="remove"]');
      remove?.toggleAttribute('hidden', ids.length < 3);
      remove?.setAttribute('aria-label', `Remove ${names.get(knife.id) ?? knife.name}`);
    }
    row.hidden = !applies;
    const unit = row.querySelector('[data-part="unit"]');
    if (unit) unit.textContent = unitOf(inputs, entry);
  }
}
