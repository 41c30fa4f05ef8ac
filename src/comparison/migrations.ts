import { parameters } from '../model/index.ts';
import { knifeCalled } from './knife-names.ts';
import { knifeLimits, widestPlusMinus } from './schema-parts.ts';

/** The version of the stored document. It rises when an older document needs changing to be read. */
export const documentVersion = 4;

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

const structureNames: Fields = { multiply: 'multiplied', add: 'added' };

/** The least exponent of the angle the model takes since its third number. */
const leastAngleExponent = parameters.angleExponent.accepts.low;

/** The assumptions without the shares of the force, which belonged to one baseline, and within what the model takes. */
function assumptionsNow(assumptions: unknown): unknown {
  if (!isFields(assumptions)) return assumptions;
  const { rivalShares: _gone, angleExponent, ...others } = assumptions;
  if (angleExponent === undefined) return others;
  const held = (value: unknown): unknown =>
    typeof value === 'number' ? Math.max(leastAngleExponent, value) : value;
  return {
    ...others,
    angleExponent: isFields(angleExponent)
      ? { ...angleExponent, ...('value' in angleExponent ? { value: held(angleExponent['value']) } : {}) }
      : held(angleExponent),
  };
}

/** The position on what is disputed, under the name the structures have. */
function positionNow(position: unknown): unknown {
  if (!isFields(position) || !('forces' in position)) return position;
  const { forces, ...others } = position;
  return { ...others, structure: typeof forces === 'string' ? (structureNames[forces] ?? forces) : forces };
}

/** A ± no wider than the model takes since its third number. */
function narrowed(quantity: unknown, { low, high }: { low: number; high: number }): unknown {
  if (!isFields(quantity)) return quantity;
  const { value, plusMinus } = quantity;
  if (typeof value !== 'number' || typeof plusMinus !== 'number') return quantity;
  const widest = widestPlusMinus(value, low, high);
  return plusMinus <= widest ? quantity : { ...quantity, plusMinus: Math.max(0, widest) };
}

/** A knife with every ± as the model takes it now. */
function knifeNow(knife: unknown): unknown {
  if (!isFields(knife)) return knife;
  const { angle, edgeMm, hrc, carbide } = knife;
  const volumes = isFields(carbide) && isFields(carbide['volPercent']) ? carbide['volPercent'] : undefined;
  return {
    ...knife,
    ...(isFields(angle) && 'deg' in angle
      ? { angle: { ...angle, deg: narrowed(angle['deg'], knifeLimits.angleDeg) } }
      : {}),
    ...(edgeMm === undefined ? {} : { edgeMm: narrowed(edgeMm, knifeLimits.edgeMm) }),
    ...(hrc === undefined ? {} : { hrc: narrowed(hrc, knifeLimits.hrc) }),
    ...(volumes
      ? {
          carbide: {
            volPercent: Object.fromEntries(
              Object.entries(volumes).map(([kind, volume]) => [kind, narrowed(volume, knifeLimits.carbide)]),
            ),
          },
        }
      : {}),
  };
}

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

/** In version 4 a run belongs to a knife's id; before, to a name, and in a link it may stand as what the log calls it. */
function toVersion4(document: unknown): unknown {
  if (!isFields(document)) return document;
  const { knives, runs, assumptions, position } = document;
  return {
    ...document,
    ...(Array.isArray(knives) ? { knives: knives.map(knifeNow) } : {}),
    ...(assumptions === undefined ? {} : { assumptions: assumptionsNow(assumptions) }),
    ...(position === undefined ? {} : { position: positionNow(position) }),
    ...(Array.isArray(runs) && Array.isArray(knives) ? { runs: runsNow(runs, knives) } : {}),
  };
}

/** The runs with the ids of their knives. */
function runsNow(runs: readonly unknown[], all: readonly unknown[]): unknown[] {
  const knives = all.filter(
    (knife: unknown): knife is { id: string; name: string } =>
      isFields(knife) && typeof knife['id'] === 'string' && typeof knife['name'] === 'string',
  );
  return runs.map((run: unknown) => {
    if (!isFields(run)) return run;
    const { knife } = run;
    const called = isFields(knife) ? knife['called'] : knife;
    return typeof called === 'string' ? { ...run, knife: knifeCalled(knives, called) } : run;
  });
}

/**
 * What brings a document of the version it stands under to the next one. Version 1 is the first. Version 2 may say more
 * (a gauge's common ±, a position on what is disputed, runs, a plan) and changes nothing of what version 1 says.
 */
const steps: Readonly<Record<number, (document: unknown) => unknown>> = {
  1: (document) => document,
  2: toVersion3,
  3: toVersion4,
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
