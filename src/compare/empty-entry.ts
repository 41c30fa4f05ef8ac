import type { ComparisonEntry, KnifeEntry } from '../comparison/entry.ts';
import { knifeInputs } from './knife-inputs.ts';

/** What every knife begins as before anything is typed: each input as an empty one reads. */
function emptyKnife(id: string, name: string, like: ComparisonEntry): KnifeEntry {
  const begun: KnifeEntry = {
    id,
    name,
    state: 'not recorded',
    angle: { deg: 20 },
    edgeMm: 0.4,
    finish: { um: 15 },
    grind: { form: 'flat', spineMm: 3, heightMm: 15 },
    hrc: 60,
    carbide: { volPercent: {} },
  };
  return Object.entries(knifeInputs).reduce((knife, [input, field]) => {
    if (field.applies?.(knife) === false || input === 'name') return knife;
    if (field.kind === 'text') {
      const written = field.write(knife, '', like);
      return written.ok ? written.knife : knife;
    }
    const written = input === 'steel' ? field.write(knife, 'not known', like) : null;
    return written?.ok ? written.knife : knife;
  }, begun);
}

/**
 * Two knives of which nothing is known yet, for the same work and in the same unit as before.
 *
 * @param like the comparison that was there: its work stays
 */
export function emptyEntry(like: ComparisonEntry): ComparisonEntry {
  const knives = [emptyKnife('knife-a', 'Knife A', like), emptyKnife('knife-b', 'Knife B', like)];
  return {
    title: 'My knives',
    knives,
    baseline: 'knife-a',
    subject: 'knife-b',
    reading: 'careful',
    work: like.work,
    slicePush: like.slicePush,
    contactDepthMm: like.contactDepthMm,
    friction: like.friction,
    assumptions: {},
    lengthUnit: like.lengthUnit,
    madeEqual: [],
    faceValues: null,
  };
}
