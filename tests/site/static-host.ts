import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { extname, join } from 'node:path';

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
  '.woff2': 'font/woff2',
};

/** The headers a built site's `_headers` asks for at an address below the site's own. */
export function headersFor(folder: string, path: string): [string, string][] {
  let fits = false;
  const headers: [string, string][] = [];
  for (const line of readFileSync(join(folder, '_headers'), 'utf8').split('\n')) {
    const [name = '', ...rest] = line.trim().split(': ');
    if (line.startsWith('/'))
      fits = line.endsWith('*') ? path.startsWith(line.slice(0, -1)) : path === line.trim();
    else if (fits && line.startsWith('  ')) headers.push([name, rest.join(': ')]);
  }
  return headers;
}

export interface StaticHost {
  /** The site's address, with the slash at its end. */
  address: string;
  /** Leaves every later question unanswered, as where there is no network. */
  endPoint: () => Promise<void>;
  /** Answers again, at the same address. */
  start: () => Promise<void>;
}

/** A host as plain as one can be: files of a folder at a base path, with the headers the folder asks for; at any free port, unless one is named. */
export async function hostOf(folder: string, base = '/', port = 0): Promise<StaticHost> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const path = pathname.startsWith(base) ? pathname.slice(base.length - 1) : '/nowhere';
    let file = join(folder, decodeURI(path));
    if (existsSync(file) && statSync(file).isDirectory()) file = join(file, 'index.html');
    const found = existsSync(file);
    if (!found) file = join(folder, '404.html');
    for (const [name, value] of headersFor(folder, path)) response.setHeader(name, value);
    response.setHeader('Content-Type', types[extname(file)] ?? 'application/octet-stream');
    response.writeHead(found ? 200 : 404).end(readFileSync(file));
  });
  const start = () =>
    new Promise<void>((resolve) => {
      server.listen(port, '127.0.0.1', resolve);
    });
  await start();
  ({ port } = server.address() as AddressInfo);
  return {
    address: `http://127.0.0.1:${port}${base}`,
    start,
    endPoint: () =>
      new Promise((resolve) => {
        server.close(() => {
          resolve();
        });
        server.closeAllConnections();
      }),
  };
}
