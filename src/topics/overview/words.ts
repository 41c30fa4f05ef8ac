import { isUnknown, nominal } from '../../model/index.ts';
import type { Family, TermId } from '../../model/index.ts';
import { ofKnife } from '../../comparison/found.ts';
import { jobOf } from '../../phrases/job.ts';
import { aboutJob, resists } from '../../phrases/about-job.ts';
import { onlyTogether } from '../../phrases/only-together.ts';
import { capital, list } from '../../phrases/list.ts';
import { differs } from '../../scene/terms.ts';
import { plain, readAlike, readsAsNone, readsAsOne, times } from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { readingName } from '../../phrases/reading-name.ts';
import { factorName } from '../../phrases/factor-names.ts';
import { familyName } from '../../phrases/family-names.ts';

/** Whether a total is the further from 1 of two, either way, as far as readers are shown them. */
function further(total: number, other: number): boolean {
  const [away, otherAway] = [Math.max(total, 1 / total), Math.max(other, 1 / other)];
  return away > otherAway && !readAlike(away, otherAway);
}

export const words: Record<string, WordsOf> = {
  job: aboutJob,

  /** Which term does most, which pull the other way, what changes nothing. */
  reasons: (scene) => {
    const { entry, row, subject, baseline } = scene;
    const { terms } = row[entry.reading];
    const helping = terms
      .filter((term) => differs(term) && term.factor > 1)
      .sort((a, b) => b.factor - a.factor);
    const hurting = terms
      .filter((term) => differs(term) && term.factor < 1)
      .sort((a, b) => a.factor - b.factor);
    const same = terms.filter((term) => !differs(term));
    const phrase = ({ id, factor }: { id: TermId; factor: number }) =>
      `${factorName(id).own} (${times(factor)})`;
    if (same.length === terms.length)
      return [
        onlyTogether(scene, row[entry.reading]) ||
          `${subject.name} and ${baseline.name} do not differ in any factor.`,
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
    const rest = others.map(([family, factor]) => `${familyName[family].withParts} makes ${times(factor)}`);
    const idle = without.map(([family]) => familyName[family].withParts);
    if (idle.length === 1) rest.push(`${list(idle)} makes no difference`);
    if (idle.length === 2) rest.push(`neither ${idle.join(' nor ')} makes a difference`);
    return [
      `By the ${readingName[entry.reading]}, what ${first[1] > 1 ? `lifts ${subject.name} above` : `puts ${subject.name} behind`} ${baseline.name} ${others.length > 0 ? 'most' : 'alone'} is ${familyName[first[0]].withParts}: ${times(first[1])}.`,
      `${capital(list(rest))}.`,
    ];
  },

  shares: ({ entry, row, subject, baseline }) => {
    const { logShares, terms } = row[entry.reading];
    if (!logShares) {
      return terms.some(differs)
        ? [
            `The factors for and against ${subject.name} nearly cancel, so a share of the total would mean nothing. The bars show each with its sign.`,
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
    const { multiplied, added, toLimit } = careful;
    const pair = `${subject.name} against ${baseline.name}`;
    const [p, c] = [Math.log(quick.multiplied), Math.log(multiplied)];
    return [
      readsAsOne(quick.multiplied) && readsAsOne(multiplied)
        ? `The quick sum and the careful estimate both give ×1.00 for ${pair}.`
        : `The quick sum gives ${times(quick.multiplied)} for ${pair}; the careful estimate, at its middle settings and all multiplied, gives ${times(multiplied)}.`,
      !readsAsOne(quick.multiplied) && !readsAsOne(multiplied) && p * c < 0
        ? 'The two do not agree on which knife cuts longer: the factors pull apart, and the answer depends on how each is damped.'
        : further(quick.multiplied, multiplied)
          ? 'The quick sum counts every effect at face value; friction and the exponents damp them in the careful estimate.'
          : further(multiplied, quick.multiplied)
            ? 'Here the careful estimate is the further from 1: it damps some factors more than others, and counts grind or steel for more.'
            : '',
      readAlike(added, multiplied) && readAlike(toLimit, multiplied)
        ? 'Combined another way it stays the same.'
        : `If the forces add it is ${times(added)}, and if the force has a limit ${times(toLimit)}. Nobody has measured which of the three holds.`,
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
