import { inFigures } from '../../scene/show.ts';

/** A mark of a ruler of ratios. */
export interface Mark {
  value: number;
  /** From the lower end, in mm. */
  atMm: number;
  /** What is written beside it; nothing beside the finer marks. */
  label: string;
}

/**
 * The marks of a ruler of ratios: equal ratios are equal lengths on it. Whole numbers of each decade are written, and
 * where there is room the tenths below 2 are marked.
 *
 * @param from and `to`: powers of ten, `from` below `to`
 * @param lengthMm above 0
 * @throws RangeError for other ends, or a length that is not above 0
 * @example logRulerMarks(1, 10, 200).find(({ value }) => value === 2)?.atMm.toFixed(2) // → '60.21'
 */
export function logRulerMarks(from: number, to: number, lengthMm: number): Mark[] {
  const decades = Math.log10(to / from);
  if (!Number.isInteger(Math.log10(from)) || !Number.isInteger(decades) || decades < 1)
    throw new RangeError(`ends ${from} and ${to} are not powers of ten, the first below the second`);
  if (!(lengthMm > 0)) throw new RangeError(`lengthMm ${lengthMm} is not above 0`);
  const marks: Mark[] = [];
  for (let decade = 0; decade < decades; decade += 1)
    for (let tenths = 10; tenths < 100; tenths += tenths < 20 ? 1 : tenths < 50 ? 2 : 5) {
      const value = inFigures(from * 10 ** decade * (tenths / 10));
      const whole = tenths % 10 === 0;
      const written = whole || tenths === 15 || (lengthMm / decades >= 200 && tenths < 20);
      marks.push(mark(value, written ? String(value) : ''));
    }
  marks.push(mark(to, String(to)));
  return marks;

  function mark(value: number, label: string): Mark {
    return { value, atMm: (Math.log10(value / from) / decades) * lengthMm, label };
  }
}
