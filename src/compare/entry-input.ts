import type { ComparisonEntry } from '../comparison/entry.ts';
import { knifeInputNamed } from './knife-inputs.ts';

/** The unit of a line of the form; empty where its inputs have none. */
export function unitOf(names: readonly string[], entry: ComparisonEntry): string {
  for (const name of names) {
    const field = knifeInputNamed(name);
    if (field.kind === 'text' && field.unit) return field.unit(entry);
  }
  return '';
}

/**
 * What an input is called for anyone who doesn't see the table around it.
 *
 * @example inputName('edge', 'Plover', { lengthUnit: 'mm' }) // → 'Plover, thickness behind the edge, mm'
 */
export function inputName(name: string, knife: string, entry: ComparisonEntry): string {
  const { label } = knifeInputNamed(name);
  const unit = unitOf([name], entry);
  const said = `${knife}, ${label.charAt(0).toLowerCase()}${label.slice(1)}`;
  return unit === '' ? said : `${said}, ${unit}`;
}
