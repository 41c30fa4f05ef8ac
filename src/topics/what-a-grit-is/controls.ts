import { grainSizeUm, gritTable, nearestGrit } from '../../model/index.ts';
import type { GritScale } from '../../model/index.ts';
import { knifeOf, withKnife } from '../base/controls.ts';
import type { Control } from '../base/controls.ts';
import type { Role } from '../../comparison/role.ts';
import { asGrit, gritName, scaleName, scales, spanOf, umOf } from './values.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';

const finishOf = (entry: ComparisonEntry, role: Role): { scale: GritScale; grit: number } =>
  asGrit(knifeOf(entry, role).finish);

const said = (scale: GritScale, grit: number): string =>
  `${gritName(scale, grit)}, ${umOf(grainSizeUm({ scale, grit }))}`;

const gradesOf = (scale: GritScale): number[] => gritTable(scale).rows.map(([grit]) => grit);
const most = Math.max(...scales.map((scale) => gradesOf(scale).length)) - 1;

/** Steps through the grades of a knife's own scale, coarse to fine. */
const grit = (role: Role): Control => ({
  label: (entry) => `${knifeOf(entry, role).name}: grit`,
  min: 0,
  max: most,
  step: 1,
  unit: '',
  last: (entry) => gradesOf(finishOf(entry, role).scale).length - 1,
  read(entry) {
    const { scale, grit: own } = finishOf(entry, role);
    return gradesOf(scale).indexOf(nearestGrit(scale, grainSizeUm({ scale, grit: own })));
  },
  write(entry, value) {
    const { scale } = finishOf(entry, role);
    const grades = gradesOf(scale);
    const chosen = grades[Math.min(value, grades.length - 1)];
    if (chosen === undefined)
      throw new RangeError(`step ${value} is not between 0 and ${grades.length - 1} on the ${scale} scale`);
    return withKnife(entry, role, (knife) => ({ ...knife, finish: { scale, grit: chosen } }));
  },
  say: (entry) => {
    const { scale, grit: own } = finishOf(entry, role);
    return said(scale, own);
  },
});

/** The same number on another scale; a number the other scale does not reach becomes the nearest it has. */
const scale = (role: Role): Control => ({
  label: (entry) => `${knifeOf(entry, role).name}: scale`,
  min: 0,
  max: scales.length - 1,
  step: 1,
  unit: '',
  read: (entry) => scales.indexOf(finishOf(entry, role).scale),
  write(entry, value) {
    const other = scales[value];
    if (other === undefined) throw new RangeError(`scale ${value} is not between 0 and ${scales.length - 1}`);
    const { first, last } = spanOf(other);
    const same = Math.min(last, Math.max(first, finishOf(entry, role).grit));
    return withKnife(entry, role, (knife) => ({ ...knife, finish: { scale: other, grit: same } }));
  },
  say: (entry) => scaleName[finishOf(entry, role).scale],
});

export const gritsControls: Record<string, Control> = {
  'subject.grit': grit('subject'),
  'baseline.grit': grit('baseline'),
  'subject.scale': scale('subject'),
  'baseline.scale': scale('baseline'),
};
