/** A page the site leads to from everywhere: its address below the base, and what a link to it says. */
export interface Way {
  page: string;
  says: string;
  /** True where the page shows a comparison or leads on to pages that do: a link to it takes the visitor's along. */
  carries: boolean;
}

const way = (page: string, says: string, carries = true): Way => ({ page, says, carries });

/** Where the site is used: first in the header. */
export const rooms: readonly Way[] = [
  way('compare/', 'Compare'),
  way('test/', 'Test'),
  way('lessons/', 'Learn'),
  way('class/', 'Teach', false),
];

/** Where something is looked up: last in the header. */
export const looks: readonly Way[] = [
  way('words/', 'Words', false),
  way('sources/', 'Sources', false),
  way('saved/', 'Saved'),
];

/** Everything else, in the footer. */
export const inFooter: readonly Way[] = [
  way('comparisons/', 'Published comparisons', false),
  way('seal/', 'Seal a prediction'),
  way('sheet/', 'One page to print'),
  way('answers/', 'Short answers'),
  way('argue/', 'Argue with it'),
  way('lessons/all/', 'All lessons to print', false),
  way('plain/', 'Without knives', false),
];
