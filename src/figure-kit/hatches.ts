import type { Family } from '../model/index.ts';
import { families } from '../scene/factors.ts';

/** What is hatched: a factor's family, or steel cut through, which stands for none of them. */
type Hatched = Family | 'blade';

const hatch: Record<Hatched, string> = {
  geometry:
    '<pattern id="hatch-geometry" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">' +
    '<rect width="7" height="7" class="ground-geometry"></rect>' +
    '<line x1="0" y1="0" x2="0" y2="7" class="line-geometry"></line></pattern>',
  finish:
    '<pattern id="hatch-finish" width="6" height="6" patternUnits="userSpaceOnUse">' +
    '<rect width="6" height="6" class="ground-finish"></rect>' +
    '<circle cx="3" cy="3" r="1.1" class="dot-finish"></circle></pattern>',
  steel:
    '<pattern id="hatch-steel" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">' +
    '<rect width="7" height="7" class="ground-steel"></rect>' +
    '<path d="M0 0V7M0 0H7" class="line-steel"></path></pattern>',
  blade:
    '<pattern id="hatch-blade" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">' +
    '<rect width="7" height="7" class="ground-blade"></rect>' +
    '<line x1="0" y1="0" x2="0" y2="7" class="line-blade"></line></pattern>',
};

/** The hatches that drawings refer to by `url(#hatch-…)`, as the definitions of an SVG. */
export const hatches = (of: readonly Hatched[] = [...families, 'blade']): string =>
  `<defs>${of.map((family) => hatch[family]).join('')}</defs>`;
