/**
 * The shapes every part of the model shares.
 *
 * Angles are per side in degrees unless a name says `included`; lengths carry their unit in the name.
 * Every function of the model refuses what it cannot compute with a `RangeError` that names the
 * parameter, the value and the allowed range.
 */

/** A value known exactly, known to within ±, or not known beyond a stated range. */
export type Quantity =
  | number
  | { value: number; plusMinus: number; shape?: 'uniform' | 'triangular' | 'normal' }
  | { unknown: true; low: number; high: number };

export type GritScale = 'FEPA-P' | 'FEPA-F' | 'JIS' | 'CAMI';

/** A grit number means nothing without its scale; a median particle size in µm needs none. */
export type Finish = { scale: GritScale; grit: number } | { um: Quantity };

export type GrindForm = 'flat' | 'hollow' | 'convex';

/** The primary grind: from the shoulder of the edge bevel up to full blade thickness. */
export interface Grind {
  form: GrindForm;
  /** Full blade thickness at the top of the primary grind, mm. */
  spineMm: Quantity;
  /** Height of the primary grind from the shoulder to full thickness, mm. */
  heightMm: Quantity;
  /** Radius of the hollow or convex face, mm, at least half the height; not used for a flat grind. */
  radiusMm?: Quantity;
}

/** A primary grind with every measure known, such as can be drawn. */
export interface ExactGrind {
  form: GrindForm;
  spineMm: number;
  heightMm: number;
  radiusMm?: number;
}

export type CarbideKind = 'Fe3C' | 'CrC' | 'CrVC' | 'MC' | 'M6C' | 'MN' | 'CrN';

/** Carbide and nitride by kind, volume per cent. A kind left out is 0. */
export type CarbideVolPercent = Partial<Record<CarbideKind, Quantity>>;

export interface Knife {
  id: string;
  name?: string;
  /** Edge angle per side, degrees, 4–45. */
  angleDeg: Quantity;
  /** Angle per side of a microbevel, degrees, where there is one; not below `angleDeg`. */
  microbevelAngleDeg?: Quantity;
  /** Thickness behind the edge, at the shoulder of the bevel, mm. */
  edgeMm: Quantity;
  finish: Finish;
  grind: Grind;
  /** Rockwell C hardness. */
  hrc: Quantity;
  carbideVolPercent: CarbideVolPercent;
  /** Toughness, MPa√m or one relative index used for the whole comparison. */
  toughness?: Quantity;
}

/** The model's disputed or fitted parameters. Anything left out takes the default of `quantities.ts`. */
export interface Assumptions {
  /** E: the total local exponent of the angle at 15°, wedge and apex together. */
  angleExponent?: Quantity;
  thicknessExponent?: Quantity;
  finishExponent?: Quantity;
  /** Exponent on HV used for hardness outside the regression's range. */
  hardnessExponent?: Quantity;
  /** Coefficient of variation of the published regression's residual: how far a steel lies off its line. */
  residualCv?: Quantity;
  /** The baseline's shares of the cutting force, for the rival that adds: wedge, thickness, grind. */
  rivalShares?: { wedge: number; thickness: number; grind: number };
}

export interface Comparison {
  knives: Knife[];
  /** The id of the knife everything is compared with. */
  baseline: string;
  /** Depth of contact of the primary grind with the material, mm; default 8. */
  contactDepthMm?: Quantity;
  /** Coefficient of friction µ₀; default 0.25. */
  friction?: Quantity;
  /** Slice/push speed ratio ξ; 0, the default, takes `friction` as already effective. */
  slicePush?: number;
  assumptions?: Assumptions;
  /**
   * The common ± of the gauge all knives were measured with, beside each knife's own: the gauge may read high or low for
   * all of them alike. The angle's goes for bevel and microbevel. What is not known was not measured and takes none.
   */
  gaugeBias?: { angleDeg?: number; edgeMm?: number; hrc?: number };
}

export type Reading = 'quick' | 'careful';
export type TermId = 'wedge' | 'apex' | 'thickness' | 'grind' | 'finish' | 'hardness' | 'carbide';
export type Family = 'geometry' | 'finish' | 'steel';

export interface Term {
  id: TermId;
  family: Family;
  /** How many times as long a cuts as the baseline by this term alone; null where it is left out. */
  factor: number | null;
  /** The factor at the ends of its parameter's stated range; null where the term is left out. */
  low: number | null;
  high: number | null;
  /** Where the term stands: derived, assumed, calibrated, published, or why it is left out. */
  status: string;
}

export interface Row {
  knife: string;
  terms: Term[];
  /** The product of the terms that stand. */
  product: number;
  /** The same with wedge, thickness and grind added as resistances instead of multiplied. */
  rival: number;
  /** False where a term was left out: the product then covers only the others. */
  complete: boolean;
  /** ln fᵢ / Σ ln fⱼ by term id; null where the terms cancel. */
  logShares: Record<string, number> | null;
  /** ln fᵢ / Σ|ln fⱼ| with its sign by term id: what is shown where the terms cancel. */
  signedShares: Record<string, number>;
  /** Product of the factors of each family. */
  families: Record<Family, number>;
  sideLoad: { rolling: number; chipping: number | null };
  notes: string[];
}
