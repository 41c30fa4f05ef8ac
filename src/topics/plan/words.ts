import { nameOfRun } from '../../comparison/knife-names.ts';
import { counted } from '../../phrases/counted.ts';
import { mostOnSheet, neededOf, pairsFor, planOf, runsOnSheet, sheetOf } from './values.ts';
import type { Planned } from './values.ts';
import { capital, list } from '../../phrases/list.ts';
import { notRecorded } from '../../runs/log.ts';
import { brief, percent, thousands } from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** More runs than this are counted and not named: the table has them. */
const mostOutside = 6;

const windowSaid = ({ low, high }: { low: number; high: number }): string =>
  `${brief(low)} to ${brief(high)}`;

/** The scatter that is planned with, and where it comes from. */
function scatterSaid({ cv, from, seen }: Planned): string {
  if (from === 'the runs' && seen !== null)
    return `The runs so far scatter by ${percent(seen)}; so few could hide more, so ${percent(cv)}, the upper 80% limit, is planned with.`;
  return `Runs of one knife scatter by ${percent(cv)}${from === 'assumed' ? ', which is assumed until runs show it' : ''}.`;
}

/** What looking only now and then adds. */
function looksSaid({ lookEvery, usualLife, total, looksRefused }: Planned): string {
  if (lookEvery === undefined) return '';
  if (looksRefused !== null || usualLife === null)
    return `A look every ${brief(lookEvery)} is not planned with, since ${looksRefused ?? 'no life is known'}.`;
  return `A look every ${brief(lookEvery)}, at lives of about ${brief(usualLife)}, makes that ${percent(total)}.`;
}

export const planWords: Record<string, WordsOf> = {
  /** How many runs a plan asks for. */
  'runs-needed': (scene) => {
    const plan = planOf(scene);
    const { apart, alike } = neededOf(plan);
    const { subject, baseline } = scene;
    return [
      scatterSaid(plan),
      looksSaid(plan),
      `To notice, in four of five tests, that one of ${subject.name} and ${baseline.name} lasts ${brief(plan.ratio)} times as long takes ${counted(apart, 'sharpening')} of each.`,
      plan.correlation === undefined
        ? ''
        : `Cut in pairs on the same stock, with a correlation of ${brief(plan.correlation)} between the two, it takes ${counted(pairsFor(plan, plan.correlation), 'pair')}.`,
      `To show that they are as good as equal, within that ratio, takes ${counted(alike, 'sharpening')} of each.`,
      plan.family > 1
        ? `The sheet has ${plan.family} pairs of knives, all judged at once; fewer knives need fewer sharpenings.`
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
      capital(
        `${counted(held.sheet.rows.length, 'run')}: ${counted(runs, 'sharpening')} of each of ${list(scene.knives.map(({ name }) => name))}, over ${counted(plan.batches, 'batch', 'batches')}.`,
      ),
      plan.runs === undefined && apart > mostOnSheet
        ? `The scatter asks for ${thousands(apart)}; this sheet holds ${runs} unless you set more.`
        : plan.runs !== undefined && plan.runs < apart
          ? `That is fewer than the ${thousands(apart)} the scatter asks for, so a real difference between ${scene.subject.name} and ${scene.baseline.name} may well stay hidden.`
          : '',
      runs === 2 ? 'Two sharpenings of each are valid and nearly useless: only a huge difference shows.' : '',
      runs % plan.batches === 0
        ? ''
        : 'The sharpenings do not divide evenly by the batches, so the first batches hold more.',
      plan.control === undefined
        ? ''
        : `${plan.control} is cut first and last in every batch, so that a change of stock or hand shows.`,
      first && !plan.blind ? `It begins with ${first.knife}.` : '',
      plan.start === undefined
        ? ''
        : `A run begins only with an edge whose sharpness reads from ${windowSaid(plan.start)}; any other is sharpened again.`,
    ];
  },

  /** Which edges did not start as the plan asks; none is left out for it. */
  'runs-start': ({ entry: { plan, runs = [] }, knives }) => {
    const start = plan?.start;
    if (start === undefined || runs.length === 0) return [];
    const open = runs.filter(({ startSharpness }) => startSharpness === notRecorded);
    const outside = runs.flatMap(({ knife, sharpening, startSharpness: at }) =>
      at === notRecorded || (at >= start.low && at <= start.high)
        ? []
        : [
            `${nameOfRun(knives, knife)}${sharpening === notRecorded ? '' : `, sharpening ${sharpening},`} began at ${brief(at)}, outside the window from ${windowSaid(start)}.`,
          ],
    );
    const shown = outside.slice(0, mostOutside);
    return [
      ...shown,
      outside.length > shown.length ? `So did ${outside.length - shown.length} more.` : '',
      outside.length > 0
        ? 'They count all the same. Anyone who leaves a run out says so in the log, and why.'
        : '',
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
