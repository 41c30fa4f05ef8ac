const named: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/**
 * Text made safe to stand in HTML.
 *
 * @example escaped('a < b & "c"') // → 'a &lt; b &amp; &quot;c&quot;'
 */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => named[sign] ?? sign);
