import { answerOf } from '../../phrases/answer.ts';
import { jobOf } from '../../phrases/job.ts';
import { onlyTogether, smallParts } from '../../phrases/only-together.ts';
import { measuresText } from '../../phrases/measures.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { differs, temptingSum } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, readAlike } from '../../scene/show.ts';
import { termText } from '../../phrases/factor-words.ts';
import { sentencesOf } from '../../phrases/sentences-of.ts';
import { words } from '../overview/words.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { factorIds } from '../../scene/factors.ts';

const said = (name: string, scene: Scene): string[] => sentencesOf(words, name, scene);

/** How the factors are meant, before they are named. */
function settings({ entry, row, subject, baseline }: Scene): string[] {
  const { multiplied } = row[entry.reading];
  const total = `they make ${plain(multiplied, 2)} for ${subject.name} against ${baseline.name}`;
  return entry.reading === 'quick'
    ? ['The factors are those of the quick sum, every effect at its face value.', `Multiplied, ${total}.`]
    : [
        'The factors stand at the middle settings of the model.',
        `If they all multiply, ${total}. Nobody knows that they do.`,
      ];
}

/** What adding percentages would say, beside what multiplying says. */
function surprise(scene: Scene): string[] {
  const { entry, row, subject, baseline } = scene;
  const chosen = row[entry.reading];
  const working = chosen.terms.filter(differs);
  const pair = `${subject.name} against ${baseline.name}`;
  if (working.length === 0)
    return [
      onlyTogether(scene, chosen) ||
        `There is nothing to add or to multiply for ${pair}: no factor differs from 1.`,
    ];
  const [only] = working;
  if (working.length === 1 && only)
    return [
      `For ${pair} only one factor differs from 1, ${only.id}, so percentages added and multiplied agree.`,
    ];
  const sum = temptingSum(chosen);
  const product = `If they all multiply, each works on what the others have made, and they come to ${plain(chosen.multiplied, 2)}${smallParts(working, chosen.multiplied)}.`;
  if (sum <= 0)
    return [
      `Added up as percentages, the effects would leave ${subject.name} with less than nothing of what ${baseline.name} cuts, which cannot be.`,
      product,
    ];
  const gap = chosen.multiplied / sum;
  return [
    `Most people add the percentages. For ${pair} that makes ${plain(sum, 2)}.`,
    product,
    readAlike(chosen.multiplied, sum)
      ? 'Here the two all but agree, which is chance.'
      : `The product is ${plain(gap, 2)} times the sum${gap > 1 ? '' : ': with effects that pull both ways, adding flatters'}.`,
    'Forces that resist side by side may add, but as forces and not as percentages.',
  ];
}

/** That the answer takes in more than one way to combine the factors, where that makes it another one. */
function combined(scene: Scene): string {
  const { multiplied, added, toLimit } = scene.row.careful;
  return refusedWork(scene) !== '' || (readAlike(multiplied, added) && readAlike(multiplied, toLimit))
    ? ''
    : 'Nobody has measured how such effects combine, so the answer takes in three ways.';
}

/** How many runs go along, knife by knife. */
function runs({ entry, subject, baseline }: Scene): string[] {
  const { runs: all = [] } = entry;
  if (all.length === 0) return [];
  const of = (id: string) => all.filter(({ knife }) => knife === id).length;
  const [own, other] = [of(entry.subject), of(entry.baseline)];
  const count = (many: number) => (many === 1 ? 'one run' : `${many} runs`);
  return [
    `${all.length === 1 ? 'One measured run goes' : `${all.length} measured runs go`} along with this comparison: ${count(own)} of ${subject.name}, ${count(other)} of ${baseline.name}.`,
    'Where a run and the model disagree, believe the run.',
  ];
}

export const explainedWords: Record<string, WordsOf> = {
  /** What was compared, by its measures. */
  'explained-compared': ({ entry, subject, baseline, subjectKnife, baselineKnife }) => {
    const work = jobOf(entry).name;
    return [
      `${subject.name} is compared with ${baseline.name}, in ${work}.`,
      `${subject.name}: ${measuresText(subjectKnife)}.`,
      `${baseline.name}, the baseline: ${measuresText(baselineKnife)}.`,
      entry.invented ? 'All these numbers are invented.' : '',
    ];
  },

  'explained-refused': (scene) => [refusedWork(scene)],

  ...Object.fromEntries(
    factorIds.map((id): [string, WordsOf] => [`explained-${id}`, (scene) => termText(scene, id)]),
  ),

  'explained-factors': settings,
  'explained-surprise': surprise,
  'explained-runs': runs,

  'explained-not-said': ({ comparison, subject, baseline }) => [
    `It does not say how long ${subject.name} cuts, only how many times as long as ${baseline.name}, in the same hands and work.`,
    comparison.outcome === 'fixed-strokes'
      ? '“As long” means how much card is cut in a fixed number of strokes.'
      : '“As long” means how much is cut until both are equally blunt. A score of card in a fixed number of strokes is another thing.',
    `It does not say which of ${subject.name} and ${baseline.name} is the better knife: toughness, rust, comfort and price are not in it.`,
    `It takes the edges of ${baseline.name} and ${subject.name} as ground well: a burr left on, or an edge overheated, undoes these numbers.`,
  ],

  /** The shortest explanation. */
  'explained-sentence': (scene) => {
    const { entry, subject, baseline } = scene;
    const job = jobOf(entry);
    return !job.slicingChain
      ? [
          `How many times as long ${subject.name} cuts as ${baseline.name} in ${job.name} the model does not say: there, ${job.reason}.`,
        ]
      : answerOf(scene).slice(0, 1);
  },

  /** The explained page in one paragraph. */
  'explained-paragraph': (scene) => [
    ...answerOf(scene),
    ...settings(scene),
    ...said('reasons', scene),
    ...surprise(scene),
    combined(scene),
  ],
};
