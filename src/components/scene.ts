import { bringCurves } from '../runs/bring-curves.ts';
import { sceneOf } from '../scene/scene.ts';
import type { Scene } from '../scene/scene.ts';
import type { ComparisonEntry } from '../comparison/entry.ts';
import { topicOf } from '../topics/all.ts';
import type { Part } from '../topics/topic.ts';
import { publishedComparison } from './content/comparisons.ts';

bringCurves();

/** The invented rigging loft, read at build: the comparison every page opens with. */
export const loft = (): ComparisonEntry => publishedComparison('loft.yaml').entry;

/** Opens the scene of a page; a page whose own markup shows parts of it calls this before its layout does. */
export function openScene(locals: App.Locals, entry: ComparisonEntry): void {
  locals.scene = sceneOf(entry);
  locals.figures ??= 0;
}

/** The scene a page is built with; its layout puts it there before anything on the page is rendered. */
export function pageScene(locals: App.Locals): Scene {
  if (!locals.scene) throw new Error('this page has no scene: its layout sets Astro.locals.scene first');
  return locals.scene;
}

/**
 * The attributes by which the live half finds an element and the topic it shows, which may come late: see
 * src/elements/scene-element.ts. None on a still page, which is of one published comparison and follows no other.
 */
export const follows = (
  locals: App.Locals,
  part: Part,
  name: string,
  late = false,
): Record<string, unknown> =>
  locals.still ? {} : { [late ? 'data-late' : 'data-topic']: topicOf(part, name), 'data-own': '' };
