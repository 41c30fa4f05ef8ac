import { isUnknown, nominal } from '../../model/index.ts';
import type { Knife } from '../../model/index.ts';
import type { Role } from '../../comparison/role.ts';
import { edgeShape, halfOutline, thicknessAboveApexMm } from '../../figure-kit/outline.ts';
import type { EdgeShape } from '../../figure-kit/outline.ts';
import { roundLength } from '../../figure-kit/plane.ts';
import { inDecimals, plain, short } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';

/** One of the two edges of a scene. */
export interface SceneEdge {
  role: Role;
  name: string;
  knife: Knife;
  shape: EdgeShape;
}

/** Both edges, the baseline first. */
export const edgesOf = ({ baseline, baselineKnife, subject, subjectKnife }: Scene): SceneEdge[] => [
  { role: 'baseline', name: baseline.name, knife: baselineKnife, shape: edgeShape(baselineKnife) },
  { role: 'subject', name: subject.name, knife: subjectKnife, shape: edgeShape(subjectKnife) },
];

/** The thickest part of a section up to a length, mm. */
export const thickestMm = ({ knife }: SceneEdge, lengthMm: number): number =>
  Math.max(...halfOutline(knife, lengthMm).map(({ halfMm }) => 2 * halfMm));

/** The larger bevel takes at least this part of the length. */
const leastBevel = 0.06;

/**
 * How much of both blades is drawn, mm: the usual length, less where the bevels would be too small to see, and more where
 * an edge would be too thick for the sheet or a bevel too long for it.
 *
 * @param usualMm for edges of a common size
 * @param lengthPx how long that is drawn
 * @param thickPx how thick a blade may be drawn
 * @param beyondBevel how many times as long as its bevel a blade is drawn at least
 */
export function lengthShownMm(
  edges: readonly SceneEdge[],
  usualMm: number,
  lengthPx: number,
  thickPx: number,
  beyondBevel = 1.2,
): number {
  const bevelMm = Math.max(...edges.map(({ shape }) => shape.shoulder.upMm));
  const least = Math.max(Math.min(usualMm, bevelMm / leastBevel), beyondBevel * bevelMm);
  return roundLength(
    (length) =>
      length >= least * (1 - 1e-9) &&
      edges.every((edge) => (thickestMm(edge, length) * lengthPx) / length <= thickPx),
  );
}

/** How edges lie on a wide and a narrow sheet: mm of blade of a common size, px they may be thick and px beside them. */
export const lyingRoom = {
  wide: { width: 640, usualMm: 8, thickPx: 190, sidePx: 16 },
  narrow: { width: 330, usualMm: 6, thickPx: 120, sidePx: 10 },
} as const;

/** How far from the edge thicknesses are compared in words, mm: as far as a wide sheet shows them. */
export function comparedAtMm(scene: Scene): number {
  const { width, usualMm, thickPx, sidePx } = lyingRoom.wide;
  return lengthShownMm(edgesOf(scene), usualMm, width - 2 * sidePx, thickPx);
}

/** What of a section is not known: its outline is drawn at the middle of the range. */
export function unknownOf({ angleDeg, microbevelAngleDeg, edgeMm, grind }: Knife): string[] {
  const not = (what: string, ...of: (Knife['angleDeg'] | undefined)[]): string[] =>
    of.some((quantity) => quantity !== undefined && isUnknown(quantity)) ? [`${what} not known`] : [];
  return [
    ...not('angle', angleDeg),
    ...not('microbevel', microbevelAngleDeg),
    ...not('thickness', edgeMm),
    ...not('grind', grind.spineMm, grind.heightMm, grind.form === 'flat' ? undefined : grind.radiusMm),
  ];
}

/** The measures beside the name of a section. */
export function measuresSaid({ knife }: SceneEdge, narrow: boolean): string {
  const unknown = unknownOf(knife);
  const angle = isUnknown(knife.angleDeg)
    ? []
    : [`${short(nominal(knife.angleDeg))}°${narrow ? '' : ' per side'}`];
  const edge = isUnknown(knife.edgeMm)
    ? []
    : [`${short(nominal(knife.edgeMm))} mm${narrow ? '' : ' behind the edge'}`];
  return [...angle, ...edge, ...unknown].join(' · ');
}

/** A thickness to two figures, without zeros behind. */
const thick = (mm: number): string => `${short(mm, 2)} mm`;

/** How thick both are as far out as they are drawn. */
export function edgesCaption(scene: Scene): string {
  const at = comparedAtMm(scene);
  const both = [scene.baselineKnife, scene.subjectKnife].map((knife) => thicknessAboveApexMm(knife, at));
  // Both with as many decimals: as the thicker one has.
  const tenths = Math.max(...both) >= 1;
  const [baseline, subject] = both.map((mm) => (tenths ? `${short(inDecimals(mm, 1), 2)} mm` : thick(mm)));
  return baseline === subject
    ? `At ${short(at)} mm from the edge ${scene.baseline.name} and ${scene.subject.name} are both ${baseline} thick.`
    : `At ${short(at)} mm from the edge ${scene.baseline.name} is ${baseline} thick and ${scene.subject.name} ${subject}.`;
}

/** The numbers both figures draw. */
export function edgesTable(scene: Scene) {
  const edges = edgesOf(scene);
  const row = (head: string, of: (edge: SceneEdge) => string) => [head, ...edges.map(of)];
  const known = (quantity: Knife['angleDeg'] | undefined, unit: string): string =>
    quantity === undefined
      ? 'none'
      : isUnknown(quantity)
        ? `${short(nominal(quantity))}${unit}, not known`
        : `${short(nominal(quantity))}${unit}`;
  const end = comparedAtMm(scene);
  return {
    columns: ['Measure', scene.baseline.name, scene.subject.name],
    rows: [
      row('Edge angle per side', ({ knife }) => known(knife.angleDeg, '°')),
      row('Microbevel, angle per side', ({ knife }) => known(knife.microbevelAngleDeg, '°')),
      row('Thickness behind the edge', ({ knife }) => known(knife.edgeMm, ' mm')),
      row('Height of the bevel', ({ shape }) => `${plain(shape.shoulder.upMm)} mm`),
      row('Primary grind', ({ knife }) => knife.grind.form),
      ...[0.25, 0.5, 0.75, 1].map((part) =>
        row(`Thickness ${short(part * end)} mm from the edge`, ({ knife }) =>
          thick(thicknessAboveApexMm(knife, part * end)),
        ),
      ),
    ],
  };
}
