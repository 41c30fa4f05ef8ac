/** The same, reckoned once for each object it is asked of, for as long as that object lives. */
export function onceFor<K extends object, T>(reckon: (of: K) => T): (of: K) => T {
  const known = new WeakMap<K, { value: T }>();
  return (of) => {
    const before = known.get(of);
    if (before) return before.value;
    const value = reckon(of);
    known.set(of, { value });
    return value;
  };
}
