const signs = ['pointermove', 'pointerdown', 'keydown', 'scroll'];
const afterMs = 3000;

/**
 * Calls once, a while after the reader has first moved, typed or scrolled, when the page has nothing else to do: for
 * what must never compete with the page it comes with, or with the live half fetched at the first touch.
 */
export function late(run: () => void): void {
  const once = new AbortController();
  const begin = (event: Event) => {
    // A page that comes up under a pointer at rest is told of a move that nobody made.
    if (event instanceof PointerEvent && event.type === 'pointermove' && !event.movementX && !event.movementY)
      return;
    once.abort();
    setTimeout(() => {
      if ('requestIdleCallback' in window) requestIdleCallback(run);
      else run();
    }, afterMs);
  };
  for (const sign of signs)
    addEventListener(sign, begin, { signal: once.signal, passive: true, capture: true });
}
