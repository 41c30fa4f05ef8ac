import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Keeping } from '../../../src/comparison/saved/keeping.ts';
import { lastStorage } from '../../../src/comparison/saved/last.ts';
import { SavedStore } from '../../../src/comparison/saved/stored.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import { loft } from '../entries.ts';
import { fakeStorage } from './storage.ts';

const example = loft();
const { invented: _invented, ...ofVisitor } = example;
/** Comparisons are told from one another by their titles. */
const titled = (title: string): ComparisonEntry => ({ ...ofVisitor, title });
const links = [1, 2].map((number) => titled(`link ${number}`));

interface Tab {
  keeping: Keeping;
  /** What undo and redo have: the page's store. */
  past: ComparisonEntry[];
  shown: ComparisonEntry;
  future: ComparisonEntry[];
}

/** Visitors, their tabs and one storage. Every change gives a comparison with a title of its own. */
class World {
  storage = fakeStorage();
  tabs: Tab[] = [];
  /** Of each comparison a visitor changed, the title of the one it was made from. */
  parents = new Map<string, string>();
  /** Those that were kept at some time. */
  wasKept = new Set<string>();
  /** A visitor who undoes a change lets go of it; one looked at again in another tab stays so. */
  undone = new Set<string>();
  #opened = 0;

  open(link?: ComparisonEntry | 'damaged'): void {
    const keeping = new Keeping(example, String((this.#opened += 1)), () => this.storage);
    const tab: Tab = { keeping, past: [], shown: example, future: [] };
    this.tabs.push(tab);
    if (link === 'damaged') keeping.linkRefused();
    else if (link) this.link(tab, link);
    else this.showKept(tab);
  }

  #replace(tab: Tab, entry: ComparisonEntry): void {
    tab.past.push(tab.shown);
    tab.future = [];
    this.#show(tab, entry);
  }

  #show(tab: Tab, entry: ComparisonEntry): void {
    tab.shown = entry;
    tab.keeping.shown(entry);
  }

  link(tab: Tab, link: ComparisonEntry): void {
    tab.keeping.linkOpened(link);
    this.#replace(tab, link);
  }

  change(tab: Tab): void {
    const next = titled(`change ${this.parents.size + 1}`);
    this.parents.set(next.title, tab.shown.title);
    this.#replace(tab, next);
  }

  step(tab: Tab, from: 'past' | 'future', to: 'past' | 'future'): void {
    const next = tab[from].pop();
    if (!next) return;
    if (from === 'past') this.undone.add(tab.shown.title);
    else this.undone.delete(next.title);
    tab[to].push(tab.shown);
    this.#show(tab, next);
  }

  anew(tab: Tab): void {
    tab.keeping.begunAnew();
    this.#replace(tab, example);
  }

  due(tab: Tab): void {
    const said = tab.keeping.due();
    const kept = this.kept();
    if (kept !== undefined) this.wasKept.add(kept);
    const isKept = kept === tab.shown.title || tab.shown.invented === true;
    if (this.storage.refuses === '') expect(said?.said).not.toBe('not kept');
    expect(isKept || said?.said === 'not kept', 'kept, or said not to be').toBe(true);
  }

  putBack(tab: Tab): void {
    const said = tab.keeping.putBack();
    if (said?.said !== 'put back') return;
    // With all that it was made from.
    let undone: string | undefined = said.instead.title;
    for (; undone !== undefined; undone = this.parents.get(undone)) this.undone.add(undone);
    const kept = this.kept();
    if (kept !== undefined) this.wasKept.add(kept);
    this.#replace(tab, said.entry);
  }

  showKept(tab: Tab): void {
    const entry = tab.keeping.keptShown();
    if (entry) this.#replace(tab, entry);
  }

  /** A page that is left keeps at once what still waits. */
  close(tab: Tab): void {
    tab.keeping.due();
    const kept = this.kept();
    if (kept !== undefined) this.wasKept.add(kept);
    this.tabs = this.tabs.filter((other) => other !== tab);
  }

  kept(): string | undefined {
    const found = this.#always(() => lastStorage(() => this.storage).look());
    // The example is there again for the asking.
    return found.is === 'kept' && found.worth ? found.entry.title : undefined;
  }

  saved(): string[] {
    return this.#always(() =>
      new SavedStore(() => this.storage).look().items.map(({ entry }) => entry.title),
    );
  }

  #always<Result>(look: () => Result): Result {
    const { refuses } = this.storage;
    this.storage.refuses = '';
    const result = look();
    this.storage.refuses = refuses;
    return result;
  }

  /** The comparisons that were kept once and of which neither they nor what was made of them is anywhere now. */
  lost(): string[] {
    const present = [
      this.kept() ?? '',
      ...this.saved(),
      ...this.tabs.flatMap(({ past, shown, future }) =>
        [...past, shown, ...future].map(({ title }) => title),
      ),
    ];
    const reached = new Set<string>();
    for (let title of present)
      for (let next: string | undefined = title; next !== undefined; next = this.parents.get(title)) {
        reached.add(next);
        title = next;
      }
    return [...this.wasKept].filter((title) => !reached.has(title) && !this.undone.has(title));
  }
}

type Command = (world: World, tab: Tab) => void;

const commands: Record<string, Command> = {
  open: (world) => world.open(),
  'open a link': (world) => world.open(links[0]),
  'open another link': (world) => world.open(links[1]),
  'open a damaged link': (world) => world.open('damaged'),
  'go to a link': (world, tab) => world.link(tab, links[0] ?? example),
  change: (world, tab) => world.change(tab),
  'change and rest': (world, tab) => {
    world.change(tab);
    world.due(tab);
  },
  undo: (world, tab) => world.step(tab, 'past', 'future'),
  redo: (world, tab) => world.step(tab, 'future', 'past'),
  'start again': (world, tab) => world.anew(tab),
  rest: (world, tab) => world.due(tab),
  'put back': (world, tab) => world.putBack(tab),
  'show what is kept': (world, tab) => world.showKept(tab),
  'be told of another tab': (_world, tab) => tab.keeping.writtenElsewhere(),
  close: (world, tab) => world.close(tab),
  'deny storage': (world) => (world.storage.refuses = 'SecurityError'),
  'fill storage': (world) => (world.storage.refuses = 'QuotaExceededError'),
  'allow storage': (world) => (world.storage.refuses = ''),
};

/** So that most sequences come to more than a page looked at. */
const often = [
  'open',
  'open a link',
  'change and rest',
  'change and rest',
  'close',
  'put back',
  'allow storage',
];

const sequence = fc.array(fc.tuple(fc.constantFrom(...Object.keys(commands), ...often), fc.nat(2)), {
  minLength: 10,
  maxLength: 30,
  size: 'max',
});

test('whatever is opened, changed, undone, closed or denied, what was kept is in a tab, kept or in Saved', () => {
  fc.assert(
    fc.property(sequence, (steps) => {
      const world = new World();
      for (const [name, at] of steps) {
        if (world.tabs.length === 0) world.open();
        const tab = world.tabs[at % world.tabs.length];
        if (tab) commands[name]?.(world, tab);
        expect(world.lost(), name).toEqual([]);
      }
    }),
    { numRuns: 100 },
  );
}, 120_000);

test('two tabs that are changed in turn leave one version of each in Saved', () => {
  const world = new World();
  world.open();
  world.open();
  const [one, other] = world.tabs;
  if (!one || !other) throw new Error('two tabs were opened');
  for (let turn = 0; turn < 4; turn += 1)
    for (const tab of [one, other]) {
      world.change(tab);
      world.due(tab);
    }
  expect(world.kept()).toBe('change 8');
  expect(world.saved()).toEqual(['change 6', 'change 7']);
});
