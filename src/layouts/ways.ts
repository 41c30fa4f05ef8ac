/** A page the site leads to from everywhere: its address below the base, and what a link to it says. */
export interface Way {
  page: string;
  says: string;
  /** True where the page shows a comparison or leads on to pages that do: a link to it takes the visitor's along. */
  carries: boolean;
}

const way = (page: string, says: string, carries = true): Way => ({ page, says, carries });

/** The few in the header, where a phone has room for no more. */
export const inHeader: readonly Way[] = [
  way('lessons/', 'Learn'),
  way('bench/', 'Compare your knives'),
  way('class/', 'Teach', false),
  way('words/', 'Words', false),
  way('sources/', 'Sources', false),
];

/** All of them, in the footer, by what a reader comes for. */
export const inFooter: readonly { group: string; ways: readonly Way[] }[] = [
  {
    group: 'Compare',
    ways: [
      way('bench/', 'Enter your knives'),
      way('telling/', 'The explanation'),
      way('telling/ask/', 'Ask an audience'),
      way('seal/', 'Seal a prediction'),
      way('runs/', 'Log your runs'),
      way('sheet/', 'One sheet, to print'),
      way('drawer/', 'The drawer'),
      way('comparisons/', 'Published comparisons', false),
    ],
  },
  {
    group: 'Learn',
    ways: [
      way('lessons/', 'Lessons'),
      way('lessons/all/', 'The whole course, to print', false),
      way('answers/', 'Short answers'),
      way('argue/', 'Argue with it'),
      way('plain/', 'Without knives', false),
    ],
  },
  {
    group: 'Teach',
    ways: [
      way('class/', 'Problem sets', false),
      way('class/tally/', 'Tally of guesses', false),
      way('class/notes/', 'Notes for each lesson', false),
      way('class/paper/', 'Paper tools', false),
    ],
  },
  {
    group: 'Look up',
    ways: [way('words/', 'Words', false), way('sources/', 'Sources', false)],
  },
];
