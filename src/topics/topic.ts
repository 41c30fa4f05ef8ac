import type { Choice } from './choice.ts';
import type { Control } from './base/controls.ts';
import type { NumberOf } from './base/numbers.ts';
import type { Scene } from '../scene/scene.ts';
import type { WordsOf } from '../phrases/sentences-of.ts';
import type { WorkedOf } from './worked.ts';
import type { Figure } from '../figure-kit/figure.ts';

/** What a guess is compared with: the answer, and the tempting sum where there is one. */
export type GuessOf = (scene: Scene) => { answer: number; sum: number | null };

/**
 * What a page can show about one matter: its numbers, sentences, worked examples, controls and figures, each by its
 * name. A page's live half fetches only the topics its elements name.
 */
export interface Topic {
  numbers?: Readonly<Record<string, NumberOf>>;
  words?: Readonly<Record<string, WordsOf>>;
  worked?: Readonly<Record<string, WorkedOf>>;
  controls?: Readonly<Record<string, Control>>;
  choices?: Readonly<Record<string, Choice>>;
  guesses?: Readonly<Record<string, GuessOf>>;
  figures?: readonly Figure[];
}

export type Part = keyof Topic;
