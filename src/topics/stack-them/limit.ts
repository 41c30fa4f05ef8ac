import { nominal, parameters, widthAt } from '../../model/index.ts';
import type { ParameterId, Quantity } from '../../model/index.ts';
import { baselinePush, subjectPush } from './push.ts';
import type { Scene } from '../../scene/scene.ts';

/** One knife where the force has a limit. */
export interface AtLimit {
  /** Wedging, in parts of the force at the limit: x. */
  wedging: number;
  /** The width its blunt edge may grow to: u. */
  width: number;
}

export interface Limit {
  /** The share of the ordinary blade's wedging, s, and the power of the width, m. */
  share: number;
  power: number;
  subject: AtLimit;
  baseline: AtLimit;
}

/** What the third structure makes of the two knives, at the middle settings. */
export function limitOf(scene: Scene): Limit {
  const { assumptions = {} } = scene.comparison;
  const middle = (id: ParameterId, given: Quantity | undefined): number =>
    given === undefined ? parameters[id].default : nominal(given);
  const share = middle('wedgingShare', assumptions.wedgingShare);
  const at = (added: number): AtLimit => ({ wedging: share * added, width: widthAt(share * added) });
  return {
    share,
    power: middle('limitPower', assumptions.limitPower),
    subject: at(subjectPush(scene).added),
    baseline: at(baselinePush(scene).added),
  };
}
