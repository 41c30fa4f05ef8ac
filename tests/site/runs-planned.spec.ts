import type { Page } from '@playwright/test';
import { encodeLink } from '../../src/comparison/link/codec.ts';
import { aRun } from '../runs/runs.ts';
import { expect, live, test } from './test.ts';
import { visitorComparison } from './visitor.ts';

const verdict = (page: Page) => page.locator('.runs-verdict');
const said = (page: Page) => page.locator('[data-part=said]').first();

async function open(page: Page, hash: string): Promise<void> {
  await page.goto(`/test/${hash}`);
  await live(page);
}

test('readings are judged at the end point chosen, by curves that are fetched for them', async ({ page }) => {
  const runs = ['tern', 'knot'].flatMap((knife, index) =>
    [1, 1.1, 0.95].map((spread, place) => {
      const { cuts: _cuts, ...run } = aRun({ knife, sharpening: String(place) });
      const half = 100 * (index + 1) * spread;
      return {
        ...run,
        series: [0, 20, 60, 150, 400].map((cut) => ({ cut, sharpness: 100 / (1 + cut / half) })),
      };
    }),
  );
  const plan = { ratio: 1.25, batches: 1, blind: false, seed: 1, endPoint: 50 };
  await open(page, encodeLink({ ...visitorComparison, runs, plan }));
  // S = 100/(1 + cut/half) is 50 at half: 100 cuts against 200.
  await expect(verdict(page)).toContainText(/(0\.5|2) is the middle/);
});

test('the verdict waits for the number planned, and an early look is kept and said', async ({ page }) => {
  const runs = ['tern', 'knot'].flatMap((knife, index) =>
    [100, 110, 95, 105].map((cuts, place) =>
      aRun({ knife, cuts: cuts * (index + 1), sharpening: String(place) }),
    ),
  );
  const plan = { ratio: 1.25, batches: 1, blind: false, seed: 1, runs: 5 };
  await open(page, encodeLink({ ...visitorComparison, runs, plan }));
  await expect(verdict(page)).toContainText('Four of five planned sharpenings');
  await expect(page.locator('[data-part=simulated-power]')).toContainText('By simulation, five sharpenings');
  await page.getByRole('button', { name: 'Look at the verdict early' }).click();
  await expect(verdict(page)).toContainText('An early look, after four of five planned sharpenings.');
  await expect(page.locator('[data-part=look-early]')).toBeHidden();
  // One run more of each: the number planned, of which four were looked at.
  for (const knife of ['Tern', 'Knot']) {
    await page.locator('#run-knife').selectOption(knife);
    await page.locator('#run-reach').fill(knife === 'Tern' ? '101' : '203');
    await page.locator('#run-sharpening').fill('9');
    await page.locator('#run-batch').fill('coil 1');
    await page.locator('#run-reach').press('Enter');
    await expect(said(page)).toContainText('Added');
  }
  await expect(verdict(page)).toContainText('This log was topped up');
  await expect(page.locator('[data-part=simulated-alarms]')).toContainText(
    'calls equal knives different in about',
  );
});
