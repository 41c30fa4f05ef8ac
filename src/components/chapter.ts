import { parseHTML } from 'linkedom';

/** Elements that come alive on a lesson's own page; in the book only what they hold stays. */
const LIVE = /^KF-/;

/** What keeps a box of its own, for its look. */
const STILL: Record<string, { tag: string; class: string }> = {
  'KF-FIGURE': { tag: 'div', class: 'still-figure' },
  'KF-NUM': { tag: 'span', class: 'still-num' },
  'KF-WORKED': { tag: 'div', class: 'worked' },
};

/** What is asked for on a screen alone: fields, the other width's drawing, a visitor's own knives, the code. */
const SCREEN_ONLY = '.controls, details.more, .own, details.code, .fill';

/** Attributes that name ids. */
const NAMES_IDS = ['for', 'aria-labelledby', 'aria-describedby'];

/**
 * A lesson's HTML as a chapter of the book: still, its headings a step lower, its ids its own.
 *
 * @param name what the chapter's ids begin with
 */
export function chapter(name: string, html: string): string {
  const { document } = parseHTML(`<html><body>${html}</body></html>`);
  const { body } = document;
  for (const part of body.querySelectorAll(SCREEN_ONLY)) part.remove();
  // Of a guess only the question stays.
  for (const guess of body.querySelectorAll('kf-call')) {
    const asked = document.createElement('p');
    asked.setAttribute('class', 'call');
    asked.innerHTML = guess.querySelector('label')?.innerHTML ?? '';
    guess.replaceWith(asked);
  }
  for (const part of [...body.querySelectorAll('*')].filter(({ tagName }) => LIVE.test(tagName)).reverse())
    still(document, part);
  // Landmarks need names that differ; a caution is found by its place.
  for (const aside of body.querySelectorAll('aside')) rename(document, aside, 'div');
  for (const level of [4, 3, 2]) {
    for (const heading of body.querySelectorAll(`h${level}`)) rename(document, heading, `h${level + 1}`);
  }
  ownIds(body, name);
  return body.innerHTML;
}

/** An element without its life: a figure or working as a plain box, a number as marked text, sentences as they are. */
function still(document: Document, part: Element): void {
  const kept = STILL[part.tagName];
  if (!kept) {
    part.replaceWith(...part.childNodes);
    return;
  }
  const box = document.createElement(kept.tag);
  box.setAttribute('class', kept.class);
  box.append(...part.childNodes);
  part.replaceWith(box);
}

function rename(document: Document, part: Element, tag: string): void {
  const renamed = document.createElement(tag);
  for (const { name, value } of part.attributes) renamed.setAttribute(name, value);
  renamed.append(...part.childNodes);
  part.replaceWith(renamed);
}

/** Lessons share ids such as those of their headings: each gets the chapter's name before it, and so does what names it. */
function ownIds(body: Element, name: string): void {
  // Problems and their answers are numbered through the book and name each other from end to end.
  const numbered = /^(problem|answer)-\d+$/;
  const ids = new Set(
    [...body.querySelectorAll('[id]')].map(({ id }) => id).filter((id) => !numbered.test(id)),
  );
  const own = (id: string): string => (ids.has(id) ? `${name}-${id}` : id);
  for (const part of body.querySelectorAll('*'))
    for (const { name: attribute, value } of [...part.attributes]) {
      if (attribute === 'id') part.setAttribute('id', own(value));
      else if (NAMES_IDS.includes(attribute))
        part.setAttribute(attribute, value.split(' ').map(own).join(' '));
      else if (/^#./.test(value) && /href$/.test(attribute))
        part.setAttribute(attribute, `#${own(value.slice(1))}`);
      else if (value.includes('url(#'))
        part.setAttribute(
          attribute,
          value.replace(/url\(#([^)]+)\)/g, (_, id: string) => `url(#${own(id)})`),
        );
    }
}
