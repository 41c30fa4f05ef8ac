/** The bytes of a file as text. */

/**
 * UTF-8, or UTF-16 where its byte order mark says so; bytes that are no UTF-8 are read as Windows-1252, which older
 * spreadsheets write, and that is said.
 */
export function textOf(bytes: Uint8Array): { text: string; encoding: string } {
  const [first, second] = bytes;
  const wide =
    first === 0xff && second === 0xfe ? 'utf-16le' : first === 0xfe && second === 0xff ? 'utf-16be' : null;
  try {
    const encoding = wide ?? 'utf-8';
    return { text: new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(bytes), encoding };
  } catch {
    return { text: new TextDecoder('windows-1252').decode(bytes), encoding: 'windows-1252' };
  }
}
