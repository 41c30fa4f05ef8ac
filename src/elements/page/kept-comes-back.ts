import type { ComparisonEntry } from '../../comparison/entry.ts';
import type { OpenedLink } from '../../comparison/link/codec.ts';

const withoutRuns = ({ runs: _runs, ...rest }: ComparisonEntry): string => JSON.stringify(rest);

/**
 * Whether the comparison kept on this machine takes the place of what the page shows. Without one in the address it does.
 * With one it does only where the link left runs behind, and what is kept is the same comparison, which has them.
 */
export const keptComesBack = (
  kept: ComparisonEntry,
  linked: Pick<OpenedLink, 'entry' | 'runsLeftBehind'> | null,
): boolean =>
  linked === null || (linked.runsLeftBehind === true && withoutRuns(linked.entry) === withoutRuns(kept));
