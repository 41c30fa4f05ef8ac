import { isUnknown, nominal } from '../model/index.ts';
import type { Finish, Grind, Knife, Quantity } from '../model/index.ts';
import { brief, short, units } from '../scene/show.ts';

export const quantityText = (value: Quantity, unit: string): string =>
  isUnknown(value)
    ? `${short(value.low)}–${short(value.high)}${unit} (not known)`
    : `${short(nominal(value))}${unit}`;

const scaleName = { 'FEPA-P': 'P', 'FEPA-F': 'F', JIS: 'JIS ', CAMI: 'CAMI ' } as const;

export const finishText = (finish: Finish): string =>
  'um' in finish ? quantityText(finish.um, units.um) : `${scaleName[finish.scale]}${brief(finish.grit)}`;

export function carbideText(volumes: Knife['carbideVolPercent']): string {
  const all = Object.values(volumes);
  const ends = all.reduce<[number, number]>(
    ([low, high], volume) =>
      isUnknown(volume)
        ? [low + volume.low, high + volume.high]
        : [low + nominal(volume), high + nominal(volume)],
    [0, 0],
  );
  if (all.some(isUnknown)) return `${short(ends[0])}–${short(ends[1])}% of carbide by volume (not known)`;
  return ends[0] > 0 ? `${short(ends[0])}% of carbide by volume` : 'no carbide';
}

/** A length of the grind, or the range it lies in. */
export const lengthText = (value: Quantity): string =>
  isUnknown(value)
    ? `${short(value.low)}–${short(value.high)}${units.mm} (not known)`
    : `${short(nominal(value))}${units.mm}`;

export const grindText = ({ form, spineMm, heightMm }: Grind): string =>
  `${form} grind from ${lengthText(spineMm)} over ${lengthText(heightMm)}`;

/** A knife's measures, the shape of its edge and then what it is made of: what the model computes with. */
export const measuresText = (knife: Knife): string =>
  `${[
    `${quantityText(knife.angleDeg, units.deg)} per side`,
    ...(knife.microbevelAngleDeg === undefined
      ? []
      : [`microbevel ${quantityText(knife.microbevelAngleDeg, units.deg)}`]),
    `${quantityText(knife.edgeMm, units.mm)} behind the edge`,
    grindText(knife.grind),
  ].join(', ')}. ${[
    `Finish ${finishText(knife.finish)}`,
    `hardness ${quantityText(knife.hrc, units.hrc)}`,
    carbideText(knife.carbideVolPercent),
  ].join(', ')}`;
