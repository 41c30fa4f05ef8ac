import type { NamedRun } from '../runs/log.ts';
import { notRecorded } from '../runs/log.ts';
import { reachOf } from '../runs/lives.ts';
import { readComparisons } from '../comparison/files.ts';
import { namedRuns, shownNames } from '../comparison/knife-names.ts';
import { found } from '../comparison/found.ts';
import { decodeLink } from '../comparison/link/codec.ts';
import { runsOf } from '../scene/runs.ts';
import { sceneOf } from '../scene/scene.ts';
import { knifeFieldsShown } from './knife-fields.ts';
import type { Scene } from '../scene/scene.ts';
import type { ComparisonEntry } from '../comparison/entry.ts';
import { inFigures } from '../scene/show.ts';

/** A number of a published comparison or log that is another now. */
export interface Correction {
  /** What it is a number of, with its unit. */
  what: string;
  /** Null where there was none, or is none now. */
  before: number | null;
  now: number | null;
}

/** The fewest figures, three at least, by which two numbers read differently; null where ten do not tell them apart. */
function figuresApart(before: number, now: number): number | null {
  for (let figures = 3; figures <= 10; figures += 1)
    if (inFigures(before, figures) !== inFigures(now, figures)) return figures;
  return null;
}

const shown = (value: number | null, figures: number): string =>
  value === null ? 'none' : String(inFigures(value, figures));

/**
 * The sentence of one number, fit for a note beside what was published.
 *
 * @example correctionSentence({ what: 'Runs of Dunlin in the log', before: 9, now: 10 }) // → 'Runs of Dunlin in the log: 9 before, 10 now.'
 */
export function correctionSentence({ what, before, now }: Correction): string {
  const figures = before === null || now === null ? 4 : (figuresApart(before, now) ?? 10);
  return `${what}: ${shown(before, figures)} before, ${shown(now, figures)} now.`;
}

type Numbers = Map<string, number | null>;

/** Every number of a comparison a reader may have quoted: what was entered, what was cut, and what both came to. */
function numbersOf(entry: ComparisonEntry): Numbers {
  const scene = sceneOf(entry);
  return new Map([
    ...ofKnives(scene),
    ...ofRuns(namedRuns(scene.knives, entry.runs ?? [])),
    ...ofResults(scene),
  ]);
}

function* ofKnives({ entry, comparison }: Scene): Generator<[string, number]> {
  const names = shownNames(entry.knives);
  for (const knife of comparison.knives) {
    const entered = found(entry.knives, knife.id, 'knife');
    for (const { numbers } of Object.values(knifeFieldsShown))
      for (const [what, value] of numbers(knife, entered))
        yield [`${names.get(knife.id) ?? entered.name}, ${what}`, value];
  }
}

function* ofRuns(runs: readonly NamedRun[]): Generator<[string, number]> {
  const seen = new Map<string, number>();
  const counts = new Map<string, number>();
  for (const run of runs) {
    counts.set(run.knife, (counts.get(run.knife) ?? 0) + 1);
    const known = [
      run.knife,
      run.batch === notRecorded ? '' : run.batch,
      run.sharpening === notRecorded ? '' : `sharpening ${run.sharpening}`,
    ].filter(Boolean);
    const place = known.join(', ');
    // Two runs that bear the same marks are distinguished by their order.
    const many = (seen.get(place) ?? 0) + 1;
    seen.set(place, many);
    const name = many === 1 ? place : `${place}, run ${many}`;
    const { reach, unit } = reachOf(run);
    yield [`${name}, until the end point, ${unit}`, reach];
    if (run.angleDeg !== notRecorded) yield [`${name}, angle as sharpened, °`, run.angleDeg];
    if (run.startSharpness !== notRecorded) yield [`${name}, sharpness at start`, run.startSharpness];
    if (run.checkedEvery !== notRecorded) yield [`${name}, looked every, ${unit}`, run.checkedEvery];
  }
  for (const [knife, many] of counts) yield [`Runs of ${knife} in the log`, many];
}

function* ofResults(scene: Scene): Generator<[string, number]> {
  const { entry, subject, baseline, row } = scene;
  const pair = `${subject.name} against ${baseline.name}`;
  yield [`${pair}, by the careful estimate, times as long`, row.careful.multiplied];
  yield [`${pair}, by the quick sum, times as long`, row.quick.multiplied];
  if ((entry.runs ?? []).length === 0) return;
  const { measured } = runsOf(scene);
  if (!measured) return;
  yield [`${pair}, by the runs, times as long`, measured.ratio];
  yield [`${pair}, by the runs, lower end of the interval`, measured.low];
  yield [`${pair}, by the runs, upper end of the interval`, measured.high];
}

/**
 * Every number that differs between two versions of a comparison with its log. Both are looked at for the knives the later
 * one looks at, where the earlier one has them.
 *
 * @param before the version that was published
 * @param now the corrected one
 */
export function corrections(before: ComparisonEntry, now: ComparisonEntry): Correction[] {
  const has = (id: string): boolean => before.knives.some((knife) => knife.id === id);
  const same = has(now.subject) && has(now.baseline);
  const [old, own] = [
    numbersOf(same ? { ...before, subject: now.subject, baseline: now.baseline } : before),
    numbersOf(now),
  ];
  return [...new Set([...own.keys(), ...old.keys()])].flatMap((what) => {
    const [was, is] = [old.get(what) ?? null, own.get(what) ?? null];
    if (was === is || (was !== null && is !== null && figuresApart(was, is) === null)) return [];
    return [{ what, before: was, now: is }];
  });
}

/** The version a link or the text of a file holds, or why there is none. */
export function publishedIn(given: string): { entry: ComparisonEntry; runsLeftBehind?: boolean } | string {
  if (given.startsWith('{')) {
    const file = readComparisons(given);
    if (!file.ok) return file.message;
    const [first] = file.comparisons;
    return first ?? (file.problems.join(' ') || 'The file holds no comparison.');
  }
  const at = given.indexOf('#with=');
  if (at < 0) return 'This is no link of a comparison: it has “#with=” in it.';
  const link = decodeLink(given.slice(at));
  return link.ok ? { entry: link.entry, runsLeftBehind: link.runsLeftBehind ?? false } : link.why;
}

/** What the page says once a published version was compared. */
export function comparedSaid(many: number, runsLeftBehind = false): string {
  const others =
    many === 0
      ? 'No number is another now.'
      : many === 1
        ? 'One number is another now.'
        : `${many} numbers are others now.`;
  return runsLeftBehind
    ? `${others} Its runs were too many for the link: take its saved file to compare them.`
    : others;
}
