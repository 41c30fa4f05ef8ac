import { exactGrind, grindThicknessMm, nominal } from '../model/index.ts';
import type { Knife } from '../model/index.ts';

/** A point of half a section: up from the apex, and out from the centre plane, mm. */
export interface OutlinePoint {
  upMm: number;
  halfMm: number;
}

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/** A microbevel takes this part of the thickness behind the edge in a drawing: its true width is rarely known. */
const microbevelPart = 0.1;

/** The lowest part of a section: where the bevel begins and where it ends. */
export interface EdgeShape {
  angleDeg: number;
  edgeMm: number;
  /** Where the bevel begins: the apex, or the top of the microbevel where there is one. */
  foot: OutlinePoint;
  /** Where the bevel ends and the primary grind begins. */
  shoulder: OutlinePoint;
}

/** The edge of a knife as it is drawn; what is not known stands at the middle of its range. */
export function edgeShape({ angleDeg, microbevelAngleDeg, edgeMm }: Knife): EdgeShape {
  const [angle, edge] = [nominal(angleDeg), nominal(edgeMm)];
  const footMm = microbevelAngleDeg === undefined ? 0 : (microbevelPart * edge) / 2;
  const foot = {
    upMm: microbevelAngleDeg === undefined ? 0 : footMm / tan(nominal(microbevelAngleDeg)),
    halfMm: footMm,
  };
  const shoulder = { upMm: foot.upMm + (edge / 2 - footMm) / tan(angle), halfMm: edge / 2 };
  return { angleDeg: angle, edgeMm: edge, foot, shoulder };
}

/** How finely the faces of the primary grind are drawn. */
const steps = 40;

/**
 * Half the outline of a section from the apex up: microbevel where there is one, bevel, primary grind.
 *
 * @param upToMm how far above the apex it goes, mm; at least to the shoulder
 */
export function halfOutline(knife: Knife, upToMm: number): OutlinePoint[] {
  const { edgeMm, foot, shoulder } = edgeShape(knife);
  const bevel = foot.halfMm === 0 ? [foot, shoulder] : [{ upMm: 0, halfMm: 0 }, foot, shoulder];
  const aboveMm = upToMm - shoulder.upMm;
  if (aboveMm <= 0) return bevel;
  const grind = { ...exactGrind(knife.grind), edgeMm };
  const faces = Array.from({ length: steps }, (_, step): OutlinePoint => {
    const atMm = (aboveMm * (step + 1)) / steps;
    return { upMm: shoulder.upMm + atMm, halfMm: grindThicknessMm(grind, atMm) / 2 };
  });
  return [...bevel, ...faces];
}

/** Thickness of a knife so far above its apex, mm. */
export function thicknessAboveApexMm(knife: Knife, upMm: number): number {
  const { edgeMm, foot, shoulder } = edgeShape(knife);
  if (upMm >= shoulder.upMm)
    return grindThicknessMm({ ...exactGrind(knife.grind), edgeMm }, upMm - shoulder.upMm);
  if (upMm < foot.upMm) return (2 * foot.halfMm * upMm) / foot.upMm;
  const part = (upMm - foot.upMm) / (shoulder.upMm - foot.upMm);
  return 2 * (foot.halfMm + part * (shoulder.halfMm - foot.halfMm));
}
