import * as Plot from '@observablehq/plot';
import type { Scene } from '../scene/scene.ts';
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
    // Colours are written as they stand. Of a mark without data Plot would otherwise make a scale with a colour scheme.
    color: { type: 'identity' },
    ...figure.options(scene, size),
    document,
    width: size.width,
    className: 'kf-plot',
  }) as SVGSVGElement;
  if (svg.tagName.toLowerCase() !== 'svg')
    throw new Error(`figure ${figure.id} must draw one SVG, without title or legend`);

  tidy(svg, scope ?? `${figure.id}-${(drawings += 1)}`);
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', figure.caption(scene));
  svg.removeAttribute('font-family');
  return svg;
}

const referring = ['clip-path', 'mask', 'href'] as const;

/** Style and inner labels out, and ids named after the figure: Plot numbers its clip paths by a counter of the whole process. */
function tidy(svg: SVGSVGElement, scope: string): void {
  const names = new Map<string, string>();
  const referers: Element[] = [];
  // One walk: this runs for every step of a slider.
  for (const element of svg.querySelectorAll(
    'style, [aria-label], [aria-description], [id], [clip-path], [mask], [href]',
  )) {
    if (element.localName === 'style') {
      element.remove();
      continue;
    }
    const label = element.getAttribute('aria-label');
    if (label) {
      element.setAttribute('data-mark', label);
      element.removeAttribute('aria-label');
    }
    element.removeAttribute('aria-description');
    if (element.id) {
      const name = `${scope}-${names.size + 1}`;
      names.set(element.id, name);
      element.id = name;
    }
    if (referring.some((attribute) => element.hasAttribute(attribute))) referers.push(element);
  }
  for (const element of referers)
    for (const attribute of referring) {
      const value = element.getAttribute(attribute);
      const id = value === null ? undefined : /#([^)]+)/.exec(value)?.[1];
      const name = id === undefined ? undefined : names.get(id);
      if (value !== null && name) element.setAttribute(attribute, value.replace(`#${id}`, `#${name}`));
    }
}
