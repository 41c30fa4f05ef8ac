import { deflateSync, Inflate } from 'fflate';

const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** Bytes as base64url without padding, RFC 4648 section 5. */
export function toBase64Url(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 3) {
    const group = bytes.subarray(at, at + 3);
    const bits = ((group[0] ?? 0) << 16) | ((group[1] ?? 0) << 8) | (group[2] ?? 0);
    for (let sextet = 0; sextet <= group.length; sextet += 1)
      text += alphabet.charAt((bits >> (18 - 6 * sextet)) & 63);
  }
  return text;
}

/** The bytes of a base64url text; null where it holds another character or a rest no byte could make. */
export function fromBase64Url(text: string): Uint8Array | null {
  if (text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let bits = 0;
  let bitCount = 0;
  let at = 0;
  for (const character of text) {
    const value = alphabet.indexOf(character);
    if (value < 0) return null;
    bits = ((bits << 6) | value) & 0xffffff;
    bitCount += 6;
    if (bitCount >= 8) {
      bitCount -= 8;
      bytes[at] = (bits >> bitCount) & 255;
      at += 1;
    }
  }
  // Bits left over are zero in what we write; anything else was altered.
  return (bits & ((1 << bitCount) - 1)) === 0 ? bytes : null;
}

/** CRC-32 as in ISO-HDLC (polynomial 0x04C11DB7 reflected): any altered run of up to 32 bits shows. */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}

export const deflateRaw = (bytes: Uint8Array): Uint8Array => deflateSync(bytes, { level: 9 });

/**
 * Unpacks raw deflate up to a limit. Fed in small pieces and stopped at the limit, so that a few bytes that unpack to
 * gigabytes never do.
 *
 * @returns The bytes; `'too large'` over the limit; `'damaged'` where it is no whole deflate stream.
 */
export function inflateRaw(packed: Uint8Array, limit: number): Uint8Array | 'too large' | 'damaged' {
  const pieces: Uint8Array[] = [];
  let size = 0;
  let whole = false;
  const inflate = new Inflate((piece, last) => {
    pieces.push(piece);
    size += piece.length;
    whole = last;
  });
  const step = 64;
  try {
    for (let at = 0; at < packed.length; at += step) {
      inflate.push(packed.subarray(at, at + step), at + step >= packed.length);
      if (size > limit) return 'too large';
    }
  } catch {
    return 'damaged';
  }
  if (!whole) return 'damaged';
  const bytes = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    bytes.set(piece, at);
    at += piece.length;
  }
  return bytes;
}
