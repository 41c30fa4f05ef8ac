import { jobOf } from '../../phrases/job.ts';
import { onlyTogether, smallParts } from '../../phrases/only-together.ts';
import { measuresText } from '../../phrases/measures.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { differs, leftOut, standing, temptingSum } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import { loggedName } from '../../scene/logged-name.ts';
import { plain, readAlike, times } from '../../scene/show.ts';
import { termText } from '../../phrases/factor-words.ts';
import { sentencesOf } from '../../phrases/sentences-of.ts';
import { words } from '../overview/words.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { factorIds } from '../../scene/factors.ts';

const said = (name: string, scene: Scene): string[] => sentencesOf(words, name, scene);

/** What adding would say, beside what multiplying says. */
function surprise(scene: Scene): string[] {
  const { entry, row, subject, baseline } = scene;
  const chosen = row[entry.reading];
  const working = standing(chosen).filter(differs);
  const pair = `${subject.name} against ${baseline.name}`;
  if (working.length === 0)
    return [
      onlyTogether(scene, chosen) ||
        `There is nothing to add or to multiply for ${pair}: no factor differs from 1.`,
    ];
  const [only] = working;
  if (working.length === 1 && only)
    return [
      `For ${pair} only one factor differs from 1, ${only.id} with ${times(only.factor)}, so sum and product are the same.`,
    ];
  const sum = temptingSum(chosen);
  const product = `multiplied, each works on what the others have made, and they come to ${times(chosen.product)}${smallParts(working, chosen.product)}`;
  if (sum <= 0)
    return [
      `Added up, the effects would leave ${subject.name} with less than nothing of what ${baseline.name} cuts, which cannot be; ${product}.`,
    ];
  const gap = chosen.product / sum;
  return [
    `Most people add. Added to 1, what each effect is worth would come to ${times(sum)} for ${pair}; ${product}.`,
    readAlike(chosen.product, sum)
      ? 'Here the two all but agree, which is chance.'
      : `The product is ${plain(gap)} times the sum${gap > 1 ? '' : ': with effects that pull both ways, adding flatters'}.`,
  ];
}

/** How many runs go along, knife by knife. */
function runs({ entry, subject, baseline }: Scene): string[] {
  const { runs: all = [] } = entry;
  if (all.length === 0) return [];
  const of = (id: string) => all.filter(({ knife }) => knife === loggedName(entry, id)).length;
  const [own, other] = [of(entry.subject), of(entry.baseline)];
  const count = (many: number) => (many === 1 ? 'one run' : `${many} runs`);
  return [
    `${all.length === 1 ? 'One measured run goes' : `${all.length} measured runs go`} along with this line-up: ${count(own)} of ${subject.name}, ${count(other)} of ${baseline.name}.`,
    'Where a run and the model disagree, the run was there.',
  ];
}

export const explainedWords: Record<string, WordsOf> = {
  /** What was compared, by its measures. */
  'telling-compared': ({ entry, subject, baseline, subjectKnife, baselineKnife }) => {
    const work = jobOf(entry).name;
    return [
      `${subject.name} is held against ${baseline.name}, in ${work}.`,
      `${subject.name}: ${measuresText(subjectKnife)}.`,
      `${baseline.name}, the baseline: ${measuresText(baselineKnife)}.`,
      entry.invented ? 'All these numbers are invented.' : '',
    ];
  },

  'telling-refused': (scene) => [refusedWork(scene)],

  ...Object.fromEntries(
    factorIds.map((id): [string, WordsOf] => [`telling-${id}`, (scene) => termText(scene, id)]),
  ),

  'telling-surprise': surprise,
  'telling-runs': runs,

  'telling-not-said': ({ entry, row, subject, baseline }) => [
    `It does not say how long ${subject.name} cuts, only how many times as long as ${baseline.name}, in the same hands and the same work.`,
    `It does not say that ${subject.name} is the better or the worse knife than ${baseline.name}: toughness, rust, comfort and price are not in it.`,
    `It takes the edges of ${baseline.name} and ${subject.name} as ground well: a burr left on, or an edge overheated, undoes any of these numbers.`,
    leftOut(row[entry.reading]).length > 0 ? 'What is left out of the chain is not known to be nothing.' : '',
  ],

  /** The shortest telling. */
  'telling-sentence': (scene) => {
    const { entry, subject, baseline } = scene;
    const job = jobOf(entry);
    return !job.slicingChain
      ? [
          `How many times as long ${subject.name} cuts as ${baseline.name} in ${job.name} the model does not say: there, ${job.reason}.`,
        ]
      : said('answer', scene).slice(0, 1);
  },

  /** The explained page in one paragraph. */
  'telling-paragraph': (scene) => [
    ...said('answer', scene),
    ...said('reasons', scene),
    ...surprise(scene),
    `With the forces added instead, which nobody has ruled out, ${scene.subject.name} would come to ${times(scene.row[scene.entry.reading].rival)} against ${scene.baseline.name}.`,
  ],
};
