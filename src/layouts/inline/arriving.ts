/**
 * Laid out in one piece, a long page would keep a slow phone from answering. So what lies below its head is laid out in
 * pieces, a frame each, as if the network brought it so, and twice as much at a time where that was quickly done: of a
 * figure the drawing first, then what stands below it; a worked example step by step. A page come back to, or opened at
 * a place in it, is there at once; a comparison in the address is no place.
 */
(() => {
  /**
   * What waits, named by what stands before it: while the page is still being read nothing is a last or an only child.
   * src/styles/page.css hides the same.
   */
  const waiting =
    'main>:first-child>*,' +
    'main>:nth-child(n+2),' +
    'main>:first-child>kf-figure :is(kf-figure>:nth-child(n+2),.sheet>:nth-child(n+2),figure>:nth-child(n+3)),' +
    'main>:first-child>kf-worked :is(li,.fill),' +
    // The Compare page is one element: its columns, its lines and its questions come one after another.
    'kf-compare :is(.beside,.entry,.entry>[data-own],[data-place=essentials],.look-closer,.full,[data-part=figures])>*';
  const frameMs = 16;
  /** By then all of it is shown, whatever happens. */
  const longestMs = 3000;

  const [visit] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  if (visit?.type !== 'navigate' || /#(?!with=)/.test(visit.name)) return;

  const { dataset } = document.documentElement;
  dataset['arriving'] = '';
  let size = 1;

  const end = () => {
    delete dataset['arriving'];
    for (const part of document.querySelectorAll<HTMLElement>('[data-here]')) delete part.dataset['here'];
  };
  const showSome = (began: number) => {
    const rest = [...document.querySelectorAll<HTMLElement>(`:is(${waiting}):not([data-here])`)];
    for (const part of rest.slice(0, size)) part.dataset['here'] = '';
    if (rest.length === 0 && document.readyState !== 'loading') end();
    else {
      size = performance.now() - began < frameMs ? size * 2 : 1;
      next();
    }
  };
  const next = () => requestAnimationFrame((began) => setTimeout(showSome, 0, began));
  next();
  setTimeout(end, longestMs);
})();
