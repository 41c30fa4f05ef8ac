import { effect, signal } from '@preact/signals-core';
import { createStore } from '../lineup/store.ts';
import { decodeLink, encodeLink } from '../lineup/link.ts';
import { sceneOf } from '../lineup/scene.ts';
import type { Scene } from '../lineup/scene.ts';
import type { LineUpEntry } from '../lineup/schema.ts';

/**
 * The one state of a page: the line-up's store, and the scene computed from it. Elements read the scene;
 * only controls and fields write, through `change`.
 */
const given = JSON.parse(document.getElementById('page-line-up')?.textContent ?? 'null') as LineUpEntry;

export const store = createStore(given);
const root = document.documentElement;

/** The last scene the model could compute; `trouble` says why a newer one could not. */
export const scene = signal<Scene>(sceneOf(given));
export const trouble = signal<string>('');
/** True while the page shows a visitor's own line-up instead of the demo. */
export const own = signal(false);

export function start(): void {
  openAddress();
  effect(() => {
    try {
      scene.value = sceneOf(store.entry.value);
      trouble.value = '';
    } catch (error) {
      trouble.value = error instanceof Error ? error.message : String(error);
    }
  });
  addEventListener('hashchange', openAddress);
}

/** Opens the line-up in the address, or says why it cannot and goes on with the one there is. */
function openAddress(): void {
  if (!location.hash.startsWith('#with=')) return;
  const read = decodeLink(location.hash);
  if (read.ok) {
    store.replace(read.entry);
    own.value = read.entry.invented !== true;
    root.dataset['lineUp'] = 'own';
    say('');
  } else {
    const kept = root.dataset['lineUp'] === 'own';
    if (!kept) root.dataset['lineUp'] = 'refused';
    say(
      `The line-up in this address could not be opened: ${read.why} What you see is ${kept ? 'the line-up opened before' : "the page's own example"}.`,
    );
  }
}

function say(text: string): void {
  const place = document.getElementById('address-message');
  if (!place) return;
  place.textContent = text;
  place.hidden = text === '';
}

/** The address of this site's page that carries the line-up of the moment. */
export function linkTo(page: string): string {
  const base = root.dataset['base'] ?? '/';
  return `${location.origin}${base}${page}${encodeLink(store.entry.value)}`;
}
