import type { Locator, Page } from '@playwright/test';
import { drags, one, two } from './drags.ts';
import type { At, Drag, Place } from './drags.ts';
import { expect, live, test } from './test.ts';

const drawingOf = (page: Page, of: string): Locator =>
  page.locator(`kf-figure[of="${of}"] .drawing:visible`).first();

/** Where places of a drawing are on the screen, by the axes it has now. */
const onScreen = (drawing: Locator, ...places: Place[]): Promise<{ x: number; y: number }[]> =>
  drawing
    .evaluate((element) => {
      const svg = element.querySelector(':scope > svg') as SVGSVGElement & {
        scale(name: 'x' | 'y'): { domain: unknown[]; bandwidth?: number; apply(value: unknown): number };
      };
      const y = svg.scale('y');
      const circle = svg.querySelector('circle');
      const number = (name: string) => Number(circle?.getAttribute(name));
      return {
        perUnit: y.bandwidth === undefined ? Math.abs(y.apply(1) - y.apply(0)) : Number.NaN,
        circle: { cx: number('cx'), cy: number('cy'), r: number('r') },
      };
    })
    .then((drawn) => places.map((place) => (typeof place === 'function' ? place(drawn) : place)))
    .then((all) =>
      drawing.evaluate((element, all) => {
        const svg = element.querySelector(':scope > svg') as SVGSVGElement & {
          scale(name: 'x' | 'y'): { domain: unknown[]; bandwidth?: number; apply(value: unknown): number };
        };
        const { left, top, width } = svg.getBoundingClientRect();
        const shrunk = width / svg.viewBox.baseVal.width;
        const px = (name: 'x' | 'y', value: number): number => {
          const { domain, bandwidth, apply } = svg.scale(name);
          return bandwidth === undefined ? apply(value) : apply(domain[value]) + bandwidth / 2;
        };
        return all.map(([x, y]) => ({ x: left + px('x', x) * shrunk, y: top + px('y', y) * shrunk }));
      }, all),
    );

/** Brings a pointer over something that can be dragged, until what drags has been fetched. */
async function take(page: Page, { of, from }: Pick<Drag, 'of' | 'from'>): Promise<Locator> {
  const drawing = drawingOf(page, of);
  await drawing.scrollIntoViewIfNeeded();
  await drawing.hover();
  await live(page);
  await expect(async () => {
    const [at = { x: 0, y: 0 }] = await onScreen(drawing, from);
    await page.mouse.move(at.x + 1, at.y);
    await page.mouse.move(at.x, at.y);
    await expect(drawing).toHaveAttribute('data-handle', '', { timeout: 200 });
  }).toPass({ timeout: 20_000 });
  return drawing;
}

const open = (page: Page, path: string) => page.goto(path === '' ? '/' : `/${path}/`);

/** Opens a page and takes hold of something on it. */
async function reach(page: Page, { path, ...drag }: Pick<Drag, 'path' | 'of' | 'from'>): Promise<Locator> {
  await open(page, path);
  return take(page, drag);
}

const sliderOf = (page: Page, control: string): Locator =>
  page.locator(`kf-slider[of="${control}"] input`).first();

/** Drags; gives what puts the slider back to where it stood. */
async function expectDragged(
  page: Page,
  { of, from, to, control, value, table }: Drag,
): Promise<() => Promise<void>> {
  const drawing = await take(page, { of, from });
  await expect(drawing).toHaveCSS('cursor', 'grab');
  const figure = page.locator(`kf-figure[of="${of}"]`);
  const caption = figure.locator('[data-part="caption"]');
  const slider = sliderOf(page, control);
  const stood = await slider.inputValue();
  const half = Number(await slider.getAttribute('step')) / 2;
  const [start = { x: 0, y: 0 }, end = { x: 0, y: 0 }] = await onScreen(drawing, from, to);
  const drawnBefore = await drawing.innerHTML();
  await page.mouse.down();
  await page.mouse.move((start.x + end.x) / 2, (start.y + end.y) / 2, { steps: 3 });
  await page.mouse.move(end.x, end.y, { steps: 3 });
  await page.mouse.up();

  const after = Number(await slider.inputValue());
  if (value !== undefined) expect(Math.abs(after - value)).toBeLessThanOrEqual(half + 1e-9);
  await expect.poll(() => drawing.innerHTML()).not.toBe(drawnBefore);
  // The drawing's name follows at once, the caption after a pause.
  const name = (await drawing.locator('> svg').getAttribute('aria-label')) ?? '';
  await expect(caption).toHaveText(name);
  if (table) {
    const [row, column, says, within] = table;
    const cell = figure.locator('tbody tr', { hasText: row }).locator('th, td').nth(column);
    const number = async () => Number(/[\d.]+/.exec((await cell.textContent()) ?? '')?.[0]);
    await expect.poll(async () => Math.abs((await number()) - says)).toBeLessThanOrEqual(within);
  }

  // The pointer is up: moving on changes nothing.
  await page.mouse.move(10, 10);
  await expect(slider).toHaveValue(String(after));
  // Without a pointer the slider does the same.
  await slider.focus();
  await page.keyboard.press(after > Number(await slider.getAttribute('min')) ? 'ArrowLeft' : 'ArrowRight');
  await expect(slider).not.toHaveValue(String(after));
  return async () => {
    await slider.fill(stood);
    await expect.poll(() => drawing.innerHTML()).toBe(drawnBefore);
  };
}

for (const path of new Set(drags.map((drag) => drag.path)))
  test(`on /${path} what is dragged goes where its slider says, and the slider goes along`, async ({
    page,
  }) => {
    await open(page, path);
    let putBack: (() => Promise<void>) | undefined;
    for (const drag of drags.filter((each) => each.path === path))
      await test.step(`${drag.of} to where ${drag.control} is ${drag.value ?? 'as its table says'}`, async () => {
        await putBack?.();
        putBack = await expectDragged(page, drag);
      });
  });

test('a drag that leaves the drawing stops at the end of the slider, and one that begins beside it does nothing', async ({
  page,
}) => {
  const from: At = [60, 1];
  const drawing = await reach(page, { path: two, of: 'less-lines', from });
  const slider = sliderOf(page, 'less');
  const [at = { x: 0, y: 0 }, edge = { x: 0, y: 0 }] = await onScreen(drawing, from, [100, 1]);
  await page.mouse.down();
  await page.mouse.move(edge.x - 300, at.y + 200, { steps: 4 });
  await expect(slider).toHaveValue('0');
  await page.mouse.move(at.x + 2000, at.y - 300, { steps: 4 });
  await expect(slider).toHaveValue('90');
  await page.mouse.up();
  // On the names left of the axis.
  await page.mouse.move(edge.x - 60, at.y);
  await expect(drawing).not.toHaveAttribute('data-handle');
  await page.mouse.down();
  await page.mouse.move(at.x, at.y, { steps: 3 });
  await page.mouse.up();
  await expect(slider).toHaveValue('90');
});

for (const { path, of, from, to } of [
  { path: 'embed/less-lines', of: 'less-lines', from: [60, 1], to: [20, 1] },
  { path: 'embed/chain', of: 'chain', from: [1.3, 0], to: [1.6, 0] },
] as const)
  test(`where no slider is, as on /${path}, nothing of ${of} is dragged`, async ({ page }) => {
    await page.goto(`/${path}/`);
    const drawing = drawingOf(page, of);
    await drawing.hover();
    await live(page);
    // Once what drags is there the figure is drawn anew, and tells of its axes.
    const described = () =>
      drawing.evaluate((element) => 'scale' in (element.querySelector(':scope > svg') ?? element));
    await expect.poll(described).toBe(true);
    const before = await drawing.innerHTML();
    const [at = { x: 0, y: 0 }, end = { x: 0, y: 0 }] = await onScreen(drawing, from, to);
    await page.mouse.move(10, 10);
    await page.mouse.move(at.x + 1, at.y);
    await page.mouse.move(at.x, at.y);
    await expect(drawing).not.toHaveAttribute('data-handle');
    await page.mouse.down();
    await page.mouse.move(end.x, end.y, { steps: 3 });
    await page.mouse.up();
    expect(await drawing.innerHTML()).toBe(before);
  });

test.describe('a finger', () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 700 } });

  /** Puts a finger down, moves it and lifts it, as the browser's own gestures see it. */
  async function swipe(page: Page, from: { x: number; y: number }, to: { x: number; y: number }) {
    const session = await page.context().newCDPSession(page);
    const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: { x: number; y: number }[]) =>
      session.send('Input.dispatchTouchEvent', { type, touchPoints });
    await send('touchStart', [from]);
    for (let step = 1; step <= 10; step += 1)
      await send('touchMove', [
        { x: from.x + ((to.x - from.x) * step) / 10, y: from.y + ((to.y - from.y) * step) / 10 },
      ]);
    await send('touchEnd', []);
  }

  const scrolled = (page: Page): Promise<number> => page.evaluate(() => scrollY);

  test('drags what it holds, and scrolls the page from everywhere else', async ({ page }) => {
    const drawing = await reach(page, { path: one, of: 'growing-bars', from: [2, 1.96] });
    const slider = sliderOf(page, 'percentage.2');
    const before = await slider.inputValue();
    const still = await scrolled(page);
    const [end = { x: 0, y: 0 }, middle = { x: 0, y: 0 }, lower = { x: 0, y: 0 }] = await onScreen(
      drawing,
      [2, 1.96],
      [2, 0.9],
      [2, 1.4],
    );
    // The middle of the bar is not its end.
    const rest = page.evaluate(
      () => new Promise((done) => addEventListener('scrollend', () => done(scrollY), { once: true })),
    );
    await swipe(page, middle, { ...middle, y: middle.y - 150 });
    expect(await rest).not.toBe(still);
    expect(await slider.inputValue()).toBe(before);
    await page.evaluate((y) => scrollTo(0, y), still);

    await swipe(page, end, lower);
    await expect(slider).toHaveValue('0');
    expect(await scrolled(page)).toBe(still);
  });
});
