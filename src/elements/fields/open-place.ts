/** Opens every fold around a place of the page and goes there. */
export function openPlace(hash: string): void {
  if (!/^#[a-z][a-z-]*$/.test(hash)) return;
  const place = document.getElementById(hash.slice(1));
  if (!place) return;
  for (let fold = place.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null)
    fold.open = true;
  const inner = place.querySelector<HTMLDetailsElement>(':scope > details.details');
  if (inner) inner.open = true;
  place.scrollIntoView();
  const summary = (inner ?? place).querySelector('summary');
  summary?.focus({ preventScroll: true });
}
