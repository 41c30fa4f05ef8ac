import type { Simulation } from '../../topics/plan/simulated.ts';

/** Chances that are worked out, by what was asked; null while one is on its way, or cannot be had. */
const known = new Map<string, number | null>();

/**
 * The chance of a simulation where it is known, else null: it is then worked out in a worker of its own.
 *
 * @param told called once it is known
 */
export function simulated(asked: Simulation, told: () => void): number | null {
  const key = JSON.stringify(asked);
  const found = known.get(key);
  if (found !== undefined) return found;
  known.set(key, null);
  const worker = startWorker();
  worker?.addEventListener('message', ({ data }: MessageEvent<number | null>) => {
    known.set(key, data);
    worker.terminate();
    if (data !== null) told();
  });
  worker?.addEventListener('error', () => worker.terminate());
  worker?.postMessage(asked);
  return null;
}

/** None where the browser has none or lets none start. */
function startWorker(): Worker | null {
  try {
    return new Worker(new URL('./simulate-worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return null;
  }
}
