/**
 * Does something once, at the next touch anywhere on the page: where something did not come there may be nothing to
 * change. Gives what calls it off.
 */
export function atNextTouch(act: () => void): () => void {
  const off = new AbortController();
  for (const touch of ['pointerdown', 'focusin'])
    addEventListener(
      touch,
      () => {
        off.abort();
        act();
      },
      off,
    );
  return () => off.abort();
}
