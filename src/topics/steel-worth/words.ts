import { factorOf, termOf } from '../../comparison/found.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import type { Scene } from '../../scene/scene.ts';
import { ratioInWords, readAlike, readsAsOne, times } from '../../scene/show.ts';
import { steelBandsOf } from './bands.ts';
import type { Banded } from './bands.ts';
import { byAngle, given } from '../steel-fairly/words.ts';
import { lineSpeaks, steelsOf } from '../../scene/steel.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

const between = ({ low, high }: Banded): string => `${times(low)} to ${times(high)}`;
const hasNone = ({ low, high }: Banded): boolean => readAlike(low, high);

const speaksFor = (factor: number, { subject, baseline }: Scene): string =>
  `for ${factor > 1 ? subject.name : baseline.name}`;

/** Why the published line is not used, where it is not. */
const notSpoken = (scene: Scene): string => {
  const { factor, status } = termOf(scene.row.careful, 'carbide');
  const reason = factor === null ? status.replace(/^left out/, '') : '';
  const carbide =
    factor === null
      ? `and the carbide of ${scene.subject.name} against ${scene.baseline.name} is left out, not taken as 1`
      : `and ${scene.subject.name} has the carbide of ${scene.baseline.name}`;
  return `The published line is not used here${reason}. Hardness then goes by Vickers to an assumed power, ${carbide}.`;
};

/** Hardness and carbide as factors, each with what its own ± does. */
const worth: WordsOf = (scene) => {
  const { subject, baseline } = scene;
  const bands = steelBandsOf(scene);
  const { careful } = scene.row;
  const [hard, carbide] = [factorOf(careful, 'hardness'), factorOf(careful, 'carbide')];
  const { steel } = scene.row.careful.families;
  const everything = hasNone(bands.all) ? '' : `; with everything that can be off, ${between(bands.all)}`;
  const factorText = (what: string, factor: number, band: Banded) => {
    if (readsAsOne(factor) && hasNone(band))
      return `${what}: 1, for ${subject.name} has what ${baseline.name} has.`;
    const value = readsAsOne(factor)
      ? '1 at the middle values'
      : `${times(factor)}, which speaks ${speaksFor(factor, scene)}`;
    return `${what}: ${value}; ${hasNone(band) ? 'it was entered without a ±' : `by its own ± ${between(band)}`}.`;
  };
  if (!lineSpeaks(scene))
    return [
      notSpoken(scene),
      `Hardness: ${times(hard)}${readsAsOne(hard) ? '' : `, which speaks ${speaksFor(hard, scene)}`}${everything}.`,
    ];
  return [
    factorText('Hardness', hard, bands.hardness),
    // Unreachable: where the line covers hardness it covers carbide too.
    carbide === null || bands.carbide === null ? '' : factorText('Carbide', carbide, bands.carbide),
    readsAsOne(steel) && hasNone(bands.all)
      ? `Both have one steel: nothing of it sets ${subject.name} apart from ${baseline.name}.`
      : `Together the steel of ${subject.name} is worth ${times(steel)} that of ${baseline.name}${everything}.`,
  ];
};

/** What the steel does for the comparison's own two knives. */
const ownKnives: WordsOf = (scene) => {
  const { subject, baseline, row } = scene;
  const refused = refusedWork(scene);
  const { steel } = row.careful.families;
  const { all } = steelBandsOf(scene);
  const steels = steelsOf(scene);
  const rest = row.careful.product / steel;
  const whole = row.careful.complete ? '' : ', as far as the terms that stand go';
  return [
    refused,
    ...given(scene),
    ...worth(scene),
    all.low < 1 && all.high > 1 && !hasNone(all) ? 'By steel alone that does not tell the two apart.' : '',
    ...byAngle(scene),
    steels.subject.designation === null
      ? `No designation was entered for the steel of ${subject.name}; with one, the lever rule could check its carbide.`
      : '',
    refused !== ''
      ? ''
      : readsAsOne(rest)
        ? `Nothing else sets ${subject.name} apart from ${baseline.name}.`
        : `Everything else makes ${times(rest)}, so ${Math.abs(Math.log(steel)) > Math.abs(Math.log(rest)) ? 'here the steel weighs more than all the rest' : 'here the steel weighs less than the rest'}. All together ${subject.name} should cut ${ratioInWords(row.careful.product)} as ${baseline.name}${whole}.`,
  ];
};

export const steelWorthWords: Record<string, WordsOf> = { 'steel-worth': worth, steel: ownKnives };
