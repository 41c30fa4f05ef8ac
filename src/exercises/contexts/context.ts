import type { Quantity } from '../asks.ts';
import type { ContextId, Given } from '../problem.ts';

/** A family of causes, with what belongs to it. */
interface Causes {
  name: string;
  causes: readonly string[];
}

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
  asks: `times as ${string}`;
  /** "how many times as long does Dunlin cut as Plover?" */
  timesAs: (subject: string, baseline: string) => string;
  /** "Dunlin cuts 2.4 times as long as Plover", also with "180%" for the number of times. */
  isTimes: (subject: string, baseline: string, times: string) => string;
  /** "what percentage more rope does Dunlin cut than Plover?" */
  perCentMore: (subject: string, baseline: string, more?: string) => string;
  /** "Dunlin cuts 40% more rope than Plover" */
  isMore: (subject: string, baseline: string, more: string) => string;
  /** "the rope that Dunlin cuts in a shift" */
  output: (name: string) => string;
  amount: {
    unit: Quantity;
    /** False where it is counted and so has no value between two whole ones. */
    continuous: boolean;
    /** "Dunlin cuts 84 m of rope in a shift" */
    is: (name: string, amount: string) => string;
    /** "how many metres of rope does Plover cut in a shift?" */
    asked: (name: string) => string;
  };
  /** What the output is in inverse proportion to. */
  hindrance: {
    name: string;
    unit: Given['unit'];
    amounts: readonly number[];
    /** "how long a knife cuts" */
    output: string;
  };
  /** For ranges: what one can do and what one is given. */
  done: Causes;
  given: Causes;
  /** Parts of one whole: "of all the rope Dunlin cuts in a week", "is cut on Monday". */
  whole: { of: (name: string) => string; parts: readonly string[] };
  /** A share in per cent: "the share of clean ends with Dunlin". */
  share: (name: string) => string;
  /** What acts side by side, none on the other. */
  beside: { start: string; all: string; helpers: readonly string[] };
  /** What a fair comparison holds equal. */
  trials: { what: string; variables: readonly { name: string; states: readonly string[] }[] };
}
