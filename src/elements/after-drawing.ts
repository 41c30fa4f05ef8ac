const waiting = new Set<() => void>();
let running = false;

/** One piece a task, so that the hand on the slider never waits for more than one. */
function next(): void {
  const [work] = waiting;
  if (!work) {
    running = false;
    return;
  }
  waiting.delete(work);
  work();
  setTimeout(next);
}

/**
 * Does what may follow a change a moment later than the drawing under the reader's hand: other figures, then what is
 * read. Work asked for again before its turn is done once.
 */
export function afterDrawing(work: () => void): void {
  waiting.add(work);
  if (running) return;
  running = true;
  requestAnimationFrame(() => setTimeout(next));
}
