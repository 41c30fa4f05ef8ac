import {
  criticalFlawUm,
  edgeAngleRange,
  grainSizeUm,
  isUnknown,
  jobProfiles,
  nominal,
  scratchDepthUm,
} from '../../model/index.ts';
import type { JobProfile, Knife } from '../../model/index.ts';
import { jobOf } from '../../phrases/job.ts';
import { floorDeg, limitsOf, sharedStretch, stretchOf, trials } from '../../scene/limits.ts';
import type { Stretch, Trial } from '../../scene/limits.ts';
import { knockMpa } from './numbers.ts';
import { allLevel, orders } from './orders.ts';
import type { Placed } from './orders.ts';
import { capital, list } from '../../phrases/list.ts';
import { anglesOf } from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, ratioInWords, readsAsOne, short, times } from '../../scene/show.ts';

/** Slicing as the comparison's terms allow. */
const slices = ({ row, subject, baseline }: Scene): string => {
  const { product, complete } = row.careful;
  return `${subject.name} slices ${ratioInWords(product)} as ${baseline.name} (${times(product)}${complete ? '' : ', as far as the terms that stand go'})`;
};

const bears = (scene: Scene, trial: 'rolling' | 'chipping'): string => {
  const { subject, baseline } = scene;
  const ratio = limitsOf(scene)[trial];
  if (ratio === null)
    return `how ${subject.name} chips against ${baseline.name} cannot be said without a toughness of both`;
  return readsAsOne(ratio)
    ? `${subject.name} and ${baseline.name} bear the same side load before ${trial}`
    : `${subject.name} bears ${times(ratio)} the side load of ${baseline.name} before ${trial}`;
};

const given = (name: string, knife: Knife): string => {
  const hrc = isUnknown(knife.hrc) ? `about ${short(nominal(knife.hrc))}` : short(nominal(knife.hrc));
  const micro =
    knife.microbevelAngleDeg === undefined
      ? ''
      : ` with a microbevel of ${short(nominal(knife.microbevelAngleDeg))}°`;
  const tough =
    knife.toughness === undefined ? 'no toughness given' : `toughness ${short(nominal(knife.toughness))}`;
  return `${name} has ${short(nominal(knife.angleDeg))}° per side${micro}, ${hrc} HRC and ${tough}`;
};

const whole = ({ lowDeg, highDeg }: Stretch): boolean =>
  lowDeg <= edgeAngleRange.low && highDeg >= edgeAngleRange.high - 1;

/** Where the subject is no worse than the baseline in one trial. */
function where(scene: Scene, trial: Trial): string {
  const { baseline } = scene;
  const stretch = stretchOf(scene, trial);
  const what = {
    slicing: `slices at least as long as ${baseline.name}`,
    rolling: `rolls no sooner than ${baseline.name}`,
    chipping: `chips no sooner than ${baseline.name}`,
  }[trial];
  if (!stretch) return `at no angle ${what}`;
  if (whole(stretch)) return `at any angle ${what}`;
  return stretch.lowDeg <= edgeAngleRange.low
    ? `${what} up to ${short(stretch.highDeg)}° per side`
    : `${what} from ${short(stretch.lowDeg)}° upwards`;
}

/** The angles at which nothing is lost against the baseline. */
function meeting(scene: Scene): string[] {
  const { subject, baseline } = scene;
  const known = trials.filter((trial) => limitsOf(scene)[trial] !== null);
  const all = known.length === trials.length ? 'all three' : 'both';
  const now = anglesOf(scene).subject.bevel;
  const shared = sharedStretch(scene);
  const sentences = [`${subject.name} ${list(known.map((trial) => where(scene, trial)))}.`];
  if (!shared)
    sentences.push(
      `No angle of ${subject.name} holds its own in ${all}: what it gains in the one it pays for in the other.`,
    );
  else if (shared.highDeg - shared.lowDeg < 0.05)
    sentences.push(
      `Only at ${short(shared.lowDeg)}° does it hold its own in ${all}, and there it gains nothing.`,
    );
  else
    sentences.push(
      `From ${short(shared.lowDeg)}° to ${short(shared.highDeg)}° it holds its own in ${all}; at its ${short(now)}° it ${now < shared.lowDeg - 1e-6 || now > shared.highDeg + 1e-6 ? 'lies outside that' : 'lies within that'}.`,
    );
  if (known.length < trials.length)
    sentences.push(
      `Chipping is not in this: it needs a toughness of ${subject.name} and of ${baseline.name}.`,
    );
  return sentences;
}

/** The floor for the hardness of either knife, and how far the subject stands above it. */
function floors({ subject, baseline, subjectKnife, baselineKnife }: Scene): string[] {
  const [own, other] = [floorDeg(subjectKnife), floorDeg(baselineKnife)];
  const apex = Math.max(
    nominal(subjectKnife.angleDeg),
    subjectKnife.microbevelAngleDeg === undefined ? 0 : nominal(subjectKnife.microbevelAngleDeg),
  );
  const stands =
    apex <= own
      ? `At ${short(apex)}° ${subject.name} is at or below it: such an edge breaks away before it wears.`
      : apex <= 6
        ? `At ${short(apex)}° ${subject.name} is within the doubtful degrees from 4° to 6°.`
        : `At ${short(apex)}° ${subject.name} stands ${short(apex - own)}° above it.`;
  return [
    readsAsOne(own / other)
      ? `With the hardness they share, the floor of ${subject.name} and of ${baseline.name} lies at ${plain(own)}° per side.`
      : `For its hardness the floor of ${subject.name} lies at ${plain(own)}° per side, that of ${baseline.name} at ${plain(other)}°.`,
    stands,
  ];
}

const flawOf = (knife: Knife): number | null =>
  knife.toughness === undefined
    ? null
    : criticalFlawUm({ toughness: nominal(knife.toughness), stressMpa: knockMpa });

/** The flaw that breaks a piece out, against the scratches that are there already. */
function flaws({ subject, baseline, subjectKnife, baselineKnife }: Scene): string[] {
  const [own, other] = [flawOf(subjectKnife), flawOf(baselineKnife)];
  const { finish } = subjectKnife;
  const scratch = scratchDepthUm(grainSizeUm('um' in finish ? { um: nominal(finish.um) } : finish));
  const scratches = `The scratches of its own finish on ${subject.name} are some ${plain(scratch.low, 2)} to ${plain(scratch.high, 2)} µm deep`;
  if (own === null || other === null) {
    const missing = [...(own === null ? [subject.name] : []), ...(other === null ? [baseline.name] : [])];
    return [
      `Without a toughness of ${list(missing)} the flaw that breaks the edge cannot be compared.`,
      `At 20 MPa√m, say, and ${knockMpa} MPa it would be ${plain(criticalFlawUm({ toughness: 20, stressMpa: knockMpa }), 2)} µm.`,
      `${scratches}.`,
    ];
  }
  return [
    `If toughness is meant in MPa√m, a flaw of ${plain(own, 2)} µm is enough for ${subject.name} to lose a piece under ${knockMpa} MPa; for ${baseline.name} it takes one of ${plain(other, 2)} µm.`,
    `${scratches}${scratch.high >= own ? ': deep enough to start a chip.' : scratch.high * 4 >= own ? ': not far from it.' : ', well short of that.'}`,
  ];
}

const ends: Record<JobProfile['endsBy'], string> = {
  wear: 'wear ends the edge',
  rolling: 'rolling ends the edge',
  chipping: 'chipping ends the edge',
};

/** One kind of work: what ends the edge there, and what that makes of the two knives. */
function job(scene: Scene, { id, name, reason, endsBy, slicingChain }: JobProfile): string {
  const outcome = endsBy === 'wear' ? slices(scene) : bears(scene, endsBy);
  const mine = id === scene.entry.work ? ' (the work of this line-up)' : '';
  return `${capital(name)}${mine}: ${reason}. Here ${ends[endsBy]}${slicingChain ? '' : ', and the slicing chain is refused'}: ${outcome}.`;
}

/** The order of the whole comparison in each trial, and whether it turns over. */
function turning(scene: Scene): string[] {
  const { baseline, subject } = scene;
  const { slicing, rolling, chipping } = orders(scene);
  const said = (order: readonly Placed[]) =>
    order.map(({ name, value }) => `${name} ${times(value)}`).join(', ');
  const [first, last] = [slicing[0]?.name ?? '', rolling[rolling.length - 1]?.name ?? ''];
  if ([slicing, rolling, chipping].every(allLevel))
    return [`${subject.name} and ${baseline.name} stand level in everything that can be ranked.`];
  const turned = allLevel(rolling)
    ? 'In rolling all stand level: nothing turns over there.'
    : allLevel(slicing)
      ? 'In slicing all stand level: only the other trials set them apart.'
      : slicing[0]?.knife === rolling.at(-1)?.knife
        ? `${first}, first in slicing, is last in bearing a side load without rolling.`
        : `The first in slicing, ${first}, is not the last in rolling; that is ${last}.`;
  return [
    `Against ${baseline.name}, best first. Slicing: ${said(slicing)}. Rolling: ${said(rolling)}.${chipping.length > 0 ? ` Chipping: ${said(chipping)}.` : ''}`,
    turned,
    chipping.length > 0
      ? ''
      : 'Chipping cannot be ranked: it needs a toughness of the baseline and of one more knife.',
  ];
}

/** The lesson told of a visitor's two knives. */
function own(scene: Scene): string[] {
  const { entry, subject, baseline, subjectKnife, baselineKnife } = scene;
  const work = jobOf(entry);
  const { bevel } = anglesOf(scene).subject;
  const angles = anglesOf(scene);
  const { slicing, rolling, chipping } = limitsOf(scene);
  const sentences = [
    `The work is ${work.name}, where ${ends[work.endsBy]}. ${capital(work.endsBy === 'wear' ? slices(scene) : bears(scene, work.endsBy))}.`,
  ];
  if (readsAsOne(rolling) && angles.subject.apex === angles.baseline.apex)
    sentences.push(
      `${subject.name} and ${baseline.name} have the same angle at the apex and the same hardness, so for rolling every factor is 1.`,
    );
  else if (work.endsBy !== 'rolling') sentences.push(`${capital(bears(scene, 'rolling'))}.`);
  if (work.endsBy !== 'chipping') sentences.push(`${capital(bears(scene, 'chipping'))}.`);
  if (work.endsBy !== 'wear') sentences.push(`In clean slicing, which this work is not, ${slices(scene)}.`);
  if (!readsAsOne(slicing) && !readsAsOne(rolling))
    sentences.push(
      slicing > 1 === rolling > 1
        ? `Slicing and side load speak for the same knife here, ${slicing > 1 ? subject.name : baseline.name}: that takes more than an angle.`
        : `The better slicer of the two, ${slicing > 1 ? subject.name : baseline.name}, is the one that rolls sooner.`,
    );
  if (chipping !== null && !readsAsOne(chipping) && !readsAsOne(rolling) && chipping > 1 !== rolling > 1)
    sentences.push(
      `Rolling and chipping part company: ${rolling > 1 ? subject.name : baseline.name} rolls later, ${chipping > 1 ? subject.name : baseline.name} chips later, and only toughness can do that.`,
    );
  sentences.push(...meeting(scene), ...floors(scene));
  if (subjectKnife.microbevelAngleDeg !== undefined || baselineKnife.microbevelAngleDeg !== undefined)
    sentences.push(
      'A microbevel carries the side load at its own angle; the bevel behind it goes on deciding how the wedge slices.',
    );
  if ([subjectKnife, baselineKnife].some(({ hrc, angleDeg }) => isUnknown(hrc) || isUnknown(angleDeg)))
    sentences.push('Where angle or hardness is not known, the middle of its range stands for it.');
  if (bevel > 30) sentences.push(`At ${short(bevel)}° per side nothing here is near its floor.`);
  return sentences;
}

export const limitsWords: Record<string, (scene: Scene) => string[]> = {
  'limits-given': ({ subject, subjectKnife, baseline, baselineKnife }) => [
    `${given(baseline.name, baselineKnife)}.`,
    `${given(subject.name, subjectKnife)}.`,
  ],
  'limits-now': (scene) => [
    `At ${short(anglesOf(scene).subject.bevel)}° per side ${slices(scene)}.`,
    `${capital(bears(scene, 'rolling'))}.`,
    `${capital(bears(scene, 'chipping'))}.`,
  ],
  'limits-meeting': meeting,
  'limits-floor': floors,
  'limits-flaw': flaws,
  'limits-jobs': (scene) => jobProfiles.map((profile) => job(scene, profile)),
  'limits-turning': turning,
  limits: own,
};
