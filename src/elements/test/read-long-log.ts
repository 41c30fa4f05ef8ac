import { readLog } from '../../runs/read-log.ts';
import type { LogRead, ReadLogOptions } from '../../runs/read-log.ts';
import type { LogAnswer, LogAsked } from './log-worker.ts';
import type { Found } from '../../runs/csv-found.ts';

/** Longer sources than this are read in a worker: shorter ones are done before it has started. */
const longLog = 256 * 1024;

/** A worker that cannot be had, where the browser has none or lets none start. */
function startWorker(): Worker | null {
  try {
    return new Worker(new URL('./log-worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return null;
  }
}

/**
 * Reads a log, a long one in a worker of the site's own; where there is no worker, on the page in small pieces.
 *
 * @returns Null where `tell` ended it.
 * @throws Error where the file cannot be read
 */
export function readLongLog(
  source: string | Blob,
  found: Found,
  options: Required<ReadLogOptions>,
): Promise<LogRead | null> {
  const size = typeof source === 'string' ? source.length : source.size;
  const worker = size > longLog ? startWorker() : null;
  if (!worker) return readLog(source, found, options);
  const { mostRuns, mostProblems, tell } = options;
  const asked: LogAsked = { source, found, mostRuns, mostProblems };
  let begun = false;
  const read = new Promise<LogRead | null>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<LogAnswer>) => {
      begun = true;
      if ('read' in data) resolve(data.read);
      else if ('failed' in data) reject(new Error(data.failed));
      else if (!tell(data.tally, data.share)) resolve(null);
    });
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      // A worker that never began could not be loaded: the page reads in its place.
      if (begun) reject(new Error(event.message));
      else readLog(source, found, options).then(resolve, reject);
    });
    worker.postMessage(asked);
  });
  return read.finally(() => worker.terminate());
}
