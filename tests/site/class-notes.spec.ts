import { pdfPages } from './pdf.ts';
import { expect, test } from './test.ts';

for (const format of ['A4', 'Letter'])
  test(`each note and the plan print on one sheet of ${format}, and the ticket's key apart`, async ({
    page,
  }) => {
    await page.goto('/class/notes/');
    const notes = await page.locator('.kit-note > h2').allTextContents();
    expect(notes.length).toBeGreaterThan(10);
    const pages = await pdfPages(await page.pdf({ format }));
    for (const [index, title] of notes.entries())
      expect(pages[index]?.replace(/\s+/g, ' ')).toContain(title.replace(/\s+/g, ' ').trim());
    expect(pages[notes.length]).toContain('Problems, version A');
    expect(pages[notes.length]?.match(/Answer/g)).toHaveLength(3);
    expect(pages[notes.length + 1]).toContain('Key, version A');
  });
