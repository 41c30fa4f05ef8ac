import { test as base, expect } from '@playwright/test';
import type { Page } from '@playwright/test';

export { expect };

declare global {
  interface Window {
    policyViolations: string[];
  }
}

/**
 * Every test of the site also fails on an error in the page, a breach of the content security policy, a request
 * that leaves the site's own origin, or a cookie.
 */
export const test = base.extend<{ watched: undefined; scriptsMayFail: boolean }>({
  /** A long page is there a few frames after it has loaded: src/layouts/arriving.ts. */
  page: async ({ page }, use) => {
    const open = page.goto.bind(page);
    page.goto = async (...where) => {
      const answer = await open(...where);
      await page.locator('html:not([data-arriving])').waitFor({ state: 'attached' });
      return answer;
    };
    await use(page);
  },
  /** A test that keeps scripts from the page: that they do not load is then no complaint. */
  scriptsMayFail: [false, { option: true }],
  watched: [
    async ({ page, context, baseURL, scriptsMayFail }, use) => {
      const complaints: string[] = [];
      const origin = new URL(baseURL ?? '').origin;
      page.on('console', (message) => {
        // The runner's own word where it keeps service workers out.
        if (message.text() === 'Service Worker registration blocked by Playwright') return;
        if (scriptsMayFail && message.text().startsWith('Failed to load resource: net::ERR_')) return;
        // On a busy machine a preloaded font may be used later than Chromium thinks it should.
        if (/was preloaded using link preload but not used/.test(message.text())) return;
        if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
      });
      page.on('pageerror', (error) => complaints.push(error.message));
      page.on('request', (request) => {
        const url = new URL(request.url());
        if (url.protocol !== 'data:' && url.protocol !== 'blob:' && url.origin !== origin)
          complaints.push(`a request left the site: ${request.url()}`);
      });
      await page.addInitScript(() => {
        window.policyViolations = [];
        addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sample }) =>
          window.policyViolations.push(`${violatedDirective} ${blockedURI} ${sample}`),
        );
      });
      await use(undefined);
      complaints.push(...(await page.evaluate(() => window.policyViolations ?? []).catch(() => [])));
      expect(complaints).toEqual([]);
      expect(await context.cookies()).toEqual([]);
    },
    { auto: true },
  ],
});

/** Opens what is folded away on a page: the parts that are named by their ids, or all there are. */
export const unfold = (page: Page, ...ids: readonly string[]): Promise<void> =>
  page.evaluate((wanted) => {
    // A menu lies over the page while it is open.
    for (const details of document.querySelectorAll('details:not(.share)'))
      if (wanted.length === 0 || wanted.includes(details.id)) (details as HTMLDetailsElement).open = true;
  }, ids);

/** Resolves once the live half of the page is there, and its figures show what they are to show. */
export const live = async (page: Page): Promise<void> => {
  await expect(page.locator('html')).toHaveAttribute('data-live', 'on');
  await expect(page.locator('kf-figure[data-stale=yes]:not([data-late])')).toHaveCount(0);
};
