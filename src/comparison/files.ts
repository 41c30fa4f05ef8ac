import { MODEL_NUMBER } from '../model/index.ts';
import { documentVersion, documentIn, migrate } from './migrations.ts';
import { validate } from './validate.ts';
import type { ComparisonEntry } from './entry.ts';

/*
 * A file is JSON: { keenfold: 'comparisons', version, model, comparisons: [{ name, comparison }] }. One comparison or a Saved list of
 * them, it is the same file.
 */

/** A comparison with the name it is saved under. */
export interface Named {
  name: string;
  entry: ComparisonEntry;
}

export type ReadFile =
  | {
      ok: true;
      comparisons: Named[];
      /** What of the file could not be read, in words. */
      problems: string[];
    }
  | { ok: false; message: string };

const longestFile = 20_000_000;

/** Comparisons as the text of a file that `readComparisons` reads back equal. */
export const comparisonsFile = (comparisons: readonly Named[]): string =>
  `${JSON.stringify(
    {
      keenfold: 'comparisons',
      version: documentVersion,
      model: MODEL_NUMBER,
      comparisons: comparisons.map(({ name, entry }) => ({ name, comparison: entry })),
    },
    null,
    2,
  )}\n`;

/**
 * Reads a file of comparisons. Nothing of it is trusted; a comparison that cannot be read is named, and the others are read.
 *
 * @param text the text of the file, of this or an earlier version
 */
export function readComparisons(text: string): ReadFile {
  const no = (message: string): ReadFile => ({ ok: false, message });
  if (text.length > longestFile) return no('The file is larger than any this site saves.');
  const document = parsed(text);
  if (document === undefined) return no('The file is not JSON: it may have been cut short or changed.');
  const { keenfold, version } = document;
  const stored = comparisonsIn(document);
  if ((keenfold !== 'comparisons' && keenfold !== 'line-ups') || !stored)
    return no('The file holds no comparisons of this site.');
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return no('The file does not say its version.');
  if (version > documentVersion)
    return no(
      `The file is of version ${version}; this page reads versions up to ${documentVersion}. Reload the page for a newer one.`,
    );
  const read: Named[] = [];
  const problems: string[] = [];
  stored.forEach((item, index) => {
    const { name } = (typeof item === 'object' && item !== null ? item : {}) as { name?: unknown };
    const checked = validate(migrate(documentIn(item), version));
    if (checked.ok) read.push({ name: tidyName(name, checked.entry.title), entry: checked.entry });
    else
      problems.push(
        `Comparison ${index + 1} of the file cannot be read: ${checked.problems[0]?.message ?? 'it is empty'}.`,
      );
  });
  return { ok: true, comparisons: read, problems };
}

/** The list in a file; before version 3 it stood under another name. */
export function comparisonsIn(document: Record<string, unknown>): unknown[] | undefined {
  const list = document['comparisons'] ?? document['lineUps'];
  return Array.isArray(list) ? list : undefined;
}

const longestName = 120;

/** A name to save a comparison under; the title where there is no usable name. */
export function tidyName(name: unknown, title: string): string {
  const text =
    typeof name === 'string'
      ? name
          .replaceAll(/\p{Cc}/gu, ' ')
          .trim()
          .slice(0, longestName)
          .toWellFormed()
      : '';
  return text === '' ? title : text;
}

function parsed(text: string): Record<string, unknown> | undefined {
  try {
    // Some editors put a byte-order mark before what they save.
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''));
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : undefined;
  } catch {
    return undefined;
  }
}
