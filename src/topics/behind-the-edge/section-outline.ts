/** A point of a section: across from the centre plane, and up from the shoulder of the bevel, mm. */
export type SectionPoint = readonly [acrossMm: number, upMm: number];

/** How finely a curved face is drawn. */
const stepsUp = 40;

/**
 * The outline of a section, up one side and down the other: bevel, then the faces of the primary grind.
 *
 * @param thicknessMm thickness at a height above the shoulder, mm
 */
export function sectionOutline(
  bevelHeightMm: number,
  topMm: number,
  thicknessMm: (upMm: number) => number,
): SectionPoint[] {
  const half: SectionPoint[] = [
    [0, -bevelHeightMm],
    ...Array.from({ length: stepsUp + 1 }, (_, step): SectionPoint => {
      const upMm = (topMm * step) / stepsUp;
      return [thicknessMm(upMm) / 2, upMm];
    }),
  ];
  return [...half.map(([across, up]): SectionPoint => [-across, up]).reverse(), ...half.slice(1)];
}
