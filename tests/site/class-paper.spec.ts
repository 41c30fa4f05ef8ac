import { canReadPdf, pdfPageSvg, pdfPages } from './pdf.ts';
import { expect, test } from './test.ts';

const POINTS_PER_MM = 72 / 25.4;

/** The straight lines of a page with their ends on the paper, in mm; Poppler draws each as a path with a matrix. */
function linesMm(svg: string): { x: number; y: number; x2: number; y2: number }[] {
  return [
    ...svg.matchAll(/d="M ([-\d.]+) ([-\d.]+) L ([-\d.]+) ([-\d.]+) ?"[^>]*?transform="matrix\(([^)]+)\)"/g),
  ].map(([, ...found]) => {
    const [x = NaN, y = NaN, x2 = NaN, y2 = NaN] = found.slice(0, 4).map(Number);
    const [a = NaN, , , d = NaN, e = NaN, f = NaN] = (found[4] ?? '').split(/[, ]+/).map(Number);
    return {
      x: (a * x + e) / POINTS_PER_MM,
      y: (d * y + f) / POINTS_PER_MM,
      x2: (a * x2 + e) / POINTS_PER_MM,
      y2: (d * y2 + f) / POINTS_PER_MM,
    };
  });
}

test.describe('the paper tools', () => {
  test.skip(!canReadPdf(), 'Poppler is not on this machine');

  for (const format of ['A4', 'Letter'])
    test(`print to true scale on ${format}`, async ({ page }) => {
      await page.goto('/class/paper/');
      const pdf = await page.pdf({ format });
      const pages = pdfPages(pdf);
      expect(pages[0]).toContain('Ruler of ratios');
      expect(pages[1]).toContain('Ratio strips');
      const lines = linesMm(pdfPageSvg(pdf, 1));
      const upright = lines.filter(({ x, x2, y, y2 }) => Math.abs(x - x2) < 0.01 && Math.abs(y - y2) > 50);
      expect(upright).toHaveLength(2);
      for (const { y, y2 } of upright) expect(Math.abs(Math.abs(y - y2) - 200)).toBeLessThan(0.2);

      // The marks of the first ruler, measured from its foot: the logarithm of the number beside each (definition).
      const [ruler] = upright.sort((one, other) => one.x - other.x);
      const foot = Math.max(ruler?.y ?? NaN, ruler?.y2 ?? NaN);
      const marks = lines
        .filter(
          ({ x, x2, y, y2 }) =>
            Math.abs(y - y2) < 0.01 && Math.abs(Math.min(x, x2) - (ruler?.x ?? NaN)) < 0.1,
        )
        .map(({ y }) => foot - y);
      for (const value of [1, 1.1, 1.5, 2, 3, 5, 7, 9, 10]) {
        const off = Math.min(...marks.map((at) => Math.abs(at - 200 * Math.log10(value))));
        expect(off, `mark of ${value}`).toBeLessThan(0.2);
      }
    });

  test('have their keys on pages of their own', async ({ page }) => {
    await page.goto('/class/paper/');
    const pages = pdfPages(await page.pdf({ format: 'Letter' }));
    const at = (title: string): number => pages.findIndex((text) => text.includes(title));
    expect(at('Multiply or not? Key')).toBe(3);
    expect(pages[2]).toContain('16. ');
    expect(pages[2]).not.toContain('Because');
    const key = at('Key, version A');
    expect(key).toBeGreaterThan(at('Problems, version A'));
    expect(pages.slice(0, key).join('')).not.toContain('(step ');
  });
});
