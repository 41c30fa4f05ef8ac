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
  /** E: the local exponent of the angle in all at 15°, wedge and apex together, at friction 0.25 and slice/push 3. */
  angleExponent?: Quantity;
  thicknessExponent?: Quantity;
  finishExponent?: Quantity;
  /** Exponent on HV beyond the hardness the published regression covers. */
  hardnessExponent?: Quantity;
  /** p: the power that turns a ratio of card into a ratio of lives to one end point; not used at fixed strokes. */
  lifeExponent?: Quantity;
  /** s: the share of the force at the end point that the ordinary blade needs for wedging. */
  wedgingShare?: Quantity;
  /** m: the power with which life grows with the width the blunt edge may reach. */
  limitPower?: Quantity;
  /** Coefficient of variation of the published regression's residual: how far a steel lies off its line. */
  residualCv?: Quantity;
  /** How likely each way to combine the factors is held to be, 0 or more each; a third each if left out. */
  structureWeights?: [multiplied: number, added: number, toLimit: number];
}

/** What "as long" means: material cut until the same end point, or card cut in a fixed number of strokes. */
export type Outcome = 'end-point' | 'fixed-strokes';

/** How the factors combine: all multiply; the forces add; the force reaches a limit. */
export type Structure = 'multiplied' | 'added' | 'toLimit';

export interface Comparison {
  knives: Knife[];
  /** The id of the knife everything is compared with. */
  baseline: string;
  /** What "as long" means; `end-point` if left out. */
  outcome?: Outcome;
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
  /** How many times as long a cuts as the baseline for this reason alone. */
  factor: number;
  /** The factor at the ends of the stated ranges of its own parameters. */
  low: number;
  high: number;
  /** Where the factor stands: derived, assumed, calibrated, published. */
  status: string;
}

/** Both ends of a range. */
export interface Ends {
  low: number;
  high: number;
}

export interface Row {
  knife: string;
  terms: Term[];
  /** The three totals, uncertain inputs at their middle: all factors multiplied, the forces added, to a limit. */
  multiplied: number;
  added: number;
  toLimit: number;
  /** Each force that resists the cut, over that of the ordinary blade; the mean of them is R. */
  forces: Record<string, number>;
  /** ln fᵢ / Σ ln fⱼ by factor, of `multiplied`; null where the factors cancel. */
  logShares: Record<string, number> | null;
  /** ln fᵢ / Σ|ln fⱼ| with its sign by factor: what is shown where the factors cancel. */
  signedShares: Record<string, number>;
  /** Product of the factors of each family. */
  families: Record<Family, number>;
  /** Side load to bend the apex and to break pieces out, as ratios to the baseline; chipping null without toughness. */
  sideLoad: { rolling: Ends; chipping: Ends | null };
  notes: string[];
}
