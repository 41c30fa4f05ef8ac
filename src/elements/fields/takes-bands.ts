import type { AnswerBand, Comparison, Question } from '../../model/index.ts';
import type { BandAsked, BandFound } from './takes-worker.ts';

/** How long the comparison must rest before bands are worked out for it. */
const pauseMs = 500;

/** Bands one after another, away from the page; those of an earlier question are dropped. */
export function createBands(tell: (question: Question, band: AnswerBand | null) => void) {
  let worker: Worker | undefined;
  let running = false;
  let number = 0;
  let waiting: BandAsked[] = [];
  let timer = 0;

  const next = (): void => {
    const [first] = waiting;
    if (running || !first) return;
    running = true;
    (worker ??= started()).postMessage(first);
  };
  const started = (): Worker => {
    const made = new Worker(new URL('./takes-worker.ts', import.meta.url), { type: 'module' });
    made.addEventListener('message', ({ data }: MessageEvent<BandFound>) => {
      running = false;
      const [first] = waiting;
      if (first?.number === data.number) {
        waiting.shift();
        tell(first.question, data.band);
      }
      next();
    });
    made.addEventListener('error', () => {
      for (const { question } of waiting.splice(0)) tell(question, null);
      stop();
    });
    return made;
  };
  const stop = (): void => {
    clearTimeout(timer);
    waiting = [];
    running = false;
    worker?.terminate();
    worker = undefined;
  };

  return {
    ask(comparison: Comparison, questions: readonly Question[]): void {
      waiting = questions.map((question) => ({ number: (number += 1), comparison, question }));
      clearTimeout(timer);
      timer = window.setTimeout(next, pauseMs);
    },
    stop,
  };
}
