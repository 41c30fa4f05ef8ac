/** A comparison as a visitor enters it. */
import type { Assumptions, Outcome, Position, Quantity, Reading } from '../model/index.ts';
import type { Run } from '../runs/log.ts';
import type { KnifeEntry } from './knife-fields.ts';

export type { KnifeEntry } from './knife-fields.ts';
export type { AngleEntry, Placed } from './knife-values.ts';

/** What can be made equal: the subject then takes the baseline's value. */
export const equalisable = ['angleDeg', 'edgeMm', 'finish', 'grind', 'hrc', 'carbideVolPercent'] as const;
export type Equalisable = (typeof equalisable)[number];

/** The session that is to be cut next. */
export interface PlanEntry {
  /** Coefficient of variation of one knife's runs, 0.2 is 20%; what the runs show where it is left out. */
  readonly cv?: number;
  /** The smallest ratio of two lives worth finding, above 1. */
  readonly ratio: number;
  /** Sharpenings of each knife; as many as the scatter asks for where it is left out. */
  readonly runs?: number;
  /** Of the logarithms of two runs cut in a pair on the same stock, −1 to 0.99; not in pairs where it is left out. */
  readonly correlation?: number;
  /**
   * How many sharpenings of each knife there were whenever the verdict was looked at before the number planned was cut, or
   * before more were planned; ascending.
   */
  readonly looks?: readonly number[];
  /** How many cuts, or mm, are made between two looks at the end point; every cut where it is left out. */
  readonly lookEvery?: number;
  /** How long the shorter-lived knife usually lasts, in the same unit; as the runs show where it is left out. */
  readonly life?: number;
  /** How many batches of material they are spread over. */
  readonly batches: number;
  /** A knife beside the others, cut first and last in every batch. */
  readonly control?: string;
  /** The reading that counts as blunt, chosen before looking; readings say nothing of a life where it is left out. */
  readonly endPoint?: number;
  /** The end point was set or changed with readings already in the log. */
  readonly endPointLate?: true;
  /** Between which readings an edge must start, in their own unit; no window where it is left out. */
  readonly start?: { low: number; high: number };
  /** The sheet shows codes in place of names. */
  readonly blind: boolean;
  /** Whether the log's numbers of sharpenings begin again in each batch; left out until somebody says so. */
  readonly numbersRestart?: boolean;
  /** The same seed gives the same sheet. */
  readonly seed: number;
  /** The log is closed: its runs stay as they are, and the key of a blind sheet is open. */
  readonly closed?: true;
  /** The log was opened again after its key was open. */
  readonly reopened?: true;
}

/** A correction of what was published before. */
export interface CorrectionEntry {
  /** Year, month, day. */
  readonly date: string;
  readonly reason: string;
  /** One sentence a number that changed. */
  readonly changed: readonly string[];
}

/** A whole comparison as it is entered, stored, linked and exported. */
export interface ComparisonEntry {
  /** 1–120 characters. */
  readonly title: string;
  /** Demo data, shown as such. */
  readonly invented?: true;
  /** Two to eight. */
  readonly knives: readonly KnifeEntry[];
  /** The id of the knife everything is compared with. */
  readonly baseline: string;
  /** The id of the knife looked at; not the baseline. */
  readonly subject: string;
  readonly reading: Reading;
  /** The id of a job profile of the model. */
  readonly work: string;
  /** What "as long" means; material cut to one end point where it is left out. */
  readonly outcome?: Outcome;
  /** Slice/push speed ratio; 0 takes the friction as already effective. */
  readonly slicePush: number;
  readonly contactDepthMm: Quantity;
  readonly friction: Quantity;
  readonly assumptions: Assumptions;
  /** The common ± of the gauge that measured all of them: degrees per side, mm, HRC. */
  readonly gaugeBias?: { angleDeg?: number; edgeMm?: number; hrc?: number };
  /** Where the visitor stands on the disputed assumptions; left out where it is the careful estimate's own. */
  readonly position?: Position;
  /** What was cut, where anything was. */
  readonly runs?: readonly Run[];
  /** What is to be cut next, where that was thought about. */
  readonly plan?: PlanEntry;
  /** What was corrected since it was published, the oldest first. */
  readonly corrections?: readonly CorrectionEntry[];
  /** How lengths are shown and typed; they are stored in mm. */
  readonly lengthUnit: 'mm' | 'thou';
  readonly madeEqual: readonly Equalisable[];
  /** A chain of percentages typed instead of measurements, at most ten; each above −100. */
  readonly faceValues: readonly number[] | null;
}
