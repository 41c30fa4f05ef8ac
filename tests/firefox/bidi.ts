/** What comes over the wire: an answer to a command, or an event. */
interface Message {
  id?: number;
  type: 'success' | 'error' | 'event';
  method?: string;
  params?: unknown;
  result?: unknown;
  error?: string;
  message?: string;
}

/** How long an answer may take before the command is called lost. */
const patienceMs = 30_000;

/** A session of WebDriver BiDi (W3C): commands out, answers and events in. */
export interface Bidi {
  /** @throws Error with the browser's own message where it refuses the command, or where no answer comes */
  send: <T>(method: string, params: object) => Promise<T>;
  on: (method: string, listener: (params: never) => void) => void;
  close: () => void;
}

/** Opens a session at the address a browser listens on. */
export async function bidiAt(address: string): Promise<Bidi> {
  const socket = new WebSocket(`${address}/session`);
  await new Promise<void>((open, fail) => {
    socket.onopen = () => {
      open();
    };
    socket.onerror = () => {
      fail(new Error(`no session at ${address}`));
    };
  });
  const waiting = new Map<number, { done: (result: never) => void; fail: (error: Error) => void }>();
  const listeners = new Map<string, ((params: never) => void)[]>();
  socket.onmessage = ({ data }) => {
    const said = JSON.parse(String(data)) as Message;
    if (said.type === 'event')
      for (const listener of listeners.get(said.method ?? '') ?? []) listener(said.params as never);
    const asked = waiting.get(said.id ?? Number.NaN);
    waiting.delete(said.id ?? Number.NaN);
    if (said.type === 'success') asked?.done(said.result as never);
    if (said.type === 'error') asked?.fail(new Error(`${said.error ?? ''}: ${said.message ?? ''}`));
  };
  socket.onclose = () => {
    for (const { fail } of waiting.values()) fail(new Error('the browser has gone'));
  };
  let sent = 0;
  return {
    send: (method, params) =>
      new Promise((done, fail) => {
        sent += 1;
        const timer = setTimeout(() => {
          fail(new Error(`no answer to ${method} ${JSON.stringify(params)}`));
        }, patienceMs);
        const answered =
          <A>(act: (answer: A) => void) =>
          (answer: A) => {
            clearTimeout(timer);
            act(answer);
          };
        waiting.set(sent, { done: answered(done), fail: answered(fail) });
        socket.send(JSON.stringify({ id: sent, method, params }));
      }),
    on: (method, listener) => {
      listeners.set(method, [...(listeners.get(method) ?? []), listener]);
    },
    close: () => {
      socket.close();
    },
  };
}
