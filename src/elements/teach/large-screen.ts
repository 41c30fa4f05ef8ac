/**
 * Shows one part of a page for a whole room: larger, with nothing around it. Pressing the button again or Escape ends
 * it. Where the browser grants the full screen, that too.
 */
export function largeScreen(part: HTMLElement, button: HTMLButtonElement): void {
  const on = !part.classList.contains('kit-screen');
  set(part, button, on);
  if (!on) {
    if (document.fullscreenElement) void document.exitFullscreen();
    return;
  }
  // A browser may refuse the full screen; the part is large all the same.
  if (document.fullscreenEnabled) part.requestFullscreen().catch(() => undefined);
  const ended = new AbortController();
  const end = (): void => {
    ended.abort();
    set(part, button, false);
  };
  addEventListener('keydown', ({ key }) => key === 'Escape' && end(), { signal: ended.signal });
  addEventListener('fullscreenchange', () => document.fullscreenElement || end(), { signal: ended.signal });
}

function set(part: HTMLElement, button: HTMLButtonElement, on: boolean): void {
  part.classList.toggle('kit-screen', on);
  document.body.classList.toggle('kit-has-screen', on);
  button.setAttribute('aria-pressed', String(on));
}
