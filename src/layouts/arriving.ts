import { inlined } from './inlined.ts';

/**
 * Runs before the first paint, inline. Laid out in one piece, a long page would keep a slow phone from answering: what
 * lies below its head comes in pieces, a frame each, as if the network brought it so, and twice as much at a time where
 * that was quickly done: of a figure the drawing first, then what stands below it; a worked example step by step. A page
 * come back to, or opened at a place in it, is there at once; a comparison in the address is no place.
 *
 * What is held is named by what stands before it: while the page is still being read nothing is a last or an only child.
 * The style sheet names the same.
 */
export const arriving = inlined(
  `(r=>{const held="main>:first-child>*,main>:nth-child(n+2),main>:first-child>kf-figure :is(kf-figure>:nth-child(n+2),.sheet>:nth-child(n+2),figure>:nth-child(n+3)),main>:first-child>kf-worked :is(li,.fill)";const [come]=performance.getEntriesByType("navigation");if(!come||come.type!=="navigate"||/#(?!with=)/.test(come.name))return;r.dataset.arriving="";let size=1;const end=()=>{delete r.dataset.arriving;for(const part of document.querySelectorAll("[data-here]"))delete part.dataset.here};const next=()=>requestAnimationFrame(began=>setTimeout(()=>{const rest=document.querySelectorAll(":is("+held+"):not([data-here])");for(let k=0;k<size&&k<rest.length;k+=1)rest[k].dataset.here="";if(rest.length===0&&document.readyState!=="loading")end();else{size=performance.now()-began<16?size*2:1;next()}}));next();setTimeout(end,3000)})(document.documentElement)`,
);
