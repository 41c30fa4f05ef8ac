import type { Bidi } from './bidi.ts';

/** Keys that are no character, as WebDriver writes them. */
export const keys = { enter: '\ue007', end: '\ue010', right: '\ue014', tab: '\ue004' } as const;

interface Evaluated {
  type: 'success' | 'exception';
  result: { value?: unknown };
  exceptionDetails?: { text: string };
}
interface Located {
  nodes: { sharedId: string }[];
}

/** A page in a tab, moved by real keys and clicks. */
export interface Tab {
  open: (url: string) => Promise<void>;
  /** The value of an expression in the page, which must be a text. */
  read: (expression: string) => Promise<string>;
  /** The text of the first element a selector finds, its white space as read. */
  text: (selector: string) => Promise<string>;
  /** Waits until an expression is true; what did not come is named. */
  until: (expression: string) => Promise<void>;
  /** Clicks the first element a selector finds. */
  click: (selector: string) => Promise<void>;
  /** Puts a text in place of what a field holds, key by key. */
  type: (selector: string, text: string) => Promise<void>;
  press: (key: string) => Promise<void>;
  /** What went wrong in the page so far: errors, breaches of the policy, requests that left the site. */
  complaints: string[];
}

const patienceMs = 20_000;

export async function newTab(bidi: Bidi, origin: string): Promise<Tab> {
  const { context } = await bidi.send<{ context: string }>('browsingContext.create', { type: 'tab' });
  const complaints: string[] = [];
  await bidi.send('session.subscribe', { events: ['log.entryAdded', 'network.beforeRequestSent'] });
  // Firefox writes a breach of the policy into its console, as an error.
  bidi.on('log.entryAdded', ({ level, text }: { level: string; text: string | null }) => {
    if (level === 'error') complaints.push(text ?? '');
  });
  bidi.on('network.beforeRequestSent', ({ request }: { request: { url: string } }) => {
    if (/^(https?|wss?):/.test(request.url) && new URL(request.url).origin !== origin)
      complaints.push(`a request left the site: ${request.url}`);
  });

  const evaluate = async (expression: string): Promise<unknown> => {
    const { type, result, exceptionDetails } = await bidi.send<Evaluated>('script.evaluate', {
      expression,
      target: { context },
      awaitPromise: true,
    });
    if (type === 'exception') throw new Error(`${expression}: ${exceptionDetails?.text ?? ''}`);
    return result.value;
  };
  const until = async (expression: string): Promise<void> => {
    for (const end = Date.now() + patienceMs; Date.now() < end;) {
      // A page on its way to another has no answer yet.
      if ((await evaluate(`Boolean(${expression})`).catch(() => false)) === true) return;
      await new Promise((done) => setTimeout(done, 50));
    }
    throw new Error(`never came: ${expression}`);
  };
  const read = async (expression: string): Promise<string> => String(await evaluate(expression));
  const find = (selector: string): string => `document.querySelector(${JSON.stringify(selector)})`;
  const press = async (...all: string[]): Promise<void> => {
    const actions = all.flatMap((value) => [
      { type: 'keyDown', value },
      { type: 'keyUp', value },
    ]);
    await bidi.send('input.performActions', { context, actions: [{ type: 'key', id: 'keys', actions }] });
  };
  const click = async (selector: string): Promise<void> => {
    await until(find(selector));
    await evaluate(`${find(selector)}.scrollIntoView({ block: 'center' })`);
    const { nodes } = await bidi.send<Located>('browsingContext.locateNodes', {
      context,
      locator: { type: 'css', value: selector },
      maxNodeCount: 1,
    });
    const actions = [
      { type: 'pointerMove', x: 0, y: 0, origin: { type: 'element', element: nodes[0] } },
      { type: 'pointerDown', button: 0 },
      { type: 'pointerUp', button: 0 },
    ];
    await bidi.send('input.performActions', {
      context,
      actions: [{ type: 'pointer', id: 'mouse', actions }],
    });
  };
  return {
    complaints,
    click,
    press,
    read,
    until,
    open: async (url) => {
      await bidi.send('browsingContext.navigate', { context, url, wait: 'complete' });
    },
    text: (selector) => read(`${find(selector)}.textContent.replace(/\\s+/g, ' ').trim()`),
    type: async (selector, text) => {
      await click(selector);
      await evaluate(`${find(selector)}.select()`);
      await press(...text);
    },
  };
}
