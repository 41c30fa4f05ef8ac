import type { Attribute, SolvableAttribute } from '../model/index.ts';
import { units } from '../scene/show.ts';

/** What an attribute of a knife is called in a sentence. */
export interface AttributeName {
  name: string;
  /** What is measured of it, where that is not the attribute itself. */
  measure?: string;
  /** Behind its number; empty where one number does not say it. */
  unit: string;
}

export const attributeName: Readonly<Record<Attribute | SolvableAttribute, AttributeName>> = {
  angleDeg: { name: 'edge angle', unit: units.deg },
  microbevelAngleDeg: { name: 'microbevel angle', unit: units.deg },
  edgeMm: { name: 'thickness behind the edge', unit: units.mm },
  finish: { name: 'finish', measure: 'grain size of the finish', unit: units.um },
  grind: { name: 'primary grind', unit: '' },
  grindHeightMm: { name: 'height of the grind', unit: units.mm },
  hrc: { name: 'hardness', unit: units.hrc },
  carbide: { name: 'carbide', unit: units.volPercent },
  carbideVolPercent: { name: 'carbide', unit: units.volPercent },
};
