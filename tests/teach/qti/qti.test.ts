import { strFromU8, unzipSync } from 'fflate';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { makeSet } from '../../../src/exercises/set/index.ts';
import { qtiFiles, qtiPackage } from '../../../src/teach/qti/package.ts';

/**
 * Structural checks only: well-formed files, the names, namespaces and resource types that 1EdTech published for
 * QTI 3.0 and its packages (final release of 1 May 2022), references that resolve, scoring that runs. The schemas
 * themselves are not at hand here, and no delivery system has read a package.
 */
const set = makeSet({ seed: 7, version: 'B', count: 16, level: 'rising', context: 'rigging-loft' });
const files = qtiFiles(set);

/** Well-formed: every tag closed in its order, attributes quoted, no bare `&` or `<`. Gives the names found. */
function names(xml: string): string[] {
  expect(xml.startsWith('<?xml version="1.0" encoding="UTF-8"?>\n<')).toBe(true);
  const body = xml.replace(/^<\?xml[^>]*\?>\s*/, '');
  const open: string[] = [];
  const found: string[] = [];
  const parts =
    body.match(/<\/[\w:-]+>|<[\w:-]+(?: [\w:-]+="[^"<&]*(?:&(?:amp|lt|gt|quot);[^"<&]*)*")*\/?>|[^<]+/g) ??
    [];
  expect(parts.join('')).toBe(body);
  for (const part of parts) {
    const name = /^<\/?([\w:-]+)/.exec(part)?.[1];
    if (name === undefined) expect(part).toMatch(/^(?:[^&]|&(?:amp|lt|gt|quot);)*$/);
    else if (part.startsWith('</')) expect(open.pop()).toBe(name);
    else {
      found.push(name);
      if (!part.endsWith('/>')) open.push(name);
    }
  }
  expect(open).toEqual([]);
  return found;
}

const elements = (xml: string, name: string): Element[] =>
  [
    ...parseHTML(
      `<html><body>${xml.replace(/^<\?xml[^>]*\?>/, '').replace(/<([\w:-]+)([^>]*)\/>/g, '<$1$2></$1>')}</body></html>`,
    ).document.querySelectorAll(name),
  ] as unknown as Element[];

describe('a package', () => {
  test('holds a manifest, a test and an item for each problem, all well-formed', () => {
    expect(Object.keys(files)).toHaveLength(18);
    for (const xml of Object.values(files)) expect(names(xml).length).toBeGreaterThan(3);
  });

  test('lists each of its files once, with its type', () => {
    const manifest = files['imsmanifest.xml'] ?? '';
    const resources = elements(manifest, 'resource');
    expect(resources.map((resource) => resource.getAttribute('href')).sort()).toEqual(
      Object.keys(files)
        .filter((name) => name !== 'imsmanifest.xml')
        .sort(),
    );
    expect(resources.map((resource) => resource.getAttribute('type'))).toEqual([
      'imsqti_test_xmlv3p0',
      ...Array<string>(16).fill('imsqti_item_xmlv3p0'),
    ]);
    const ids = resources.map((resource) => resource.getAttribute('identifier'));
    expect(new Set(ids).size).toBe(17);
    expect(elements(manifest, 'dependency').map((one) => one.getAttribute('identifierref'))).toEqual(
      ids.slice(1),
    );
    expect(manifest).toContain('http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1');
  });

  test('has a test that refers to every item', () => {
    const refs = elements(files['assessment.xml'] ?? '', 'qti-assessment-item-ref');
    expect(refs).toHaveLength(16);
    for (const ref of refs) expect(files[ref.getAttribute('href') ?? '']).toContain('<qti-assessment-item ');
  });

  test('comes out of the zip as it went in, the same bytes each time', () => {
    const zip = qtiPackage(set);
    const back = Object.fromEntries(
      Object.entries(unzipSync(zip)).map(([name, data]) => [name, strFromU8(data)]),
    );
    expect(back).toEqual(files);
    expect(qtiPackage(set)).toEqual(zip);
  });
});

/** What the response processing of an item makes of a response: the first condition that holds. */
function processed(xml: string, response: string): Record<string, string> {
  for (const branch of elements(xml, 'qti-response-if, qti-response-else-if')) {
    const equal = branch.querySelector('qti-equal');
    const base = branch.querySelector('qti-base-value')?.textContent ?? '';
    const within = Number(equal?.getAttribute('tolerance')?.split(' ')[0]);
    const holds = equal ? Math.abs(Number(response) - Number(base)) <= within : response === base;
    if (!holds) continue;
    const sets = branch.querySelector('qti-set-outcome-value');
    return { [sets?.getAttribute('identifier') ?? '']: sets?.textContent ?? '' };
  }
  return {};
}

describe.each(set.items)('item $number, $problem.kind', ({ number, problem, key }) => {
  const xml = files[`items/problem-${String(number).padStart(2, '0')}.xml`] ?? '';
  /** The number or letter at the head of an answer in words, with its sign. */
  const bare = (words: string): string => {
    const letter = /^([A-D]): /.exec(words)?.[1];
    if (letter !== undefined) return letter;
    const size = parseFloat(words.replace('−', '-'));
    const turned =
      (problem.unit === '% more' && / less$/.test(words)) ||
      (problem.unit === '% less' && / more$/.test(words));
    return String(turned ? -size : size);
  };

  test('scores the key’s answer', () => {
    expect(processed(xml, bare(key.answer))).toEqual({ SCORE: '1' });
    const declared = elements(xml, 'qti-correct-response')[0]?.textContent ?? '';
    expect(processed(xml, declared)).toEqual({ SCORE: '1' });
  });

  test('answers every misstep of the key with its idea', () => {
    expect(key.missteps.length).toBeGreaterThanOrEqual(3);
    for (const misstep of key.missteps) {
      const { FEEDBACK = '' } = processed(xml, bare(misstep.answer));
      const said = elements(xml, `qti-modal-feedback[identifier="${FEEDBACK}"]`)[0]?.textContent;
      expect(said).toBe(misstep.idea);
    }
  });

  test('uses declared names only', () => {
    const declared = elements(xml, 'qti-response-declaration, qti-outcome-declaration').map((one) =>
      one.getAttribute('identifier'),
    );
    const used = elements(xml, 'qti-variable, qti-set-outcome-value').map((one) =>
      one.getAttribute('identifier'),
    );
    for (const name of used) expect(declared).toContain(name);
  });
});
