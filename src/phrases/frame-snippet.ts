const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/**
 * The HTML that puts a figure on a page of somebody's own.
 *
 * @param address the figure's address, its comparison included
 * @param title what the frame holds, for those who hear the page
 * @param heightPx how tall the frame is before its page says better
 * @example frameSnippet('https://example.org/embed/chain/', 'A "chain"', 700) // → '<iframe src="https://example.org/embed/chain/" title="A &quot;chain&quot;" width="100%" height="700" loading="lazy" style="border: 0"></iframe>'
 */
export const frameSnippet = (address: string, title: string, heightPx: number): string =>
  `<iframe src="${escaped(address)}" title="${escaped(title)}" width="100%" height="${heightPx}" loading="lazy" style="border: 0"></iframe>`;
