import type { Topic } from '../topic.ts';
import { words } from './words.ts';

/** The short answers that take samples or a search: they come late. */
export const topic: Topic = { words };
