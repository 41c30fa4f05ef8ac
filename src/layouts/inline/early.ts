/**
 * Where the address carries a comparison, nothing of the page's own example is shown as the visitor's, not for one
 * frame. Should the live half not come, the page says so after a while.
 */
(() => {
  const { dataset } = document.documentElement;
  if (!location.hash.startsWith('#with=')) return;
  dataset['lineUp'] = 'loading';
  setTimeout(() => {
    if (dataset['lineUp'] === 'loading') dataset['lineUp'] = 'failed';
  }, 8000);
})();
