/** Reads a long log away from the page, which goes on answering meanwhile. */
import type { Found } from '../../runs/csv-found.ts';
import { readLog } from '../../runs/read-log.ts';
import type { LogRead, LogTally } from '../../runs/read-log.ts';

/** What the worker is asked. */
export interface LogAsked {
  source: string | Blob;
  found: Found;
  mostRuns: number;
  mostProblems: number;
}

/** What it answers: how far it is, again and again, and at last the log or why there is none. */
export type LogAnswer = { tally: LogTally; share: number } | { read: LogRead } | { failed: string };

const answer = (message: LogAnswer): void => postMessage(message);

addEventListener('message', ({ data }: MessageEvent<LogAsked>) => {
  const { source, found, mostRuns, mostProblems } = data;
  const tell = (tally: LogTally, share: number): boolean => {
    answer({ tally, share });
    return true;
  };
  readLog(source, found, { mostRuns, mostProblems, tell }).then(
    (read) => read && answer({ read }),
    (error: unknown) => answer({ failed: error instanceof Error ? error.message : String(error) }),
  );
});
