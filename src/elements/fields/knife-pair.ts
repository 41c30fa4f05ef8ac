import { withShownNames } from '../../comparison/knife-names.ts';
import type { Scene } from '../../scene/scene.ts';

interface Pair {
  knife: string;
  against: string;
}

/** Two lists of the comparison's knives, never the same one in both. Until one is chosen they follow the page's own two. */
export function createKnifePair(knife: HTMLSelectElement | null, against: HTMLSelectElement | null) {
  let chosen: Pair | undefined;
  let shown: Pair = { knife: '', against: '' };
  const fill = (select: HTMLSelectElement | null, names: readonly [string, string][], id: string) => {
    if (!select) return;
    const same = names.map(([value, name]) => `${value} ${name}`).join('\n');
    if ([...select.options].map(({ value, text }) => `${value} ${text}`).join('\n') !== same)
      select.replaceChildren(...names.map(([value, name]) => new Option(name, value)));
    select.value = id;
  };
  return {
    /** Takes up a choice; a knife that is chosen while it stands on the other side changes places. */
    choose(target: EventTarget | null): void {
      if (target === knife && knife)
        chosen = {
          knife: knife.value,
          against: knife.value === shown.against ? shown.knife : shown.against,
        };
      if (target === against && against)
        chosen = {
          against: against.value,
          knife: against.value === shown.knife ? shown.against : shown.knife,
        };
    },
    /** The two of the question, put into the lists. */
    show({ entry }: Scene): Pair {
      const ids = entry.knives.map(({ id }) => id);
      if (chosen && !(ids.includes(chosen.knife) && ids.includes(chosen.against))) chosen = undefined;
      shown = chosen ?? { knife: entry.baseline, against: entry.subject };
      const names = withShownNames(entry.knives).map(({ id, name }): [string, string] => [id, name]);
      fill(knife, names, shown.knife);
      fill(against, names, shown.against);
      return shown;
    },
  };
}
