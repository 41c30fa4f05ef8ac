import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { sceneOf } from '../lineup/scene.ts';
import type { Scene } from '../lineup/scene.ts';
import { validate } from '../lineup/schema.ts';
import type { LineUpEntry } from '../lineup/schema.ts';

/** The invented rigging loft, read at build: the line-up every page opens with. */
export function loft(): LineUpEntry {
  const checked = validate(parse(readFileSync('content/comparisons/loft.yaml', 'utf8')));
  if (!checked.ok) {
    throw new Error(
      `content/comparisons/loft.yaml: ${checked.problems.map(({ path, message }) => `${path}: ${message}`).join('; ')}`,
    );
  }
  return checked.entry;
}

/** Opens the scene of a page; a page whose own markup shows parts of it calls this before its layout does. */
export function openScene(locals: App.Locals, entry: LineUpEntry): void {
  locals.scene = sceneOf(entry);
  locals.figures ??= 0;
}

/** The scene a page is built with; its layout puts it there before anything on the page is rendered. */
export function pageScene(locals: App.Locals): Scene {
  if (!locals.scene) throw new Error('this page has no scene: its layout sets Astro.locals.scene first');
  return locals.scene;
}
