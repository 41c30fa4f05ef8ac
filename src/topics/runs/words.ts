import { isSheetCode } from '../../model/index.ts';
import { counted } from '../../phrases/counted.ts';
import { firstPlan } from '../../comparison/first-plan.ts';
import { list } from '../../phrases/list.ts';
import { batchesApart, placeOf, runsOf } from '../../scene/runs.ts';
import type { KnifeRuns, RunsOfTwo } from '../../scene/runs.ts';
import { brief, times } from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

const unitWord = ({ unit }: RunsOfTwo): string => (unit === 'mm' ? 'mm cut' : 'cuts');

function entered({ runs, lives, name }: KnifeRuns): string {
  const merged = runs > lives.length;
  return `${counted(runs, 'run')} of ${name}${merged ? `, which are ${counted(lives.length, 'sharpening')}` : ''}`;
}

/** Why the runs of the two give no interval, in words; only asked where they do not. */
function whyNone({ subject, baseline }: RunsOfTwo): string {
  const both = [subject, baseline];
  const without = both.filter(({ lives }) => lives.length === 0);
  if (without.length === 2)
    return `There are no runs of ${subject.name} yet, and none of ${baseline.name}: nothing has been measured.`;
  const [lacking] = without;
  if (lacking) {
    const other = lacking === subject ? baseline : subject;
    return `Only ${other.name} has runs. Without runs of ${lacking.name} on the same stock there is nothing to hold them against.`;
  }
  const [open] = both.filter((knife) => knife.ended === 0);
  if (open)
    return `No run of ${open.name} reached its stop: all of them ended early, so how long it lasts is open.`;
  const few = both.filter((knife) => knife.ended < 2);
  if (few.length > 0)
    return `${few.map(({ name }) => name).join(' and ')} ${few.length > 1 ? 'have' : 'has'} only one sharpening that reached its stop. One does not show how much runs scatter, so ${subject.name} against ${baseline.name} has a ratio but no interval.`;
  return `The runs of ${subject.name} and ${baseline.name} do not show how much they scatter: they are all alike, or the stop was looked at too rarely. Without scatter there is no interval, and equal numbers are no proof of it.`;
}

const interval = ({ low, high }: { low: number; high: number }): string => `${times(low)} and ${times(high)}`;

/** The verdict: apart, alike and not distinguished are three things. */
function verdict(runs: RunsOfTwo): string[] {
  const { measured, subject, baseline, bare } = runs;
  if (measured === null)
    return [
      whyNone(runs),
      bare === null
        ? ''
        : `For what it is worth: the geometric mean of ${subject.name} is ${times(bare)} that of ${baseline.name}.`,
    ];
  const pair = `${subject.name} against ${baseline.name}`;
  const says = `The runs put ${pair} at ${times(measured.ratio)}, with 95 % confidence between ${interval(measured)}.`;
  const { longer, shorter } =
    measured.ratio > 1
      ? { longer: subject.name, shorter: baseline.name }
      : { longer: baseline.name, shorter: subject.name };
  if (measured.verdict === 'apart')
    return [
      says,
      `Apart: ${longer} lasts longer than ${shorter}, as far as these runs go.`,
      measured.alike
        ? 'Yet the whole interval lies between ×0.8 and ×1.25: the difference is real and hardly matters.'
        : '',
    ];
  if (measured.verdict === 'alike')
    return [
      says,
      `Alike: whatever the difference between ${longer} and ${shorter} is, it lies between ×0.8 and ×1.25. That was shown, not merely not disproved.`,
    ];
  return [
    says,
    `Not told apart: the runs fit a longer ${subject.name} as well as a longer ${baseline.name}. That does not make them alike; too little was cut to say either.`,
  ];
}

function method({ within, measured, subject, baseline }: RunsOfTwo): string {
  if (measured === null) return '';
  const loose = measured.unusedBatches;
  const open = subject.lives.length - subject.ended + baseline.lives.length - baseline.ended;
  return [
    within
      ? `${subject.name} and ${baseline.name} were compared within each lot, so that a harder or softer lot takes no part.`
      : `All runs of ${subject.name} were set against all of ${baseline.name}, whichever lot they were cut in.`,
    loose.length === 0 ? '' : ` Only one of the two was cut in ${list(loose)}, which says nothing here.`,
    open === 0
      ? ''
      : ` ${counted(open, 'run')} ended before the stop and ${open === 1 ? 'counts' : 'count'} as “at least so long”.`.replace(
          /^ (\w)/,
          (_, first: string) => ` ${first.toUpperCase()}`,
        ),
  ].join('');
}

function more({ measured, subject, baseline }: RunsOfTwo): string {
  if (measured === null || measured.verdict !== 'not told apart') return '';
  return measured.runsMore === null
    ? `With this scatter no number of runs that anybody will cut tells ${subject.name} from ${baseline.name} at ×1.25.`
    : `About ${counted(measured.runsMore, 'more sharpening')} of each, at the scatter seen, would in four of five tries find ${subject.name} and ${baseline.name} apart where they differ by a quarter, or show them alike where they do not differ.`;
}

export const runsWords: Record<string, WordsOf> = {
  /** What the log holds. */
  'runs-entered': (scene) => {
    const runs = runsOf(scene);
    const { subject, baseline, otherUnit, strangers, all, unit } = runs;
    const rest = all - subject.runs - baseline.runs - otherUnit;
    const { blind, closed = false, reopened = false } = scene.entry.plan ?? firstPlan;
    const codes = blind && !closed ? strangers.filter(isSheetCode) : [];
    const unknown = strangers.filter((name) => !codes.includes(name));
    return [
      `The log has ${entered(subject)} and ${entered(baseline)}${all > 0 ? `, in ${unitWord(runs)}` : ''}.`,
      subject.runs > subject.lives.length || baseline.runs > baseline.lives.length
        ? 'Runs after one sharpening count as one: cutting twice with one edge says nothing about the next edge.'
        : '',
      otherUnit > 0
        ? `${counted(otherUnit, 'run')} of the two in ${unit === 'mm' ? 'cuts' : 'mm'} cannot be set beside them and ${otherUnit === 1 ? 'waits' : 'wait'} in the log.`.replace(
            /^\w/,
            (first) => first.toUpperCase(),
          )
        : '',
      rest > 0 ? `Of other knives the log has ${counted(rest, 'run')}.` : '',
      codes.length > 0
        ? `Runs under ${list(codes.slice(0, 4))}${codes.length > 4 ? ` and ${codes.length - 4} more codes` : ''} get their knives when the log is closed.`
        : '',
      unknown.length > 0
        ? `No knife of the line-up is called ${list(unknown.slice(0, 4).map((name) => `“${name}”`))}${unknown.length > 4 ? ` (and ${unknown.length - 4} more names)` : ''}.`
        : '',
      closed ? 'The log is closed: its runs stay as they are.' : '',
      reopened
        ? `The log was opened again after its key was seen${closed ? ', and closed once more' : ''}. What was entered or changed since is no longer blind.`
        : '',
    ];
  },

  'runs-verdict': (scene) => {
    const runs = runsOf(scene);
    return [...verdict(runs), method(runs), more(runs)];
  },

  /** Lots that cut unlike, and runs that lie far from the others. */
  'runs-odd': (scene) => {
    const runs = runsOf(scene);
    const { subject, baseline } = runs;
    const drift = batchesApart(runs);
    const batches = drift?.batches ?? [];
    const sorted = [...batches].sort((a, b) => a.ratio - b.ratio);
    const [hardest, kindest] = [sorted[0], sorted.at(-1)];
    const apart =
      drift?.p !== null && drift !== null && drift.p < 0.05 && hardest && kindest
        ? `The lots differ: in ${kindest.batch} ${subject.name} and ${baseline.name} last ${times(kindest.ratio / hardest.ratio)} as long as in ${hardest.batch}. Never cut one knife in one lot and the other in another.`
        : '';
    const far = [subject, baseline].flatMap(({ far: lives, name }) =>
      lives.map(
        (life) =>
          `${name} at ${brief(placeOf(life))} ${unitWord(runs)}${life.batch === undefined ? '' : ` in ${life.batch}`}`,
      ),
    );
    return [
      apart,
      far.length === 0
        ? ''
        : `Far from the others: ${list(far.slice(0, 5))}${far.length > 5 ? ` and ${far.length - 5} more` : ''}. ${far.length === 1 ? 'It is' : 'They are'} drawn and counted. Look for the reason in the shop, not in the numbers.`,
    ];
  },
};
