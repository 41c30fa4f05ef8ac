import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';

const kinds: Record<string, string> = {
  '.css': 'text/css',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
};

/** Files of a folder as a good host sends them: packed by brotli, once each, fonts as they are. */
export async function brotliHost(folder: string): Promise<{ origin: string; close: () => void }> {
  const packed = new Map<string, Buffer>();
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const file = join(folder, pathname.endsWith('/') ? `${pathname}index.html` : pathname);
    if (!existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    const isFont = extname(file) === '.woff2';
    const body = packed.get(file) ?? (isFont ? readFileSync(file) : brotliCompressSync(readFileSync(file)));
    packed.set(file, body);
    response
      .writeHead(200, {
        'content-type': kinds[extname(file)] ?? 'application/octet-stream',
        'content-length': body.length,
        ...(isFont ? {} : { 'content-encoding': 'br' }),
      })
      .end(body);
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  return {
    origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}
