/**
 * The factor model: its one door. Pure TypeScript without dependencies, importable by Node as it stands.
 * Angles are per side unless a name says included; every function refuses what it cannot compute with a
 * `RangeError` that names parameter, value and allowed range.
 */
export type {
  Assumptions,
  CarbideKind,
  CarbideVolPercent,
  ExactGrind,
  Family,
  Finish,
  Grind,
  GrindForm,
  GritScale,
  Knife,
  LineUp,
  Quantity,
  Reading,
  Row,
  Term,
  TermId,
} from './types.ts';
export { MODEL_NUMBER } from './number.ts';
export { unknownMeasures } from './unknown-measures.ts';
export { exactGrind, isUnknown, measures, nominal, parameters, rangeOf } from './quantities.ts';
export type { Measure, MeasureId, Parameter, ParameterId } from './quantities.ts';
export { additiveGuess, compound, percentReadings, undoPercent } from './percent.ts';
export { logShares, signedShares } from './ratio.ts';
export { apexFactors, steelRemovedMm2, toothDepthUm, toothFactor, wearAreaUm2 } from './apex.ts';
export {
  checkSection,
  edgeAngleDeg,
  edgeAngleRange,
  effectiveFriction,
  flankSagMm,
  frictionAngleDeg,
  grindHalfAngleDeg,
  grindThicknessMm,
  pushForceShare,
  wedgeFactor,
  wedgeFactorRange,
  wedgeResistance,
} from './geometry.ts';
export { grainSizeUm, gritTable, nearestGrit, scratchDepthUm } from './finish.ts';
export { nearestGrade } from './nearest-grade.ts';
export type { Grade } from './nearest-grade.ts';
export { roughnessRaUm } from './roughness.ts';
export { lifeRatioFromCardMm } from './card-life.ts';
export { cardAngleExponent } from './card-angle-exponent.ts';
export { tensileStrengthMpa, vickersFromRockwellC } from './hardness.ts';
export { carbidesByDesignation, cardCutMm, regression } from './carbide.ts';
export {
  abrasiveOverPhase,
  austeniteCarbonPercent,
  carbideVolumePercent,
  carbonWeightPercent,
  densities,
  leverRule,
} from './phases.ts';
export { carbideFromComposition, usualHardening } from './composition.ts';
export type { CarbideEstimate, Composition, Contents, TieLine } from './composition.ts';
export { hardeningRange, saturationCarbon } from './saturation.ts';
export { compositionsByDesignation, designationsHold } from './standard-compositions.ts';
export { angleFloorDeg, chippingRatio, criticalFlawUm, jobProfiles, rollingRatio } from './limits.ts';
export type { JobProfile } from './limits.ts';
export { carryRivalShares, compare, compareBoth } from './compare.ts';
export { apexExponent } from './terms.ts';
export { attributesOf, evenUp } from './even-up.ts';
export type { Attribute } from './even-up.ts';
export { disputes, ratioUnder } from './position.ts';
export type { Dispute, Position } from './position.ts';
export { rankings } from './rankings.ts';
export type { Ranked, Rankings } from './rankings.ts';
export { firstOrder } from './propagation.ts';
export { firstOrderBand } from './first-order-band.ts';
export type { FirstOrderBand, Sensitivity } from './first-order-band.ts';
export type { Contribution } from './propagation.ts';
export { predict } from './uncertainty.ts';
export { createPredictor } from './predictor.ts';
export type { Predictor } from './predictor.ts';
export type { Prediction } from './prediction.ts';
export { quantileDots } from './quantile-dots.ts';
export { quantiles, shareAbove } from './quantiles.ts';
export { bandRounding } from './band-rounding.ts';
export { costOf } from './cost.ts';
export type { Cost, CostQuestion, Gain, Offer } from './cost.ts';
export { ratioCurve } from './ratio-curve.ts';
export { whatItTakes } from './solve.ts';
export type { Answer, Question } from './solve.ts';
export { whatItTakesBand } from './solve-band.ts';
export type { AnswerBand } from './solve-band.ts';
export { withAttribute } from './solve-attributes.ts';
export type { SolvableAttribute } from './solve-attributes.ts';
export { fitPower } from './runs/fit.ts';
export type { PowerFit } from './runs/fit.ts';
export { lotDrift } from './runs/drift.ts';
export type { Drift, KnifeLife } from './runs/drift.ts';
export { explanations } from './runs/explain.ts';
export type { Explanation } from './runs/explain.ts';
export { runSheet } from './runs/sheet.ts';
export { isSheetCode } from './runs/sheet-code.ts';
export type { RunSheet, SheetPlan, SheetRow } from './runs/sheet.ts';
export { square } from './runs/square.ts';
export type { Squared, Squaring } from './runs/square.ts';
export { equivalencePower, equivalenceRunsNeeded } from './runs/equivalence.ts';
export type { EquivalencePlan } from './runs/equivalence.ts';
export type { LotLife } from './runs/estimate.ts';
export { ended } from './runs/lognormal.ts';
export type { Life } from './runs/lognormal.ts';
export { measuredRatio } from './runs/measured.ts';
export type { AlikeBounds, Comparison, Measured, Verdict } from './runs/measured.ts';
export { logSd, pairedPower, pairsNeeded, powerCurve, runsNeeded, twoSamplePower } from './runs/planning.ts';
export type { Plan } from './runs/planning.ts';
export { geometricMeanRatio, ratioOfMeans } from './runs/ratios.ts';
export type { RatioInterval } from './runs/ratios.ts';
export { welch } from './runs/welch.ts';
export type { WelchResult } from './runs/welch.ts';
