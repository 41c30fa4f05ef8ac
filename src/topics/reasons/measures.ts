import { grainSizeUm, isUnknown, nominal } from '../../model/index.ts';
import type { Knife, Quantity } from '../../model/index.ts';
import { finishText } from '../../phrases/measures.ts';
import { factorWords } from '../../phrases/factor-words.ts';
import { short } from '../../scene/show.ts';
import type { NamedReason } from './reasons.ts';
import { isNamed } from './reasons.ts';

/** Median grain of a finish, µm; the middle of what is not known. */
export const grainUm = ({ finish }: Knife): number =>
  grainSizeUm('um' in finish ? { um: nominal(finish.um) } : finish);

/** All carbide of a knife, volume per cent; the middle of what is not known. */
export const carbidePercent = ({ carbideVolPercent }: Knife): number =>
  Object.values(carbideVolPercent).reduce<number>((sum, volume) => sum + nominal(volume), 0);

const known = (quantity: Quantity, say: (value: string) => string, unknown: string): string =>
  isUnknown(quantity) ? unknown : say(short(nominal(quantity)));

export const hardnessSaid = ({ hrc }: Knife): string =>
  known(hrc, (value) => `${value} HRC`, 'HRC not known');

export const carbideSaid = (knife: Knife): string =>
  Object.values(knife.carbideVolPercent).some(isUnknown)
    ? 'carbide not known'
    : carbidePercent(knife) === 0
      ? 'no carbide'
      : `${short(carbidePercent(knife), 2)}% carbide`;

export const finishSaid = ({ finish }: Knife): string =>
  'um' in finish && isUnknown(finish.um) ? 'finish not known' : finishText(finish);

/** What a knife has, in words that follow “has”. */
const measures: Record<NamedReason, (knife: Knife) => string> = {
  angle: ({ angleDeg, microbevelAngleDeg }) =>
    [
      known(angleDeg, (value) => `${value}° per side`, 'an angle that isn’t known'),
      ...(microbevelAngleDeg === undefined
        ? []
        : [known(microbevelAngleDeg, (value) => `${value}° at the apex`, 'a microbevel that isn’t known')]),
    ].join(' and '),
  edge: ({ edgeMm }) =>
    known(edgeMm, (value) => `${value} mm behind the edge`, 'a thickness behind the edge that isn’t known'),
  grind: ({ grind }) => `a ${grind.form} grind`,
  finish: (knife) =>
    finishSaid(knife) === 'finish not known'
      ? 'a finish that isn’t known'
      : `${finishSaid(knife).startsWith('F') ? 'an' : 'a'} ${finishSaid(knife)} finish`,
  steel: (knife) =>
    `${hardnessSaid(knife).replace('HRC not known', 'a hardness that isn’t known')} and ${carbideSaid(knife).replace('carbide not known', 'carbide that isn’t known')}`,
};

/** What a knife has of a reason, in words that follow “has”. */
export const measureSaid = (id: string, knife: Knife): string =>
  isNamed(id) ? measures[id](knife) : factorWords(id).measure(knife);
