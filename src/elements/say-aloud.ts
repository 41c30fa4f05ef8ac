import { effect } from '@preact/signals-core';
import { store } from './page.ts';
import { writeText } from './write-text.ts';

/** Only after this pause: who listens hears what a change came to, not every step of it. */
const pauseMs = 1000;
/** What was said is gone after this, and not met a second time by who reads on. */
const goneMs = 5000;

/** Tells whoever listens what their change came to: the result of what they have their hand on, once, politely. */
export function sayAloud(): void {
  const voice = document.getElementById('said-aloud');
  let timer: number | undefined;
  const later = (text: () => string, ms: number) => {
    clearTimeout(timer);
    timer = window.setTimeout(() => {
      writeText(voice, text());
      if (voice?.textContent) later(() => '', goneMs);
    }, ms);
  };
  let first = true;
  effect(() => {
    void store.entry.value;
    if (!first) later(result, pauseMs);
    first = false;
  });
}

/** As it is shown: without what waits hidden within. */
function result(): string {
  const figure = document.activeElement?.closest('kf-figure');
  const place = figure?.querySelector<HTMLElement>('[data-part=caption]');
  return (place ?? document.querySelector<HTMLElement>('[data-result]'))?.innerText ?? '';
}
