import { readdirSync, readFileSync } from 'node:fs';
import { topics } from '../../topics/all.ts';

/** Where a figure is at home: the page that explains it, and the sliders it has there. */
export interface Home {
  /** The page's address below the base. */
  page: string;
  /** The lesson, where the page is one. */
  lesson?: string;
  sliders: readonly string[];
}

const lessonFolder = 'content/lessons';
const lessonOf = (file: string): string => file.replace(/^\d+-/, '').replace(/\.mdx$/, '');

/** The texts in which figures stand, the one that explains them best first. */
const texts: readonly (Omit<Home, 'sliders'> & { file: string })[] = [
  ...readdirSync(lessonFolder)
    .filter((file) => file.endsWith('.mdx'))
    .sort()
    .map((file) => ({
      page: `lessons/${lessonOf(file)}/`,
      lesson: lessonOf(file),
      file: `${lessonFolder}/${file}`,
    })),
  { page: 'compare/', file: 'src/compare/Answer.astro' },
  { page: 'explained/', file: 'src/pages/explained/index.astro' },
  { page: '', file: 'src/pages/index.astro' },
  { page: 'test/', file: 'src/pages/test/index.astro' },
  { page: 'argue/', file: 'src/pages/argue.astro' },
];

/** Figures whose caption gives the whole ratio of the two knives: where one stands alone its band goes below it. */
export const wholeRatioFigures: readonly string[] = [
  'chain',
  'readings',
  'stack',
  'three-limits',
  'power-curve',
];

/** Figures that others have taken the place of. They are still drawn where they were embedded. */
export const takenOver: Readonly<Record<string, string>> = { sections: 'edges', readings: 'ways' };

/** Every figure there is, by its id. */
export const figureIds: readonly string[] = Object.values(topics).flatMap(({ figures }) =>
  (figures ?? []).map(({ id }) => id),
);

/**
 * The page that explains a figure, and the sliders that stand in it there, as the page's own text has them. What no
 * page's text names stands in a part of the Compare page.
 */
export function homeOf(figure: string): Home {
  const shown = takenOver[figure] ?? figure;
  // Places of one kind are written once, with their number left open.
  const named = `(?:"${shown}"|\\{\`${shown.replace(/\d+$/, '')}\\$\\{\\w+}\`})`;
  const standing = new RegExp(`<Figure of=${named}[^>]*?(?:/>|>([\\s\\S]*?)</Figure>)`);
  for (const { file, ...page } of texts) {
    const found = standing.exec(readFileSync(file, 'utf8'));
    if (!found) continue;
    const sliders = [...(found[1] ?? '').matchAll(/<Slider of="([^"]+)"/g)].map(([, name = '']) => name);
    return { ...page, sliders };
  }
  return { page: 'compare/', sliders: [] };
}
