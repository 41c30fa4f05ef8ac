/** The version of the stored document. It rises when an older document needs changing to be read. */
export const documentVersion = 2;

/**
 * What brings a document of the version it stands under to the next one. Version 1 is the first. Version 2 may say more
 * (a gauge's common ±, a position on what is disputed, runs, a plan) and changes nothing of what version 1 says.
 */
const steps: Readonly<Record<number, (document: unknown) => unknown>> = { 1: (document) => document };

/**
 * A document of an earlier version, brought to the current one; one of the current version as it is.
 *
 * @param document The stored document.
 * @param from The version it was written with.
 */
export function migrate(document: unknown, from: number = documentVersion): unknown {
  let current = document;
  for (let version = from; version < documentVersion; version += 1) {
    const step = steps[version];
    if (!step) throw new RangeError(`document version ${version} is not between 1 and ${documentVersion}`);
    current = step(current);
  }
  return current;
}
