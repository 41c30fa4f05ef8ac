/** What the part of an address after its # carries. */

export const carriesComparison = (hash: string): boolean => hash.startsWith('#with=');

/** A set of problems, to print or to do, or a sheet of forms. */
export const carriesSet = (hash: string): boolean => /^#(set|do|forms)=/.test(hash);

/**
 * What a page does once its address is there or has changed: opens the comparison in it, goes back to what it showed
 * without one, or nothing. `leaves` says that what it shows now is what it shows without a comparison, to be gone back to.
 */
export function addressStep(
  hash: string,
  before: string | undefined,
): { act: 'open' | 'go back' | 'nothing'; leaves: boolean } {
  const carried = before === undefined || carriesComparison(before);
  if (carriesComparison(hash)) return { act: 'open', leaves: !carried };
  return { act: before !== undefined && carried ? 'go back' : 'nothing', leaves: !carried };
}

/** Why the comparison of an address is not shown, and what is shown in its place. */
export const refusedSaid = (why: string, isOwn: boolean): string =>
  `The comparison in this address could not be opened: ${why} What you see is ${isOwn ? 'the comparison opened before' : "the page's own example"}.`;
