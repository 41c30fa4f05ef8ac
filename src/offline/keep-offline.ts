import { offerVersion } from './offer-version.ts';
import { savesData } from './saves-data.ts';

/**
 * Has the whole site kept for use without a network, and offers a new version once it is kept too. Where the browser
 * will not (no secure connection, storage denied), the site goes on as it is, from the network.
 */
export async function keepOffline(): Promise<void> {
  if (!('serviceWorker' in navigator) || savesData()) return;
  const worker = navigator.serviceWorker;
  const base = document.documentElement.dataset['base'] ?? '/';
  const registration = await worker.register(`${base}offline.js`).catch(() => undefined);
  if (!registration) return;

  const use = () => {
    // Another page may have taken it already: then this page only has to open it.
    if (!registration.waiting) {
      location.reload();
      return;
    }
    worker.addEventListener('controllerchange', () => {
      location.reload();
    });
    registration.waiting.postMessage('take over');
  };
  const offer = () => {
    // Without an active one there is nothing older: this is the first visit.
    if (registration.waiting && registration.active) offerVersion(use);
  };
  const watch = () => registration.installing?.addEventListener('statechange', offer);
  registration.addEventListener('updatefound', watch);
  // The browser looks for a new version by itself too: it may be on its way, or have come.
  watch();
  offer();
}
