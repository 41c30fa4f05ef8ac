/** The inputs of a knife on a page, from the table of its fields. */
import type { Field } from './field.ts';
import { knifeFieldsShown } from './knife-fields.ts';
import type { KnifeFieldShown } from './knife-fields.ts';

const allShown = Object.values(knifeFieldsShown);

/** Every input of a knife by its name. */
export const knifeInputs: Readonly<Record<string, Field>> = Object.assign(
  {},
  ...allShown.map(({ inputs }) => inputs),
) as Record<string, Field>;

export function knifeInputNamed(name: string): Field {
  const input = Object.hasOwn(knifeInputs, name) ? knifeInputs[name] : undefined;
  if (!input)
    throw new RangeError(`there is no input named "${name}"; the names stand in src/compare/knife-fields.ts`);
  return input;
}

const namesIn = (group: KnifeFieldShown['group']): string[] =>
  allShown.filter((field) => field.group === group).flatMap(({ inputs }) => Object.keys(inputs));

/** The inputs above all headings. */
export const ungroupedInputs: readonly string[] = namesIn(null);

/** The inputs under their headings, in the order in which a person measures a knife. */
export const inputGroups = (['Edge', 'Grind', 'Steel'] as const).map((title) => ({
  title,
  names: namesIn(title),
}));
