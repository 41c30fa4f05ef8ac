import { parseHTML } from 'linkedom';
import { getCollection } from 'astro:content';
import { jobProfiles } from '../../model/index.ts';
import { bandBehind } from '../../topics/band/words.ts';
import { plainEntry } from '../../comparison/plain-entry.ts';
import { sceneOf } from '../../scene/scene.ts';
import type { Scene } from '../../scene/scene.ts';
import { headlineOf } from '../../scene/headline.ts';
import { short } from '../../scene/show.ts';
import type { Card } from '../../pictures/card.ts';
import type { Drawing } from '../../pictures/drawing.ts';
import { draw } from '../../figure-kit/draw.ts';
import { sizes } from '../../figure-kit/figure.ts';
import { everything } from '../../topics/all.ts';
import { publishedComparisons } from '../../components/content/comparisons.ts';
import { lessonEntry } from '../../components/content/lesson-entry.ts';
import { loft } from '../../components/scene.ts';

/** The picture of a link to a page: its address below `previews/` without its ending, and what is on it. */
export interface Preview {
  name: string;
  card: Card;
}

const invented = ({ entry }: Scene): string => (entry.invented ? 'Keenfold · invented numbers' : 'Keenfold');

function drawn(figure: string, scene: Scene): Drawing {
  const { document } = parseHTML('<html><body></body></html>');
  const svg = draw(
    everything.figure(figure),
    scene,
    sizes.narrow,
    document as unknown as Document,
    'preview',
  );
  const size = (name: string) => Number(svg.getAttribute(name));
  return { svg: svg.outerHTML, width: size('width'), height: size('height') };
}

/** The first figure of a lesson, with the question it answers. */
function asked(name: string, body: string | undefined, question: string, scene: Scene): Preview {
  const figure = /<Figure of="([\w-]+)"/.exec(body ?? '')?.[1];
  if (figure === undefined) throw new Error(`${name} has no figure for the picture of its link`);
  const caption = everything.figure(figure).caption(scene);
  return {
    name,
    card: {
      title: question,
      drawing: drawn(figure, scene),
      foot: invented(scene),
      alt: `${question} A drawing beside it: ${caption}`,
    },
  };
}

function compared(name: string, scene: Scene): Preview {
  const { entry, subject, baseline } = scene;
  const refused = jobProfiles.some(({ id, slicingChain }) => id === entry.work && !slicingChain);
  const [below] = bandBehind(scene, 'a sentence');
  return {
    name,
    card: {
      ...(refused ? {} : { headline: `×${short(headlineOf(scene).middle)}` }),
      ...(below === undefined ? {} : { below }),
      title: `${subject.name} against ${baseline.name}: ${entry.title}`,
      drawing: drawn('chain', scene),
      foot: invented(scene),
      alt: [...everything.words('explained-sentence')(scene), ...bandBehind(scene, 'more')].join(' '),
    },
  };
}

async function all(): Promise<Preview[]> {
  const lessons = await getCollection('lessons');
  const plain = (await getCollection('plain')).sort((a, b) => a.data.order - b.data.order);
  const whole = sceneOf(loft());
  const described = plain.map(({ id, body, data }) =>
    asked(`plain/${id}`, body, data.question, sceneOf(plainEntry(data.faceValues))),
  );
  const [first] = described;
  return [
    {
      name: 'site',
      card: {
        title: 'Why does one knife outlast another?',
        // Without the answer: the front page lets its readers guess first.
        drawing: drawn('edges-standing', whole),
        foot: invented(whole),
        alt: `Why does one knife outlast another? A drawing beside it: ${everything.figure('edges-standing').title(whole)}.`,
      },
    },
    ...publishedComparisons().map(({ name, entry }) => compared(`comparisons/${name}`, sceneOf(entry))),
    ...lessons.map(({ id, body, data }) =>
      asked(`lessons/${id}`, body, data.question, sceneOf(lessonEntry(data.comparison))),
    ),
    ...described,
    ...(first ? [{ name: 'plain', card: { ...first.card, title: 'Percentages that multiply' } }] : []),
  ];
}

let made: Promise<Preview[]> | undefined;

/** The picture of every link that has one of its own, and the site's. */
export const previews = (): Promise<Preview[]> => (made ??= all());

/** @throws Error where there is no picture of that name: a mistake in the page, which fails the build. */
export async function previewNamed(name: string): Promise<Preview> {
  const found = (await previews()).find((preview) => preview.name === name);
  if (!found) throw new Error(`there is no picture of a link named “${name}”`);
  return found;
}
