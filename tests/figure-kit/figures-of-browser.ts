import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { rolldown } from 'rolldown';
import type { draw } from '../../src/figure-kit/draw.ts';
import type { Figure } from '../../src/figure-kit/figure.ts';
import { leanPlot } from '../../src/figure-kit/lean-plot.mjs';
import type { Topic } from '../../src/topics/topic.ts';

/** What the site's own build does not say either: d3 has dates of its own beside those that are left out. */
const checks = { bundlerTimings: false, namespaceConflict: false };

/** Writes all figures and what draws them as one module, put together as they are for the browser. */
async function bundle(folder: string): Promise<string> {
  const entry = join(folder, 'figures.js');
  const doors = readdirSync('src/topics')
    .map((name) => resolve(`src/topics/${name}/index.ts`))
    .filter((door) => existsSync(door));
  const lines = [
    `export { draw } from ${JSON.stringify(resolve('src/figure-kit/draw.ts'))};`,
    ...doors.map((door, index) => `export { topic as topic${index} } from ${JSON.stringify(door)};`),
  ];
  writeFileSync(entry, lines.join('\n'));
  const whole = await rolldown({ input: entry, plugins: [leanPlot()], checks });
  await whole.write({ dir: folder, format: 'es', entryFileNames: 'figures.mjs' });
  await whole.close();
  return join(folder, 'figures.mjs');
}

interface FiguresOfBrowser {
  draw: typeof draw;
  figures: ReadonlyMap<string, Figure>;
  figureOf: (id: string) => Figure;
}

let known: Promise<FiguresOfBrowser> | undefined;

/** The figures as a browser has them: with the trimmed Plot, which refuses what none of them should ask for. */
export const figuresOfBrowser = (): Promise<FiguresOfBrowser> => (known ??= build());

async function build(): Promise<FiguresOfBrowser> {
  const folder = mkdtempSync(join(tmpdir(), 'figures-'));
  try {
    const file = pathToFileURL(await bundle(folder)).href;
    const { draw: drawing, ...rest } = (await import(/* @vite-ignore */ file)) as { draw: typeof draw };
    const topics = Object.values(rest as Record<string, Topic>);
    const figures = new Map(
      topics.flatMap((topic) => topic.figures ?? []).map((figure) => [figure.id, figure] as const),
    );
    const figureOf = (id: string): Figure => {
      const figure = figures.get(id);
      if (!figure) throw new Error(`the browser has no figure ${id}`);
      return figure;
    };
    return { draw: drawing, figures, figureOf };
  } finally {
    rmSync(folder, { recursive: true });
  }
}
