import AxeBuilder from '@axe-core/playwright';
import { expect, test, unfold } from './test.ts';
import { kindsOfPage } from './pages.ts';

const looks = [
  { colorScheme: 'light', forcedColors: 'none', width: 1440 },
  { colorScheme: 'dark', forcedColors: 'none', width: 360 },
  { colorScheme: 'dark', forcedColors: 'active', width: 1440 },
] as const;

const hangOnLooks = [
  'color-contrast',
  'target-size',
  'link-in-text-block',
  'scrollable-region-focusable',
  'css-orientation-lock',
];

for (const path of kindsOfPage()) {
  test.describe(path, () => {
    test('has no violation that axe can find', async ({ page }) => {
      test.setTimeout(240_000);
      await page.goto(path);
      await unfold(page);
      // The palette itself is held to its contrasts elsewhere: dark and forced colours are asked of pages that draw.
      const draws = (await page.locator('kf-figure').count()) > 0;
      for (const [index, { colorScheme, forcedColors, width }] of looks.entries()) {
        if (index > 0 && !draws) continue;
        await page.setViewportSize({ width, height: 900 });
        await page.emulateMedia({ colorScheme, forcedColors });
        const axe = new AxeBuilder({ page });
        // Everything once; after that what hangs on colours and on room.
        if (index === 0) axe.options({ rules: { 'target-size': { enabled: true } } });
        else axe.withRules(hangOnLooks);
        const { violations } = await axe.analyze();
        const found = violations.flatMap(({ id, nodes }) =>
          nodes.map(({ html, target }) => `${id}: ${String(target[0])} ${html.slice(0, 160)}`),
        );
        expect(found, `${colorScheme}, forced colours ${forcedColors}, ${width} px`).toEqual([]);
      }
    });

    test('needs no sideways scroll at 320 px', async ({ page }) => {
      await page.setViewportSize({ width: 320, height: 800 });
      await page.goto(path);
      await unfold(page);
      const wide = await page.evaluate(() => {
        const { scrollWidth, clientWidth } = document.documentElement;
        return { scrollWidth, clientWidth };
      });
      expect(wide.scrollWidth).toBeLessThanOrEqual(wide.clientWidth);
    });

    test('lets the keyboard skip to the content and reach every control', async ({ page }) => {
      test.setTimeout(60_000);
      await page.goto(path);
      await unfold(page);
      await page.keyboard.press('Tab');
      await expect(page.locator('.skip')).toBeFocused();
      await expect(page.locator('.skip')).toBeInViewport();

      const reach = await page.evaluate(() => {
        const shown = [
          ...document.querySelectorAll<HTMLElement>('a[href], button, input, select, summary, [tabindex]'),
        ].filter((element) => element.checkVisibility() && !element.matches(':disabled, [tabindex="-1"]'));
        shown.forEach((element, index) => (element.dataset['reach'] = String(index)));
        // Of a group of radio buttons only the chosen one is a stop; the arrows reach the others.
        return shown.flatMap((element, index) =>
          element instanceof HTMLInputElement && element.type === 'radio' && !element.checked ? [] : [index],
        );
      });
      const reached = new Set<number>([0]);
      for (let step = 0; step < reach.length + 5; step += 1) {
        const index = await page.evaluate(() =>
          Number((document.activeElement as HTMLElement).dataset['reach'] ?? -1),
        );
        if (index >= 0) reached.add(index);
        await page.keyboard.press('Tab');
      }
      expect(reach.filter((index) => !reached.has(index))).toEqual([]);

      if ((await page.locator('main [data-reach]').count()) === 0) return;
      await page.goto(path);
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      await page.keyboard.press('Tab');
      const outside = await page.evaluate(() => Boolean(document.activeElement?.closest('header, .skip')));
      expect(outside).toBe(false);
    });

    test('names every drawing and gives its numbers as a table', async ({ page }) => {
      await page.goto(path);
      await unfold(page);
      const figures = await page.locator('kf-figure').evaluateAll((elements) =>
        elements.map((element) => ({
          of: element.getAttribute('of'),
          drawings: [...element.querySelectorAll('.drawing > svg')].map((svg) => ({
            role: svg.getAttribute('role'),
            name: svg.getAttribute('aria-label') ?? '',
          })),
          caption: element.querySelector('figcaption')?.textContent ?? '',
          columns: element.querySelectorAll('table thead th[scope="col"]').length,
          rows: element.querySelectorAll('table tbody th[scope="row"]').length,
        })),
      );
      for (const { of, drawings, caption, columns, rows } of figures) {
        expect(drawings.length, `drawings of ${of}`).toBe(2);
        for (const { role, name } of drawings) {
          expect(role).toBe('img');
          // A name that states the result is the caption's whole sentence.
          expect(name, `name of ${of}`).toBe(caption);
          expect(name).toMatch(/^\S.{30,}\.$/);
        }
        expect(columns, `columns of ${of}`).toBeGreaterThan(1);
        expect(rows, `rows of ${of}`).toBeGreaterThan(0);
      }
      const nameless = await page
        .locator('svg:not([aria-hidden="true"])')
        .evaluateAll(
          (all) =>
            all.filter((svg) => svg.getAttribute('role') !== 'img' || !svg.getAttribute('aria-label')).length,
        );
      expect(nameless).toBe(0);
    });
  });
}
