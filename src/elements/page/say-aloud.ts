import { effect } from '@preact/signals-core';
import { store } from './page.ts';
import { Pause } from './pause.ts';
import { writeText } from './write-text.ts';

/** Only after this pause: who listens hears what a change came to, not every step of it. */
const pauseMs = 1000;
/** What was said is gone after this, and not met a second time by who reads on. */
const goneMs = 5000;

/** Tells anyone who listens what their change came to: the result of what they have their hand on, once, politely. */
export function sayAloud(): void {
  const voice = document.getElementById('said-aloud');
  const silence = new Pause(goneMs, () => writeText(voice, ''));
  const voiced = new Pause(pauseMs, () => {
    writeText(voice, result());
    if (voice?.textContent) silence.ask();
  });
  let first = true;
  effect(() => {
    void store.entry.value;
    if (!first) {
      silence.callOff();
      voiced.ask();
    }
    first = false;
  });
}

/** As it is shown: without what waits hidden within. */
function result(): string {
  const figure = document.activeElement?.closest('kf-figure');
  const place = figure?.querySelector<HTMLElement>('[data-part=caption]');
  return (place ?? document.querySelector<HTMLElement>('[data-result]'))?.innerText ?? '';
}
