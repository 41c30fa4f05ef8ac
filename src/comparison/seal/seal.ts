import { MODEL_NUMBER } from '../../model/index.ts';
import { tidyBase32, toBase32 } from './base32.ts';
import { canonicalJson } from './canonical-json.ts';
import { documentVersion, documentIn, migrate } from '../migrations.ts';
import { saidInFields, statedRatios } from '../stated-ratios.ts';
import type { Said, StatedRatios } from '../stated-ratios.ts';
import { validate } from '../validate.ts';
import type { ComparisonEntry } from '../entry.ts';

/*
 * A seal is the beginning of the SHA-256 of the prediction as canonical JSON, salt included: 24 characters of base32,
 * 120 bits. The salt keeps others from trying likely comparisons. To make two predictions of one seal takes about 2^60
 * tries, to make one for a given seal 2^120.
 */
const sealCharacters = 24;
const saltBytes = 20;
const longestFile = 4_000_000;

/** What a seal's file holds: everything that is hashed. */
interface SealedPrediction {
  keenfold: 'seal';
  version: number;
  model: string;
  /** The subject's ratio to the baseline: three totals, the quick sum and the band. */
  said: StatedRatios;
  comparison: ComparisonEntry;
  salt: string;
}

export interface Sealed {
  /** Four characters a group: `7K2Q-…`. */
  seal: string;
  /** The file that opens it. */
  file: string;
}

export type OpenedSeal =
  | ({
      ok: true;
      entry: ComparisonEntry;
      /** The model the prediction was made with. */
      modelNumber: string;
      sameModel: boolean;
    } & Said)
  | { ok: false; why: string };

async function sealOf(prediction: unknown): Promise<string> {
  const bytes = new TextEncoder().encode(canonicalJson(prediction));
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return toBase32(digest, sealCharacters).replaceAll(/.{4}(?!$)/g, '$&-');
}

/**
 * Seals the prediction of a comparison: a short text to post before the cutting, and the file that opens it afterwards.
 *
 * @param entry a comparison that `validate` accepts
 * @param salt random bytes; drawn anew where none are given
 */
export async function sealPrediction(
  entry: ComparisonEntry,
  salt: Uint8Array = crypto.getRandomValues(new Uint8Array(saltBytes)),
): Promise<Sealed> {
  const prediction: SealedPrediction = {
    keenfold: 'seal',
    version: documentVersion,
    model: MODEL_NUMBER,
    said: statedRatios(entry),
    comparison: entry,
    salt: toBase32(salt, Math.floor((salt.length * 8) / 5)),
  };
  return { seal: await sealOf(prediction), file: `${JSON.stringify(prediction, null, 2)}\n` };
}

/**
 * Opens a seal with its file. Nothing of the file is trusted.
 *
 * @param file the text of the file
 * @param seal the seal as posted; spaces, hyphens and case do not matter
 * @returns the prediction that was sealed, or why the two do not belong together
 */
export async function openSeal(file: string, seal: string): Promise<OpenedSeal> {
  const no = (why: string): OpenedSeal => ({ ok: false, why });
  const posted = tidyBase32(seal);
  if (posted.length !== sealCharacters)
    return no(`A seal has ${sealCharacters} letters and digits; this one has ${posted.length}.`);
  const prediction = file.length > longestFile ? undefined : parsed(file);
  if (prediction?.keenfold !== 'seal') return no('This file doesn’t open a seal.');
  if (tidyBase32(await sealOf(prediction)) !== posted)
    return no(
      'File and seal do not belong together: one of them was changed, or they come from two predictions.',
    );
  const { version, model } = prediction;
  const said = typeof model === 'string' ? ratiosIn(prediction['said'], model) : {};
  if (typeof version !== 'number' || version > documentVersion)
    return no(
      'File and seal belong together, but the file comes from a newer version of this page. Reload it.',
    );
  const known = Number.isInteger(version) && version >= 1;
  const checked = validate(known ? migrate(documentIn(prediction), version) : undefined);
  if (!checked.ok || typeof model !== 'string' || !(said.said ?? said.saidEarlier))
    return no('File and seal belong together, but what was sealed isn’t a prediction of this site.');
  return { ok: true, entry: checked.entry, ...said, modelNumber: model, sameModel: model === MODEL_NUMBER };
}

/** The ratios a seal's file states; before version 3 the readings had other names. */
function ratiosIn(said: unknown, modelNumber: string): Said {
  if (typeof said !== 'object' || said === null) return {};
  const parts = said as Record<string, unknown>;
  return saidInFields(
    {
      ...parts,
      careful: parts['careful'] ?? parts['close'],
      quick: parts['quick'] ?? parts['pocket'],
    },
    modelNumber,
  );
}

function parsed(text: string): Record<string, unknown> | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && !Array.isArray(value)
      ? (value as Record<string, unknown>)
      : undefined;
  } catch {
    return undefined;
  }
}
