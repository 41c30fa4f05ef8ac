import { expect, live, test } from './test.ts';
import { pdfPages } from './pdf.ts';
import { kindsOfPage, lessons } from './pages.ts';

/** A4 between margins of 15 mm, in CSS pixels. */
const printable = { width: Math.floor((180 / 25.4) * 96), height: Math.floor((267 / 25.4) * 96) };

/** Of these the PDF is read too: it takes long, and says of other pages what the layout says. */
const onPaper = ['/', '/bench/', '/runs/', '/telling/', ...lessons().slice(0, 1)];

const plain = (text: string): string => text.replaceAll(/[^\p{L}\p{N}]/gu, '');

test('paper shows the comparison of the moment, whatever still waits for a pause', async ({ page }) => {
  await page.goto('/lessons/stack-them/');
  const slider = page.locator('kf-slider input').first();
  await slider.press('ArrowRight');
  await live(page);
  // What comes late has come.
  await page.waitForLoadState('networkidle');
  await expect(page.locator('[data-stale]')).toHaveCount(0);
  const [printed, later] = await slider.evaluate(async (input: HTMLInputElement) => {
    const said = () =>
      [...document.querySelectorAll('kf-words, kf-num, kf-figure [data-part=caption], kf-figure svg')].map(
        ({ innerHTML }) => innerHTML,
      );
    const before = said();
    input.value = input.min;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    dispatchEvent(new Event('beforeprint'));
    const onPaper = said();
    if (onPaper.join() === before.join()) throw new Error('the slider changed nothing');
    await new Promise((wait) => setTimeout(wait, 1000));
    return [onPaper, said()];
  });
  expect(printed).toEqual(later);
});

for (const path of kindsOfPage()) {
  test(`${path} prints whole: nothing cut, no drawing split, every heading there`, async ({ page }) => {
    await page.setViewportSize(printable);
    await page.goto(path);
    await page.emulateMedia({ media: 'print' });
    const found = await page.evaluate((paper) => {
      const name = (element: Element): string =>
        `${element.tagName.toLowerCase()}.${element.className.toString()} ${(element.textContent ?? '').trim().slice(0, 60)}`;
      const shown = [...document.querySelectorAll<HTMLElement>('main *')].filter((one) =>
        one.checkVisibility(),
      );
      const cut = shown.filter((one) => {
        if (one.closest('svg, math') || one.matches('input, select, textarea, .visually-hidden'))
          return false;
        const { overflowX, overflowY } = getComputedStyle(one);
        const { right, width } = one.getBoundingClientRect();
        return (
          (width > 1 && right > paper.width + 1) ||
          (overflowX !== 'visible' && width > 1 && one.scrollWidth > one.clientWidth + 1) ||
          (overflowY !== 'visible' && width > 1 && one.scrollHeight > one.clientHeight + 1)
        );
      });
      const whole = (one: Element | null): boolean =>
        one !== null &&
        ((getComputedStyle(one).breakInside.startsWith('avoid') &&
          one.getBoundingClientRect().height <= paper.height) ||
          whole(one.parentElement));
      const split = shown.filter((one) => one.matches('.drawing') && !whole(one));
      return {
        cut: cut.map(name),
        split: split.map((one) => name(one.closest('kf-figure') ?? one)),
        headings: shown.filter((one) => one.matches('h1, h2, h3')).map(({ innerText }) => innerText),
      };
    }, printable);
    expect(found.cut, 'cut at an edge').toEqual([]);
    expect(found.split, 'drawings that a page may split').toEqual([]);
    if (!onPaper.includes(path)) return;
    const margin = '15mm';
    const pdf = await page.pdf({
      format: 'A4',
      margin: { top: margin, right: margin, bottom: margin, left: margin },
    });
    const text = plain((await pdfPages(pdf)).join(''));
    expect(found.headings.filter((heading) => !text.includes(plain(heading)))).toEqual([]);
  });
}
