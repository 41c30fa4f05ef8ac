import { createHash } from 'node:crypto';

/** A script that stands in the page itself, and what the content security policy knows it by. */
export interface Inlined {
  script: string;
  hash: `sha256-${string}`;
}

export const inlined = (script: string): Inlined => ({
  script,
  hash: `sha256-${createHash('sha256').update(script).digest('base64')}`,
});
