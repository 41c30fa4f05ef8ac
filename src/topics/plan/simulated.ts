/** Chances of the judge itself, by simulation: it takes up to some seconds, so a page asks for them away from its thread. */
import { simulatedPower, toppedUpFalseAlarms } from '../../model/index.ts';
import { runsOf } from '../../scene/runs.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, countInWords, percent } from '../../scene/show.ts';
import { planOf, runsOnSheet } from './values.ts';

/** What is to be simulated. */
export type Simulation =
  | { kind: 'power'; runs: number; cv: number; ratio: number; batches: number; family: number }
  | { kind: 'false alarms'; runs: number; topUps: number[]; batches: number; family: number };

/** The same simulation gives the same chance on every machine. */
const seed = 1;

/** Below so many sharpenings of each the formula promises more than the judge keeps. */
const fewRuns = 6;
/** Longer logs are not simulated. */
const mostRuns = 50;
const mostLooks = 10;

/** The power of the plan's sheet, where it is short enough for the formula to promise too much; else null. */
export function powerAsked(scene: Scene): Simulation | null {
  const plan = planOf(scene);
  const runs = runsOnSheet(plan);
  if (runs < 2 || runs >= fewRuns) return null;
  const { total: cv, ratio, family } = plan;
  return { kind: 'power', runs, cv, ratio, batches: Math.min(runs, plan.batches), family };
}

/** The false alarms of a log that was looked at before; null where it was not, or is too long to simulate. */
export function alarmsAsked(scene: Scene): Simulation | null {
  const { promised, log, measured } = runsOf(scene);
  const { looks, reached } = promised;
  const [first, ...later] = [...looks, reached];
  if (looks.length === 0 || first === undefined || measured === null) return null;
  if (reached > mostRuns || looks.length > mostLooks) return null;
  const topUps = later.map((look, index) => look - ([first, ...later][index] ?? 0));
  return {
    kind: 'false alarms',
    runs: first,
    topUps,
    batches: Math.min(first, log.batches.length),
    family: log.family,
  };
}

/** @throws RangeError for a simulation outside the limits of the model */
export function simulate(asked: Simulation): number {
  const { kind, ...plan } = asked;
  return kind === 'power'
    ? simulatedPower({ ...(plan as Extract<Simulation, { kind: 'power' }>), seed })
    : toppedUpFalseAlarms({
        ...(plan as Extract<Simulation, { kind: 'false alarms' }>),
        // How often equal knives are called different does not depend on their scatter.
        cv: 0.1,
        seed,
      });
}

/** What a simulation came to, in words. */
export function simulatedSaid(asked: Simulation, chance: number): string {
  if (asked.kind === 'power')
    return `By simulation, ${countInWords(asked.runs)} sharpenings of each notice that one knife lasts ${brief(asked.ratio)} times as long in ${percent(chance)} of tests.`;
  return `By simulation, a log looked at like this calls equal knives different in about ${percent(chance)} of tests, where ${percent(0.05 / asked.family, asked.family > 1 ? 1 : 0)} is meant.`;
}
