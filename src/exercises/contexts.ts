import type { Asks, ContextId } from './problem.ts';

/** A story to set problems in. All its numbers are invented. */
export interface Context {
  id: ContextId;
  /** Opens every question. */
  place: string;
  names: readonly string[];
  /** What advantages may come from, as said of one of the names. */
  causes: readonly string[];
  /** What there is more of. */
  yields: string;
  /** `less` rope, `fewer` seedlings. */
  less: 'less' | 'fewer';
  asks: Exclude<Asks, '% more'>;
  /** "how many times as long does Dunlin cut as Plover?" */
  timesAs: (subject: string, baseline: string) => string;
  /** "how many per cent more rope does Dunlin cut than Plover?" */
  perCentMore: (subject: string, baseline: string) => string;
  /** For ranges: what one can do and what one is given, with what belongs to each. */
  done: { name: string; causes: readonly string[] };
  given: { name: string; causes: readonly string[] };
}

export const contexts: Record<ContextId, Context> = {
  'rigging-loft': {
    id: 'rigging-loft',
    place: 'In the rigging loft (all numbers invented)',
    names: ['Dunlin', 'Plover', 'Curlew', 'Avocet'],
    causes: ['its edge angle', 'its finish', 'its thickness behind the edge', 'its steel'],
    yields: 'rope',
    less: 'less',
    asks: 'times as long',
    timesAs: (subject, baseline) => `how many times as long does ${subject} cut as ${baseline}?`,
    perCentMore: (subject, baseline) => `how many per cent more rope does ${subject} cut than ${baseline}?`,
    done: { name: 'geometry', causes: ['the wedge', 'the apex', 'the thickness behind the edge'] },
    given: { name: 'steel', causes: ['hardness', 'carbide'] },
  },
  'seed-trays': {
    id: 'seed-trays',
    place: 'In a nursery (all numbers invented)',
    names: ['the east bench', 'the west bench', 'the north bench', 'the south bench'],
    causes: ['its light', 'its warmth', 'its soil', 'its watering'],
    yields: 'seedlings',
    less: 'fewer',
    asks: 'times as many',
    timesAs: (subject, baseline) => `how many times as many seedlings does ${subject} raise as ${baseline}?`,
    perCentMore: (subject, baseline) =>
      `how many per cent more seedlings does ${subject} raise than ${baseline}?`,
    done: { name: 'care', causes: ['light', 'warmth', 'watering'] },
    given: { name: 'seed', causes: ['age', 'ripeness'] },
  },
};

export const contextIds = Object.keys(contexts) as ContextId[];

/** "a, b and c" */
export const list = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${String(parts.at(-1))}`;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
