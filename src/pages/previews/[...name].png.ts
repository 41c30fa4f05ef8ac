import type { APIRoute, GetStaticPaths } from 'astro';
import { drawingCss } from '../../build/previews/drawing-css.ts';
import { pngOf } from '../../build/previews/png.ts';
import { previews } from '../../build/previews/previews.ts';
import type { Preview } from '../../build/previews/previews.ts';
import { cardSvg, previewSize } from '../../pictures/card.ts';
import { pictureStyle } from '../../pictures/style.ts';
import { guessed } from '../../pictures/wrap.ts';

export const getStaticPaths = (async () =>
  (await previews()).map(({ name, card }) => ({
    params: { name },
    props: { card },
  }))) satisfies GetStaticPaths;

/** The picture of a link, drawn once at build. */
export const GET: APIRoute<Pick<Preview, 'card'>> = async ({ props }) => {
  const style = pictureStyle(drawingCss(), 'light');
  const svg = cardSvg(props.card, previewSize, { style, ground: 'light', measure: guessed });
  return new Response(new Uint8Array(await pngOf(svg)), { headers: { 'Content-Type': 'image/png' } });
};
