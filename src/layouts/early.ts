import { inlined } from './inlined.ts';

/**
 * Runs before the first paint, inline: where the address carries a comparison, nothing of the page's own example is
 * shown as the visitor's, not for one frame. Should the live half not come, the page says so after a while.
 */
export const early = inlined(
  `(r=>{if(location.hash.startsWith("#with=")){r.dataset.lineUp="loading";setTimeout(()=>{if(r.dataset.lineUp==="loading")r.dataset.lineUp="failed"},8000)}})(document.documentElement)`,
);
