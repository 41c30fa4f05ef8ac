/**
 * Where the address carries a comparison, nothing of the page's own example is shown as the visitor's, not for one
 * frame. Should the live half not come, the page says so after a while.
 */
(() => {
  const { dataset } = document.documentElement;
  if (!location.hash.startsWith('#with=')) return;
  dataset['comparison'] = 'loading';
  setTimeout(() => {
    if (dataset['comparison'] === 'loading') dataset['comparison'] = 'failed';
  }, 8000);
})();
