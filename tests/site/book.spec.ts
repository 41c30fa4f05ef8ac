import { expect, test } from './test.ts';
import { isStart, lessons } from './pages.ts';
import { pdfPages } from './pdf.ts';

const plain = (text: string | null): string => (text ?? '').replace(/\s+/g, ' ').trim();

test('the book holds every lesson as its own page tells it, and asks for no script', async ({ page }) => {
  const scripts: string[] = [];
  page.on('request', (request) => {
    if (request.resourceType() === 'script' && !isStart(request.url())) scripts.push(request.url());
  });
  await page.goto('/lessons/all/', { waitUntil: 'networkidle' });
  expect(scripts).toEqual([]);
  const ids = await page.locator('[id]').evaluateAll((all) => all.map(({ id }) => id));
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  const chapters = await page.locator('article.chapter').evaluateAll((all) =>
    all.map((chapter) => ({
      title: chapter.querySelector('h2')?.textContent ?? '',
      captions: [...chapter.querySelectorAll('figcaption')].map(({ textContent }) => textContent),
      headings: [...chapter.querySelectorAll('h3')].map(({ textContent }) => textContent),
      text: chapter.textContent.replace(/\s+/g, ' '),
      problems: chapter.querySelectorAll('[id^="problem-"]').length,
    })),
  );
  expect(chapters).toHaveLength(lessons().length);
  for (const { title, headings, problems } of chapters) {
    expect(headings.slice(-2), title).toEqual(['What this leaves out', 'Sources']);
    expect(problems, title).toBeGreaterThan(0);
  }
  const contents = await page.locator('nav.contents ol a').allTextContents();
  expect(contents).toEqual(chapters.map(({ title }) => title));
  const asked = await page.locator('[id^="problem-"]').count();
  await expect(page.locator('[id^="answer-"]')).toHaveCount(asked);
  // A lesson far into the book is told with its own comparison and not with the one before.
  for (const path of ['/lessons/ruler-of-ratios/', '/lessons/are-they-different/']) {
    await page.goto(path);
    const title = plain(await page.locator('h1').textContent());
    const chapter = chapters.find((one) => one.title === title);
    for (const caption of await page.locator('figcaption').allTextContents())
      expect(chapter?.captions).toContain(caption);
    for (const words of await page.locator('main kf-words:not(.own *)').allTextContents())
      expect(chapter?.text).toContain(plain(words));
  }
});

test('the book prints whole: a lesson begins a page, and the answers come last', async ({ page }) => {
  await page.goto('/lessons/all/');
  const titles = await page.locator('article.chapter h2').allTextContents();
  const pages = (await pdfPages(await page.pdf({ format: 'A4' }))).map(plain);
  const begun = titles.map((title, index) =>
    pages.findIndex((text) => text.startsWith(`Lesson ${index + 1} `) && text.includes(plain(title))),
  );
  expect(begun).not.toContain(-1);
  expect([...begun].sort((a, b) => a - b)).toEqual(begun);
  const answers = pages.findIndex((text) => text.startsWith('Answers'));
  expect(answers).toBeGreaterThan(begun.at(-1) ?? Infinity);
  const whole = pages.join(' ');
  for (const take of await page.locator('.take').allTextContents())
    expect(whole).toContain(plain(take).slice(0, 60));
  for (let figure = 1; figure <= (await page.locator('figure').count()); figure += 1)
    expect(whole).toContain(`Figure ${figure}`);
});
