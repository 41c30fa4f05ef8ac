import { MODEL_NUMBER } from '../../model/index.ts';
import { crc32, deflateRaw, fromBase64Url, inflateRaw, toBase64Url } from './bytes.ts';
import { documentVersion, migrate } from '../migrations.ts';
import { listOf } from './packed.ts';
import { pack, unpack } from './packing.ts';
import { validate } from '../validate.ts';
import type { ComparisonEntry } from '../entry.ts';
import { listedRatios, placesOf, saidIn, statedRatios } from '../stated-ratios.ts';
import type { Said } from '../stated-ratios.ts';

/*
 * A link's fragment is `#with=<version>.<payload>`; the payload is base64url of
 *
 *     4 bytes  CRC-32 of the packed bytes, from version 3 on with the version before them
 *     2 bytes  how many packed bytes there are
 *     …        packed bytes: raw deflate of JSON [model number, …fields by position]
 *
 * From version 2 on the model number is followed by the ratios the model gave then, to four figures: [careful, quick, rival]
 * of models 1 and 2; [multiplied, added, to a limit, quick, low, middle, high] since model 3.
 *
 * The number of bytes tells a link cut short from an altered one.
 */
const opening = '#with=';
const headBytes = 6;
const mostPackedBytes = 8 * 1024;
const mostUnpackedBytes = 256 * 1024;

export type LinkTrouble =
  'not a comparison' | 'cut short' | 'altered' | 'newer version' | 'too large' | 'not valid';

export interface OpenedLink extends Said {
  ok: true;
  entry: ComparisonEntry;
  /** The model the link was made with. */
  modelNumber: string;
  /** True where that is this model: the numbers are those its maker saw. */
  sameModel: boolean;
  /** True where the comparison's runs were too many for a link and stayed behind. */
  runsLeftBehind?: true;
}

export type DecodedLink = OpenedLink | { ok: false; kind: LinkTrouble; why: string };

const trouble = (kind: LinkTrouble, why: string): DecodedLink => ({ ok: false, kind, why });

/** What reads the lists of each version. A version once sent stays here for good. */
const readers: Readonly<Record<number, (packed: unknown) => unknown>> = {
  1: unpack,
  2: unpack,
  3: unpack,
  4: unpack,
};

/**
 * A comparison as the fragment of an address.
 *
 * @param entry A comparison that `validate` accepts.
 * @returns `#with=4.…`; about 600 characters for four knives, and what a reader takes for the longest comparison. Runs go
 * along where they fit: a link of more than 4,000 characters leaves them behind and says so when it is opened.
 */
export function encodeLink(entry: ComparisonEntry): string {
  const whole = packedOf(entry, 0);
  if (entry.runs === undefined || whole.length <= mostPackedWithRuns) return fragmentOf(whole);
  const { runs: _left, ...rest } = entry;
  return fragmentOf(packedOf(rest, 1));
}

/** Some of the programs that pass links on cut those of more than 4,000 characters. */
const mostPackedWithRuns = 3000;

function packedOf(entry: ComparisonEntry, leftBehind: 0 | 1): Uint8Array {
  const head = [...listedRatios(statedRatios(entry)), ...(leftBehind ? [leftBehind] : [])];
  return deflateRaw(new TextEncoder().encode(JSON.stringify([MODEL_NUMBER, head, ...pack(entry)])));
}

function fragmentOf(packed: Uint8Array): string {
  const bytes = new Uint8Array(headBytes + packed.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, checksum(packed, documentVersion));
  view.setUint16(4, packed.length);
  bytes.set(packed, headBytes);
  return `${opening}${documentVersion}.${toBase64Url(bytes)}`;
}

/**
 * Reads the fragment of an address. Nothing it holds is trusted: size, checksum, shape and limits are checked in turn.
 *
 * Punctuation that mail programs add at the end of an address is passed over.
 *
 * @param fragment The fragment, `#` included.
 * @returns The comparison and the number of the model it was made with, or what is wrong, in words.
 */
export function decodeLink(fragment: string): DecodedLink {
  if (!fragment.startsWith(opening)) return trouble('not a comparison', 'The address carries no comparison.');
  if (fragment.length > opening.length + (mostPackedBytes * 4) / 3 + 40) {
    return trouble('too large', 'The link is longer than any comparison of this site.');
  }
  const text = fragment.slice(opening.length).replace(/[^A-Za-z0-9_-]+$/, '');
  if (text === '')
    return trouble('cut short', 'The link ends before its comparison begins. Copy it again, whole.');
  const [, digits, payload] = /^(\d{1,6})(?:\.(.*))?$/s.exec(text) ?? [];
  if (digits === undefined || digits.startsWith('0')) {
    return trouble('not a comparison', 'The link does not begin like one of this site’s comparisons.');
  }
  const version = Number(digits);
  if (version > documentVersion) {
    return trouble(
      'newer version',
      `The link says it is of version ${version}; this page reads versions up to ${documentVersion}. Reload the page for a newer one, or copy the link again if it was altered.`,
    );
  }
  if (!payload)
    return trouble('cut short', 'The link ends before its comparison begins. Copy it again, whole.');
  const packed = payloadBytes(payload, version);
  return packed instanceof Uint8Array ? opened(packed, version) : packed;
}

/** The packed bytes of a payload whose length and checksum hold. */
function payloadBytes(payload: string, version: number): Uint8Array | DecodedLink {
  const altered = trouble(
    'altered',
    'The link was altered on its way: its checksum does not hold. Copy it again.',
  );
  const cutShort = trouble('cut short', 'The end of the link is missing. Copy it again, whole.');
  if (/[^A-Za-z0-9_-]/.test(payload)) return altered;
  // A text cut anywhere may leave bits over that no whole text has: what counts is how many whole bytes there are.
  const announced = fromBase64Url(payload.slice(0, 8));
  if (!announced || announced.length < headBytes) return cutShort;
  const head = new DataView(announced.buffer);
  const missing = head.getUint16(4) > Math.floor((payload.length * 3) / 4) - headBytes;
  const bytes = fromBase64Url(payload);
  const packed = bytes?.subarray(headBytes);
  const holds = packed !== undefined && checksum(packed, version) === head.getUint32(0);
  if (!holds) return missing ? cutShort : altered;
  if (head.getUint16(4) !== packed.length) return altered;
  return packed;
}

/** Of the packed bytes; from version 3 on of the version too, so that an altered version does not open. */
const checksum = (packed: Uint8Array, version: number): number =>
  crc32(version < 3 ? packed : Uint8Array.of(version, ...packed));

function opened(packed: Uint8Array, version: number): DecodedLink {
  const unpacked = inflateRaw(packed, mostUnpackedBytes);
  if (unpacked === 'too large')
    return trouble('too large', 'The link unpacks to more than any comparison holds.');
  if (unpacked === 'damaged') return trouble('altered', 'The link was altered: it cannot be unpacked.');
  const [modelNumber, ...after] = listOf(parsed(unpacked));
  const [head, rest] = version === 1 ? [undefined, after] : [after[0], after.slice(1)];
  const read = readers[version];
  if (typeof modelNumber !== 'string' || modelNumber.length > 24 || !read) {
    return trouble('not valid', 'The link unpacks, but not to a comparison.');
  }
  const checked = validate(migrate(read(rest), version));
  if (!checked.ok) {
    const message = checked.problems[0]?.message ?? 'it is empty';
    return trouble('not valid', `The comparison in the link cannot be used: ${message}.`);
  }
  return {
    ok: true,
    entry: checked.entry,
    modelNumber,
    sameModel: modelNumber === MODEL_NUMBER,
    ...headOf(head, modelNumber),
  };
}

/** What the head of a link states, version 1 stated nothing. */
function headOf(head: unknown, modelNumber: string): Said & { runsLeftBehind?: true } {
  if (!Array.isArray(head)) return {};
  const list = head as unknown[];
  return {
    ...saidIn(list, modelNumber),
    ...(list[placesOf(modelNumber)] === 1 ? { runsLeftBehind: true } : {}),
  };
}

function parsed(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return undefined;
  }
}
