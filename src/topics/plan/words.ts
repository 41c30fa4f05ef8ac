import { counted } from '../../phrases/counted.ts';
import { mostOnSheet, neededOf, pairsFor, planOf, runsOnSheet, sheetOf } from './values.ts';
import { list } from '../../phrases/list.ts';
import { notRecorded } from '../../runs/log.ts';
import { brief, percent, thousands, times } from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** More runs than this are counted and not named: the table has them. */
const mostOutside = 6;

const windowSaid = ({ low, high }: { low: number; high: number }): string =>
  `${brief(low)} to ${brief(high)}`;

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
    return [
      `Runs of one knife scatter by ${percent(plan.cv)}${where}. To find ${names} apart where one lasts ${times(plan.ratio)} as long as the other, in four of five tries, takes ${counted(apart, 'sharpening')} of each.`,
      plan.correlation === undefined
        ? ''
        : `Cut in pairs on the same stock, with a correlation of ${brief(plan.correlation)} between the two, it takes ${counted(pairsFor(plan.cv, plan.ratio, plan.correlation), 'pair')}.`,
      `To show them alike to within ${times(plan.ratio)} takes ${counted(alike, 'sharpening')} of each.`,
      apart < 5
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
      `${counted(held.sheet.rows.length, 'run')}: ${counted(runs, 'sharpening')} of each of ${list(scene.entry.knives.map(({ name }) => name))}, over ${counted(plan.batches, 'lot')}.`.replace(
        /^\w/,
        (letter) => letter.toUpperCase(),
      ),
      plan.runs === undefined && apart > mostOnSheet
        ? `The scatter asks for ${thousands(apart)}; a sheet holds ${mostOnSheet} unless you set more.`
        : plan.runs !== undefined && plan.runs < apart
          ? `That is fewer than the ${thousands(apart)} the scatter asks for: ${scene.subject.name} and ${scene.baseline.name} may well stay untold apart.`
          : '',
      plan.control === undefined
        ? ''
        : `${plan.control} is cut first and last in every lot, so that a change of stock or hand shows.`,
      first && !plan.blind ? `It begins with ${first.knife}.` : '',
      plan.start === undefined
        ? ''
        : `A run begins only with an edge whose sharpness reads from ${windowSaid(plan.start)}; any other is sharpened again.`,
    ];
  },

  /** Which edges did not start as the plan asks; none is left out for it. */
  'runs-start': ({ entry: { plan, runs = [] } }) => {
    const start = plan?.start;
    if (start === undefined || runs.length === 0) return [];
    const open = runs.filter(({ startSharpness }) => startSharpness === notRecorded);
    const outside = runs.flatMap(({ knife, sharpening, startSharpness: at }) =>
      at === notRecorded || (at >= start.low && at <= start.high)
        ? []
        : [
            `${knife}${sharpening === notRecorded ? '' : `, sharpening ${sharpening},`} began at ${brief(at)}, outside the window from ${windowSaid(start)}.`,
          ],
    );
    const shown = outside.slice(0, mostOutside);
    return [
      ...shown,
      outside.length > shown.length ? `So did ${outside.length - shown.length} more.` : '',
      outside.length > 0 ? 'They count all the same. Whoever leaves a run out says so, and why.' : '',
      outside.length === 0 && open.length < runs.length
        ? `${open.length === 0 ? 'All edges' : 'All edges whose start is recorded'} began within the window from ${windowSaid(start)}.`
        : '',
      open.length === 0
        ? ''
        : open.length === runs.length
          ? 'No run has its start recorded.'
          : `${open.length === 1 ? 'One run has' : `${open.length} runs have`} no recorded start, and may lie outside.`,
    ].filter((sentence) => sentence !== '');
  },
};
