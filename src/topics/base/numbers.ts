import { nominal } from '../../model/index.ts';
import type { Quantity, Row, TermId } from '../../model/index.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, plain, ratioInWords, times, units } from '../../scene/show.ts';
import { factorIds, families } from '../../scene/factors.ts';

/** A number of the scene, as prose shows it. Every number in a lesson has its name in one of the topics. */
export type NumberOf = (scene: Scene) => string;

const share = (row: Row, term: TermId): string => {
  const value = row.logShares?.[term];
  return value === undefined ? 'no share' : percent(value);
};

const quantity = (value: Quantity, unit: string, digits = 3): string =>
  typeof value !== 'number' && 'unknown' in value
    ? `not known (${plain(value.low, digits)}–${plain(value.high, digits)}${unit})`
    : `${plain(nominal(value), digits)}${unit}`;

function factorOf(row: Row, term: TermId): string {
  const found = row.terms.find(({ id }) => id === term);
  return times(found?.factor ?? 1);
}

const perReading = (reading: 'quick' | 'careful'): Record<string, NumberOf> => ({
  [`${reading}.multiplied`]: ({ row }) => times(row[reading].multiplied),
  [`${reading}.multiplied.words`]: ({ row }) => ratioInWords(row[reading].multiplied),
  [`${reading}.added`]: ({ row }) => times(row[reading].added),
  [`${reading}.toLimit`]: ({ row }) => times(row[reading].toLimit),
  ...Object.fromEntries(
    factorIds.flatMap((term): [string, NumberOf][] => [
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
  'subject.angle': ({ subjectKnife }) => quantity(subjectKnife.angleDeg, units.deg),
  'baseline.angle': ({ baselineKnife }) => quantity(baselineKnife.angleDeg, units.deg),
  'subject.edge': ({ subjectKnife }) => quantity(subjectKnife.edgeMm, units.mm),
  'baseline.edge': ({ baselineKnife }) => quantity(baselineKnife.edgeMm, units.mm),
  'subject.hrc': ({ subjectKnife }) => quantity(subjectKnife.hrc, units.hrc),
  'baseline.hrc': ({ baselineKnife }) => quantity(baselineKnife.hrc, units.hrc),
  friction: ({ entry }) => quantity(entry.friction, ''),

  'reading.multiplied': ({ entry, row }) => times(row[entry.reading].multiplied),

  ...perReading('quick'),
  ...perReading('careful'),
  'rolling.low': ({ row }) => plain(row.careful.sideLoad.rolling.low, 2),
  'rolling.high': ({ row }) => plain(row.careful.sideLoad.rolling.high, 2),
};
