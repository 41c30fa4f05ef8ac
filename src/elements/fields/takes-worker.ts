import { whatItTakesBand } from '../../model/index.ts';
import type { AnswerBand, Comparison, Question } from '../../model/index.ts';

/** One band to work out, under the number it is answered with. */
export interface BandAsked {
  number: number;
  comparison: Comparison;
  question: Question;
}

export interface BandFound {
  number: number;
  /** Null where the model refuses the question. */
  band: AnswerBand | null;
}

/** Works out bands away from the page, which would stand still for half a second for each. */
addEventListener('message', ({ data: { number, comparison, question } }: MessageEvent<BandAsked>) => {
  let band: AnswerBand | null = null;
  try {
    band = whatItTakesBand(comparison, question);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
  }
  postMessage({ number, band } satisfies BandFound);
});
