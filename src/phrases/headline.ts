import { headlineOf } from '../scene/headline.ts';
import type { Headline } from '../scene/headline.ts';
import type { Scene } from '../scene/scene.ts';
import { short, shownRatio } from '../scene/show.ts';

/** The range alone: “5 to 30 times”, or “2 times” where both ends are shown alike. */
export const rangeInWords = ({ low, high }: Pick<Headline, 'low' | 'high'>): string =>
  low === high ? `${short(low)} times` : `${short(low)} to ${short(high)} times`;

/** The range with its middle, for the end of a sentence: “about 5 to 30 times as long; 10 is the middle”. */
export const headlineInWords = (headline: Headline): string => {
  const { low, middle, high } = headline;
  const range = `about ${rangeInWords(headline)} as long`;
  return low === high ? range : `${range}; ${short(middle)} is the middle`;
};

/** The answer in a sentence without its middle: “Dunlin should cut about 5 to 30 times as long as Plover.” */
export const headlineRange = (scene: Scene): string => {
  const { subject, baseline } = scene;
  const { low, high } = headlineOf(scene);
  const strokes = scene.comparison.outcome === 'fixed-strokes';
  const [when, what] = strokes ? ['In a fixed number of strokes ', 'as much card as'] : ['', 'as long as'];
  return low === high && low === 1
    ? `${when}${subject.name} and ${baseline.name} should cut about ${what} each other.`
    : `${when}${subject.name} should cut about ${rangeInWords({ low, high })} ${what} ${baseline.name}.`;
};

/** The answer a page gives first, in a sentence. */
export const headlineSentence = (scene: Scene): string => {
  const { low, middle, high } = headlineOf(scene);
  const range = headlineRange(scene);
  return low === high ? range : `${range.slice(0, -1)}; ${short(middle)} is the middle.`;
};

/** A loss seen from the other knife: “So Plover should cut about 2.5 to 12 times as long as Dunlin.” Nothing of a gain. */
export const otherWayRound = (scene: Scene): string => {
  const { subject, baseline } = scene;
  const { low, high } = headlineOf(scene);
  if (high >= 1) return '';
  const range = { low: shownRatio(1 / high), high: shownRatio(1 / low) };
  return `So ${baseline.name} should cut about ${rangeInWords(range)} as long as ${subject.name}.`;
};
