/** What stands in a field of a question. */
export const askText = (root: ParentNode, name: string): string =>
  root.querySelector<HTMLInputElement | HTMLSelectElement>(`#${name}`)?.value ?? '';

/** Says at a field of a question what is wrong with it; nothing where nothing is. */
export function askProblem(root: ParentNode, name: string, message: string): void {
  root.querySelector(`#${name}`)?.setAttribute('aria-invalid', String(message !== ''));
  const place = root.querySelector(`#${name}-problem`);
  if (place && place.textContent !== message) place.textContent = message;
}
