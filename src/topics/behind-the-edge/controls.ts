import { checkSection, exactGrind, nominal } from '../../model/index.ts';
import { knifeOf, withKnife } from '../base/controls.ts';
import type { Control } from '../base/controls.ts';
import type { Role } from '../../comparison/role.ts';
import type { KnifeEntry, ComparisonEntry } from '../../comparison/entry.ts';
import { oneQuantity } from '../../comparison/knife-measures.ts';
import { units } from '../../scene/show.ts';

const [least, most, step] = [6, 40, 0.5];

function stands({ grind, edgeMm }: KnifeEntry, heightMm: number): boolean {
  try {
    checkSection({ ...exactGrind(grind), heightMm, edgeMm: nominal(oneQuantity(edgeMm)) });
    return true;
  } catch {
    return false;
  }
}

/** The greatest height of the primary grind at which a curved one still holds together. */
function highest(entry: ComparisonEntry, role: Role): number {
  const knife = knifeOf(entry, role);
  let heightMm = most;
  while (heightMm > least && !stands(knife, heightMm)) heightMm -= step;
  return heightMm;
}

/** How high the primary grind reaches: the lower, the stouter the blade just behind its edge. */
const grindHeight = (role: Role): Control => ({
  label: (entry) => `${knifeOf(entry, role).name}: height of the primary grind`,
  min: least,
  max: most,
  step,
  unit: units.mm,
  last: (entry) => highest(entry, role),
  read: (entry) => nominal(knifeOf(entry, role).grind.heightMm),
  write: (entry, value) =>
    withKnife(entry, role, (knife) => ({
      ...knife,
      grind: { ...knife.grind, heightMm: Math.min(value, highest(entry, role)) },
    })),
});

export const behindControls: Record<string, Control> = {
  'subject.grindHeight': grindHeight('subject'),
  'baseline.grindHeight': grindHeight('baseline'),
};
