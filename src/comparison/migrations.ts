/** The version of the stored document. It rises when an older document needs changing to be read. */
export const documentVersion = 3;

type Fields = Record<string, unknown>;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The same fields with some of them under new names; anything else as it is. */
function renamed(value: unknown, names: Readonly<Record<string, string>>): unknown {
  if (!isFields(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, value]) => [Object.hasOwn(names, name) ? names[name] : name, value]),
  );
}

const readingNames: Fields = { pocket: 'quick', close: 'careful' };

/** Version 3 has the names the pages use: batch, end point, made equal, quick and careful. */
function toVersion3(document: unknown): unknown {
  const comparison = renamed(document, { evenedUp: 'madeEqual' });
  if (!isFields(comparison)) return comparison;
  const { reading, runs, plan } = comparison;
  return {
    ...comparison,
    ...(typeof reading === 'string' && Object.hasOwn(readingNames, reading)
      ? { reading: readingNames[reading] }
      : {}),
    ...(Array.isArray(runs)
      ? { runs: runs.map((run: unknown) => renamed(run, { lot: 'batch', stop: 'endPoint' })) }
      : {}),
    ...(plan === undefined ? {} : { plan: renamed(plan, { lots: 'batches', stop: 'endPoint' }) }),
  };
}

/**
 * What brings a document of the version it stands under to the next one. Version 1 is the first. Version 2 may say more
 * (a gauge's common ±, a position on what is disputed, runs, a plan) and changes nothing of what version 1 says.
 */
const steps: Readonly<Record<number, (document: unknown) => unknown>> = {
  1: (document) => document,
  2: toVersion3,
};

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

/** The document in a file, a seal or the storage; before version 3 it had another name there. */
export const documentIn = (container: unknown): unknown =>
  isFields(container) ? (container['comparison'] ?? container['lineUp']) : undefined;
