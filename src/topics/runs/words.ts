import { isSheetCode } from '../../model/index.ts';
import { counted } from '../../phrases/counted.ts';
import { firstPlan } from '../../comparison/first-plan.ts';
import { nameOfRun } from '../../comparison/knife-names.ts';
import { controlInOrder, driftWithinBatches } from '../../runs/in-order.ts';
import { intervalMeans, methodSaid, rangeSaid, ratioSaid, verdictSaid } from '../../phrases/judged-runs.ts';
import { capital, list } from '../../phrases/list.ts';
import { whyNoInterval } from '../../phrases/why-no-interval.ts';
import { notRecorded } from '../../runs/log.ts';
import { batchesApart, placeOf, runsOf } from '../../scene/runs.ts';
import type { KnifeRuns, RunsOfTwo } from '../../scene/runs.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, countInWords } from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

const unitWord = ({ log: { unit } }: RunsOfTwo): string => (unit === 'mm' ? 'mm cut' : 'cuts');

function entered({ runs, edges, name }: KnifeRuns): string {
  return `${counted(runs, 'run')} of ${name}${runs > edges ? `, which are ${counted(edges, 'sharpening')}` : ''}`;
}

const pairOf = ({ subject, baseline }: RunsOfTwo) => ({ subject: subject.name, baseline: baseline.name });

/** More runs than these are counted, not named. */
const mostNamed = 6;

/** Runs of the two that are not in the ratio, by their reasons. */
function leftOutSaid({ leftOut, log }: RunsOfTwo, { entry }: Scene): string[] {
  // Where no batch holds both knives, that is the verdict itself.
  const apart = log.verdict === 'cannot be separated';
  const reasons = [...new Set(leftOut.map(({ why }) => why))].filter(
    (why) => !(apart && why.includes(' holds no run of ')),
  );
  return reasons.map((why) => {
    const own = leftOut.filter((one) => one.why === why).map(({ run }) => run);
    const named = own
      .slice(0, mostNamed)
      .map(
        ({ knife, sharpening, batch }) =>
          `${nameOfRun(entry.knives, knife)}${sharpening === notRecorded ? '' : ` ${sharpening}`}${batch === notRecorded ? '' : ` in ${batch}`}`,
      );
    const more = own.length > named.length ? [`${own.length - named.length} more`] : [];
    return `Not in the ratio: ${list([...named, ...more])}, because ${own.length === 1 ? why : why.replace(/^it /, 'each ').replace(/^its /, 'their ')}.`;
  });
}

/** How the number of sharpenings came about: a verdict is worth what its test says only where that was settled before. */
function promiseSaid({ promised }: RunsOfTwo): string[] {
  const { planned, reached, early, looks } = promised;
  if (early && planned !== null)
    return [`An early look, after ${countInWords(reached)} of ${countInWords(planned)} planned sharpenings.`];
  if (looks.length > 0)
    return [
      `This log was topped up: its verdict was seen before, after ${list(looks.map(countInWords))} sharpenings of each.`,
    ];
  return [];
}

/** What a log without a number planned is worth less for. */
const unplannedSaid = ({ promised, measured }: RunsOfTwo): string =>
  promised.planned === null && measured !== null
    ? 'No number of sharpenings was planned. Cutting on until the verdict pleases calls equal knives different far too often.'
    : '';

/** The verdict, or why there is none. */
function verdict(runs: RunsOfTwo): string[] {
  const { measured, log } = runs;
  const pair = pairOf(runs);
  if (measured !== null) return [...promiseSaid(runs), ...verdictSaid(log.verdict, measured, pair)];
  return [
    ...whyNoInterval(runs),
    log.ratio === null || runs.promised.waiting
      ? ''
      : `For what it is worth: by geometric means ${pair.subject} lasted ${ratioSaid(log.ratio)} times as long as ${pair.baseline}.`,
  ];
}

/** Runs that did not end at their end point, and what they count as. */
function openSaid({ subject, baseline, measured }: RunsOfTwo): string {
  const open = subject.lives.length - subject.ended + baseline.lives.length - baseline.ended;
  if (measured === null || open === 0) return '';
  return `${capital(counted(open, 'sharpening'))} ended before the end point and ${open === 1 ? 'counts' : 'count'} as “at least so long”.`;
}

/** The log's one question: is a number that stands in several batches one edge? */
function numberAsked({ log: { askedNumber } }: RunsOfTwo, { knives }: Scene): string[] {
  if (askedNumber === null) return [];
  const { knife, sharpening, batches } = askedNumber;
  return [
    `Sharpening ${sharpening} of ${nameOfRun(knives, knife)} stands in ${list(batches.slice(0, mostNamed))}.`,
    'Was that one edge, or do the numbers start again with each batch? Say so in the plan.',
    'Until you do, it counts as one edge, which is the careful answer.',
  ];
}

const between = ({ low, high }: { low: number; high: number }): string => rangeSaid(low, high);

/** What changed on the way besides the knives: by the control knife, and within batches where the order is on record. */
function changeSaid(scene: Scene): string[] {
  const { runs = [], plan } = scene.entry;
  const { lives } = runsOf(scene).log;
  const said: string[] = [];
  if (plan?.control !== undefined) {
    const { runs: cut, drift } = controlInOrder(runs, lives, plan.control);
    if (drift !== null)
      said.push(
        `The control knife’s last runs lasted ${between(drift)} times as long as its first.`,
        drift.low > 1 || drift.high < 1
          ? 'Something besides the knives changed on the way: material, setup or hand.'
          : 'No change on the way is shown.',
      );
    else if (cut > 0)
      said.push(`The control knife has ${counted(cut, 'run')}; four, with some scatter, are the least.`);
  }
  const within = driftWithinBatches(runs, lives);
  if (within !== null)
    said.push(
      `Late in a batch, runs lasted ${between(within)} times as long as early in it.`,
      within.low > 1 || within.high < 1
        ? 'So the order of work matters here: mix it, and never cut one knife first each time.'
        : 'No change within batches is shown.',
    );
  return said;
}

export const runsWords: Record<string, WordsOf> = {
  /** What the log holds. */
  'runs-entered': (scene) => {
    const runs = runsOf(scene);
    const { subject, baseline, strangers, all, log } = runs;
    const { entry } = scene;
    const rest = (entry.runs ?? []).filter(
      ({ knife }) => knife !== entry.subject && knife !== entry.baseline,
    ).length;
    const { blind, closed = false, reopened = false } = scene.entry.plan ?? firstPlan;
    const codes = blind && !closed ? strangers.filter(isSheetCode) : [];
    const unknown = strangers.filter((name) => !codes.includes(name));
    return [
      `The log has ${entered(subject)} and ${entered(baseline)}${all > 0 && log.by === 'counts' ? `, in ${unitWord(runs)}` : ''}.`,
      log.by === 'readings'
        ? `A life ends where the curve through the readings crosses ${brief(scene.entry.plan?.endPoint ?? 0)}.`
        : '',
      subject.runs > subject.edges || baseline.runs > baseline.edges
        ? 'One edge counts once, however often it was cut: a second run says nothing about the next edge.'
        : '',
      ...numberAsked(runs, scene),
      rest > 0 ? `Of other knives the log has ${counted(rest, 'run')}.` : '',
      codes.length > 0
        ? `Runs under ${list(codes.slice(0, 4))}${codes.length > 4 ? ` and ${codes.length - 4} more codes` : ''} get their knives when the log is closed.`
        : '',
      unknown.length > 0
        ? `No knife of the comparison is called ${list(unknown.slice(0, 4).map((name) => `“${name}”`))}${unknown.length > 4 ? ` (and ${unknown.length - 4} more names)` : ''}.`
        : '',
      closed ? 'The log is closed: its runs stay as they are.' : '',
      reopened
        ? `The log was opened again after its key was seen${closed ? ', and closed once more' : ''}. What was entered or changed since is no longer blind.`
        : '',
    ];
  },

  'runs-verdict': (scene) => {
    const runs = runsOf(scene);
    return [
      ...verdict(runs),
      ...(runs.measured === null ? [] : [intervalMeans(runs.log)]),
      ...methodSaid(runs.log, pairOf(runs)),
      openSaid(runs),
      unplannedSaid(runs),
      ...leftOutSaid(runs, scene),
    ];
  },

  /** Batches that cut unlike, and runs that lie far from the others. */
  'runs-odd': (scene) => {
    const runs = runsOf(scene);
    const { subject, baseline } = runs;
    const drift = batchesApart(runs);
    const batches = drift?.batches ?? [];
    const sorted = [...batches].sort((a, b) => a.ratio - b.ratio);
    const [hardest, kindest] = [sorted[0], sorted.at(-1)];
    const apart =
      drift?.p !== null && drift !== null && drift.p < 0.05 && hardest && kindest
        ? `The batches differ: in ${kindest.batch} ${subject.name} and ${baseline.name} last ${ratioSaid(kindest.ratio / hardest.ratio)} times as long as in ${hardest.batch}. Never cut one knife in one batch and the other in another.`
        : '';
    const far = [subject, baseline].flatMap(({ far: lives, name }) =>
      lives.map(
        (life) =>
          `${name} at ${brief(placeOf(life))} ${unitWord(runs)}${life.batch === undefined ? '' : ` in ${life.batch}`}`,
      ),
    );
    return [
      apart,
      ...changeSaid(scene),
      far.length === 0
        ? ''
        : `Far from the others: ${list(far.slice(0, 5))}${far.length > 5 ? ` and ${far.length - 5} more` : ''}. ${far.length === 1 ? 'It is' : 'They are'} drawn and counted. Look for the reason in the shop, not in the numbers.`,
    ];
  },
};
