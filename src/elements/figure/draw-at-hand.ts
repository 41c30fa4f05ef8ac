import type { draw as drawFigure } from '../../figure-kit/draw.ts';

let drawing: typeof drawFigure | undefined;
let asked: Promise<typeof drawFigure> | undefined;

/** What draws, where it has been fetched: a page whose figures all come late is live without it. */
export const drawAtHand = (): typeof drawFigure | undefined => drawing;

/** Fetches what draws, once. A fetch that failed is tried again at the next asking. */
export function fetchDraw(): Promise<typeof drawFigure> {
  asked ??= import('../../figure-kit/draw.ts').then(
    ({ draw }) => (drawing = draw),
    (error: unknown) => {
      asked = undefined;
      throw error;
    },
  );
  return asked;
}
