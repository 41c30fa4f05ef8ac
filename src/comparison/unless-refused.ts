/** What the model gives, or null where it refuses; any other error goes on. */
export function unlessRefused<T>(compute: () => T): T | null {
  return orRefusal(compute, () => null);
}

/** What the model gives, or what its refusal is made into; any other error goes on. */
export function orRefusal<T, R>(compute: () => T, refusal: (message: string) => R): T | R {
  try {
    return compute();
  } catch (error) {
    if (error instanceof RangeError) return refusal(error.message);
    throw error;
  }
}
