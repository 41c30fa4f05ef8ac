import { effect } from '@preact/signals-core';
import { nextAsked } from '../../comparison/empty.ts';
import { ofKnife } from '../../comparison/found.ts';
import { predictedOf } from '../../comparison/predicted.ts';
import { unlessRefused } from '../../comparison/unless-refused.ts';
import { headlineInWords } from '../../phrases/headline.ts';
import { jobOf } from '../../phrases/job.ts';
import { shownRatio } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';
import { example, scene } from '../page/page.ts';
import { Pause } from '../page/pause.ts';

/** The other knives follow after this pause: each takes its own samples. */
const othersMs = 400;

/** The answer beside the fields, or the bar below them that opens to it. */
export interface AnswerBeside {
  /** Follows the comparison until the function it gives is called. */
  start(): () => void;
  toggle(): void;
  close(): void;
  /** Says that an entry can't be read and the last good value stands in for it. */
  keeps(lastGood: boolean): void;
}

/** The answer within a page that holds it. */
export function createAnswer(root: HTMLElement): AnswerBeside {
  const part = (name: string) => root.querySelector<HTMLElement>(`.answer [data-part="${name}"]`);
  const aside = () => root.querySelector<HTMLElement>('.answer');
  const bar = () => root.querySelector<HTMLElement>('.answer-bar');

  const set = (open: boolean): void => {
    aside()?.toggleAttribute('data-open', open);
    bar()?.setAttribute('aria-expanded', String(open));
    const says = part('opens');
    if (says) says.textContent = open ? 'Close' : 'Open';
  };

  /** Keeps the bar above an on-screen keyboard where the browser lays the keyboard over the page. */
  const aboveKeyboard = (): void => {
    const { visualViewport: view } = window;
    if (!view) return;
    const covered = Math.max(0, innerHeight - view.height - view.offsetTop);
    root.style.setProperty('--covered', `${covered}px`);
  };

  const others = new Pause(othersMs, () =>
    showOthers(part('all'), part('against'), part('all-rows'), scene.value),
  );

  return {
    start() {
      const { visualViewport: view } = window;
      for (const type of ['resize', 'scroll']) view?.addEventListener(type, aboveKeyboard);
      let begun = false;
      const stop = effect(() => {
        const { entry } = scene.value;
        if (entry === example && !begun) return;
        begun = true;
        const answers = nextAsked(entry) === null && jobOf(entry).slicingChain;
        part('figures')?.toggleAttribute('hidden', !answers);
        part('all')?.toggleAttribute('hidden', entry.knives.length < 3);
        if (answers && entry.knives.length > 2) others.ask();
      });
      return () => {
        stop();
        others.callOff();
        for (const type of ['resize', 'scroll']) view?.removeEventListener(type, aboveKeyboard);
      };
    },
    toggle: () => set(!aside()?.hasAttribute('data-open')),
    close: () => set(false),
    keeps: (lastGood) => part('kept')?.toggleAttribute('hidden', !lastGood),
  };
}

/** A line for every knife but the baseline, longest first. */
function showOthers(
  all: HTMLElement | null,
  against: HTMLElement | null,
  list: HTMLElement | null,
  { entry, knives, comparison, rows, baseline }: Scene,
): void {
  if (!all || !list || entry.knives.length < 3) return;
  if (against) against.textContent = baseline.name;
  const lines = knives
    .filter(({ id }) => id !== entry.baseline)
    .sort((a, b) => ofKnife(rows.careful, b.id).multiplied - ofKnife(rows.careful, a.id).multiplied)
    .flatMap(({ id, name }) => {
      const band = unlessRefused(() => predictedOf(comparison, id));
      if (!band) return [];
      const [low, middle, high] = [band.low, band.median, band.high].map(shownRatio) as [
        number,
        number,
        number,
      ];
      return [
        Object.assign(document.createElement('dt'), { textContent: name }),
        Object.assign(document.createElement('dd'), { textContent: headlineInWords({ low, middle, high }) }),
      ];
    });
  list.replaceChildren(...lines);
}
