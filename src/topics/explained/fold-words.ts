import { runsOf } from './runs-along.ts';
import { factorOf } from '../../comparison/found.ts';
import { familyName } from '../../phrases/family-names.ts';
import { hasInWords, termText } from '../../phrases/factor-words.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { sideLoadInWords, sideOf } from '../../phrases/side-load.ts';
import { factorIds, families } from '../../scene/factors.ts';
import type { Scene } from '../../scene/scene.ts';
import { countInWords, plain, readsAsOne, short, times } from '../../scene/show.ts';
import { differs } from '../../scene/terms.ts';
import { words as overview } from '../overview/words.ts';

const inTwo = (ratio: number): string => (Number(plain(ratio, 2)) === 1 ? plain(ratio, 3) : short(ratio, 2));

/** All factors in one line. */
function allInShort({ row, subject, baseline }: Scene): string {
  const felt = row.careful.terms.filter(differs).map(({ factor }) => factor);
  const [first] = felt;
  if (first === undefined) return `nothing sets ${subject.name} and ${baseline.name} apart`;
  if (felt.length === 1) return `only one makes a difference: ${inTwo(first)} times as long`;
  const up = felt.filter((factor) => factor > 1).length;
  if (up > 0 && up < felt.length)
    return `${countInWords(up)} for ${subject.name}, ${countInWords(felt.length - up)} against`;
  const [low, high] = [inTwo(Math.min(...felt)), inTwo(Math.max(...felt))];
  const each = low === high ? `${low} times each` : `${low} to ${high} times each`;
  return felt.length === row.careful.terms.length ? each : `${countInWords(felt.length)} of them: ${each}`;
}

/** The knife that cuts longer, and the other; the one asked about where neither does. */
function longer({ row, subject, baseline }: Scene) {
  const { multiplied, sideLoad } = row.careful;
  const turned = multiplied < 1 && !readsAsOne(multiplied);
  const { low, high } = sideLoad.rolling;
  return turned
    ? { better: baseline, other: subject, load: { low: 1 / high, high: 1 / low } }
    : { better: subject, other: baseline, load: { low, high } };
}

function betterInShort(scene: Scene): string {
  const { better, other, load } = longer(scene);
  const side = sideOf(load);
  if (side === 'same') return `${better.name} and ${other.name} bear the same side load`;
  if (side === 'less')
    return `no: ${other.name} bears ${sideLoadInWords({ low: 1 / load.high, high: 1 / load.low })} the side load`;
  return side === 'more'
    ? `it bears ${sideLoadInWords(load)} the side load of ${other.name} too`
    : `not clear: ${sideLoadInWords(load)} the side load of ${other.name}`;
}

const factorRow = (id: (typeof factorIds)[number]): [string, WordsOf][] => [
  [`explained-${id}`, (scene) => termText(scene, id)],
  [`short-${id}-has`, (scene) => [hasInWords(scene, id)]],
  [
    `short-${id}-times`,
    ({ row }) => {
      const factor = factorOf(row.careful, id);
      return [factor === null ? 'not known' : readsAsOne(factor) ? '×1' : times(factor, 2)];
    },
  ],
];

export const foldWords: Record<string, WordsOf> = {
  'short-all-reasons': (scene) => [allInShort(scene)],
  ...Object.fromEntries(factorIds.flatMap(factorRow)),

  'explained-better': (scene) => {
    const { better, other } = longer(scene);
    return [
      readsAsOne(scene.row.careful.multiplied)
        ? `Do ${better.name} and ${other.name} bear the same side load?`
        : `Is ${better.name} better at everything?`,
    ];
  },
  'short-better': (scene) => [betterInShort(scene)],

  'short-families': ({ row, subject, baseline }) => {
    const sorted = families
      .map((family) => ({ family, factor: row.careful.families[family] }))
      .filter(({ factor }) => !readsAsOne(factor))
      .sort((one, other) => Math.abs(Math.log(other.factor)) - Math.abs(Math.log(one.factor)));
    return sorted.length === 0
      ? [`none of them sets ${subject.name} and ${baseline.name} apart`]
      : [
          sorted
            .map(
              ({ family, factor }, index) =>
                `${familyName[family].name.toLowerCase()} ${inTwo(factor)}${index === 0 ? ' times' : ''}`,
            )
            .join(', '),
        ];
  },

  /** How many runs go along; nothing where none do. */
  'short-tested': (scene) => {
    const { all, own, other } = runsOf(scene);
    return all === 0 ? [] : [`${own} of ${scene.subject.name}, ${other} of ${scene.baseline.name}`];
  },

  /** What to know beside it, but for the toughness, which is spoken of with the side load. */
  'explained-notes': (scene) =>
    (overview['notes']?.(scene) ?? []).filter((note) => !note.includes('toughness')),

  'explained-why-measure': ({ subject, baseline }) => [
    `Each number says how many times as long ${subject.name} cuts as ${baseline.name} for that reason alone.`,
  ],
};
