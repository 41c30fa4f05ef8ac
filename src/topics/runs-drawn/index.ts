import { runDots } from '../runs/figure-run-dots.ts';
import type { Topic } from '../topic.ts';

/** What was cut, drawn: needed once there are runs. */
export const topic: Topic = { figures: [runDots] };
