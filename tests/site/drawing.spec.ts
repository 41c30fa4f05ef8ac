import { expect, live, test, unfold } from './test.ts';
import { lessons, oneIn } from './pages.ts';

/** A drawing as far as a reader sees it: attributes sorted, coordinates to a tenth of a pixel (from hundredths, which is what a page is built with), ids and labels aside. */
const seen = `(svg => {
  const round = text => text.replace(/-?\\d+\\.\\d+(?:e-?\\d+)?/g, digits => String(Math.round(Math.round(Number(digits) * 100) / 10) / 10 || 0));
  const walk = element => element.nodeType === 3 ? element.textContent : element.nodeName.toLowerCase()
    + [...element.attributes].filter(({ name }) => !/^(id|clip-path|aria-label|data-mark|xmlns)$/.test(name))
      .map(({ name, value }) => ' ' + name + '=' + round(value)).sort().join('')
    + '(' + [...element.childNodes].map(walk).join(',') + ')';
  return walk(svg);
})`;

// On screens of one dot a pixel Plot sets lines on half pixels; at build there is no screen.
test.use({ deviceScaleFactor: 2 });

/**
 * Plot is cut down for the browser: what it draws there must be what the whole of it drew at build. Of every figure the
 * same is asked without a browser by tests/figure-kit/lean-plot.test.ts.
 */
for (const path of ['/', '/argue/', ...oneIn(4, lessons())]) {
  test(`${path} draws in the browser what it drew at build`, async ({ page }) => {
    const read = () =>
      page.evaluate(
        `[...document.querySelectorAll('kf-figure')].map(figure => figure.getAttribute('of') + [...figure.querySelectorAll('.drawing')].filter(one => one.checkVisibility()).map(one => ${seen}(one.firstElementChild)).join())`,
      );
    await page.goto(path);
    await unfold(page);
    const built = (await read()) as string[];
    expect(built.length).toBeGreaterThan(0);
    const control = page.locator('main [data-own] input, main [data-live] input').first();
    await control.focus();
    await live(page);
    await page.waitForTimeout(300);
    expect(await read()).toEqual(built);
  });
}
