const signs = ['pointermove', 'pointerdown', 'keydown', 'scroll'];

/**
 * Calls once, when the reader has moved, typed or scrolled and then rested so long, and the page has nothing else to do:
 * for what must never compete with the page it comes with, or with a drawing under the hand.
 */
export function whenRested(restMs: number, run: () => void): void {
  const once = new AbortController();
  let timer = 0;
  const rested = () => {
    once.abort();
    if ('requestIdleCallback' in window) requestIdleCallback(run);
    else run();
  };
  const begin = (event: Event) => {
    // A page that comes up under a pointer at rest is told of a move that nobody made.
    if (event instanceof PointerEvent && event.type === 'pointermove' && !event.movementX && !event.movementY)
      return;
    clearTimeout(timer);
    timer = window.setTimeout(rested, restMs);
  };
  for (const sign of signs)
    addEventListener(sign, begin, { signal: once.signal, passive: true, capture: true });
}
