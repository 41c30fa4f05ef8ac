/** Leads on from an old address, with the query and the fragment: a refresh tag would lose both. */
(() => {
  const there = document.documentElement.dataset['movedTo'];
  if (there) location.replace(there + location.search + location.hash);
})();
