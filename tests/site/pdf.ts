import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Whether Poppler's tools, which read a PDF apart from the browser that made it, are on this machine. */
export const canReadPdf = (): boolean => spawnSync('pdftotext', ['-v']).status === 0;

function through<T>(pdf: Buffer, read: (file: string, folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'printed-'));
  try {
    const file = join(folder, 'printed.pdf');
    writeFileSync(file, pdf);
    return read(file, folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The text of each page, as it can be selected. */
export const pdfPages = (pdf: Buffer): string[] =>
  through(pdf, (file) =>
    spawnSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).stdout.split('\f').slice(0, -1),
  );

/** A page as SVG, in points. */
export const pdfPageSvg = (pdf: Buffer, page: number): string =>
  through(pdf, (file, folder) => {
    const out = join(folder, 'page.svg');
    spawnSync('pdftocairo', ['-svg', '-f', String(page), '-l', String(page), file, out]);
    return readFileSync(out, 'utf8');
  });
