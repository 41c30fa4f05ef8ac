import { fileName } from '../../comparison/saved/file-name.ts';
import { comparisonsFile } from '../../comparison/files.ts';
import { decodeLink } from '../../comparison/link/codec.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { namedRuns } from '../../comparison/knife-names.ts';
import { logCsv } from '../../runs/csv-out.ts';
import { copyText } from '../page/copy-text.ts';
import { download } from '../page/download.ts';

/** Saves a comparison with its runs and plan; what to say of it. */
export function saveComparison(entry: ComparisonEntry): string {
  download(fileName(entry.title, 'json'), comparisonsFile([{ name: entry.title, entry }]));
  return 'Saved: the comparison, its runs and its plan. “From a spreadsheet” opens it again.';
}

/** Saves a comparison's runs alone; what to say of it. */
export function saveLog({ title, knives, runs = [] }: ComparisonEntry): string {
  download(fileName(title, 'csv'), logCsv(namedRuns(knives, runs)), 'text/csv');
  return `Saved: ${runs.length} ${runs.length === 1 ? 'run' : 'runs'} as CSV.`;
}

/** Copies a link; what to say of it, and of the runs it could not hold. */
export function copyLink(link: string): Promise<string> {
  const read = decodeLink(new URL(link).hash);
  const behind =
    read.ok && read.runsLeftBehind
      ? ' Its runs are too many for a link and stay behind: save the file for them.'
      : '';
  return copyText(
    link,
    `The link is copied: ${link.length} characters.${behind}`,
    `The browser did not let the page copy.${behind} The link is: ${link}`,
  );
}
