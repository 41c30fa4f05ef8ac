/**
 * JSON in one form only, as RFC 8785 lays down: keys sorted by their UTF-16 code units, no spaces, numbers and strings
 * as ECMAScript writes them. The same content always gives the same text.
 *
 * @throws RangeError for a number that JSON cannot hold
 */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((item) => canonicalJson(item)).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const members = Object.entries(value)
      .filter(([, member]) => member !== undefined)
      .sort(([one], [other]) => (one < other ? -1 : 1));
    return `{${members.map(([key, member]) => `${JSON.stringify(key)}:${canonicalJson(member)}`).join(',')}}`;
  }
  if (typeof value === 'number' && !Number.isFinite(value))
    throw new RangeError(`the number ${value} is none that JSON can hold`);
  return JSON.stringify(value);
}
