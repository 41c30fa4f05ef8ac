import { knifeOf } from '../base/controls.ts';
import type { Control } from '../base/controls.ts';
import type { Role } from '../../comparison/role.ts';
import type { KnifeEntry, ComparisonEntry } from '../../comparison/entry.ts';

/** The knives that may take a role: all but the one in the other. The last of a comparison, mostly the newest, is first. */
const candidates = (entry: ComparisonEntry, role: Role): KnifeEntry[] => {
  const taken = role === 'subject' ? entry.baseline : entry.subject;
  return entry.knives.filter(({ id }) => id !== taken).reverse();
};

/** Which knife of the comparison is looked at, or compared with. */
const chosen = (role: Role, label: string): Control => ({
  label: () => label,
  min: 0,
  // A comparison has eight knives at most.
  max: 6,
  step: 1,
  unit: '',
  last: (entry) => candidates(entry, role).length - 1,
  read: (entry) => candidates(entry, role).findIndex(({ id }) => id === entry[role]),
  write(entry, value) {
    const all = candidates(entry, role);
    const knife = all[Math.min(value, all.length - 1)];
    if (!knife) throw new RangeError(`place ${value} is not between 0 and ${all.length - 1}`);
    return { ...entry, [role]: knife.id };
  },
  say: (entry) => knifeOf(entry, role).name,
});

export const differentControls: Record<string, Control> = {
  'chosen.subject': chosen('subject', 'The knife looked at'),
  'chosen.baseline': chosen('baseline', 'The knife it is compared with'),
};
