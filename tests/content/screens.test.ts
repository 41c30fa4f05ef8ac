import { readFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { stepsOf } from '../../src/layouts/steps.ts';
import { dist, lessons } from '../site/pages.ts';

const read = (page: string): Document =>
  parseHTML(readFileSync(`${dist}${page}index.html`, 'utf8')).document;
const texts = (all: Iterable<Element>): string[] =>
  [...all].map(({ textContent }) => (textContent ?? '').replace(/\s+/g, ' ').trim());

test('there are twelve lessons to show', () => expect(lessons()).toHaveLength(12));

describe.each(lessons())('%s on a large screen', (page) => {
  const lesson = read(page);
  const screen = read(page.replace('lessons', 'screen'));
  const steps = [...screen.querySelectorAll('.step')];
  const article = lesson.querySelector('article');

  test('has a step for the question, the call, each figure, each working and the take-away, in order', () => {
    const filling = 'kf-call, kf-figure, kf-worked, section.check';
    const order = (all: Iterable<Element>) =>
      [...all].map((part) => `${part.localName} ${part.getAttribute('of') ?? part.querySelector('h2')?.textContent}`);
    const own = article?.querySelectorAll(':scope > :is(kf-call, kf-figure, kf-worked, section.check)') ?? [];
    expect(order(screen.querySelectorAll(filling))).toEqual(order(own));
    expect(order(own).length).toBeGreaterThan(3);
    for (const step of steps) expect(step.querySelectorAll(filling).length).toBeLessThanOrEqual(1);
    expect(texts(screen.querySelectorAll('h1'))).toEqual(texts(lesson.querySelectorAll('h1')));
    const take = lesson.querySelector('.take')?.textContent ?? '';
    expect(take.replace(/\s+/g, ' ')).toContain(texts(steps.at(-1)?.querySelectorAll('p') ?? [])[0]);
  });

  test('loses no sentence of the lesson: what is not shown the speaker has on paper', () => {
    const said = texts(article?.querySelectorAll(':scope > :is(p, ul, kf-words, aside, .own, h2, h3)') ?? []).filter(
      (text) => text !== '' && !/large screen$/.test(text) && !/^Every number about the knives/.test(text),
    );
    const here = texts([screen.querySelector('main') as Element]).join();
    expect(said.length).toBeGreaterThan(8);
    expect(said.filter((text) => !here.includes(text))).toEqual([]);
    expect(screen.querySelectorAll('.hints').length).toBeGreaterThan(1);
    // A caution is for everybody.
    expect(screen.querySelectorAll('.hints .caution').length).toBe(0);
  });

  test('is led to from the lesson, and leads back', () => {
    const to = page.replace('lessons', 'screen');
    expect(lesson.querySelector(`a[href="${to}"]`)?.hasAttribute('data-carries')).toBe(true);
    expect(screen.querySelector(`.bar a[href="${page}"]`)?.hasAttribute('data-carries')).toBe(true);
  });
});

test('prose goes with the step it leads to or follows, and with the one before where it leads to none', () => {
  const steps = stepsOf(
    '<p>opening</p><kf-call>c</kf-call><h2>One</h2><p>before</p><kf-figure>f</kf-figure><p>after</p>' +
      '<h2>Only words</h2><p>alone</p><aside class="caution">mind</aside>' +
      '<div class="whose own"><h2>Yours</h2></div><p>ask first</p><section class="check">q</section>' +
      '<h2>Sources</h2><p>s</p><details class="code">x</details>',
  );
  expect(steps.map(({ name, shown, hints }) => [name, shown, hints])).toEqual([
    ['The question', '<p>opening</p>', ''],
    ['Call it first', '<kf-call>c</kf-call>', ''],
    [
      'The figure',
      '<h2>One</h2><kf-figure>f</kf-figure><aside class="caution">mind</aside>',
      '<p>before</p><p>after</p><h3>Only words</h3><p>alone</p>',
    ],
    ['With your own knives', '<div class="whose own"><h2>Yours</h2></div>', ''],
    ['Check yourself', '<section class="check">q</section>', '<p>ask first</p><h3>Sources</h3><p>s</p>'],
  ]);
});
