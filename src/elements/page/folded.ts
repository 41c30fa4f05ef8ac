import { signal } from '@preact/signals-core';

/** Rises whenever a fold is opened, or the page goes to paper, where every fold is open. */
const opened = signal(0);
let onPaper = false;

addEventListener('toggle', () => (opened.value += 1), { capture: true });
addEventListener('beforeprint', () => {
  onPaper = true;
  opened.value += 1;
});
addEventListener('afterprint', () => (onPaper = false));

/** The fold that hides an element, if one does; what stands in the line of a fold is seen while it is shut. */
function shutAround(element: Element): HTMLDetailsElement | null {
  for (let fold = element.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null)
    if (!fold.open && !fold.querySelector(':scope > summary')?.contains(element)) return fold;
  return null;
}

/**
 * Whether an element lies in a fold that is shut. Asked within an effect, it is asked again when a fold opens: what
 * nobody sees need not follow the comparison until then.
 */
export function isFolded(element: Element): boolean {
  if (!shutAround(element)) return false;
  void opened.value;
  return !onPaper;
}
