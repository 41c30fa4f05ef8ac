import { describe, expect, test } from 'vitest';
import {
  carbideFromComposition,
  carbideVolumePercent,
  carbidesByDesignation,
  compositionsByDesignation,
  designationsHold,
  isUnknown,
  nominal,
  predict,
} from '../../../src/model/index.ts';
import type { CarbideVolPercent, Knife } from '../../../src/model/index.ts';
import { carbideOf, contents, readComposition, textsOf } from '../../../src/topics/composition/entry.ts';
import type { CompositionTexts } from '../../../src/topics/composition/entry.ts';
import { compositionSaid, heldByDesignations } from '../../../src/topics/composition/words.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { validate } from '../../../src/comparison/validate.ts';
import { compositionLever } from '../../../src/topics/composition/figure-composition-lever.ts';
import { loft, loftWith } from '../../comparison/entries.ts';

const hardenedOf = (texts: CompositionTexts) => {
  const read = readComposition(texts);
  if (!read.ok) throw new Error(Object.values(read.problems).join('; '));
  return read.hardened;
};

// A published calculation for 17Cr-1.075C-0.8Mo: 15.4 vol % from 1000 °C, 11.8 from 1100 °C.
const published: CompositionTexts = {
  carbon: '1,075',
  chromium: '17 %',
  vanadium: '0',
  molybdenum: '0.8',
  tungsten: '0',
  hardening: '1000 °C',
};
test.each([
  ['1000 °C', 15.4],
  ['1100', 11.8],
])('as typed, hardened from %s, the published volume is that of its lever', (hardening, percent) => {
  const hardened = hardenedOf({ ...published, carbon: '1.075', hardening });
  const { plusMinus, tieLine, otherTieLine } = hardened.estimate;
  const { whole: carbon, matrix: austeniteCarbon, formula: carbide } = tieLine;
  expect(carbide).toBe('Cr23C6');
  expect(carbideVolumePercent({ carbon, austeniteCarbon, carbide })).toBeCloseTo(percent, 1);
  // Cr7C3 beside it is looked at too, and the ± covers both.
  expect(otherTieLine?.formula).toBe('Cr7C3');
  expect(Math.abs(hardened.percent - percent)).toBeLessThan(plusMinus);
  expect(compositionSaid(hardened)[0]).toMatch(/, all of it Cr23C6 or Cr7C3\.$/);
  expect(compositionLever(hardened).caption(sceneOf(loft()))).toContain('It may be Cr7C3 instead');
});

test('a steel like AISI M2 has the volume of the table, and every sentence says so', () => {
  const hardened = hardenedOf({ ...textsOf('AISI M2'), hardening: '1220' });
  // AISI M2 7–10, ±30% (memory).
  expect(hardened.percent).toBe(8.5);
  expect(hardened.estimate.plusMinus).toBeCloseTo(2.55, 9);
  const said = compositionSaid(hardened).join(' ');
  expect(said).toContain('The range of the table for AISI M2 is used instead, from memory.');
  expect(said).not.toContain('The matrix keeps');
  expect(compositionLever(hardened).caption(sceneOf(loft()))).toContain(
    'not read off this lever but taken from the table',
  );
});

test('what a plain steel is not said to have is not taken for tungsten', () => {
  const plain = { ...published, carbon: '0.85', chromium: '0', molybdenum: '0', hardening: '' };
  expect(carbideOf(hardenedOf(plain).estimate)).not.toEqual(
    carbideOf(hardenedOf(textsOf('AISI M2')).estimate),
  );
  const empty = { carbon: '', chromium: '', vanadium: '', molybdenum: '', tungsten: '', hardening: '' };
  expect(hardenedOf(empty).estimate.plusMinus).toBeGreaterThan(8);
});

test('an unknown hardening temperature widens the ±, and is said', () => {
  const known = hardenedOf({ ...published, carbon: '1.075' });
  for (const hardening of ['', '?', 'not known']) {
    const open = hardenedOf({ ...published, carbon: '1.075', hardening });
    expect(open.celsius).toBeNull();
    expect(open.estimate.plusMinus).toBeGreaterThan(known.estimate.plusMinus);
    expect(compositionSaid(open).join(' ')).toContain('not known, which widens');
  }
  expect(
    hardenedOf({ ...published, carbon: '1.075', hardening: '1000 ± 40' }).estimate.plusMinus,
  ).toBeGreaterThan(known.estimate.plusMinus);
});

test.each(contents)(
  '%s emptied is not known: it widens the ±, is named, and is refused nowhere',
  (content) => {
    const known = hardenedOf({ ...published, carbon: '1.075' });
    const { low, high } = designationsHold(content);
    const held = Object.values(compositionsByDesignation).map((steel) => steel[content] ?? 0);
    expect([low, high]).toEqual([Math.min(...held), Math.max(...held)]);
    for (const typed of ['', '?', 'not known', '\t ']) {
      const open = hardenedOf({ ...published, carbon: '1.075', [content]: typed });
      expect(open.estimate.notKnown).toEqual([content]);
      expect(open.estimate.plusMinus).toBeGreaterThan(known.estimate.plusMinus);
      const said = compositionSaid(open).join(' ');
      expect(said).toContain(`Not known, which widens the ±: ${content} from ${low} to ${high}%.`);
      expect(compositionLever(open).caption(sceneOf(loft()))).toContain(
        `Of ${content}, not known, the middle is drawn.`,
      );
      expect(Object.values(carbideOf(open.estimate)).map(nominal)).not.toContain(NaN);
    }
    expect(heldByDesignations(content)).toBe(`The list has ${low} to ${high}%.`);
  },
);

test('with carbon and chromium emptied little is said, and said so; with all emptied too', () => {
  const empty = { carbon: '', chromium: '', vanadium: '', molybdenum: '', tungsten: '', hardening: '' };
  for (const texts of [{ ...published, carbon: '', chromium: '' }, empty]) {
    const open = hardenedOf(texts);
    expect(compositionSaid(open).join(' ')).toMatch(/neither carbon nor chromium known, this says little/);
    // Any volume of the table of typical ones is within it.
    for (const kinds of Object.values(carbidesByDesignation))
      for (const volume of Object.values(kinds))
        expect(Math.abs(nominal(volume) - open.percent)).toBeLessThan(open.estimate.plusMinus);
    const carbide = { volPercent: carbideOf(open.estimate) };
    expect(validate(loftWith('dunlin', { carbide }))).toMatchObject({ ok: true });
  }
});

test.each<[Partial<CompositionTexts>, keyof CompositionTexts, RegExp]>([
  [{ carbon: '5' }, 'carbon', /5% is not between 0% and 3%/],
  [{ chromium: '30' }, 'chromium', /not between 0% and 18%/],
  [{ vanadium: 'some' }, 'vanadium', /not readable/],
  [{ carbon: '1,075' }, 'carbon', /could be 1075 or 1.075/],
  [{ hardening: '400' }, 'hardening', /400 °C is not between 950 °C and 1150 °C/],
  [{ hardening: 'red hot' }, 'hardening', /not readable/],
  [{ hardening: '1100–1000' }, 'hardening', /backwards/],
])('%o is refused at its field', (change, field, message) => {
  const read = readComposition({ ...published, carbon: '1.075', ...change });
  expect(read).toMatchObject({ ok: false });
  expect(read.ok ? {} : read.problems).toEqual({ [field]: expect.stringMatching(message) });
});

describe.each(Object.keys(compositionsByDesignation))('%s', (designation) => {
  test('fills the fields with its own composition, and its carbide can stand in a comparison', () => {
    const texts = textsOf(designation);
    const composition = compositionsByDesignation[designation];
    for (const content of contents) expect(Number(texts[content])).toBe(composition?.[content] ?? 0);
    const { estimate } = hardenedOf(texts);
    expect(estimate).toEqual(carbideFromComposition({ carbon: 0, ...composition }));
    const carbide = { volPercent: carbideOf(estimate) };
    expect(validate(loftWith('dunlin', { carbide }))).toMatchObject({ ok: true });
  });

  test('the ± of its kinds, drawn apart, have the ± of the sum together', () => {
    const { estimate } = hardenedOf(textsOf(designation));
    const kinds = Object.values(carbideOf(estimate));
    const all = kinds.map((kind) => (typeof kind === 'object' && !isUnknown(kind) ? kind.plusMinus : 0));
    // Independent ± add in squares (JCGM 100, 5.1.2); three figures are kept.
    expect(Math.hypot(...all) / estimate.plusMinus).toBeCloseTo(1, 2);
  });
});

test('in a comparison the wider ± of an unknown heat treatment or content makes a wider band', () => {
  const knife = (id: string, carbideVolPercent: CarbideVolPercent): Knife => ({
    id,
    angleDeg: 20,
    edgeMm: 0.4,
    finish: { um: 15 },
    grind: { form: 'flat', spineMm: 3, heightMm: 16 },
    hrc: 60,
    carbideVolPercent,
  });
  const width = (change: Partial<CompositionTexts>): number => {
    const carbide = carbideOf(hardenedOf({ ...published, carbon: '1.075', ...change }).estimate);
    const [, found] = predict(
      {
        knives: [knife('plover', { CrC: 4 }), knife('dunlin', carbide)],
        baseline: 'plover',
        assumptions: { residualCv: 0 },
      },
      { samples: 4000, seed: 1 },
    );
    return found ? found.high / found.low : Number.NaN;
  };
  const known = width({ hardening: '1000' });
  for (const field of [...contents, 'hardening'] as const)
    expect(width({ hardening: '1000', [field]: '' })).toBeGreaterThan(known);
});

test('a steel without carbide says so, and the most it may have', () => {
  // 0.3% carbon is less than the austenite holds at 1000 °C (about 1.5%, from memory): none is left for cementite.
  const soft = {
    carbon: '0.3',
    chromium: '0',
    vanadium: '0',
    molybdenum: '0',
    tungsten: '0',
    hardening: '1000',
  };
  const hardened = hardenedOf(soft);
  const { plusMinus } = hardened.estimate;
  expect(hardened.percent).toBe(0);
  expect(compositionSaid(hardened)[0]).toBe(
    `Carbide hardened from 1000 °C: none, at most ${plusMinus.toPrecision(2)}% by volume.`,
  );
});

test.each(['AISI 0', '', 'constructor'])('“%s” has no composition to fill the fields with', (designation) => {
  expect(() => textsOf(designation)).toThrow(`the model has no composition of “${designation}”`);
});
