import { pdfLinesMm, pdfPages } from './pdf.ts';
import { expect, test } from './test.ts';

test.describe('the paper tools', () => {
  for (const format of ['A4', 'Letter'])
    test(`print to true scale on ${format}`, async ({ page }) => {
      await page.goto('/class/paper/');
      const pdf = await page.pdf({ format });
      const pages = await pdfPages(pdf);
      expect(pages[0]).toContain('Ruler of ratios');
      expect(pages[1]).toContain('Ratio strips');
      const lines = await pdfLinesMm(pdf, 1);
      const upright = lines.filter(({ x, x2, y, y2 }) => Math.abs(x - x2) < 0.01 && Math.abs(y - y2) > 50);
      expect(upright).toHaveLength(2);
      for (const { y, y2 } of upright) expect(Math.abs(Math.abs(y - y2) - 200)).toBeLessThan(0.2);

      // The marks of the first ruler, measured from its foot: the logarithm of the number beside each (definition).
      const [ruler] = upright.sort((one, other) => one.x - other.x);
      const foot = Math.min(ruler?.y ?? NaN, ruler?.y2 ?? NaN);
      const marks = lines
        .filter(
          ({ x, x2, y, y2 }) =>
            Math.abs(y - y2) < 0.01 && Math.abs(Math.min(x, x2) - (ruler?.x ?? NaN)) < 0.1,
        )
        .map(({ y }) => y - foot);
      for (const value of [1, 1.1, 1.5, 2, 3, 5, 7, 9, 10]) {
        const off = Math.min(...marks.map((at) => Math.abs(at - 200 * Math.log10(value))));
        expect(off, `mark of ${value}`).toBeLessThan(0.2);
      }
    });

  test('have their keys on pages of their own', async ({ page }) => {
    await page.goto('/class/paper/');
    const pages = await pdfPages(await page.pdf({ format: 'Letter' }));
    const at = (title: string): number => pages.findIndex((text) => text.includes(title));
    expect(at('Multiply or not? Key')).toBe(3);
    expect(pages[2]).toContain('16. ');
    expect(pages[2]).not.toContain('Because');
    const key = at('Key, version A');
    expect(key).toBeGreaterThan(at('Problems, version A'));
    expect(pages.slice(0, key).join('')).not.toContain('(step ');
  });
});
