import {
  abrasiveOverPhase,
  carbonWeightPercent,
  lifeRatioFromCardMm,
  nominal,
  parameters,
  regression,
} from '../../model/index.ts';
import type { NumberOf } from '../base/numbers.ts';
import { roomIn, roomOfFamilies } from '../../scene/ranges.ts';
import { brief, percent, plain, times } from '../../scene/show.ts';
import { steelsOf, takenAtDeg, tieSteelOf } from '../../scene/steel.ts';

/** Hardness of quartz, HV: what the ratio to steel of 60 HRC was made with. */
export const quartzHv = 1290;

const { hrc, includedAngleDeg, leastMm } = regression;

/** Two results of the card test, one twice the other: what they hide is the same for everybody. */
const [shortMm, longMm] = [250, 500];

/** The numbers of what a steel can do. */
export const steelNumbers: Record<string, NumberOf> = {
  'subject.vickers': (scene) => `${plain(steelsOf(scene).subject.vickers)} HV`,
  'baseline.vickers': (scene) => `${plain(steelsOf(scene).baseline.vickers)} HV`,
  'quartz.hardness': () => `${quartzHv} HV`,
  'cementite.under': () => times(abrasiveOverPhase.cementite, 2),
  'vanadium.under': () => times(abrasiveOverPhase.VC, 2),
  'steel.careful': ({ row }) => times(row.careful.families.steel),
  'steel.quick': ({ row }) => times(row.quick.families.steel),
  'steel.room': ({ comparison }) => times(roomIn(roomOfFamilies(comparison).careful, 'steel').factor),
  'tie.steel': (scene) => tieSteelOf(scene).designation,
  'carbon.in.cementite': () => percent(carbonWeightPercent('Fe3C') / 100, 1),
  'carbon.in.rich': () => percent(carbonWeightPercent('Cr23C6') / 100, 1),
  'carbon.in.chromium': () => percent(carbonWeightPercent('Cr7C3') / 100, 1),
  'line.hardness': () => `${hrc.low} to ${hrc.high} HRC`,
  'line.angles': () => `${includedAngleDeg.low}° to ${includedAngleDeg.high}° included`,
  'line.least': () => `${leastMm} mm`,
  'line.taken': () => `${takenAtDeg}° included`,
  'line.perHrc': () => `${brief(regression.perHrc)} mm`,
  'line.perDegree': () => `${brief(-regression.perIncludedDegree)} mm`,
  'line.Fe3C': () => `${brief(regression.perVolPercent.Fe3C)} mm`,
  'line.CrC': () => `${brief(regression.perVolPercent.CrC)} mm`,
  'line.MC': () => `${brief(regression.perVolPercent.MC)} mm`,
  'line.scatter': ({ comparison }) =>
    percent(nominal(comparison.assumptions?.residualCv ?? parameters.residualCv.default)),
  'hidden.short': () => `${shortMm} mm`,
  'hidden.long': () => `${longMm} mm`,
  'hidden.card': () => times(longMm / shortMm),
  'hidden.life': () => times(lifeRatioFromCardMm({ mm: longMm, baselineMm: shortMm })),
};
