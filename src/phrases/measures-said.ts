import { isUnknown, nominal } from '../model/index.ts';
import type { Finish, Grind, Knife, Quantity } from '../model/index.ts';
import { brief, short, units } from '../scene/show.ts';

export const said = (value: Quantity, unit: string): string =>
  isUnknown(value)
    ? `between ${short(value.low)} and ${short(value.high)}${unit} (not known)`
    : `${short(nominal(value))}${unit}`;

const scaleName = { 'FEPA-P': 'P', 'FEPA-F': 'F', JIS: 'JIS ', CAMI: 'CAMI ' } as const;

export const finishSaid = (finish: Finish): string =>
  'um' in finish ? said(finish.um, units.um) : `${scaleName[finish.scale]}${brief(finish.grit)}`;

export function carbideSaid(volumes: Knife['carbideVolPercent']): string {
  const all = Object.values(volumes);
  const ends = all.reduce<[number, number]>(
    ([low, high], volume) =>
      isUnknown(volume)
        ? [low + volume.low, high + volume.high]
        : [low + nominal(volume), high + nominal(volume)],
    [0, 0],
  );
  if (all.some(isUnknown))
    return `between ${short(ends[0])} and ${short(ends[1])} % of carbide by volume (not known)`;
  return ends[0] > 0 ? `${short(ends[0])} % of carbide by volume` : 'no carbide';
}

/** A length of the grind, or the range it lies in. */
export const lengthSaid = (value: Quantity): string =>
  isUnknown(value)
    ? `${short(value.low)}–${short(value.high)}${units.mm} (not known)`
    : `${short(nominal(value))}${units.mm}`;

export const grindSaid = ({ form, spineMm, heightMm }: Grind): string =>
  `${form} grind from ${lengthSaid(spineMm)} over ${lengthSaid(heightMm)}`;

/** A knife's measures as one clause: what the model computes with. */
export const measuresSaid = (knife: Knife): string =>
  [
    `${said(knife.angleDeg, units.deg)} per side`,
    ...(knife.microbevelAngleDeg === undefined
      ? []
      : [`microbevel ${said(knife.microbevelAngleDeg, units.deg)}`]),
    `${said(knife.edgeMm, units.mm)} behind the edge`,
    grindSaid(knife.grind),
    `finish ${finishSaid(knife.finish)}`,
    `hardness ${said(knife.hrc, units.hrc)}`,
    carbideSaid(knife.carbideVolPercent),
  ].join(', ');
