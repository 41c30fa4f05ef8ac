/** Stands for Plot's `facet.js` and `transforms/exclusiveFacets.js`: a drawing is one panel. */
import { refuse } from './refuse.mjs';

const no = refuse('facets');

export const createFacets = () => undefined;
export const exclusiveFacets = (data, facets) => (facets.length === 1 ? { data, facets } : no());
/** Axes name the panels they stand beside. */
export const maybeFacetAnchor = () => null;
export {
  no as facetExclude,
  no as facetFilter,
  no as facetGroups,
  no as facetTranslator,
  no as recreateFacets,
};
