import { edgeAngleRange, isUnknown, jobProfiles, nominal } from '../../model/index.ts';
import type { Ends, JobProfile, Knife } from '../../model/index.ts';
import { jobOf } from '../../phrases/job.ts';
import { sideLoadInWords, sideOf } from '../../phrases/side-load.ts';
import { floorDeg, limitsOf, sharedStretch, stretchOf, trials } from '../../scene/limits.ts';
import type { Stretch, Trial } from '../../scene/limits.ts';
import { allLevel, inOrder, orders } from './orders.ts';
import { halved } from './values.ts';
import { capital } from '../../phrases/list.ts';
import { anglesOf } from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, ratioInWords, readsAsOne, short } from '../../scene/show.ts';

/** Where a slicing ratio of this lesson stands. */
const settings = 'if the factors multiply, at the middle settings';

const slices = ({ row, subject, baseline }: Scene): string =>
  `${subject.name} slices ${ratioInWords(row.careful.multiplied)} as ${baseline.name}`;

/** The slicing ratio by every structure, as a range. */
function slicingEnds({ row }: Scene): Ends {
  const { multiplied, added, toLimit } = row.careful;
  return { low: Math.min(multiplied, added, toLimit), high: Math.max(multiplied, added, toLimit) };
}

const bears = (scene: Scene, trial: 'rolling' | 'chipping'): string => {
  const { subject, baseline } = scene;
  const range = limitsOf(scene).sideLoad[trial];
  if (range === null)
    return `how ${subject.name} chips against ${baseline.name} cannot be said without a toughness of both`;
  return sideOf(range) === 'same'
    ? `${subject.name} and ${baseline.name} bear the same side load before ${trial}`
    : `${subject.name} bears ${sideLoadInWords(range)} the side load of ${baseline.name} before ${trial}`;
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

/** What halving the angle makes of the knife looked at. */
function half(scene: Scene): string[] {
  const { subject } = scene;
  const then = halved(scene);
  if (!then) return [`Half the angle of ${subject.name} would lie below 4°, which the model refuses.`];
  return [
    `Halve the angle of ${subject.name}, to ${short(then.halfDeg)}°. It then slices ${plain(then.slicing, 2)} times as long as before, ${settings}.`,
    sideOf(then.rolling) === 'same'
      ? 'Its microbevel stays as it is, and so does the side load it bears before rolling.'
      : `It bears ${sideLoadInWords(then.rolling)} the side load of before.`,
  ];
}

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
  const sentences = [
    'The middle of each side load counts here.',
    ...known.map((trial) => `${subject.name} ${where(scene, trial)}.`),
  ];
  if (!shared)
    sentences.push(
      `So ${subject.name} has no angle at which it is at least as good as ${baseline.name} in ${all}.`,
    );
  else if (shared.highDeg - shared.lowDeg < 0.05)
    sentences.push(
      `Only at ${short(shared.lowDeg)}° is it at least as good in ${all}, and there it gains nothing.`,
    );
  else
    sentences.push(
      `From ${short(shared.lowDeg)}° to ${short(shared.highDeg)}° it is at least as good in ${all}. Its ${short(now)}° ${now < shared.lowDeg - 1e-6 || now > shared.highDeg + 1e-6 ? 'lies outside that' : 'lies within that'}.`,
    );
  if (known.length < trials.length)
    sentences.push(
      `Chipping is not in this: it needs a toughness of ${subject.name} and of ${baseline.name}.`,
    );
  return sentences;
}

/** Where a floor lies: `from 4.84° to 4.92°`, or `at 5.00°` where both ends are shown alike. */
const lies = ({ low, high }: Ends): string =>
  plain(low) === plain(high) ? `at ${plain(low)}°` : `from ${plain(low)}° to ${plain(high)}°`;

/** The floor for the hardness of either knife, and how far the subject stands above it. */
function floors({ subject, baseline, subjectKnife, baselineKnife }: Scene): string[] {
  const [own, other] = [floorDeg(subjectKnife), floorDeg(baselineKnife)];
  const apex = Math.max(
    nominal(subjectKnife.angleDeg),
    subjectKnife.microbevelAngleDeg === undefined ? 0 : nominal(subjectKnife.microbevelAngleDeg),
  );
  const at = `At ${short(apex)}° ${subject.name}`;
  const stands =
    apex < own.low
      ? `${at} is below it: such an edge breaks away before it wears.`
      : apex <= own.high
        ? `${at} is on it: such an edge may break away before it wears.`
        : apex <= 6
          ? `${at} is within the doubtful degrees from 4° to 6°.`
          : `${at} stands ${short(apex - own.high, 2)}° above it.`;
  return [
    readsAsOne(own.high / other.high)
      ? `With the hardness they share, ${subject.name} and ${baseline.name} have their floor ${lies(own)} per side.`
      : `For its hardness ${subject.name} has its floor ${lies(own)} per side, and ${baseline.name} ${lies(other)}.`,
    stands,
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
  const mine = id === scene.entry.work ? ' (the work of this comparison)' : '';
  return `${capital(name)}${mine}: ${reason}. ${slicingChain ? capital(outcome) : `The slicing chain is refused. ${capital(outcome)}`}.`;
}

/** The order of the whole comparison in each trial, and whether it turns over. */
function turning(scene: Scene): string[] {
  const { baseline, subject } = scene;
  const { slicing, rolling, chipping } = orders(scene);
  const [first, last] = [slicing[0]?.name ?? '', rolling[rolling.length - 1]?.name ?? ''];
  if ([slicing, rolling, chipping].every(allLevel))
    return [
      `All the knives, ${subject.name} and ${baseline.name} among them, stand level in everything that can be ranked.`,
    ];
  const turned = allLevel(rolling)
    ? 'In rolling all stand level: nothing turns over there.'
    : allLevel(slicing)
      ? 'In slicing all stand level: only the other trials set them apart.'
      : slicing[0]?.knife === rolling.at(-1)?.knife
        ? `${first}, first in slicing, is last in bearing a side load without rolling.`
        : `The first in slicing, ${first}, is not the last in rolling; that is ${last}.`;
  return [
    `Best first, by the middle of each side load. Slicing: ${inOrder(slicing)}. Rolling: ${inOrder(rolling)}.${chipping.length > 0 ? ` Chipping: ${inOrder(chipping)}.` : ''}`,
    turned,
    chipping.length > 0
      ? ''
      : 'Chipping cannot be ranked: it needs a toughness of the baseline and of one more knife.',
  ];
}

/** Whether slicing and side load favour the same knife, and whether rolling and chipping do. */
function favoured(scene: Scene): string[] {
  const { subject, baseline } = scene;
  const { rolling, chipping } = limitsOf(scene).sideLoad;
  const [inSlicing, inRolling] = [sideOf(slicingEnds(scene)), sideOf(rolling)];
  const inChipping = chipping === null ? 'same' : sideOf(chipping);
  const better = (side: 'more' | 'less'): string => (side === 'more' ? subject.name : baseline.name);
  const says = (side: string): side is 'more' | 'less' => side === 'more' || side === 'less';
  return [
    says(inSlicing) && says(inRolling)
      ? inSlicing === inRolling
        ? `${better(inSlicing)} slices longer and rolls later: a change of the edge angle alone cannot do that.`
        : `The better slicer of the two, ${better(inSlicing)}, is the one that rolls sooner.`
      : inSlicing === 'open' && says(inRolling)
        ? 'Which of the two slices longer depends on how the factors combine.'
        : inRolling === 'open' && says(inSlicing)
          ? 'Which of the two rolls first depends on where in its range the side load lies.'
          : '',
    says(inRolling) && says(inChipping) && inRolling !== inChipping
      ? `Rolling and chipping part company: ${better(inRolling)} rolls later, ${better(inChipping)} chips later. Hardness and toughness decide that, not the angle.`
      : '',
  ];
}

/** The lesson told of a visitor's two knives. */
function own(scene: Scene): string[] {
  const { entry, subject, baseline, subjectKnife, baselineKnife } = scene;
  const work = jobOf(entry);
  const angles = anglesOf(scene);
  const { bevel } = angles.subject;
  const sliced = `${slices(scene)}, ${settings}`;
  const sentences = [
    `The work is ${work.name}, where ${ends[work.endsBy]}. ${capital(work.endsBy === 'wear' ? sliced : bears(scene, work.endsBy))}.`,
  ];
  if (sideOf(limitsOf(scene).sideLoad.rolling) === 'same' && angles.subject.apex === angles.baseline.apex)
    sentences.push(
      `${subject.name} and ${baseline.name} have the same angle at the apex and the same hardness, so they roll at the same side load.`,
    );
  else if (work.endsBy !== 'rolling') sentences.push(`${capital(bears(scene, 'rolling'))}.`);
  if (work.endsBy !== 'chipping') sentences.push(`${capital(bears(scene, 'chipping'))}.`);
  if (work.endsBy !== 'wear') sentences.push(`In clean slicing, which this work is not, ${sliced}.`);
  sentences.push(...favoured(scene), ...meeting(scene), ...floors(scene));
  if (subjectKnife.microbevelAngleDeg !== undefined || baselineKnife.microbevelAngleDeg !== undefined)
    sentences.push(
      'A microbevel carries the side load at its own angle, and the bevel behind it still sets how the wedge slices.',
    );
  if ([subjectKnife, baselineKnife].some(({ hrc, angleDeg }) => isUnknown(hrc) || isUnknown(angleDeg)))
    sentences.push('Where angle or hardness is not known, the middle of its range stands for it.');
  if (bevel > 30) sentences.push(`At ${short(bevel)}° per side nothing here is near its floor.`);
  return sentences.filter((sentence) => sentence !== '');
}

export const limitsWords: Record<string, (scene: Scene) => string[]> = {
  'limits-given': ({ subject, subjectKnife, baseline, baselineKnife }) => [
    `${given(baseline.name, baselineKnife)}.`,
    `${given(subject.name, subjectKnife)}.`,
  ],
  'limits-now': (scene) => [
    `At ${short(anglesOf(scene).subject.bevel)}° per side ${slices(scene)}, ${settings}.`,
    `${capital(bears(scene, 'rolling'))}.`,
    `${capital(bears(scene, 'chipping'))}.`,
  ],
  'limits-half': half,
  'limits-meeting': meeting,
  'limits-floor': floors,
  'limits-jobs': (scene) => jobProfiles.map((profile) => job(scene, profile)),
  'limits-turning': turning,
  limits: own,
};
