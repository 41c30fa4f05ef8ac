import { structures } from '../../model/index.ts';
import type { Family } from '../../model/index.ts';
import { nextAsked } from '../../comparison/empty.ts';
import { aboutJob } from '../../phrases/about-job.ts';
import { attributeName } from '../../phrases/attribute-names.ts';
import { familyName } from '../../phrases/family-names.ts';
import { headlineInWords, headlineRange, otherWayRound } from '../../phrases/headline.ts';
import { jobOf } from '../../phrases/job.ts';
import { list } from '../../phrases/list.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { sideLoadInWords, sideOf } from '../../phrases/side-load.ts';
import { whatCounts } from '../../phrases/what-counts.ts';
import { headlineOf } from '../../scene/headline.ts';
import { plain, readsAsOne, short } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';
import { sceneOf } from '../../scene/scene.ts';
import { orRefusal } from '../../comparison/unless-refused.ts';
import type { Equalisable } from '../../comparison/entry.ts';

/** What is still missing before anything can be said; nothing where there is enough. */
function missing({ entry, knives }: Scene): string {
  const next = nextAsked(entry);
  if (!next) return '';
  const name = knives.find(({ id }) => id === next.knife)?.name ?? '';
  const measure = next.measure === 'carbide volume' ? 'carbide' : next.measure;
  return next.first ? `Type the ${measure} of ${name} to begin.` : `Now type the ${measure} of ${name}.`;
}

/** A ratio in two figures. */
const inTwo = (ratio: number): string => plain(readsAsOne(ratio) ? 1 : ratio, 2);

/** What the families of factors come to, the largest first; those that change nothing are left out. */
const familiesOf = ({ row }: Scene): [Family, number][] =>
  (Object.entries(row.careful.families) as [Family, number][])
    .filter(([, factor]) => !readsAsOne(factor))
    .sort((a, b) => Math.abs(Math.log(b[1])) - Math.abs(Math.log(a[1])));

/** The attributes that can be made equal, in the order of the form. */
const oneEqual: readonly (readonly [attribute: Equalisable, said: string])[] = [
  ['angleDeg', 'same angle'],
  ['edgeMm', 'same thickness behind the edge'],
  ['grind', 'same grind'],
  ['finish', 'same finish'],
  ['hrc', 'same hardness'],
  ['carbideVolPercent', 'same carbide'],
];

/** Which one thing made equal changes the answer most, and to what. */
function mostByOne(scene: Scene): { said: string; left: number } | undefined {
  const { multiplied } = scene.row.careful;
  const tries = oneEqual.flatMap(([attribute, said]) =>
    orRefusal(
      () => {
        const { row } = sceneOf({ ...scene.entry, madeEqual: [attribute] });
        return [{ said, left: row.careful.multiplied }];
      },
      () => [],
    ),
  );
  const moved = ({ left }: { left: number }): number => Math.abs(Math.log(left / multiplied));
  const [most] = tries.sort((a, b) => moved(b) - moved(a));
  return most && !readsAsOne(most.left / multiplied) ? most : undefined;
}

export const words: Record<string, WordsOf> = {
  'question-takes': ({ baseline, subject, row }) => [
    row.careful.multiplied < 1
      ? `What would it take for ${subject.name} to draw level?`
      : `What would it take for ${baseline.name} to draw level?`,
  ],

  /** In large type: the range, without its middle. */
  'answer-line': (scene) => {
    const lacks = missing(scene);
    if (lacks !== '') return [lacks];
    return jobOf(scene.entry).slicingChain ? [headlineRange(scene)] : aboutJob(scene).slice(-1);
  },

  /** Below it: the middle, and what is counted. */
  'answer-middle': (scene) => {
    if (missing(scene) !== '') return ['What you leave empty counts as not known. The range is then wider.'];
    if (!jobOf(scene.entry).slicingChain) return aboutJob(scene).slice(0, -1);
    const { low, middle, high } = headlineOf(scene);
    return [low === high ? '' : `${short(middle)} is the middle.`, otherWayRound(scene), whatCounts(scene)];
  },

  /** In the bar below the fields: the answer in one line. */
  'short-answer': (scene) => {
    const lacks = missing(scene);
    if (lacks !== '') return [lacks.slice(0, -1)];
    if (!jobOf(scene.entry).slicingChain)
      return aboutJob(scene)
        .slice(-1)
        .map((said) => said.replace(/\.$/, ''));
    const { subject, baseline } = scene;
    const headline = headlineOf(scene);
    if (headline.low === 1 && headline.high === 1)
      return [`${subject.name} and ${baseline.name}: about the same`];
    return [
      `${subject.name}: ${headlineInWords(headline).replace(' as long', ` as long as ${baseline.name}`)}`,
    ];
  },

  'short-work': ({ entry }) => {
    const { name, slicingChain } = jobOf(entry);
    return [slicingChain ? `${name}, ${motionName(entry.slicePush)}` : name];
  },

  'short-matters': (scene) => {
    const families = familiesOf(scene);
    if (families.length === 0) return ['nothing sets them apart'];
    const names = (of: readonly [Family, number][]) => of.map(([family]) => familyName[family].inSentence);
    const [up, down] = [
      families.filter(([, factor]) => factor > 1),
      families.filter(([, factor]) => factor < 1),
    ];
    const said = (of: readonly [Family, number][]) => names(of).join(', then ');
    if (up.length === 0)
      return [`${said(down)}${families.length > 1 ? ': all' : ','} against ${scene.subject.name}`];
    return [
      down.length === 0
        ? `${said(up)}, if they multiply`
        : `${said(up)}; ${list(names(down))} ${down.length > 1 ? 'pull' : 'pulls'} the other way`,
    ];
  },

  'short-equal': (scene) => {
    const { entry, row } = scene;
    const now = row.careful.multiplied;
    if (entry.madeEqual.length > 0)
      return [
        `made equal: ${list(entry.madeEqual.map((attribute) => attributeName[attribute].name))}; ${readsAsOne(now) ? 'nothing' : inTwo(now)} is left${readsAsOne(now) ? '' : ', if all multiply'}`,
      ];
    const most = mostByOne(scene);
    return [
      most
        ? `${most.said}: ${readsAsOne(most.left) ? 'level' : `about ${inTwo(most.left)}`} instead of ${readsAsOne(now) ? 'level' : inTwo(now)}, if all multiply`
        : 'no single thing changes the answer',
    ];
  },

  /** What is left once some measures are equal. */
  'left-over': ({ entry, row, subject, baseline }) => {
    const left = row.careful.multiplied;
    if (entry.madeEqual.length === 0) return [];
    const same = list(entry.madeEqual.map((attribute) => attributeName[attribute].name));
    return [
      readsAsOne(left)
        ? `With the same ${same} nothing is left: ${subject.name} and ${baseline.name} should cut as long as each other.`
        : `With the same ${same}, ${subject.name} should cut about ${inTwo(left)} times as long as ${baseline.name}, if all multiply.`,
    ];
  },

  'short-side-load': ({ row, subject, baseline }) => {
    const { rolling } = row.careful.sideLoad;
    const side = sideOf(rolling);
    if (side === 'same') return [`${subject.name} and ${baseline.name} bear the same side load`];
    const other = { low: 1 / rolling.high, high: 1 / rolling.low };
    return [
      side === 'less'
        ? `${baseline.name} bears ${sideLoadInWords(other)} the side load`
        : `${subject.name} bears ${sideLoadInWords(rolling)} the side load of ${baseline.name}`,
    ];
  },

  'short-assumes': ({ entry }) => {
    const changed = Object.keys(entry.assumptions).length + Object.keys(entry.gaugeBias ?? {}).length;
    return [
      changed === 0
        ? `${structures.length} ways to combine, and nothing changed by you`
        : `${changed} ${changed === 1 ? 'assumption' : 'assumptions'} changed by you`,
    ];
  },
};

/** How the knife is moved, in a few words. */
function motionName(slicePush: number): string {
  if (slicePush === 0) return 'pushed straight through';
  if (slicePush <= 1) return 'pushed with a draw';
  return slicePush <= 3 ? 'long slices' : 'very long slices';
}
