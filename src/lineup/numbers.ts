import { additiveGuess, compound, nominal } from '../model/index.ts';
import type { Family, Quantity, Row, TermId } from '../model/index.ts';
import { rangeNumbers } from './range-numbers.ts';
import { routesNumbers } from './routes-numbers.ts';
import type { Scene } from './scene.ts';
import { fixed, percent, plain, ratioInWords, signedPercent, times, typedPercent } from './show.ts';

/** A number of the scene, as prose shows it. Every number in a lesson has its name here. */
export type NumberOf = (scene: Scene) => string;

const share = (row: Row, term: TermId): string => {
  const value = row.logShares?.[term];
  return value === undefined ? 'no share' : percent(value);
};

const quantity = (value: Quantity, unit: string, digits = 3): string =>
  typeof value !== 'number' && 'unknown' in value
    ? `not known (${plain(value.low, digits)}–${plain(value.high, digits)}${unit})`
    : `${plain(nominal(value), digits)}${unit}`;

const termIds: readonly TermId[] = ['wedge', 'apex', 'thickness', 'grind', 'finish', 'hardness', 'carbide'];
const families: readonly Family[] = ['geometry', 'finish', 'steel'];

function factorOf(row: Row, term: TermId): string {
  const found = row.terms.find(({ id }) => id === term);
  return found?.factor == null ? 'left out' : times(found.factor);
}

/**
 * The chain of percentages a scene speaks of: the one typed, where there is one; otherwise the terms of the
 * close reading turned into percentages, leaving out those that change nothing.
 */
export function percentagesOf(scene: Scene): number[] {
  if (scene.entry.faceValues) return [...scene.entry.faceValues];
  return scene.row.close.terms.flatMap(({ factor }) =>
    factor === null || Math.abs(factor - 1) < 5e-4 ? [] : [(factor - 1) * 100],
  );
}

const perReading = (reading: 'pocket' | 'close'): Record<string, NumberOf> => ({
  [`${reading}.product`]: ({ row }) => times(row[reading].product),
  [`${reading}.product.words`]: ({ row }) => ratioInWords(row[reading].product),
  [`${reading}.rival`]: ({ row }) => times(row[reading].rival),
  ...Object.fromEntries(
    termIds.flatMap((term): [string, NumberOf][] => [
      [`${reading}.${term}`, ({ row }) => factorOf(row[reading], term)],
      [`${reading}.${term}.share`, ({ row }) => share(row[reading], term)],
    ]),
  ),
  ...Object.fromEntries(
    families.map((family): [string, NumberOf] => [
      `${reading}.family.${family}`,
      ({ row }) => times(row[reading].families[family]),
    ]),
  ),
});

export const numbers: Record<string, NumberOf> = {
  'subject.name': ({ subject }) => subject.name,
  'baseline.name': ({ baseline }) => baseline.name,
  'subject.angle': ({ subjectKnife }) => quantity(subjectKnife.angleDeg, '°'),
  'baseline.angle': ({ baselineKnife }) => quantity(baselineKnife.angleDeg, '°'),
  'subject.edge': ({ subjectKnife }) => quantity(subjectKnife.edgeMm, ' mm'),
  'baseline.edge': ({ baselineKnife }) => quantity(baselineKnife.edgeMm, ' mm'),
  'subject.hrc': ({ subjectKnife }) => quantity(subjectKnife.hrc, ' HRC'),
  'baseline.hrc': ({ baselineKnife }) => quantity(baselineKnife.hrc, ' HRC'),
  friction: ({ lineUp }) => quantity(lineUp.friction ?? 0.25, ''),

  'percentages.list': (scene) => percentagesOf(scene).map(typedOrRounded).join(', '),
  'percentages.count': (scene) => String(percentagesOf(scene).length),
  'percentages.first': (scene) => typedOrRounded(percentagesOf(scene)[0] ?? 0),
  'percentages.product': (scene) => times(compound(percentagesOf(scene))),
  'percentages.sum': (scene) => times(additiveGuess(percentagesOf(scene))),
  'percentages.product.more': (scene) => signedPercent(compound(percentagesOf(scene)) - 1),
  'percentages.sum.more': (scene) => signedPercent(additiveGuess(percentagesOf(scene)) - 1),
  'percentages.gap': (scene) =>
    `${fixed((compound(percentagesOf(scene)) - additiveGuess(percentagesOf(scene))) * 100, 0)} percentage points`,

  'reading.product': ({ entry, row }) => times(row[entry.reading].product),

  ...perReading('pocket'),
  ...perReading('close'),
  rolling: ({ row }) => times(row.close.sideLoad.rolling),
  ...rangeNumbers,
  ...routesNumbers,
};

function typedOrRounded(value: number): string {
  return typedPercent(Number(value.toFixed(1)));
}

/** The number of that name in the scene. An unknown name is a mistake in the page and fails the build. */
export function numberNamed(name: string, scene: Scene): string {
  const read = numbers[name];
  if (!read)
    throw new RangeError(`there is no number named "${name}"; the names stand in src/lineup/numbers.ts`);
  return read(scene);
}
