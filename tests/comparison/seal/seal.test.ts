import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { tidyBase32, toBase32 } from '../../../src/comparison/seal/base32.ts';
import { canonicalJson } from '../../../src/comparison/seal/canonical-json.ts';
import { openSeal, sealPrediction } from '../../../src/comparison/seal/seal.ts';
import { MODEL_NUMBER } from '../../../src/model/index.ts';
import { oddComparisons } from '../../topics/odd-comparisons.ts';
import { loft } from '../entries.ts';

const salt = Uint8Array.from({ length: 20 }, (_, index) => index * 7);
const { seal, file } = await sealPrediction(loft(), salt);

test('canonical JSON is that of RFC 8785, section 3.2 (memory)', () =>
  expect(
    canonicalJson(
      JSON.parse(
        String.raw`{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`,
      ),
    ),
  ).toBe(
    String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
  ));

test('base32 is the digest in base 32, as big integers have it', () => {
  const digest = createHash('sha256').update('abc').digest();
  // The first 120 bits as one number, written by the language itself in base 32 with letters of its own.
  const theirs = (BigInt(`0x${digest.toString('hex')}`) >> 136n).toString(32).padStart(24, '0');
  const own = toBase32(digest, 24);
  const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
  expect([...own].map((character) => alphabet.indexOf(character).toString(32)).join('')).toBe(theirs);
  expect(() => toBase32(digest, 60)).toThrow(/60 characters.*300 bits.*256/);
});

describe('a seal', () => {
  test('is the SHA-256 of its file, computed by another implementation', () => {
    const digest = createHash('sha256')
      .update(canonicalJson(JSON.parse(file)))
      .digest();
    expect(tidyBase32(seal)).toBe(toBase32(digest, 24));
    expect(seal).toMatch(/^(?:[0-9A-HJKMNP-TV-Z]{4}-){5}[0-9A-HJKMNP-TV-Z]{4}$/);
  });

  test('opens with its file, however it was typed off', async () => {
    for (const typed of [
      seal,
      seal.toLowerCase(),
      seal.replaceAll('-', ' '),
      seal.replaceAll('0', 'o').replaceAll('1', 'l'),
    ])
      expect(await openSeal(file, typed)).toMatchObject({
        ok: true,
        entry: loft(),
        modelNumber: MODEL_NUMBER,
        sameModel: true,
      });
  });

  test('does not mind how the file is laid out', async () =>
    expect(await openSeal(JSON.stringify(JSON.parse(file)), seal)).toMatchObject({ ok: true }));

  test('breaks with any digit of the file changed', async () => {
    const places = [...file.matchAll(/\d/g)].map(({ index }) => index);
    expect(places.length).toBeGreaterThan(100);
    for (const place of places) {
      const changed = file.slice(0, place) + String((Number(file[place]) + 1) % 10) + file.slice(place + 1);
      const opened = await openSeal(changed, seal);
      // A leading zero changes nothing where the text is no JSON any more: refused as well.
      expect(opened.ok, `digit at ${place}`).toBe(false);
    }
  });

  test('breaks with any of its own characters changed', async () => {
    const plain = tidyBase32(seal);
    for (let place = 0; place < plain.length; place += 1) {
      const changed = `${plain.slice(0, place)}${plain[place] === '7' ? '8' : '7'}${plain.slice(place + 1)}`;
      expect((await openSeal(file, changed)).ok, `character ${place}`).toBe(false);
    }
  });

  test('breaks with a field added, taken away or renamed', async () => {
    const document = JSON.parse(file) as Record<string, unknown>;
    const { salt: _salt, ...without } = document;
    for (const changed of [{ ...document, note: 1 }, without, { ...document, model: 'other' }])
      expect((await openSeal(JSON.stringify(changed), seal)).ok).toBe(false);
  });

  test('differs for the same comparison sealed twice', async () =>
    expect((await sealPrediction(loft())).seal).not.toBe((await sealPrediction(loft())).seal));

  test.each(Object.entries(oddComparisons))('opens again for %s', async (_name, entry) => {
    const made = await sealPrediction(entry);
    expect(await openSeal(made.file, made.seal)).toMatchObject({ ok: true, entry });
  });

  test.each([
    ['', seal, /doesn’t open a seal/],
    ['{', seal, /doesn’t open a seal/],
    ['[]', seal, /doesn’t open a seal/],
    ['null', seal, /doesn’t open a seal/],
    [file, '', /has 0/],
    [file, seal.slice(0, 9), /has 8/],
  ])('says what is wrong', async (text, typed, why) => {
    const opened = await openSeal(text, typed);
    expect(opened.ok ? '' : opened.why).toMatch(why);
  });

  test('of a comparison that is none is distinguished from a broken one', async () => {
    const forged = { ...(JSON.parse(file) as Record<string, unknown>), comparison: { knives: [] } };
    const digest = createHash('sha256').update(canonicalJson(forged)).digest();
    const opened = await openSeal(JSON.stringify(forged), toBase32(digest, 24));
    expect(opened.ok ? '' : opened.why).toMatch(/belong together, but/);
  });
});

describe('a file that belongs to its seal and is yet no prediction', () => {
  const prediction = JSON.parse(file) as Record<string, unknown>;
  const reseal = (change: Record<string, unknown>): [string, string] => {
    const changed = { ...prediction, ...change };
    const digest = createHash('sha256').update(canonicalJson(changed)).digest();
    return [JSON.stringify(changed), toBase32(digest, 24)];
  };

  test.each<[string, Record<string, unknown>, RegExp]>([
    ['a version to come', { version: 99 }, /from a newer version of this page/],
    ['a version that is a word', { version: 'two' }, /from a newer version of this page/],
    ['version 0', { version: 0 }, /isn’t a prediction of this site/],
    ['half a version', { version: 1.5 }, /isn’t a prediction of this site/],
    ['nothing that was said', { said: null }, /isn’t a prediction of this site/],
    ['a word that was said', { said: 'twice' }, /isn’t a prediction of this site/],
    ['a ratio too few', { said: { close: 2, quick: 3 } }, /isn’t a prediction of this site/],
  ])('for it has %s', async (_, change, why) => {
    const opened = await openSeal(...reseal(change));
    expect(opened.ok).toBe(false);
    expect(opened.ok ? '' : opened.why).toMatch(why);
  });

  test('for it is far too long', async () => {
    const opened = await openSeal(`${file}${' '.repeat(4_000_000)}`, seal);
    expect(opened).toEqual({ ok: false, why: 'This file doesn’t open a seal.' });
  });
});
