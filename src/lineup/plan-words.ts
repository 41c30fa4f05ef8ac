import { counted } from './counted.ts';
import { mostOnSheet, neededOf, planOf, runsOnSheet, sheetOf } from './plan.ts';
import { list } from './rows.ts';
import { percent, thousands, times } from './show.ts';
import type { WordsOf } from './words.ts';

export const planWords: Record<string, WordsOf> = {
  /** How many runs a plan asks for. */
  'runs-needed': (scene) => {
    const plan = planOf(scene);
    const { apart, alike } = neededOf(plan);
    const names = `${scene.subject.name} and ${scene.baseline.name}`;
    const where = {
      entered: '',
      'the runs': ', as the runs so far show',
      assumed: ', which is assumed until runs show it',
    }[plan.from];
    const needed = (many: number | null): string =>
      many === null ? 'more than a million sharpenings' : counted(many, 'sharpening');
    return [
      `Runs of one knife scatter by ${percent(plan.cv)}${where}. To find ${names} apart where one lasts ${times(plan.ratio)} as long as the other, in four of five tries, takes ${needed(apart)} of each.`,
      `To show them alike to within ${times(plan.ratio)} takes ${needed(alike)} of each.`,
      apart !== null && apart < 5
        ? 'With fewer than five of each the test that allows unlike scatter notices less often than this says: cut five.'
        : '',
      'Cutting more with one edge does not count; sharpening again does.',
    ];
  },

  /** What the sheet holds. */
  'runs-sheet': (scene) => {
    const plan = planOf(scene);
    const held = sheetOf(scene);
    if (!held.ok) return [`There is no sheet: ${held.why}`];
    const runs = runsOnSheet(plan);
    const { apart } = neededOf(plan);
    const [first] = held.sheet.key;
    return [
      `${counted(held.sheet.rows.length, 'run')}: ${counted(runs, 'sharpening')} of each of ${list(scene.entry.knives.map(({ name }) => name))}, over ${counted(plan.lots, 'lot')}.`.replace(
        /^\w/,
        (letter) => letter.toUpperCase(),
      ),
      plan.runs === undefined && apart !== null && apart > mostOnSheet
        ? `The scatter asks for ${thousands(apart)}; a sheet holds ${mostOnSheet} unless you set more.`
        : plan.runs !== undefined && apart !== null && plan.runs < apart
          ? `That is fewer than the ${thousands(apart)} the scatter asks for: ${scene.subject.name} and ${scene.baseline.name} may well stay untold apart.`
          : '',
      plan.control === undefined
        ? ''
        : `${plan.control} is cut first and last in every lot, so that a change of stock or hand shows.`,
      first && !plan.blind ? `It begins with ${first.knife}.` : '',
    ];
  },
};
