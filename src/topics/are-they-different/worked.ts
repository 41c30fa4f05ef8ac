import { welch } from '../../model/index.ts';
import type { SharpenedLife } from '../../runs/lives.ts';
import { amount, reached } from './values.ts';
import { list } from '../../phrases/list.ts';
import { plain } from '../../scene/show.ts';
import { trialOf } from './trial.ts';
import type { Trial } from './trial.ts';
import type { WorkedOf } from '../worked.ts';

/** Four digits where a value goes on into the next step, so that the reader's own sum agrees with the page. */
const on = (value: number): string => plain(value, 4);

const none = 'none';

/** More runs than these are not listed. */
const most = 12;

const ended = (lives: readonly SharpenedLife[]): number[] =>
  lives.filter(({ high }) => high < Infinity).map((life) => reached(life));

function listed(values: readonly number[], trial: Trial): string {
  const shown = values.slice(0, most).map((value) => amount(value, trial));
  return values.length <= most ? list(shown) : `${shown.join(', ')} and ${values.length - most} more`;
}

function summary(values: readonly number[]): { mean: number; sd: number; error: number } {
  const logs = values.map(Math.log);
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  const sd = Math.sqrt(logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / (logs.length - 1));
  return { mean, sd, error: sd / Math.sqrt(logs.length) };
}

/** Student's t of the interval; null where there is no scatter to cover. */
function reachOfT(
  x: readonly number[],
  y: readonly number[],
  error: number,
  confidence: number,
): number | null {
  // Runs that are all alike leave no more than the last digit of their logarithms.
  if (error < 1e-9) return null;
  const { difference, high } = welch(x.map(Math.log), y.map(Math.log), confidence);
  return (high - difference) / error;
}

export const differentWorked: Record<string, WorkedOf> = {
  /** The ratio with its interval, batches ignored: Welch's on the logarithms. */
  different: (scene) => {
    const trial = trialOf(scene);
    const { subject, baseline } = scene;
    const [x, y] = [ended(trial.x), ended(trial.y)];
    const [a, b] = [summary(x), summary(y)];
    const error = Math.hypot(a.error, b.error);
    const t = reachOfT(x, y, error, trial.log.confidence);
    const ratio = Math.exp(a.mean - b.mean);
    const reach = t === null ? null : Math.exp(t * error);
    const interval = (show: (reach: number) => string): string => (reach === null ? none : show(reach));
    const open = trial.x.length + trial.y.length - x.length - y.length;
    return {
      givens: `${subject.name}: ${listed(x, trial)}. ${baseline.name}: ${listed(y, trial)}. ${trial.unit === 'cuts' ? 'Cuts' : 'Millimetres cut'} after each sharpening.${open > 0 ? ` Runs that ended early (${open}) are left out of this sum by hand; the interval in the figure has them.` : ''}`,
      steps: [
        {
          say: `Take the logarithm of every run. Their mean for ${subject.name} leads back to its geometric mean.`,
          tex: 'e^{{{mean}}} \\approx {{back}}',
          values: { mean: plain(a.mean, 5), back: on(Math.exp(a.mean)) },
          unit: trial.unit,
        },
        {
          say: `The same for ${baseline.name}.`,
          tex: 'e^{{{mean}}} \\approx {{back}}',
          values: { mean: plain(b.mean, 5), back: on(Math.exp(b.mean)) },
          unit: trial.unit,
        },
        {
          say: 'One over the other is the ratio.',
          tex: '{{a}} \\div {{b}} \\approx {{ratio}}',
          values: { a: on(Math.exp(a.mean)), b: on(Math.exp(b.mean)), ratio: on(ratio) },
        },
        {
          say: `${t === null ? 'These logarithms do not scatter, so the sum by hand has no interval' : 'The logarithms scatter'}. Each scatter squared, over its number of runs, added up, under the root: the standard error of the difference.`,
          tex: '\\sqrt{\\frac{{{sa}}^2}{{{na}}} + \\frac{{{sb}}^2}{{{nb}}}} \\approx {{error}}',
          values: {
            sa: on(a.sd),
            na: String(x.length),
            sb: on(b.sd),
            nb: String(y.length),
            error: on(error),
          },
        },
        {
          say: `Student’s t for these degrees of freedom says how many standard errors the interval reaches to either side${trial.log.family === 1 ? '' : `, wider since ${trial.log.family} pairs are judged at once`}. Back from the logarithm that is a factor.`,
          tex: 'e^{{{t}} \\times {{error}}} \\approx {{reach}}',
          values: { t: t === null ? none : on(t), error: on(error), reach: interval(on) },
        },
        {
          say: `The ratio of ${subject.name} to ${baseline.name} divided by it is the lower end.`,
          tex: '{{ratio}} \\div {{reach}} \\approx {{low}}',
          values: { ratio: on(ratio), reach: interval(on), low: interval((by) => plain(ratio / by)) },
        },
        {
          say: 'Multiplied by it, the upper end.',
          tex: '{{ratio}} \\times {{reach}} \\approx {{high}}',
          values: { ratio: on(ratio), reach: interval(on), high: interval((by) => plain(ratio * by)) },
        },
      ],
    };
  },
};
