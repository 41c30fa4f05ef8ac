import { readFileSync } from 'node:fs';
import type axe from 'axe-core';
import type { Page } from '@playwright/test';

const source = readFileSync('node_modules/axe-core/axe.min.js', 'utf8');

/** Brings axe into the page, before it is asked for violations. */
export const bringAxe = (page: Page): Promise<unknown> => page.evaluate(source);

/** What is asked: every rule, or some; of every element, or of one of each look. */
export interface Asked {
  rules: readonly string[] | 'all';
  of?: 'one of each look';
}

/**
 * Marks one of all the elements that look alike: of the same letters and the same colours, on the same grounds all the way
 * up. Of rules that go by colours the others would be told the same.
 */
const markLooks = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const marked of document.querySelectorAll('[data-look]')) marked.removeAttribute('data-look');
    const known = new Map<Element | null, string>([[null, '']]);
    const groundOf = (element: Element | null): string => {
      const found = known.get(element);
      if (found !== undefined || element === null) return found ?? '';
      const { color, backgroundColor, backgroundImage, opacity } = getComputedStyle(element);
      const own = [color, backgroundColor, backgroundImage, opacity].join();
      const above = groundOf(element.parentElement);
      const ground = above.endsWith(own) ? above : `${above}|${own}`;
      known.set(element, ground);
      return ground;
    };
    const looks = new Set<string>();
    const saysSomething = (element: Element): boolean =>
      element.matches('input, select, textarea') ||
      [...element.childNodes].some((node) => node.nodeType === 3 && /\S/.test(node.nodeValue ?? ''));
    for (const element of document.body.querySelectorAll('*')) {
      if (!saysSomething(element) || !element.checkVisibility({ visibilityProperty: true })) continue;
      const { fontSize, fontWeight } = getComputedStyle(element);
      const look = [element.localName, fontSize, fontWeight, groundOf(element)].join();
      if (looks.has(look)) continue;
      looks.add(look);
      element.setAttribute('data-look', '');
    }
  });

/** What axe finds wrong, an element a line. It runs within the page, whose frames it leaves alone: three times as fast. */
export async function violations(page: Page, { rules, of }: Asked): Promise<string[]> {
  if (of) await markLooks(page);
  return page.evaluate(
    async ([only, within]) => {
      const { axe: here } = window as unknown as { axe: typeof axe };
      const { violations: found } = await here.run(within, {
        resultTypes: ['violations'],
        ...(only === 'all'
          ? { rules: { 'target-size': { enabled: true } } }
          : { runOnly: { type: 'rule', values: [...only] } }),
      });
      return found.flatMap(({ id, nodes }) =>
        nodes.map(({ html, target }) => `${id}: ${String(target[0])} ${html.slice(0, 160)}`),
      );
    },
    [rules, of ? '[data-look]' : 'html'] as const,
  );
}
