import type { ComparisonEntry } from '../entry.ts';

/**
 * The rule of what may be written over: what is kept on the visitor's machine is written over only by what was made from
 * it in the same tab. Anything else is put into Saved first. Pure: it is told what happens and says what is to be done.
 */

/** Where a comparison comes from: `own.…` begun here, `link.…` the link it came from, with a short hash of it and its opening, `example` the page's own. */
export type Origin = string;
export const exampleOrigin: Origin = 'example';

export interface Version {
  entry: ComparisonEntry;
  /** The same text for the same comparison, however it came. */
  key: string;
  /** Whether there is anything of a visitor's in it: the unchanged example and an empty comparison need no saving. */
  worth: boolean;
}

export interface Kept extends Version {
  origin: Origin;
  /** Names the row of versions, each made from the one before it in one tab. */
  line: string;
}

/** What is stored, as it is found now. */
export type Stored = { is: 'nothing' } | { is: 'denied' } | { is: 'unreadable' } | ({ is: 'kept' } & Kept);

/** Why what was kept is put into Saved. */
export type Because = 'link' | 'another tab' | 'begun anew';

export interface Tab {
  shown: Version & { origin: Origin };
  /** What was stored when this tab last wrote or showed it; null where it never did. */
  held: string | null;
  /** The versions that began an origin here, or are the last of one. */
  origins: ReadonlyMap<string, Origin>;
  /** The origin of what is begun from the example. */
  own: Origin;
  /** This tab's name, how many rows of versions it has begun, and how many comparisons. */
  id: string;
  lines: number;
  begun: number;
  /** Whether its address carried a link that could not be read. */
  refused: boolean;
}

export type Event =
  /** The address gave the comparison. */
  | { what: 'link opened'; version: Version; hash: string }
  | { what: 'link refused' }
  /** What is stored is shown here now. */
  | { what: 'kept shown' }
  /** The visitor starts again with the example. */
  | { what: 'begun anew' }
  /** Changed, undone or redone. */
  | { what: 'shown'; version: Version }
  | { what: 'written elsewhere' }
  /** The pause after a change is over. */
  | { what: 'due' }
  /** What was put into Saved is shown and kept again, in place of what is stored. */
  | { what: 'put back'; kept: Kept };

export type Action =
  | { do: 'put away'; kept: Kept; because: Because }
  /** Store a text that cannot be read elsewhere. */
  | { do: 'lay aside' }
  | { do: 'write'; kept: Kept }
  | { do: 'say'; text: 'another tab changed it' | 'laid aside' | 'not kept' | 'nothing of another tab' };

/** `tab` is its state once all actions are done; where one fails, the rest are left and it stays as it was. */
export interface Step {
  tab: Tab;
  actions: Action[];
}

/** A tab as its page begins, with the page's own example or what its address gave. */
export const newTab = (version: Version, id: string): Tab => ({
  shown: { ...version, origin: exampleOrigin },
  held: null,
  origins: new Map([[version.key, exampleOrigin]]),
  own: `own.${id}`,
  id,
  lines: 0,
  begun: 0,
  refused: false,
});

export const lineOf = ({ id, lines }: Tab): string => `${id}.${lines}`;

/**
 * What an event comes to.
 *
 * @param stored what is stored now, read at this moment: another tab may have written
 */
export function step(tab: Tab, stored: Stored, event: Event): Step {
  switch (event.what) {
    case 'link opened':
      return { tab: opened(tab, stored, event.version, event.hash), actions: [] };
    case 'link refused':
      return { tab: { ...tab, refused: true }, actions: [] };
    case 'kept shown':
      return { tab: stored.is === 'kept' ? taken(tab, stored) : tab, actions: [] };
    case 'begun anew':
      return {
        tab: { ...tab, begun: tab.begun + 1, own: `own.${tab.id}.${tab.begun + 1}`, refused: false },
        actions: [],
      };
    case 'shown':
      return { tab: moved(tab, event.version), actions: [] };
    case 'written elsewhere':
      return { tab, actions: noticed(tab, stored) };
    case 'due':
      return keep(tab, stored);
    case 'put back':
      return putBack(tab, stored, event.kept);
  }
}

/** Shows a version of some origin, as the first of a new row. */
function shownAs(tab: Tab, { entry, key, worth }: Version, origin: Origin): Tab {
  return {
    ...tab,
    shown: { entry, key, worth, origin },
    origins: new Map([...tab.origins, [tab.shown.key, tab.shown.origin], [key, origin]]),
    lines: tab.lines + 1,
  };
}

/** The tab shows what is stored: what it makes of it may be written over it. */
const taken = (tab: Tab, kept: Kept): Tab => ({ ...shownAs(tab, kept, kept.origin), held: kept.key });

function opened(tab: Tab, stored: Stored, version: Version, hash: string): Tab {
  // A page loaded again, or come to by a link of the site: the address carries what is kept.
  if (stored.is === 'kept' && stored.key === version.key) return taken(tab, stored);
  // The same link opened again is another origin: what was made of it the first time is not made from this one.
  return shownAs(tab, version, version.worth ? `link.${hash}.${lineOf(tab)}` : exampleOrigin);
}

function moved(tab: Tab, version: Version): Tab {
  if (version.key === tab.shown.key) return tab;
  const known = tab.origins.get(version.key);
  const begins = tab.shown.origin === exampleOrigin && version.worth;
  const origin = known ?? (begins ? tab.own : tab.shown.origin);
  if (origin !== tab.shown.origin) return shownAs(tab, version, origin);
  return { ...tab, shown: { ...version, origin } };
}

const noticed = (tab: Tab, stored: Stored): Action[] => {
  if (tab.held === null || stored.is !== 'kept') return [];
  const news = stored.key !== tab.shown.key && stored.key !== tab.held && stored.worth;
  return [{ do: 'say', text: news ? 'another tab changed it' : 'nothing of another tab' }];
};

function keep(tab: Tab, stored: Stored): Step {
  const { shown } = tab;
  if (stored.is === 'denied') return { tab, actions: [{ do: 'say', text: 'not kept' }] };
  if (stored.is === 'kept' && stored.key === shown.key)
    return { tab: stored.key === tab.held ? tab : taken(tab, stored), actions: [] };
  const isSafe =
    stored.is === 'nothing' ||
    (stored.is === 'kept' && (!stored.worth || (stored.key === tab.held && stored.origin === shown.origin)));
  if (!isSafe && !shown.worth) return { tab, actions: [] };
  const before: Action[] =
    stored.is === 'unreadable'
      ? [{ do: 'lay aside' }]
      : stored.is === 'kept' && !isSafe
        ? [{ do: 'put away', kept: stored, because: because(tab, stored) }]
        : [];
  return written(tab, before, stored.is === 'unreadable' ? [{ do: 'say', text: 'laid aside' }] : []);
}

/** The tab writes what it shows. */
const written = (tab: Tab, before: Action[], after: Action[]): Step => {
  const { entry, key, worth, origin } = tab.shown;
  return {
    tab: { ...tab, held: key },
    actions: [...before, { do: 'write', kept: { entry, key, worth, origin, line: lineOf(tab) } }, ...after],
  };
};

function because({ held, shown, refused }: Tab, { key }: Kept): Because {
  if (held !== null && held !== key) return 'another tab';
  if (shown.origin.startsWith('link.') || refused) return 'link';
  return held === null ? 'another tab' : 'begun anew';
}

/**
 * Undone, what this tab made of what it shows needs no saving: its own undo and redo have it. Anything else that is stored
 * does.
 */
function putBack(tab: Tab, stored: Stored, kept: Kept): Step {
  const back = shownAs(tab, kept, kept.origin);
  if (stored.is === 'denied') return { tab, actions: [{ do: 'say', text: 'not kept' }] };
  if (stored.is === 'unreadable')
    return written(back, [{ do: 'lay aside' }], [{ do: 'say', text: 'laid aside' }]);
  const isUndone =
    stored.is === 'nothing' ||
    stored.key === kept.key ||
    (stored.key === tab.held && stored.origin === tab.shown.origin);
  return written(back, isUndone ? [] : [{ do: 'put away', kept: stored, because: because(tab, stored) }], []);
}
