/**
 * The three totals in plain arithmetic, one knife after another, without anything of the model's own code: what the tests
 * call "own calculation". Angles are degrees per side, lengths mm.
 */

export interface PlainKnife {
  angle: number;
  microbevel?: number;
  edge: number;
  um: number;
  form: 'flat' | 'hollow' | 'convex';
  spine: number;
  height: number;
  radius?: number;
  hrc: number;
  /** Volume per cent by kind, as the published line names them. */
  carbide: Record<string, number>;
}

export interface PlainWork {
  friction: number;
  slicePush: number;
  depth: number;
  /** E, thickness, finish, HV beyond the line, p, s, m. */
  angleExponent: number;
  thicknessExponent: number;
  finishExponent: number;
  hardnessExponent: number;
  lifeExponent: number;
  wedgingShare: number;
  limitPower: number;
}

/** The middle settings, as they stand in the table of the careful estimate. */
export const middleWork: PlainWork = {
  friction: 0.25,
  slicePush: 0,
  depth: 8,
  angleExponent: 1.3,
  thicknessExponent: 0.5,
  finishExponent: 0.3,
  hardnessExponent: 1.2,
  lifeExponent: 1.5,
  wedgingShare: 0.35,
  limitPower: 1.5,
};

const rad = Math.PI / 180;

/** tan(θ + φ), φ by the friction that is left of µ₀ in a slice: µ₀/√(1 + ξ² cos² θ). */
export function drivingForce(angle: number, { friction, slicePush }: PlainWork): number {
  const left = friction / Math.sqrt(1 + slicePush ** 2 * Math.cos(angle * rad) ** 2);
  return Math.tan(angle * rad + Math.atan(left));
}

/** Half angle of the primary grind, degrees, at least 0.5: the thickest place over the depth, by narrowing down. */
function grindHalfAngle(knife: PlainKnife, depth: number): number {
  const { form, edge, spine, height, radius = Infinity } = knife;
  const half = height / 2;
  const turn = form === 'hollow' ? 1 : form === 'convex' ? -1 : 0;
  const thickness = (x: number): number => {
    if (x >= height) return spine;
    const chord = edge + ((spine - edge) * x) / height;
    const sag =
      turn === 0 ? 0 : Math.sqrt(radius ** 2 - (x - half) ** 2) - Math.sqrt(radius ** 2 - half ** 2);
    return chord - 2 * turn * sag;
  };
  let [low, high] = [0, Math.min(depth, height)];
  // A convex section rises and then falls; the others are thickest at an end.
  for (let step = 0; step < 200; step += 1) {
    const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
    if (thickness(left) < thickness(right)) low = left;
    else high = right;
  }
  const thickest = Math.max(edge, thickness(low), thickness(depth));
  return Math.max(0.5, Math.atan((thickest - edge) / (2 * depth)) / rad);
}

/** HV by the closed form through ASTM E140 table 1. */
const vickers = (hrc: number): number => (223 * hrc + 14500) / (100 - hrc);

const perVolume: Record<string, number> = {
  Fe3C: 5.0,
  CrC: 11.2,
  CrVC: 14.6,
  MC: 26.2,
  M6C: 9.5,
  MN: 20.9,
  CrN: 19.4,
};

/** mm of card at 30° included: the published line held to 50–66 HRC, bent below 200 mm, continued by HV. */
export function card(hrc: number, carbide: Record<string, number>, hardnessExponent = 1.2): number {
  const held = Math.max(50, Math.min(66, hrc));
  let line = -157 + 15.8 * held - 17.8 * 30;
  for (const [kind, volume] of Object.entries(carbide)) line += (perVolume[kind] ?? NaN) * volume;
  const bent = line < 200 ? 200 * Math.exp((line - 200) / 200) : line;
  return bent * (vickers(hrc) / vickers(held)) ** hardnessExponent;
}

/** e = (E − w)/(θ/tan θ) at 15°, w the local exponent of tan(θ + φ) there at µ 0.25 and ξ 3, φ held. */
function apexExponent(total: number): number {
  const theta = 15 * rad;
  const phi = Math.atan(0.25 / Math.sqrt(1 + 9 * Math.cos(theta) ** 2));
  const lnForce = (angle: number): number => Math.log(Math.tan(angle + phi));
  const h = 1e-4;
  // Five points: good to h⁴.
  const slope =
    (8 * (lnForce(theta * (1 + h)) - lnForce(theta * (1 - h))) -
      (lnForce(theta * (1 + 2 * h)) - lnForce(theta * (1 - 2 * h)))) /
    (12 * h);
  return (total - slope) / (theta / Math.tan(theta));
}

/** Width the blunt edge may grow to, where wedging takes the share x of the last force. */
export const width = (x: number): number => (x <= 0.7 ? 1 - x : 0.09 / (x - 0.4));

const ordinary = { angle: 20, edge: 0.4, form: 'flat', spine: 3, height: 14 } as const;

/** Wedging over the ordinary blade's: wedge, thickness and grind a third each. */
export function wedging(knife: PlainKnife, work: PlainWork): number {
  const blade = { ...ordinary, um: 1, hrc: 60, carbide: {} };
  const part = (of: PlainKnife): number[] => [
    drivingForce(of.angle, work),
    of.edge ** work.thicknessExponent,
    drivingForce(grindHalfAngle(of, work.depth), work),
  ];
  const [own, other] = [part(knife), part(blade)];
  return own.reduce((sum, force, i) => sum + force / (other[i] ?? NaN), 0) / 3;
}

/** The seven factors, a against b; hardness and carbide by the exchange of the two halves. */
export function sevenFactors(a: PlainKnife, b: PlainKnife, work: PlainWork) {
  const life = (hrc: number, carbide: Record<string, number>): number =>
    card(hrc, carbide, work.hardnessExponent) ** work.lifeExponent;
  const apex = (of: PlainKnife): number => Math.sin((of.microbevel ?? of.angle) * rad);
  const grind = (of: PlainKnife): number => drivingForce(grindHalfAngle(of, work.depth), work);
  return {
    wedge: drivingForce(b.angle, work) / drivingForce(a.angle, work),
    apex: (apex(b) / apex(a)) ** apexExponent(work.angleExponent),
    thickness: (b.edge / a.edge) ** work.thicknessExponent,
    grind: grind(b) / grind(a),
    finish: (a.um / b.um) ** work.finishExponent,
    hardness: Math.sqrt(
      (life(a.hrc, a.carbide) / life(b.hrc, a.carbide)) * (life(a.hrc, b.carbide) / life(b.hrc, b.carbide)),
    ),
    carbide: Math.sqrt(
      (life(a.hrc, a.carbide) / life(a.hrc, b.carbide)) * (life(b.hrc, a.carbide) / life(b.hrc, b.carbide)),
    ),
  };
}

/** The three totals, a against b. */
export function threeTotals(a: PlainKnife, b: PlainKnife, work: PlainWork) {
  const f = sevenFactors(a, b, work);
  const steel = f.hardness * f.carbide;
  const cot = (of: PlainKnife): number => 1 / Math.tan((of.microbevel ?? of.angle) * rad);
  const room = (of: PlainKnife): number => width(work.wedgingShare * wedging(of, work)) ** work.limitPower;
  return {
    multiplied: f.wedge * f.apex * f.thickness * f.grind * f.finish * steel,
    added: (wedging(b, work) / wedging(a, work)) * f.apex * f.finish * steel,
    toLimit: (cot(a) / cot(b)) * (room(a) / room(b)) * f.finish * steel,
  };
}
