import { isUnknown, nominal } from '../../model/index.ts';
import type { Family, TermId } from '../../model/index.ts';
import { ofKnife } from '../../comparison/found.ts';
import { jobOf } from '../../phrases/job.ts';
import { aboutJob, resists } from '../../phrases/about-job.ts';
import { asLongAs } from '../../phrases/as-long-as.ts';
import { onlyTogether } from '../../phrases/only-together.ts';
import { capital, list } from '../../phrases/list.ts';
import { differs } from '../../scene/terms.ts';
import { families } from '../../scene/factors.ts';
import { plain, readAlike, readsAsNone, readsAsOne, short, whole } from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { readingName } from '../../phrases/reading-name.ts';
import { factorName } from '../../phrases/factor-names.ts';
import { familyName } from '../../phrases/family-names.ts';

/** Whether a total is the further from 1 of two, either way, as far as readers are shown them. */
function further(total: number, other: number): boolean {
  const [away, otherAway] = [Math.max(total, 1 / total), Math.max(other, 1 / other)];
  return away > otherAway && !readAlike(away, otherAway);
}

/** In two figures, or in three where two would say that there is no difference. */
const inTwo = (ratio: number): string =>
  Number(plain(ratio, 2)) === 1 ? (readsAsOne(ratio) ? '1' : plain(ratio, 3)) : short(ratio, 2);

/** How many factors are named before “most” is said of them. */
const mostNamed = 3;

/** From here on a share of the way says no more than that gains and losses nearly cancel. */
const mostShare = 1.5;

export const words: Record<string, WordsOf> = {
  job: aboutJob,

  /** Which factor does most, which pull the other way, what changes nothing. */
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
    const named = (of: readonly { id: TermId }[]) => list(of.map(({ id }) => factorName(id).own));
    if (same.length === terms.length)
      return [
        onlyTogether(scene, row[entry.reading]) || `Nothing sets ${subject.name} and ${baseline.name} apart.`,
      ];
    const sentences: string[] = [];
    if (!jobOf(entry).slicingChain)
      sentences.push('What follows would be so in clean slicing, which isn’t this work.');
    if (helping.length > 0)
      sentences.push(
        `${subject.name} gains${helping.length > mostNamed ? ' most' : ''} by ${named(helping.slice(0, mostNamed))}.`,
      );
    if (hurting.length > 0)
      sentences.push(
        `${helping.length > 0 ? 'It' : subject.name} loses${hurting.length > mostNamed ? ' most' : ''} by ${named(hurting.slice(0, mostNamed))}.`,
      );
    if (same.length > 0)
      sentences.push(`Both have the same ${list(same.map(({ id }) => factorName(id).shared))}.`);
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
    const idle = sorted
      .filter(([, factor]) => readsAsOne(factor))
      .map(([family]) => familyName[family].withParts);
    const most = capital(familyName[first[0]].withParts);
    const amount = asLongAs(first[1], baseline.name);
    const head =
      others.length === 0
        ? `${most} makes all the difference: ${subject.name} should cut ${amount}.`
        : first[1] > 1
          ? `${most} does most for ${subject.name}: ${amount}.`
          : `${most} counts most against ${subject.name}: ${amount}.`;
    return [
      entry.reading === 'quick' ? `These are the numbers of the ${readingName.quick}.` : '',
      head,
      others.length === 0
        ? ''
        : `${capital(list(others.map(([family, factor]) => `${familyName[family].withParts} makes ${inTwo(factor)}`)))}.`,
      idle.length === 1 ? `${capital(list(idle))} makes no difference.` : '',
      idle.length === 2 ? `Neither ${idle.join(' nor ')} makes a difference.` : '',
    ];
  },

  /** How much of the way from one knife to the other each family goes, on a ruler of ratios. */
  shares: ({ entry, row, subject, baseline }) => {
    const { logShares, terms } = row[entry.reading];
    const cancel = `Gains and losses of ${subject.name} nearly cancel, so a share of the total would mean nothing.`;
    if (!logShares) return terms.some(differs) ? [cancel] : [];
    const parts = families
      .map((family) => ({
        name: familyName[family].inSentence,
        share: terms
          .filter((term) => term.family === family)
          .reduce((sum, { id }) => sum + (logShares[id] ?? 0), 0),
      }))
      .filter(({ share }) => !readsAsNone(share))
      .sort((one, other) => other.share - one.share);
    if (parts.some(({ share }) => share > mostShare)) return [cancel];
    const said = ({ name, share }: { name: string; share: number }) =>
      `${name} ${whole(Math.abs(share) * 100)}%`;
    const [forward, back] = [parts.filter(({ share }) => share > 0), parts.filter(({ share }) => share < 0)];
    const [only] = parts;
    if (parts.length === 1 && only && back.length === 0)
      return [
        `On a ruler of ratios, ${only.name} goes all the way from ${baseline.name} to ${subject.name}.`,
      ];
    return [
      `On a ruler of ratios, from ${baseline.name} to ${subject.name}, ${list(forward.map(said)).replace(/ (\d+%)/, ' goes $1 of the way')}.`,
      back.length > 0
        ? `${capital(list(back.map(({ name, share }) => `${name} takes ${whole(-share * 100)}% back`)))}.`
        : '',
    ];
  },

  readings: ({ row, subject, baseline }) => {
    const { quick, careful } = row;
    const { multiplied, added, toLimit } = careful;
    const pair = `${subject.name} against ${baseline.name}`;
    const [p, c] = [Math.log(quick.multiplied), Math.log(multiplied)];
    return [
      readsAsOne(quick.multiplied) && readsAsOne(multiplied)
        ? `The quick sum and the careful estimate both find no difference for ${pair}.`
        : `For ${pair} the quick sum gives ${inTwo(quick.multiplied)}. The careful estimate gives ${inTwo(multiplied)}, at its middle settings and if all multiply.`,
      !readsAsOne(quick.multiplied) && !readsAsOne(multiplied) && p * c < 0
        ? 'The two don’t agree on which knife cuts longer. The answer depends on how much each factor is damped.'
        : further(quick.multiplied, multiplied)
          ? 'The quick sum counts every effect in full; the careful estimate damps them.'
          : further(multiplied, quick.multiplied)
            ? 'Here the careful estimate is further from 1: it damps some factors, and counts grind or steel for more.'
            : '',
      readAlike(added, multiplied) && readAlike(toLimit, multiplied)
        ? 'Combined another way it stays the same.'
        : `If the forces add it is ${inTwo(added)}, and if the force has a limit ${inTwo(toLimit)}.`,
      readAlike(added, multiplied) && readAlike(toLimit, multiplied)
        ? ''
        : 'Nobody has measured which of the three holds.',
    ];
  },

  /** What to know about the knife looked at, then about the baseline. */
  notes: ({ row, rows, entry, subject, baseline }) => [
    ...row[entry.reading].notes,
    ...ofKnife(rows[entry.reading], entry.baseline).notes,
    isUnknown(entry.friction) && entry.reading === 'careful'
      ? `The friction in the cut isn’t known for ${subject.name} or ${baseline.name}. We use ${short(nominal(entry.friction))}, the middle of ${short(entry.friction.low)} to ${short(entry.friction.high)}.`
      : '',
    isUnknown(entry.contactDepthMm) && entry.reading === 'careful'
      ? `How deep ${subject.name} and ${baseline.name} go into the cut isn’t known. We use ${short(nominal(entry.contactDepthMm))} mm, the middle of ${short(entry.contactDepthMm.low)} to ${short(entry.contactDepthMm.high)} mm.`
      : '',
  ],

  'side-load': ({ row, subject, baseline, subjectKnife, baselineKnife }) => {
    const { rolling, chipping } = row.careful.sideLoad;
    const unknown = [
      ...(subjectKnife.toughness === undefined ? [subject.name] : []),
      ...(baselineKnife.toughness === undefined ? [baseline.name] : []),
    ];
    return [
      `Pushed from the side, ${resists(rolling, 'rolling', subject.name, baseline.name)}.`,
      chipping === null
        ? `Chipping can’t be compared, because the toughness of ${list(unknown)} isn’t known.`
        : `${resists(chipping, 'chipping', subject.name, baseline.name)}.`,
    ];
  },
};
