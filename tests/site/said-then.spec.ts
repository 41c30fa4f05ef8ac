import { readFileSync } from 'node:fs';
import { crc32, deflateRawSync } from 'node:zlib';
import { pack } from '../../src/comparison/link/packing.ts';
import { expect, live, test } from './test.ts';
import { visitorComparison, visitorLink } from './visitor.ts';

const [old = ''] = readFileSync('tests/comparison/link/links/v1.txt', 'utf8').split('\n');

/** A link of the form of today as another model would have made it. */
function madeWith(model: string, head: readonly number[]): string {
  const packed = deflateRawSync(Buffer.from(JSON.stringify([model, head, ...pack(visitorComparison)])));
  const bytes = Buffer.alloc(6);
  bytes.writeUInt32BE(crc32(packed));
  bytes.writeUInt16BE(packed.length, 4);
  return `#with=2.${Buffer.concat([bytes, packed]).toString('base64url')}`;
}

test('a link of another model says what it said then, what is said now, and why; one of this model nothing', async ({
  page,
}) => {
  const then = page.locator('#address-then');
  for (const path of ['/compare/', '/lessons/stack-them/', '/explained/', '/argue/', '/test/']) {
    await page.goto('about:blank');
    await page.goto(`${path}${old}`);
    await expect(then, path).toContainText('factor model no. 1; this page has no.');
    await expect(then).toContainText('Now it says, for Dunlin against Plover: about 5 to 30 times as long');
    await expect(then).toContainText('With no. 2, the ranges moved');
    await expect(page.locator('#address-message')).toBeHidden();
  }
  await page.goto('about:blank');
  await page.goto(`/explained/${madeWith('1', [9.87, 9.87, 9.87, 1])}`);
  await expect(then).toContainText(
    'Then it said, for Tern against Knot: 9.9 times as long by the careful estimate',
  );
  await expect(page.locator('#address-message')).toHaveText(/runs .* stayed behind/);
  // Another one in the address of the open page, of this model: what was said of the first is taken back.
  await page.evaluate((hash) => (location.hash = hash), visitorLink);
  await expect(then).toBeHidden();
  await expect(page.locator('#address-message')).toBeHidden();
  await live(page);
});
