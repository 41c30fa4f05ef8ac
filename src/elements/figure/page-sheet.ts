import type { Drawing } from '../../pictures/drawing.ts';
import type { FigureData } from '../../pictures/data.ts';
import type { FigureElement } from './figure.ts';

const text = (element: Element | null | undefined): string =>
  element?.textContent?.replaceAll(/\s+/g, ' ').trim() ?? '';

/** Brings a sheet up to date; before it is touched nothing is live, and what was built still stands. */
export function settled(sheet: HTMLElement): HTMLElement {
  const figure = sheet.parentElement;
  if (figure && 'settle' in figure) (figure as FigureElement).settle();
  return sheet;
}

/**
 * A sheet's drawing of one size as it is on the page now, its words held to the width they have there. Where only the
 * other size has followed the comparison, it is that one.
 */
export function pageDrawing(sheet: HTMLElement, size: 'wide' | 'narrow'): Drawing {
  const found = (which: string) =>
    sheet.querySelector<SVGSVGElement>(`.drawing[data-size="${size}"]${which} svg`) ??
    sheet.querySelector<SVGSVGElement>(`.drawing${which} svg`);
  const svg = found('[data-drawn]') ?? found('');
  if (!svg) throw new Error('the sheet has no drawing');
  const copy = svg.cloneNode(true) as SVGSVGElement;
  // Words have a width only where they are drawn: the copy is, out of sight, for as long as it takes.
  const room = Object.assign(document.createElement('div'), { className: 'visually-hidden' });
  room.append(copy);
  document.body.append(room);
  for (const part of copy.querySelectorAll<SVGTextContentElement>('text, tspan')) {
    const long = part.children.length === 0 ? part.getComputedTextLength() : 0;
    if (long === 0) continue;
    part.setAttribute('textLength', long.toFixed(3));
    part.setAttribute('lengthAdjust', 'spacingAndGlyphs');
  }
  room.remove();
  return {
    svg: new XMLSerializer().serializeToString(copy),
    width: copy.viewBox.baseVal.width,
    height: copy.viewBox.baseVal.height,
  };
}

/** A sheet's words and numbers as they are on the page now. */
export function pageData(sheet: HTMLElement): FigureData & { caption: string } {
  const cells = (row: Element | null) => [...(row?.children ?? [])].map(text);
  const table = sheet.querySelector('[data-part="table"]');
  const about = [...sheet.querySelectorAll('.title-block > div:not(.what)')].map((part) => [
    text(part.querySelector('dt')),
    text(part.querySelector('dd')),
  ]);
  return {
    figure: sheet.id.replace(/^figure-/, ''),
    title: text(sheet.querySelector('[data-part="title"]')),
    caption: text(sheet.querySelector('[data-part="caption"]')),
    about: Object.fromEntries(about) as Record<string, string>,
    columns: cells(table?.querySelector('thead tr') ?? null),
    rows: [...(table?.querySelectorAll('tbody tr') ?? [])].map(cells),
  };
}
