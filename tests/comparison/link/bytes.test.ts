import { crc32 as zlibCrc32, deflateRawSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  crc32,
  deflateRaw,
  fromBase64Url,
  inflateRaw,
  toBase64Url,
} from '../../../src/comparison/link/bytes.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);

describe('base64url', () => {
  // RFC 4648 section 10, test vectors, padding left out as section 5 allows.
  test.each([
    ['', ''],
    ['f', 'Zg'],
    ['fo', 'Zm8'],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg'],
    ['fooba', 'Zm9vYmE'],
    ['foobar', 'Zm9vYmFy'],
  ])('%j is %j', (text, encoded) => {
    expect(toBase64Url(bytesOf(text))).toBe(encoded);
    expect(fromBase64Url(encoded)).toEqual(bytesOf(text));
  });

  test('agrees with Node', () =>
    fc.assert(
      fc.property(fc.uint8Array(), (bytes) => {
        const text = toBase64Url(bytes);
        expect(text).toBe(Buffer.from(bytes).toString('base64url'));
        expect(fromBase64Url(text)).toEqual(bytes);
      }),
    ));

  test.each(['A', 'Zg=', 'Zh', 'Zm9=', 'Z g', 'Zm9+'])('refuses %j', (text) =>
    expect(fromBase64Url(text)).toBeNull(),
  );
});

test('CRC-32 of 123456789 is CBF43926, the check value of ISO-HDLC (ITU-T V.42 polynomial; from memory)', () =>
  expect(crc32(bytesOf('123456789'))).toBe(0xcbf43926));

test('CRC-32 agrees with zlib', () =>
  fc.assert(fc.property(fc.uint8Array(), (bytes) => crc32(bytes) === zlibCrc32(bytes))));

describe('raw deflate', () => {
  test('goes to zlib and comes from it unchanged', () =>
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 1, maxLength: 2000 }), (bytes) => {
        expect(new Uint8Array(inflateRawSync(deflateRaw(bytes)))).toEqual(bytes);
        expect(inflateRaw(new Uint8Array(deflateRawSync(bytes)), 4000)).toEqual(bytes);
      }),
    ));

  test('stops at the limit', () => {
    const bomb = new Uint8Array(deflateRawSync(Buffer.alloc(50_000_000)));
    expect(bomb.length).toBeGreaterThan(40_000);
    expect(inflateRaw(bomb.subarray(0, 8192), 256 * 1024)).toBe('too large');
  });

  test('a stream without its end is damaged', () => {
    const packed = deflateRaw(bytesOf('a rope as long as a quay, a quay as long as a rope'));
    for (let length = 0; length < packed.length; length += 1) {
      expect(inflateRaw(packed.subarray(0, length), 1000)).toBe('damaged');
    }
  });
});
