/** A bar at the foot of the page that offers a new version of the site, said politely; the reader may let it be. */
export function offerVersion(use: () => void): void {
  if (document.querySelector('.offer')) return;
  const bar = document.createElement('div');
  bar.className = 'offer no-print';
  bar.setAttribute('role', 'status');
  document.body.append(bar);
  // A live region covers what changes in it, so it has to be there first.
  requestAnimationFrame(() => {
    const text = document.createElement('p');
    text.textContent =
      'A newer version of these pages is ready. Opening it loads this page again; what you entered in Compare stays.';
    bar.append(
      text,
      button('Open it', use),
      button('Not now', () => {
        bar.remove();
      }),
    );
  });
}

function button(label: string, press: () => void): HTMLButtonElement {
  const element = document.createElement('button');
  element.type = 'button';
  element.textContent = label;
  element.addEventListener('click', press);
  return element;
}
