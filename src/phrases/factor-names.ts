import type { TermId } from '../model/index.ts';
import { capital } from './list.ts';

/** What a factor is called, wherever one is named. */
export interface FactorName {
  /** Beside a bar and over a column. */
  name: string;
  /** Of a knife: what it gains or loses by. */
  own: string;
  /** Of two knives that do not differ in it: what both have the same. */
  shared: string;
  /** Beside its row on a ruler, in a few words. */
  onRuler: string;
  /** The same where there is little room. */
  onNarrowRuler: string;
}

const names: Record<TermId, FactorName> = {
  wedge: {
    name: 'Wedge',
    own: 'its edge angle as a wedge',
    shared: 'edge angle',
    onRuler: 'Angle, as a wedge',
    onNarrowRuler: 'Angle: wedge',
  },
  apex: {
    name: 'Apex',
    own: 'its angle at the apex',
    shared: 'angle at the apex',
    onRuler: 'Angle, as it wears',
    onNarrowRuler: 'Angle: wear',
  },
  thickness: {
    name: 'Thickness',
    own: 'its thickness behind the edge',
    shared: 'thickness behind the edge',
    onRuler: 'Behind the edge',
    onNarrowRuler: 'Behind edge',
  },
  grind: {
    name: 'Grind',
    own: 'its primary grind',
    shared: 'wedge of the primary grind',
    onRuler: 'Grind',
    onNarrowRuler: 'Grind',
  },
  finish: {
    name: 'Finish',
    own: 'the finish of its edge',
    shared: 'finish',
    onRuler: 'Finish',
    onNarrowRuler: 'Finish',
  },
  hardness: {
    name: 'Hardness',
    own: 'its hardness',
    shared: 'hardness',
    onRuler: 'Hardness',
    onNarrowRuler: 'Hardness',
  },
  carbide: {
    name: 'Carbide',
    own: 'its carbide',
    shared: 'carbide',
    onRuler: 'Carbide',
    onNarrowRuler: 'Carbide',
  },
};

/**
 * The names of a factor. One that the model's table has and this list does not is called by its id.
 *
 * @example factorName('grind').own // → 'its primary grind'
 * @example factorName('stropping').shared // → 'stropping'
 */
export const factorName = (id: string): FactorName =>
  (names as Partial<Record<string, FactorName>>)[id] ?? {
    name: capital(id),
    own: `its ${id}`,
    shared: id,
    onRuler: capital(id),
    onNarrowRuler: capital(id),
  };
