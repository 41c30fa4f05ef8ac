import { plain, times } from '../../scene/show.ts';
import { sizesByHand, sureOf } from '../../scene/sure.ts';
import type { WorkedOf } from '../worked.ts';

/** Four digits where a value goes on into the next step, so that the reader's own sum agrees with the page. */
const on = (value: number): string => plain(value, 4);

/** The 95% point of a normal distribution. */
const reachOf90 = 1.645;

/** The band by hand: uncertainties times sensitivities, squared, added, rooted. */
export const sureWorked: Record<string, WorkedOf> = {
  band: (scene) => {
    const { line } = sureOf(scene);
    const { subject, baseline } = scene;
    // What reads the same, such as both steels off the line, counts as one, as it does in the figure.
    const parts = [...sizesByHand(line, scene)]
      .map(([what, size]) => ({ what, size }))
      .sort((a, b) => b.size - a.size);
    const size = (index: number): number => parts[index]?.size ?? 0;
    const rest = Math.hypot(...parts.slice(3).map((part) => part.size));
    const name = (index: number): string => {
      const found = parts[index];
      return found ? `${found.what} (${on(found.size)})` : 'nothing (0)';
    };
    const reach = Math.exp(reachOf90 * line.logSd);
    return {
      givens: `${subject.name} against ${baseline.name}, ${times(line.middle)} as the mean of the three ways to combine, in the logarithm. Each thing not known exactly moves that logarithm by its standard uncertainty times its sensitivity. The three largest: ${name(0)}, ${name(1)}, ${name(2)}; all others together ${on(rest)}.`,
      steps: [
        {
          say: 'What is independent adds in squares. How the effects combine is one of them: its uncertainty is the scatter of the three totals.',
          tex: '\\sqrt{{{a}}^2 + {{b}}^2 + {{c}}^2 + {{rest}}^2} \\approx {{sd}}',
          values: {
            a: on(size(0)),
            b: on(size(1)),
            c: on(size(2)),
            rest: on(rest),
            sd: on(line.logSd),
          },
        },
        {
          say: 'Nine tenths of a bell curve lie within 1.645 standard deviations; back from the logarithm that is a factor.',
          tex: 'e^{1.645 \\times {{sd}}} \\approx {{reach}}',
          values: { sd: on(line.logSd), reach: on(reach) },
        },
        {
          say: `Divide the ratio of ${subject.name} to ${baseline.name} by it, and multiply it.`,
          tex: '{{ratio}} \\div {{reach}} \\approx {{low}} \\qquad {{ratio}} \\times {{reach}} \\approx {{high}}',
          values: {
            ratio: on(line.middle),
            reach: on(reach),
            low: plain(line.low),
            high: plain(line.high),
          },
        },
      ],
    };
  },
};
