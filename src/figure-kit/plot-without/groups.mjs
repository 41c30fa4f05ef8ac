/** Stands for Plot's `transforms/group.js`: what is drawn comes counted and summed. */
import { refuse } from './refuse.mjs';

const no = refuse('groups');

export {
  no as find,
  no as group,
  no as groupX,
  no as groupY,
  no as groupZ,
  no as hasOutput,
  no as maybeEvaluator,
  no as maybeGroup,
  no as maybeGroupOutputs,
  no as maybeOutput,
  no as maybeOutputs,
  no as maybeReduce,
  no as maybeSort,
  no as maybeSubgroup,
  no as reduceCount,
  no as reduceFirst,
  no as reduceIdentity,
  no as reduceZ,
};
