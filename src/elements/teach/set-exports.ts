import { setCsv, setMarkdown } from '../../exercises/set/index.ts';
import type { ProblemSet } from '../../exercises/set/index.ts';
import { setCode } from '../../teach/set/address.ts';

/** What can be carried away from a set, by the name of its button. */
export const exportsOf: Record<string, (set: ProblemSet) => void | Promise<void>> = {
  'markdown-sheet': (set) => save(set, setMarkdown(set), 'md', 'text/markdown', '-sheet'),
  'markdown-key': (set) => save(set, setMarkdown(set, 'key'), 'md', 'text/markdown', '-key'),
  csv: (set) => save(set, setCsv(set), 'csv', 'text/csv'),
  qti: async (set) => {
    const { qtiPackage } = await import('../../teach/qti/package.ts');
    save(set, qtiPackage(set), 'zip', 'application/zip', '-qti');
  },
};

function save(set: ProblemSet, content: BlobPart, ending: string, type: string, part = ''): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = `set-${setCode(set)}${part}.${ending}`;
  link.click();
  URL.revokeObjectURL(link.href);
}
