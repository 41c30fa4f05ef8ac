import { readFileSync } from 'node:fs';
import type { Browser } from '@playwright/test';
import { quantile } from './quantile.ts';

const libraries = ['node_modules/d3/dist/d3.min.js', 'node_modules/@observablehq/plot/dist/plot.umd.min.js'];
const movements = 40;

/** What the script below has of the library it draws with. */
interface PlainPlot {
  plot(options: object): SVGSVGElement;
  rectY(data: number[], options: object): unknown;
  binX(outputs: object, inputs: object): object;
  ruleX(data: (number | undefined)[]): unknown;
}

/**
 * How long it takes to answer a movement the plain way, ms: 20,000 samples of eight factors drawn anew, put in order,
 * and handed to the plot library to be binned and drawn. A yardstick of the machine, for figures that are redrawn here.
 */
export async function plainSamples(browser: Browser, slowdown: number): Promise<number> {
  const page = await browser.newPage({ viewport: { width: 1200, height: 1400 } });
  const session = await page.context().newCDPSession(page);
  for (const library of libraries) await page.addScriptTag({ content: readFileSync(library, 'utf8') });
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  const taken = await page.evaluate(async (times) => {
    const { Plot } = window as unknown as { Plot: PlainPlot };
    const normal = () => Math.sqrt(-2 * Math.log(1 - Math.random())) * Math.cos(2 * Math.PI * Math.random());
    const tangent = (deg: number) => Math.tan((deg * Math.PI) / 180);
    const all: number[] = [];
    for (let step = 0; step < times; step += 1) {
      await new Promise((next) => setTimeout(next, 40));
      const began = performance.now();
      const ratios = Array.from({ length: 20_000 }, () => {
        let log = Math.log(tangent(20 + normal()) / tangent(15 + (step % 10) + normal()));
        for (let factor = 2; factor < 8; factor += 1) log += 0.1 * normal();
        return Math.exp(log);
      }).sort((a, b) => a - b);
      document.body.replaceChildren(
        Plot.plot({
          width: 640,
          height: 260,
          x: { type: 'log' },
          marks: [
            Plot.rectY(
              ratios,
              Plot.binX({ y: 'proportion' }, { x: { value: (ratio: number) => ratio, thresholds: 40 } }),
            ),
            Plot.ruleX([0.05, 0.5, 0.95].map((share) => ratios[Math.floor(share * ratios.length)])),
          ],
        }),
      );
      all.push(performance.now() - began);
    }
    return all;
  }, movements);
  await page.close();
  return quantile(taken, 0.5);
}
