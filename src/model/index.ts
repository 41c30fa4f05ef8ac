/**
 * The factor model: its one door. Pure TypeScript without dependencies, importable by Node as it stands.
 * Angles are per side unless a name says included; every function refuses what it cannot compute with a
 * `RangeError` that names parameter, value and allowed range.
 */
export type {
  Assumptions,
  CarbideKind,
  CarbideVolPercent,
  Ends,
  ExactGrind,
  Family,
  Finish,
  Grind,
  GrindForm,
  GritScale,
  Knife,
  Comparison,
  Outcome,
  Quantity,
  Reading,
  Row,
  Structure,
  Term,
  TermId,
} from './types.ts';
export { MODEL_NUMBER } from './number.ts';
export { memoize, memoizeByObject } from './memoize.ts';
export { unknownMeasures } from './chain/unknown-measures.ts';
export { exactGrind, isUnknown, measures, nominal, parameters, rangeOf } from './quantities.ts';
export type { Measure, MeasureId, Parameter, ParameterId } from './quantities.ts';
export { additiveGuess, compound, percentReadings, undoPercent } from './ratio/percent.ts';
export { logShares, signedShares } from './ratio/log-shares.ts';
export {
  apexExponent,
  apexFactors,
  steelRemovedMm2,
  toothDepthUm,
  toothFactor,
  wearAreaUm2,
} from './geometry/apex.ts';
export {
  checkSection,
  edgeAngleDeg,
  edgeAngleRange,
  effectiveFriction,
  flankSagMm,
  flattestGrindDeg,
  frictionAngleDeg,
  grindHalfAngleDeg,
  grindThicknessMm,
  pushForceShare,
  wedgeFactor,
  wedgeFactorRange,
  wedgeResistance,
} from './geometry/geometry.ts';
export { grainSizeUm, gritTable, nearestGrit, scratchDepthUm } from './finish/finish.ts';
export { nearestGrade } from './finish/nearest-grade.ts';
export type { Grade } from './finish/nearest-grade.ts';
export { roughnessRaUm } from './finish/roughness.ts';
export { lifeRatioFromCardMm } from './steel/card-life.ts';
export { cardAngleExponent } from './steel/card-angle-exponent.ts';
export { tensileStrengthMpa, vickersFromRockwellC } from './steel/hardness.ts';
export { carbidesByDesignation, cardCutMm, regression } from './steel/carbide.ts';
export { cardForChainMm } from './steel/card-for-chain.ts';
export { abrasiveOverPhase, quartzHv, quartzOver } from './steel/abrasive.ts';
export {
  austeniteCarbonPercent,
  carbideVolumePercent,
  carbonWeightPercent,
  densities,
  leverRule,
} from './steel/phases.ts';
export { carbideFromComposition, usualHardening } from './steel/composition.ts';
export { leverCarbides } from './steel/carbide-kinds.ts';
export type { LeverCarbide } from './steel/carbide-kinds.ts';
export type { CarbideEstimate, Composition, Contents, TieLine } from './steel/composition.ts';
export { hardeningRange, saturationCarbon } from './steel/saturation.ts';
export { compositionsByDesignation, designationsHold } from './steel/standard-compositions.ts';
export { angleFloorDeg, jobProfiles, sideLoadRatios } from './chain/limits.ts';
export type { JobProfile } from './chain/limits.ts';
export { compare, compareBoth } from './chain/compare.ts';
export { factors } from './chain/factors.ts';
export type { Factor } from './chain/factors.ts';
export { structures, widthAt } from './chain/structures.ts';
export { attributesOf, makeEqual } from './chain/make-equal.ts';
export type { Attribute } from './chain/make-equal.ts';
export { disputes, ratioUnder } from './chain/position.ts';
export type { Dispute, Position } from './chain/position.ts';
export { rankings } from './chain/rankings.ts';
export type { Ranked, Rankings } from './chain/rankings.ts';
export { firstOrder } from './uncertainty/propagation.ts';
export { firstOrderBand } from './uncertainty/first-order-band.ts';
export type { FirstOrderBand, Sensitivity } from './uncertainty/first-order-band.ts';
export type { Contribution } from './uncertainty/propagation.ts';
export { predict } from './uncertainty/predict.ts';
export { createPredictor } from './uncertainty/predictor.ts';
export type { Predictor } from './uncertainty/predictor.ts';
export type { Band, Prediction } from './uncertainty/prediction.ts';
export { normalCdf, studentQuantile } from './statistics/distributions.ts';
export { normalScore } from './statistics/normal-score.ts';
export { quantileDots } from './statistics/quantile-dots.ts';
export { quantiles, shareAbove } from './statistics/quantiles.ts';
export { drawUniform, uniformStream } from './statistics/random.ts';
export { costOf } from './solve/cost.ts';
export type { Cost, CostQuestion, Gain, Offer } from './solve/cost.ts';
export { ratioCurve } from './solve/ratio-curve.ts';
export { whatItTakes } from './solve/what-it-takes.ts';
export type { Answer, Question } from './solve/what-it-takes.ts';
export { whatItTakesBand } from './solve/band.ts';
export type { AnswerBand } from './solve/band.ts';
export { withAttribute } from './solve/attributes.ts';
export type { SolvableAttribute } from './solve/attributes.ts';
export { fitPower } from './runs/fit.ts';
export type { PowerFit } from './runs/fit.ts';
export { batchDrift } from './runs/drift.ts';
export type { Drift, KnifeLife } from './runs/drift.ts';
export { judgeRuns } from './runs/judge.ts';
export type { Judgement, JudgeQuestion, RunsVerdict } from './runs/judge.ts';
export type { LeftOut, LoggedRun, RunLife } from './runs/judge-log.ts';
export { controlDrift } from './runs/control-drift.ts';
export { simulatedPower, toppedUpFalseAlarms } from './runs/simulated-power.ts';
export { cvWithLooks, upperCv } from './runs/upper-scatter.ts';
export { explanations } from './runs/explain.ts';
export type { Explanation } from './runs/explain.ts';
export { runSheet } from './runs/sheet.ts';
export { isSheetCode } from './runs/sheet-code.ts';
export type { RunSheet, SheetPlan, SheetRow } from './runs/sheet.ts';
export { checkPrediction } from './runs/check-prediction.ts';
export type { PredictionCheck, PredictionCheckQuestion } from './runs/check-prediction.ts';
export { equivalencePower, equivalenceRunsNeeded } from './runs/equivalence.ts';
export type { EquivalencePlan } from './runs/equivalence.ts';
export { ended } from './runs/lognormal.ts';
export type { Life } from './runs/lognormal.ts';
export { logSd, pairedPower, pairsNeeded, powerOfRuns, runsNeeded, twoSamplePower } from './runs/planning.ts';
export type { Plan } from './runs/planning.ts';
export { geometricMeanRatio, ratioOfMeans } from './runs/ratios.ts';
export type { RatioInterval } from './runs/ratios.ts';
export { welch } from './runs/welch.ts';
export type { WelchResult } from './runs/welch.ts';
