import { structures } from '../../model/index.ts';
import type { Structure } from '../../model/index.ts';
import { factorOf } from '../../comparison/found.ts';
import { asLongAs } from '../../phrases/as-long-as.ts';
import { list } from '../../phrases/list.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { rangeSaid, ratioSaid } from '../../phrases/judged-runs.ts';
import { restSaid } from '../../phrases/the-rest.ts';
import type { Scene } from '../../scene/scene.ts';
import { ratioInWords, readAlike, readsAsOne } from '../../scene/show.ts';
import { geometryBy } from '../../scene/terms.ts';
import { steelBandsOf } from './bands.ts';
import type { Banded } from './bands.ts';
import { byAngle, given } from '../steel-fairly/words.ts';
import { lineUse } from '../steel-fairly/line-use.ts';
import { steelsOf } from '../../scene/steel.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

const between = ({ low, high }: Banded): string => rangeSaid(low, high);
const hasNone = ({ low, high }: Banded): boolean => readAlike(low, high);

const favoured = (factor: number, { subject, baseline }: Scene): string =>
  factor > 1 ? subject.name : baseline.name;

/** Hardness and carbide as factors, each with what its own ± does. */
const worth: WordsOf = (scene) => {
  const { subject, baseline } = scene;
  const bands = steelBandsOf(scene);
  const { careful } = scene.row;
  const { steel } = careful.families;
  const factorText = (what: string, factor: number, band: Banded) => {
    if (readsAsOne(factor) && hasNone(band))
      return `${what}: 1, for ${subject.name} has what ${baseline.name} has.`;
    const value = readsAsOne(factor) ? '1' : `${ratioSaid(factor)}, in favour of ${favoured(factor, scene)}`;
    return hasNone(band)
      ? `${what}: ${value}. It was entered without a ±.`
      : `${what}: ${between(band)} by its own ±. The middle is ${value}.`;
  };
  return [
    factorText('Hardness', factorOf(careful, 'hardness'), bands.hardness),
    factorText('Carbide', factorOf(careful, 'carbide'), bands.carbide),
    readsAsOne(steel) && hasNone(bands.all)
      ? `Both have one steel: nothing of it sets ${subject.name} apart from ${baseline.name}.`
      : `Together: ${ratioSaid(steel)}.${hasNone(bands.all) ? '' : ` With everything that can be off, it is ${between(bands.all)}.`}`,
    ...lineUse(scene),
  ];
};

const under: Record<Structure, string> = {
  multiplied: 'if all factors multiply',
  added: 'if the forces add',
  toLimit: 'if the force has a limit',
};

/** How far a ratio is from 1, either way. */
const size = (ratio: number): number => Math.exp(Math.abs(Math.log(ratio)));

/** Which of two ratios weighs more, either way; 'alike' where neither does as shown. */
function heavier(ratio: number, steel: number): 'more' | 'less' | 'alike' {
  const over = size(ratio) / size(steel);
  if (readsAsOne(over)) return 'alike';
  return over > 1 ? 'more' : 'less';
}

/** Whether something outweighs the steel, under each structure: one sentence. */
function weighed(what: string, by: Record<Structure, number>, steel: number): string {
  const said = { more: 'more than', alike: 'as much as', less: 'less than' };
  const groups = (['more', 'alike', 'less'] as const)
    .map((side) => ({ side, of: structures.filter((one) => heavier(by[one], steel) === side) }))
    .filter(({ of }) => of.length > 0);
  const [only] = groups;
  if (only && groups.length === 1) return `${what} weighs ${said[only.side]} the steel in all three.`;
  const short = { more: 'more', alike: 'as much', less: 'less' };
  const parts = groups.map(
    ({ side, of }, place) =>
      `${place === 0 ? `${said[side]} the steel` : short[side]} ${list(of.map((one) => under[one]))}`,
  );
  return `${what} weighs ${parts.slice(0, -1).join(', ')}, and ${parts.at(-1) ?? ''}.`;
}

/** Steel against geometry in one outcome, under all three structures. */
const againstGeometry: WordsOf = (scene) => {
  const { subject, baseline, comparison, row } = scene;
  const { steel, finish } = row.careful.families;
  const geometry = geometryBy(row.careful);
  const alone = Object.values(geometry).every(readsAsOne);
  const material =
    comparison.outcome === 'fixed-strokes'
      ? 'card cut in a fixed number of strokes'
      : 'material cut to the same end point';
  if (alone && readsAsOne(steel))
    return [`Neither steel nor geometry sets ${subject.name} apart from ${baseline.name}.`];
  const ground = Object.fromEntries(
    structures.map((one) => [one, geometry[one] * finish]),
  ) as typeof geometry;
  return [
    `All of this is counted in ${material}, at the middle settings.`,
    readsAsOne(steel)
      ? `The steel of ${subject.name} makes no difference.`
      : `By its steel ${subject.name} should cut ${asLongAs(steel, baseline.name)}, however the factors combine.`,
    alone
      ? 'Its geometry makes no difference.'
      : `By its geometry it should cut ${asLongAs(geometry.multiplied, baseline.name)} ${under.multiplied}.`,
    alone
      ? ''
      : `It is ${ratioSaid(geometry.added)} ${under.added}, and ${ratioSaid(geometry.toLimit)} ${under.toLimit}.`,
    alone || readsAsOne(steel) ? '' : weighed('So geometry', geometry, steel),
    alone || readsAsOne(steel) || readsAsOne(finish)
      ? ''
      : weighed('With the finish, geometry', ground, steel),
    alone ? '' : 'Nobody has measured which of the three holds.',
  ];
};

/** What the steel does for the comparison's own two knives. */
const ownKnives: WordsOf = (scene) => {
  const { subject, baseline, row } = scene;
  const refused = refusedWork(scene);
  const { steel } = row.careful.families;
  const { all } = steelBandsOf(scene);
  return [
    refused,
    ...given(scene),
    ...worth(scene),
    readsAsOne(steel)
      ? ''
      : `By its steel alone ${subject.name} should cut ${ratioInWords(steel)} as ${baseline.name}.`,
    all.low < 1 && all.high > 1 && !hasNone(all) ? 'By steel alone the two can’t be told apart.' : '',
    ...byAngle(scene),
    steelsOf(scene).subject.designation === null
      ? `You gave no designation for the steel of ${subject.name}. With one, the lever rule could check its carbide.`
      : '',
    ...(refused === '' ? restSaid(scene, steel) : []),
  ];
};

export const steelWorthWords: Record<string, WordsOf> = {
  'steel-worth': worth,
  'steel-against-geometry': againstGeometry,
  steel: ownKnives,
};
