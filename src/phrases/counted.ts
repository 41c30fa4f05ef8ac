import { thousands } from '../scene/show.ts';

/** So many of something: `no runs`, `one run`, `1,200 runs`. */
export const counted = (many: number, one: string, several = `${one}s`): string =>
  many === 0 ? `no ${several}` : many === 1 ? `one ${one}` : `${thousands(many)} ${several}`;
