import { simulate } from '../../topics/plan/simulated.ts';
import type { Simulation } from '../../topics/plan/simulated.ts';

/** Simulates away from the page, which would stand still for seconds. */
addEventListener('message', ({ data }: MessageEvent<Simulation>) => {
  try {
    postMessage(simulate(data));
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    postMessage(null);
  }
});
