/** Stands for Plot's `marker.js`. Lines, rules and ticks ask it about arrows and dots at their ends, which ours do not have. */
import { refuse } from './refuse.mjs';

const no = refuse('markers');

export const markers = (mark, { marker, markerStart, markerMid, markerEnd } = {}) => {
  if ([marker, markerStart, markerMid, markerEnd].some((each) => each != null)) no();
};
const none = () => undefined;
export { none as applyGroupedMarkers, none as applyMarkers };
