import { createHash } from 'node:crypto';
import { kinds } from '../../src/exercises/index.ts';
import { problems } from './seeds.ts';

/** The hash of the first problems of each kind. */
export const digests = (): Record<string, string> =>
  Object.fromEntries(
    kinds.map((kind) => [
      kind,
      createHash('sha256')
        .update(JSON.stringify(problems(kind, 600)))
        .digest('hex'),
    ]),
  );
