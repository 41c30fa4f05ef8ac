/** Which kind comes next where several are mixed: by the seed alone, so that a course of problems can be had again. */
export function kindFor<Kind extends string>(kinds: readonly Kind[], seed: number): Kind {
  // Knuth's multiplicative hash (The Art of Computer Programming, vol. 3, 6.4): neighbouring seeds fall far apart.
  const place = Math.imul(seed, 2654435761) >>> 16;
  const kind = kinds[place % kinds.length];
  if (kind === undefined) throw new RangeError('kinds of problems: there are none to choose from');
  return kind;
}
