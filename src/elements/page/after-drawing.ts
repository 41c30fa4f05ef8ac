const waiting = new Set<() => void>();
let running = false;

/** How long the hand on the slider may have to wait: each task more costs the page a layout and a paint more. */
const taskMs = 4;

/** As many pieces a task as fit, and one at least. */
function next(): void {
  const until = performance.now() + taskMs;
  for (const work of waiting) {
    waiting.delete(work);
    work();
    if (performance.now() >= until) break;
  }
  if (waiting.size > 0) setTimeout(next);
  else running = false;
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
