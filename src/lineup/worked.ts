import type { Scene } from './scene.ts';

/** One step: what is done, its formula with named places, and the values put in. */
export interface WorkedStep {
  say: string;
  tex: string;
  values: Record<string, string>;
}

export interface Worked {
  givens: string;
  steps: WorkedStep[];
}

export type WorkedOf = (scene: Scene) => Worked;
