import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
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

/**
 * Files of a folder as a good host sends them: packed by brotli, once each, fonts as they are. Scripts and style sheets
 * are packed before the first is asked for, or the first touch would wait for it.
 */
export async function brotliHost(folder: string): Promise<{ origin: string; close: () => void }> {
  const packed = new Map<string, Buffer>();
  const pack = (file: string): Buffer => {
    const plain = readFileSync(file);
    const body = extname(file) === '.woff2' ? plain : brotliCompressSync(plain);
    packed.set(file, body);
    return body;
  };
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }))
    if (['.css', '.js'].includes(extname(name))) pack(join(folder, name));
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const file = join(folder, pathname.endsWith('/') ? `${pathname}index.html` : pathname);
    if (!existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    const body = packed.get(file) ?? pack(file);
    response
      .writeHead(200, {
        'content-type': kinds[extname(file)] ?? 'application/octet-stream',
        'content-length': body.length,
        ...(extname(file) === '.woff2' ? {} : { 'content-encoding': 'br' }),
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
