import { expect, live, test } from './test.ts';
import { pdfPages } from './pdf.ts';
import { lessons } from './pages.ts';
import { expectWholeOnPaper } from './paper.ts';

/** Of these the PDF is read too: it takes long, and says of other pages what the layout says. */
const onPaper = ['/', '/compare/', '/test/', '/explained/', ...lessons().slice(0, 1)];

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

// That nothing is cut is asked of every page in every-page.spec.ts, which has it open.
for (const path of onPaper)
  test(`${path} has every heading on its printed pages`, async ({ page }) => {
    await page.goto(path);
    const headings = await expectWholeOnPaper(page);
    expect(headings.length).toBeGreaterThan(0);
    const margin = '15mm';
    const pdf = await page.pdf({
      format: 'A4',
      margin: { top: margin, right: margin, bottom: margin, left: margin },
    });
    const text = plain((await pdfPages(pdf)).join(''));
    expect(headings.filter((heading) => !text.includes(plain(heading)))).toEqual([]);
  });
