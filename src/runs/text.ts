/** The bytes of a file as text. */

export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** UTF-8, or UTF-16 where the byte order mark says so. */
function markedAs([first, second]: Uint8Array): Encoding {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  return first === 0xfe && second === 0xff ? 'utf-16be' : 'utf-8';
}

const decoderOf = (encoding: Encoding): TextDecoder =>
  new TextDecoder(encoding, { fatal: encoding !== 'windows-1252', ignoreBOM: true });

/**
 * UTF-8, or UTF-16 where its byte order mark says so; bytes that are no UTF-8 are read as Windows-1252, which older
 * spreadsheets write, and that is said.
 *
 * @param more Whether these are the first bytes only, which may end within a letter.
 */
export function textOf(bytes: Uint8Array, more = false): { text: string; encoding: Encoding } {
  try {
    const encoding = markedAs(bytes);
    return { text: decoderOf(encoding).decode(bytes, { stream: more }), encoding };
  } catch {
    return { text: decoderOf('windows-1252').decode(bytes), encoding: 'windows-1252' };
  }
}

/**
 * A long file as text, piece by piece, so that it is never held whole.
 *
 * @param encoding As its byte order mark says, if left out.
 * @throws TypeError at the first bytes that are not of the encoding; never for Windows-1252
 */
export async function* textPieces(
  file: Blob,
  pieceBytes: number,
  encoding?: Encoding,
): AsyncGenerator<string> {
  const bytesFrom = async (from: number, to: number): Promise<Uint8Array> =>
    new Uint8Array(await file.slice(from, to).arrayBuffer());
  const decoder = decoderOf(encoding ?? markedAs(await bytesFrom(0, 2)));
  for (let from = 0; from < file.size; from += pieceBytes)
    yield decoder.decode(await bytesFrom(from, from + pieceBytes), { stream: true });
  yield decoder.decode();
}
