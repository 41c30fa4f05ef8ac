import type { Page } from '@playwright/test';
import { expect } from './test.ts';

/** A4 between margins of 15 mm, in CSS pixels. */
const printable = { width: Math.floor((180 / 25.4) * 96), height: Math.floor((267 / 25.4) * 96) };

/** Looks at a page as it goes on paper: nothing is cut, no drawing split. Gives the headings that are printed. */
export async function expectWholeOnPaper(page: Page): Promise<string[]> {
  await page.setViewportSize(printable);
  await page.emulateMedia({ media: 'print' });
  const found = await page.evaluate((paper) => {
    const name = (element: Element): string =>
      `${element.tagName.toLowerCase()}.${element.className.toString()} ${(element.textContent ?? '').trim().slice(0, 60)}`;
    const shown = [...document.querySelectorAll<HTMLElement>('main *')].filter((one) =>
      one.checkVisibility(),
    );
    const cut = shown.filter((one) => {
      if (one.closest('svg, math') || one.matches('input, select, textarea, .visually-hidden')) return false;
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
  await page.emulateMedia({ media: null });
  return found.headings;
}
