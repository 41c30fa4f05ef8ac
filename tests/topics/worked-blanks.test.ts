import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { judgeShown } from '../../src/exercises/judge-shown.ts';
import { shownNumber } from '../../src/exercises/shown-number.ts';
import { mathOf } from '../../src/components/math.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { resultsOf } from '../../src/topics/worked-results.ts';
import type { WorkedStep } from '../../src/topics/worked.ts';
import { everything, topics } from '../../src/topics/all.ts';
import { oddComparisons } from './odd-comparisons.ts';
import { byHand } from './by-hand.ts';

const all = Object.values(topics).flatMap((topic) => Object.keys(topic.worked ?? {}));

/** Which of them no number is missing from, and which have all there is to stumble over. */
const names = [
  'equal',
  'microbevel',
  'steel-not-known',
  'nothing-known',
  'loses-everywhere',
  'cancelling',
  'refused-carbide-quick',
  'thick-against-thin',
  'right-to-left',
  'prying-thou',
  'toughness-known',
  'all-made-equal',
  'face-values',
];

/** What stands behind the last sign of each line of a formula, as a reader sees it. */
function ends(step: WorkedStep): string[] {
  const { document } = parseHTML(`<html><body>${mathOf(step)}</body></html>`);
  document.querySelector('annotation')?.remove();
  const signs = [...document.querySelectorAll('mo')].filter(({ textContent }) => /^[=≈]$/.test(textContent));
  return signs.flatMap(({ nextElementSibling: next }) =>
    /^−?\d[\d.]*( × 10\^−?\d+)?∘?$/.test(next?.textContent ?? '') &&
    next?.nextElementSibling?.tagName.toLowerCase() !== 'mo'
      ? [(next?.textContent ?? '').replace(/∘$/, '')]
      : [],
  );
}

/** The formula left of a result, the numbers put in as shown. */
function leftOf(name: string, { tex, values }: WorkedStep): string {
  const line = tex
    .replace(/\\(?:begin|end)\{gathered\}/g, '')
    .replace(/\\\\ (?==|\\approx)/g, '')
    .split(/\\qquad|\\\\/)
    .findLast((text) => text.includes(`\\approx {{${name}}}`) || text.includes(`= {{${name}}}`));
  const sides = (line ?? '').split(/=|\\approx/).map((side) => side.trim());
  return (sides.at(-2) ?? '').replace(/\{\{(\w+)\}\}/g, (_, place: string) => {
    const power = /^(.*) × 10\^(.*)$/.exec(values[place] ?? '');
    return power ? `{${power[1] ?? ''} \\times 10^{${power[2] ?? ''}}}` : `{${values[place] ?? ''}}`;
  });
}

const typed = (value: number): string => String(value).replace(/e(.*)/, ' × 10^$1');

test.each(names)('every step of %s has the blanks its formula shows', (name) => {
  const entry = oddComparisons[name];
  if (!entry) throw new Error(`no comparison ${name}`);
  const scene = sceneOf(entry);
  let blanks = 0;
  for (const of of all) {
    const { steps, givens } = everything.worked(of)(scene);
    for (const step of steps) {
      const results = resultsOf(step);
      const at = `${of}: ${step.tex}`;
      const numbers = Object.values(step.values).every((value) => /^−?\d/.test(value));
      expect(
        results.map(({ shown }) => shown),
        at,
      ).toEqual(numbers ? ends(step) : []);
      for (const { name: place, shown, unit } of results) {
        blanks += 1;
        const said = (text: string): string => judgeShown(shown, unit ?? 'times', text).verdict;
        expect(said(shown), `${at} ${shown}`).toBe('right');
        expect(said(shown.replace('.', ',')), at).toBe('right');
        expect(said(unit === undefined ? shown : `${shown} ${unit}`), at).toBe('right');
        const { value, reach } = shownNumber(shown);
        expect(said(typed(value + 5 * reach)), `${at} ${shown}`).toBe('not right');
        expect(said(typed(value - 5 * reach)), `${at} ${shown}`).toBe('not right');
        // The reader's own sum with the numbers as they stand there.
        expect(said(typed(byHand(leftOf(place, step)))), `${at} ${shown}`).toBe('right');
        // Words that are read before the answer do not hold it, unless it is one of the numbers to begin with.
        const once = Object.values(step.values).filter((other) => other === shown).length === 1;
        if (once && shown.replace(/\D/g, '').length > 2)
          expect(`${givens} ${step.say}`.split(/[^\d.−]+/), at).not.toContain(shown);
      }
    }
  }
  expect(blanks).toBeGreaterThan(40);
});

test('every worked example has blanks where all is known', () => {
  const known = oddComparisons['toughness-known'];
  if (!known) throw new Error('no comparison');
  const scene = sceneOf(known);
  for (const of of all)
    expect(everything.worked(of)(scene).steps.flatMap(resultsOf).length, of).toBeGreaterThan(0);
});
