/**
 * Tells the page around the frame how tall the figure is, at first and whenever that changes: `{ keenfold: 'height',
 * heightPx }`. It says so to whatever page that is, since a height is no secret, and listens to nobody.
 */
export function sendHeight(): void {
  let said = 0;
  new ResizeObserver(() => {
    const heightPx = Math.ceil(document.body.getBoundingClientRect().height);
    if (heightPx !== said) parent.postMessage({ keenfold: 'height', heightPx }, '*');
    said = heightPx;
  }).observe(document.body);
}
