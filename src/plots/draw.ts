import * as Plot from '@observablehq/plot';
import type { Scene } from '../lineup/scene.ts';
import type { Figure, Size } from './figure.ts';

let drawings = 0;

/**
 * Draws a figure as one SVG element, ready to attach under a strict content security policy:
 * Plot's own style element is taken out (its rules stand in the site's style sheet under `kf-plot`),
 * the inner labels that assistive technology would read one by one are replaced by one name with the
 * result, and ids are made unique in the page.
 */
export function draw(
  figure: Figure,
  scene: Scene,
  size: Size,
  document: Document,
  scope?: string,
): SVGSVGElement {
  const svg = Plot.plot({
    ...figure.options(scene, size),
    document,
    width: size.width,
    className: 'kf-plot',
  }) as SVGSVGElement;
  if (svg.tagName.toLowerCase() !== 'svg')
    throw new Error(`figure ${figure.id} must draw one SVG, without title or legend`);

  for (const style of svg.querySelectorAll('style')) style.remove();
  for (const labelled of svg.querySelectorAll('[aria-label], [aria-description]')) {
    const label = labelled.getAttribute('aria-label');
    if (label) labelled.setAttribute('data-mark', label);
    labelled.removeAttribute('aria-label');
    labelled.removeAttribute('aria-description');
  }
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', figure.caption(scene));
  svg.removeAttribute('font-family');
  scopeIds(svg, scope ?? `${figure.id}-${(drawings += 1)}`);
  return svg;
}

/** Plot numbers its clip paths by a counter of the whole process: rename them after the figure. */
function scopeIds(svg: SVGSVGElement, scope: string): void {
  const names = new Map<string, string>();
  for (const element of svg.querySelectorAll('[id]')) {
    const name = `${scope}-${names.size + 1}`;
    names.set(element.id, name);
    element.id = name;
  }
  if (names.size === 0) return;
  for (const attribute of ['clip-path', 'mask', 'href'] as const) {
    for (const element of svg.querySelectorAll(`[${attribute}]`)) {
      const value = element.getAttribute(attribute) ?? '';
      const id = /#([^)]+)/.exec(value)?.[1];
      const name = id === undefined ? undefined : names.get(id);
      if (name) element.setAttribute(attribute, value.replace(`#${id}`, `#${name}`));
    }
  }
}
