import { planOf, sheetOf } from '../topics/plan/values.ts';
import type { Scene } from '../scene/scene.ts';

/** Columns of the sheet: what is set, then what is written in by hand. */
export const sheetColumns = [
  'No.',
  'Batch',
  'Knife',
  'Angle as sharpened',
  'Burr off?',
  'Sharpness at start',
  'Until the end point',
  'Ended early?',
  'Judged by',
  'Remarks',
] as const;

/** How many of them are set. */
export const sheetSet = 3;

export const keyColumns = ['No.', 'Code', 'Knife', 'Sharpening'] as const;

/** The rows of the sheet and of its key; none where there is no sheet. */
export function sheetRows(scene: Scene): { sheet: string[][]; key: string[][] } {
  const held = sheetOf(scene);
  if (!held.ok) return { sheet: [], key: [] };
  const { rows, key } = held.sheet;
  return {
    sheet: rows.map(({ order, batch, label }) => [String(order), batch, label]),
    key: planOf(scene).blind
      ? key.map(({ order, label, knife, sharpening }) => [String(order), label, knife, String(sharpening)])
      : [],
  };
}
