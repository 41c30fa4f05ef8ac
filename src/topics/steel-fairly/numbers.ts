import {
  abrasiveOverPhase,
  carbonWeightPercent,
  lifeRatioFromCardMm,
  nominal,
  parameters,
  quartzHv,
  regression,
} from '../../model/index.ts';
import type { NumberOf } from '../base/numbers.ts';
import { roomIn, roomOfFamilies } from '../../scene/ranges.ts';
import { brief, percent, plain, times } from '../../scene/show.ts';
import { bendMm, lifeExponentOf, steelsOf, takenAtDeg, tieSteelOf } from '../../scene/steel.ts';
import { overPhaseSaid } from './over-phase.ts';

const { hrc, includedAngleDeg, leastMm } = regression;

/** Two results of the card test, one twice the other: what they hide is the same for everybody. */
const [shortMm, longMm] = [250, 500];
const hiddenRatio = longMm / shortMm;
const power = parameters.lifeExponent;

/** The numbers of what a steel can do. */
export const steelNumbers: Record<string, NumberOf> = {
  'subject.vickers': (scene) => `${plain(steelsOf(scene).subject.vickers)} HV`,
  'baseline.vickers': (scene) => `${plain(steelsOf(scene).baseline.vickers)} HV`,
  'quartz.hardness': () => `${quartzHv.low} to ${quartzHv.high} HV`,
  'cementite.under': () => overPhaseSaid(abrasiveOverPhase.cementite),
  'vanadium.under': () => overPhaseSaid(abrasiveOverPhase.VC),
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
  'hidden.card': () => `${plain(hiddenRatio, 2)} times`,
  'hidden.life': () => `${plain(lifeRatioFromCardMm({ mm: longMm, baselineMm: shortMm }))} times`,
  'hidden.taken': () => `${plain(hiddenRatio ** power.default, 2)} times`,
  'hidden.taken.range': () =>
    `${plain(hiddenRatio ** power.low, 2)} to ${plain(hiddenRatio ** power.high, 2)} times`,
  'life.power': (scene) => brief(lifeExponentOf(scene)),
  'life.power.usual': () => brief(power.default),
  'life.power.range': () => `${brief(power.low)} to ${brief(power.high)}`,
  'line.bend': () => `${bendMm} mm`,
  'line.end.below': () => `${brief(hrc.low - 0.1)} HRC`,
  'line.end': () => `${hrc.low} HRC`,
};
