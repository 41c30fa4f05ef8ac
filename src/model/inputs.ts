/** Every uncertain input of a line-up, as something that can be drawn and put in its place. */

import { measures, parameters } from './quantities.ts';
import { spreadOf, type Limits, type Spread } from './sampling.ts';
import type { CarbideKind, Knife, LineUp, Quantity } from './types.ts';

/** One uncertain input. */
export interface Input {
  /** Id of the knife it belongs to, or null where all knives share one sample. */
  knife: string | null;
  /** The name it is reported under, such as `angleDeg` or `carbideVolPercent.MC`. */
  name: string;
  spread: Spread;
  /** Puts a value into the draft. */
  set: (value: number) => void;
}

const EXPONENTS = ['angleExponent', 'thicknessExponent', 'finishExponent', 'hardnessExponent'] as const;
type SharedName = 'friction' | (typeof EXPONENTS)[number];

type Add = (
  name: string,
  quantity: Quantity | undefined,
  allowed: Limits,
  set: (value: number) => void,
) => void;

/** A copy of the line-up to draw into, and every input of it that varies; those known exactly are already in place. */
export function drawable(lineUp: LineUp): { draft: LineUp; inputs: Input[] } {
  const draft: LineUp = {
    ...lineUp,
    knives: lineUp.knives.map((knife) => ({
      ...knife,
      finish: { ...knife.finish },
      carbideVolPercent: { ...knife.carbideVolPercent },
    })),
  };
  const inputs: Input[] = [];
  const add = (input: Input): void => {
    const { low, middle, high } = input.spread;
    if (low === high) input.set(middle);
    else inputs.push(input);
  };
  for (const knife of draft.knives) {
    addKnife(knife, (name, quantity, allowed, set) => {
      if (quantity !== undefined) add({ knife: knife.id, name, spread: spreadOf(quantity, allowed), set });
    });
  }
  const assumptions = { ...draft.assumptions };
  draft.assumptions = assumptions;
  const shared = (name: SharedName, given: Quantity | undefined, set: (value: number) => void): void => {
    const { default: middle, low, high, accepts: allowed } = parameters[name];
    const spread: Spread =
      given === undefined
        ? { shape: 'triangular', low, middle, high, allowed }
        : spreadOf(given, allowed, 'triangular');
    add({ knife: null, name, spread, set });
  };
  shared('friction', draft.friction, (value) => (draft.friction = value));
  for (const name of EXPONENTS) shared(name, assumptions[name], (value) => (assumptions[name] = value));
  return { draft, inputs };
}

function addKnife(knife: Knife, add: Add): void {
  add('angleDeg', knife.angleDeg, measures.angleDeg, (value) => (knife.angleDeg = value));
  add(
    'microbevelAngleDeg',
    knife.microbevelAngleDeg,
    measures.microbevelAngleDeg,
    (value) => (knife.microbevelAngleDeg = value),
  );
  add('edgeMm', knife.edgeMm, measures.edgeMm, (value) => (knife.edgeMm = value));
  if ('um' in knife.finish) {
    const finish = knife.finish;
    add('finish', finish.um, measures.finishUm, (value) => (finish.um = value));
  }
  add('hrc', knife.hrc, measures.hrc, (value) => (knife.hrc = value));
  for (const kind of Object.keys(knife.carbideVolPercent) as CarbideKind[]) {
    add(`carbideVolPercent.${kind}`, knife.carbideVolPercent[kind], measures.carbideVolPercent, (value) => {
      knife.carbideVolPercent[kind] = value;
    });
  }
}
