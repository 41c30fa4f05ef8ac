import { additiveGuess, compound, jobProfiles } from '../model/index.ts';
import type { Family, Row, Term, TermId } from '../model/index.ts';
import type { Scene } from './scene.ts';
import { plain, ratioInWords, times, typedPercent } from './show.ts';

/** Sentences of the scene. Every sentence that depends on the line-up has its name here. */
export type WordsOf = (scene: Scene) => string[];

const about: Record<TermId, (scene: Scene) => string> = {
  wedge: () => 'its edge angle, as a wedge pushed through the material,',
  apex: () => 'its edge angle a second time, at the apex,',
  thickness: () => 'its thickness behind the edge',
  grind: () => 'its primary grind',
  finish: () => 'the finish of its edge',
  hardness: () => 'its hardness',
  carbide: () => 'its carbide',
};

const familyPhrase: Record<Family, string> = {
  geometry: 'geometry (angle, thickness and grind)',
  finish: 'the finish of the edge',
  steel: 'the steel (hardness and carbide)',
};

const standing = (row: Row): (Term & { factor: number })[] =>
  row.terms.filter((term): term is Term & { factor: number } => term.factor !== null);

const changes = (term: { factor: number }): boolean => Math.abs(Math.log(term.factor)) > 5e-4;

function list(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

const incomplete = (row: Row): string =>
  row.complete ? '' : ' The total is incomplete: a term is left out, not taken as 1.';

export const words: Record<string, WordsOf> = {
  /** One sentence: the answer. */
  answer: (scene) => {
    const { entry, row, subject, baseline } = scene;
    const chosen = row[entry.reading];
    const job = jobProfiles.find(({ id }) => id === entry.work);
    if (job && !job.slicingChain) return words['job']?.(scene) ?? [];
    return [
      `${subject.name} should cut ${ratioInWords(chosen.product)} as ${baseline.name}: ${times(chosen.product)} by the ${entry.reading} reading.${incomplete(chosen)}`,
    ];
  },

  question: ({ subject, baseline }) => [
    `How many times as long does ${subject.name} cut as ${baseline.name}?`,
  ],

  /** What the work says to the chain: refused, with the reason, where wear does not end the edge. */
  job: ({ entry, row, subject, baseline }) => {
    const job = jobProfiles.find(({ id }) => id === entry.work);
    if (!job) return [];
    if (job.slicingChain) return [`In ${job.name}, ${job.reason}: the slicing chain speaks of this work.`];
    const { rolling, chipping } = row.close.sideLoad;
    const told =
      job.endsBy === 'rolling'
        ? `What tells is resistance to rolling: ${subject.name} has ${times(rolling)} that of ${baseline.name}.`
        : chipping === null
          ? `What tells is resistance to chipping, and that needs the toughness of both ${subject.name} and ${baseline.name}.`
          : `What tells is resistance to chipping: ${subject.name} has ${times(chipping)} that of ${baseline.name}.`;
    return [`The slicing chain is refused for this work (${job.name}): ${job.reason}.`, told];
  },

  /** Which term does most, which pull the other way, what changes nothing. */
  reasons: ({ entry, row, subject, baseline }) => {
    const terms = standing(row[entry.reading]);
    const helping = terms
      .filter((term) => changes(term) && term.factor > 1)
      .sort((a, b) => b.factor - a.factor);
    const hurting = terms
      .filter((term) => changes(term) && term.factor < 1)
      .sort((a, b) => a.factor - b.factor);
    const same = terms.filter((term) => !changes(term));
    const phrase = ({ id, factor }: { id: TermId; factor: number }) =>
      `${about[id]({} as Scene).replace(/,$/, '')} ${times(factor)}`.replace(', ', ', ');
    const sentences: string[] = [];
    if (helping.length > 0) sentences.push(`For ${subject.name} speak ${list(helping.map(phrase))}.`);
    if (hurting.length > 0)
      sentences.push(`Against it ${hurting.length > 1 ? 'stand' : 'stands'} ${list(hurting.map(phrase))}.`);
    if (same.length > 0) {
      sentences.push(
        same.length === terms.length
          ? `${subject.name} and ${baseline.name} do not differ in any term.`
          : `The two do not differ in ${list(same.map(({ id }) => id))}: ${same.length > 1 ? 'each of these factors' : 'this factor'} is 1.`,
      );
    }
    return sentences;
  },

  families: ({ entry, row, subject }) => {
    const { families } = row[entry.reading];
    const sorted = (Object.entries(families) as [Family, number][]).sort(
      (a, b) => Math.abs(Math.log(b[1])) - Math.abs(Math.log(a[1])),
    );
    const [first, ...others] = sorted;
    if (!first || Math.abs(Math.log(first[1])) < 5e-4)
      return [`No family of causes sets ${subject.name} apart.`];
    return [
      `By the ${entry.reading} reading most of the difference lies in ${familyPhrase[first[0]]}: ${times(first[1])}. Beside it, ${list(others.map(([family, factor]) => `${familyPhrase[family]} ${Math.abs(factor - 1) < 5e-4 ? 'makes no difference' : `makes ${times(factor)}`}`))}.`,
    ];
  },

  shares: ({ entry, row, subject }) => {
    const { logShares, terms } = row[entry.reading];
    if (!logShares) {
      return standing(row[entry.reading]).some(changes)
        ? [
            `The terms for and against ${subject.name} nearly cancel, so a share of the total would mean nothing; the bars show each with its sign.`,
          ]
        : [];
    }
    const parts = terms.filter((term) => term.factor !== null && Math.abs(logShares[term.id] ?? 0) >= 0.005);
    return [
      `Of the logarithm of the total, ${list(parts.map(({ id }) => `${id} holds ${plain((logShares[id] ?? 0) * 100, 2)} %`))}.`,
    ];
  },

  readings: ({ row, subject, baseline }) => {
    const { pocket, close } = row;
    return [
      `The pocket reading, sums one can do in the head, gives ${times(pocket.product)} for ${subject.name} against ${baseline.name}; the close reading gives ${times(close.product)}.`,
      Math.abs(Math.log(pocket.product)) > Math.abs(Math.log(close.product))
        ? 'The pocket reading counts every effect at face value; friction and the exponents damp them in the close reading.'
        : 'Here the close reading is the larger of the two: what the pocket reading counts at face value nearly cancels.',
      `If the forces of wedge, thickness and grind add instead of multiplying, the close reading becomes ${times(close.rival)}: that is the rival, and no one yet knows which form is true.`,
    ];
  },

  /** Whose numbers these are, on a page that carries a visitor's line-up. */
  whose: ({ entry, subject, baseline }) => [
    `This page speaks of “${entry.title}”, the line-up in its address: ${subject.name} against ${baseline.name}.${entry.invented ? ' Its numbers are invented.' : ''}`,
  ],

  /** The first lesson's arithmetic on the line-up's own factors. */
  percentages: (scene) => {
    const { entry, row, subject, baseline } = scene;
    const factors = standing(row.close).filter(changes);
    if (factors.length === 0)
      return [
        `${subject.name} and ${baseline.name} do not differ in any term, so there is nothing to multiply.`,
      ];
    const percents = factors.map(({ factor }) => (factor - 1) * 100);
    const parts = factors.map(
      ({ id }, index) => `${id} ${typedPercent(Number((percents[index] ?? 0).toFixed(0)))}`,
    );
    return [
      `By the close reading ${subject.name} differs from ${baseline.name} by ${list(parts)}.`,
      `Added, that would be ${times(additiveGuess(percents))}; multiplied it is ${times(compound(percents))}.`,
      entry.faceValues ? 'The bars above show the percentages typed on the bench.' : '',
    ];
  },

  notes: ({ row, entry }) => row[entry.reading].notes,

  'side-load': ({ row, subject, baseline, subjectKnife }) => {
    const { rolling, chipping } = row.close.sideLoad;
    const compared = (ratio: number, what: string) =>
      Math.abs(ratio - 1) < 5e-3
        ? `${subject.name} and ${baseline.name} resist ${what} alike`
        : `${subject.name} resists ${what} ${times(ratio)} as well as ${baseline.name}`;
    return [
      `Under a side load ${compared(rolling, 'rolling')}.`,
      chipping === null
        ? `Chipping cannot be compared: the toughness ${subjectKnife.toughness === undefined ? `of ${subject.name}` : `of ${baseline.name}`} is not known.`
        : `${compared(chipping, 'chipping')}.`,
    ];
  },
};

/** The sentences of that name in the scene. An unknown name is a mistake in the page and fails the build. */
export function wordsNamed(name: string, scene: Scene): string[] {
  const read = words[name];
  if (!read)
    throw new RangeError(`there are no words named "${name}"; the names stand in src/lineup/words.ts`);
  return read(scene).filter((sentence) => sentence !== '');
}
