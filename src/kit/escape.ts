const ENTITIES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/**
 * Text made safe to stand in HTML or XML, between tags or in a quoted attribute.
 *
 * @example escaped('a < "b"') // → 'a &lt; &quot;b&quot;'
 */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => ENTITIES[sign] ?? sign);
