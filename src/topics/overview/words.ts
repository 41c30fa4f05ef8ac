import { isUnknown, nominal, unknownMeasures } from '../../model/index.ts';
import type { Family, Row, TermId } from '../../model/index.ts';
import { ofKnife } from '../../comparison/found.ts';
import { jobOf } from '../../phrases/job.ts';
import { onlyTogether } from '../../phrases/only-together.ts';
import { capital, list } from '../../phrases/list.ts';
import { differs, leftOut, standing } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, ratioInWords, readAlike, readsAsNone, readsAsOne, times } from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { readingName } from '../../phrases/reading-name.ts';
import { factorName } from '../../phrases/factor-names.ts';
import { familyName } from '../../phrases/family-names.ts';
import { attributeName } from '../../phrases/attribute-names.ts';

const incomplete = (row: Row): string => {
  const missing = leftOut(row);
  return missing.length === 0
    ? ''
    : ` The total is incomplete: ${list(missing)} is left out, not taken as 1.`;
};

/** How many measures of the two knives are not known: the answer then stands on the middles of their ranges. */
function notKnown({ subjectKnife, baselineKnife }: Scene): string {
  const count = [subjectKnife, baselineKnife]
    .flatMap(unknownMeasures)
    .filter(({ what }) => what !== 'toughness').length;
  if (count === 0) return '';
  return count === 1
    ? 'One measure in it is not known, so the middle of its range stands in; the notes name it.'
    : `${count} measures in it are not known, so the middles of their ranges stand in; the notes name them.`;
}

/** Whether a total is the further from 1 of two, either way, as far as readers are shown them. */
function further(total: number, other: number): boolean {
  const [away, otherAway] = [Math.max(total, 1 / total), Math.max(other, 1 / other)];
  return away > otherAway && !readAlike(away, otherAway);
}

function resists(ratio: number, what: 'rolling' | 'chipping', name: string, baseline: string): string {
  return readsAsOne(ratio)
    ? `${name} and ${baseline} bear the same load before ${what}`
    : `${name} bears ${times(ratio)} the load of ${baseline} before ${what}`;
}

/** What the work says to the chain: refused, with the reason, where wear does not end the edge. */
function aboutJob({ entry, row, subject, baseline }: Scene): string[] {
  const job = jobOf(entry);
  if (job.slicingChain)
    return [
      `In ${job.name}, ${job.reason}: the slicing chain can speak of ${subject.name} against ${baseline.name} here.`,
    ];
  const { rolling, chipping } = row.careful.sideLoad;
  const whatDecides =
    job.endsBy === 'rolling'
      ? `What tells is resistance to rolling: ${resists(rolling, 'rolling', subject.name, baseline.name)}.`
      : chipping === null
        ? `What tells is resistance to chipping, and to hold ${subject.name} against ${baseline.name} in that needs the toughness of both.`
        : `What tells is resistance to chipping: ${resists(chipping, 'chipping', subject.name, baseline.name)}.`;
  return [`The slicing chain is refused for this work (${job.name}): ${job.reason}.`, whatDecides];
}

export const words: Record<string, WordsOf> = {
  /** One sentence: the answer. */
  answer: (scene) => {
    const { entry, row, subject, baseline } = scene;
    const chosen = row[entry.reading];
    if (!jobOf(entry).slicingChain) return aboutJob(scene);
    return [
      `${subject.name} should cut ${ratioInWords(chosen.product)} as ${baseline.name}: ${times(chosen.product)} by the ${readingName[entry.reading]} reading.${incomplete(chosen)}`,
      entry.madeEqual.length > 0
        ? `Evened up: ${list(entry.madeEqual.map((attribute) => attributeName[attribute].name))}; the ratio is what the rest is worth.`
        : '',
      notKnown(scene),
    ];
  },

  question: ({ subject, baseline }) => [
    `How many times as long does ${subject.name} cut as ${baseline.name}?`,
  ],

  job: aboutJob,

  /** Which term does most, which pull the other way, what changes nothing. */
  reasons: (scene) => {
    const { entry, row, subject, baseline } = scene;
    const terms = standing(row[entry.reading]);
    const helping = terms
      .filter((term) => differs(term) && term.factor > 1)
      .sort((a, b) => b.factor - a.factor);
    const hurting = terms
      .filter((term) => differs(term) && term.factor < 1)
      .sort((a, b) => a.factor - b.factor);
    const same = terms.filter((term) => !differs(term));
    const phrase = ({ id, factor }: { id: TermId; factor: number }) =>
      `${factorName(id).own} (${times(factor)})`;
    const missing = leftOut(row[entry.reading]);
    if (same.length === terms.length)
      return [
        onlyTogether(scene, row[entry.reading]) ||
          `${subject.name} and ${baseline.name} do not differ in any term${missing.length > 0 ? ' that stands' : ''}.`,
      ];
    const sentences: string[] = [];
    if (!jobOf(entry).slicingChain)
      sentences.push('What follows would hold in clean slicing, which this work is not.');
    if (helping.length > 0) sentences.push(`${subject.name} gains by ${list(helping.map(phrase))}.`);
    if (hurting.length > 0)
      sentences.push(`${helping.length > 0 ? 'It' : subject.name} loses by ${list(hurting.map(phrase))}.`);
    if (same.length > 0)
      sentences.push(
        `In ${list(same.map(({ id }) => id))} it and ${baseline.name} are alike: ${same.length > 1 ? 'each of these factors' : 'this factor'} is 1.`,
      );
    return sentences;
  },

  families: (scene) => {
    const { entry, row, subject, baseline } = scene;
    const sorted = (Object.entries(row[entry.reading].families) as [Family, number][]).sort(
      (a, b) => Math.abs(Math.log(b[1])) - Math.abs(Math.log(a[1])),
    );
    const [first, ...others] = sorted.filter(([, factor]) => !readsAsOne(factor));
    if (!first)
      return [
        onlyTogether(scene, row[entry.reading]) ||
          `Neither geometry nor finish nor steel sets ${subject.name} apart from ${baseline.name}.`,
      ];
    const without = sorted.filter(([, factor]) => readsAsOne(factor));
    const missing = leftOut(row[entry.reading]);
    const rest = others.map(([family, factor]) => `${familyName[family].withParts} makes ${times(factor)}`);
    const idle = without.map(([family]) => familyName[family].withParts);
    if (idle.length === 1) rest.push(`${list(idle)} makes no difference`);
    if (idle.length === 2) rest.push(`neither ${idle.join(' nor ')} makes a difference`);
    return [
      `By the ${readingName[entry.reading]} reading, what ${first[1] > 1 ? `lifts ${subject.name} above` : `puts ${subject.name} behind`} ${baseline.name} ${others.length > 0 ? 'most' : 'alone'} is ${familyName[first[0]].withParts}: ${times(first[1])}.`,
      `${capital(list(rest))}${missing.length > 0 ? `; ${list(missing)} is left out` : ''}.`,
    ];
  },

  shares: ({ entry, row, subject, baseline }) => {
    const { logShares, terms } = row[entry.reading];
    if (!logShares) {
      return standing(row[entry.reading]).some(differs)
        ? [
            `The terms for and against ${subject.name} nearly cancel, so a share of the total would mean nothing; the bars show each with its sign.`,
          ]
        : [];
    }
    const parts = terms
      .map(({ id }) => ({ id, share: logShares[id] ?? 0 }))
      .filter(({ share }) => !readsAsNone(share));
    const against = parts.some(({ share }) => share < 0);
    return [
      `Of the logarithm of the total for ${subject.name} against ${baseline.name}, ${list(parts.map(({ id, share }) => `${id} holds ${plain(share * 100, 2)} %`))}.`,
      against ? 'A share below 0 pulls the other way, so the rest hold more than 100 % between them.' : '',
    ];
  },

  readings: ({ row, subject, baseline }) => {
    const { quick, careful } = row;
    const pair = `${subject.name} against ${baseline.name}`;
    const onlyQuick = leftOut(careful).filter((id) => !leftOut(quick).includes(id));
    const [p, c] = [Math.log(quick.product), Math.log(careful.product)];
    return [
      readsAsOne(quick.product) && readsAsOne(careful.product)
        ? `The pocket reading, sums one can do in the head, and the close reading both give ×1.00 for ${pair}.`
        : `The pocket reading, sums one can do in the head, gives ${times(quick.product)} for ${pair}; the close reading gives ${times(careful.product)}.`,
      onlyQuick.length > 0
        ? `The two do not cover the same terms: only the pocket reading counts ${list(onlyQuick)}.`
        : '',
      !readsAsOne(quick.product) && !readsAsOne(careful.product) && p * c < 0
        ? 'The two do not agree on which knife cuts longer: the terms pull apart, and the answer hangs on how each is damped.'
        : further(quick.product, careful.product)
          ? 'The pocket reading counts every effect at face value; friction and the exponents damp them in the close reading.'
          : further(careful.product, quick.product)
            ? 'Here the close reading is the further from 1: it damps some terms more than others, and counts grind or steel for more.'
            : '',
      readAlike(careful.rival, careful.product)
        ? `Were the forces of wedge, thickness and grind to add instead of multiplying (the rival), the close reading would stay at ${times(careful.rival)}.`
        : `If the forces of wedge, thickness and grind add instead of multiplying, the close reading becomes ${times(careful.rival)}: that is the rival, and no one yet knows which form is true.`,
    ];
  },

  /** What to know about the knife looked at, then about the baseline. */
  notes: ({ row, rows, entry, subject, baseline }) => [
    ...row[entry.reading].notes,
    ...ofKnife(rows[entry.reading], entry.baseline).notes,
    isUnknown(entry.friction) && entry.reading === 'careful'
      ? `The friction in the cut is known neither for ${subject.name} nor for ${baseline.name}: ${plain(nominal(entry.friction))}, the middle of ${plain(entry.friction.low)}–${plain(entry.friction.high)}, stands in.`
      : '',
    isUnknown(entry.contactDepthMm) && entry.reading === 'careful'
      ? `How deep ${subject.name} and ${baseline.name} go into what they cut is not known: ${plain(nominal(entry.contactDepthMm))} mm, the middle of ${plain(entry.contactDepthMm.low)}–${plain(entry.contactDepthMm.high)} mm, stands in.`
      : '',
  ],

  'side-load': ({ row, subject, baseline, subjectKnife, baselineKnife }) => {
    const { rolling, chipping } = row.careful.sideLoad;
    const unknown = [
      ...(subjectKnife.toughness === undefined ? [subject.name] : []),
      ...(baselineKnife.toughness === undefined ? [baseline.name] : []),
    ];
    return [
      `Under a side load ${resists(rolling, 'rolling', subject.name, baseline.name)}.`,
      chipping === null
        ? `Chipping cannot be compared: the toughness of ${list(unknown)} is not known.`
        : `${resists(chipping, 'chipping', subject.name, baseline.name)}.`,
    ];
  },
};
