/** The inputs of a knife on a page, from the table of its fields. */
import type { Field } from './field.ts';
import { knifeFieldsShown } from './knife-fields.ts';
import type { EntryRow, Place } from './knife-fields.ts';

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

/** The lines of the form at one place, in the order in which a person measures a knife. */
export const rowsAt = (place: Place): readonly EntryRow[] =>
  allShown.flatMap(({ asked }) => asked).filter((row) => row.place === place);
