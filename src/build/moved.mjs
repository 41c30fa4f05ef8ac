/**
 * Pages that have moved: the address each had below the site's own, and the address it has. What was sent out with an
 * old address goes on opening: a small page stands there and leads on (`src/layouts/Moved.astro`).
 */
export const moved = /** @type {const} */ ({
  'bench/': { to: 'compare/', name: 'Compare' },
  'drawer/': { to: 'saved/', name: 'Saved' },
  'runs/': { to: 'test/', name: 'Test' },
  'telling/': { to: 'explained/', name: 'The explanation' },
  'telling/ask/': { to: 'explained/ask/', name: 'Ask an audience' },
});
