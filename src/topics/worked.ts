import type { Scene } from '../scene/scene.ts';

/** One step: what is done, its formula with named places, and the values put in. */
export interface WorkedStep {
  say: string;
  tex: string;
  values: Record<string, string>;
  /** Of its results, where the words say it and the formula does not. */
  unit?: 'mm' | 'mm²' | 'µm' | 'HV' | 'cuts' | '%';
}

export interface Worked {
  givens: string;
  steps: WorkedStep[];
}

export type WorkedOf = (scene: Scene) => Worked;
