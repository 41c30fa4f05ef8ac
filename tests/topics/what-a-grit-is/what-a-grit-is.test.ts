import { describe, expect, it, test } from 'vitest';
import { gritTable } from '../../../src/model/index.ts';
import type { Finish } from '../../../src/model/index.ts';
import { gritsControls } from '../../../src/topics/what-a-grit-is/controls.ts';
import { gritsNumbers } from '../../../src/topics/what-a-grit-is/numbers.ts';
import { gritsWords } from '../../../src/topics/what-a-grit-is/words.ts';
import { gritsWorked } from '../../../src/topics/what-a-grit-is/worked.ts';
import { asGrit, finishesOf, gradeOn, scales, sizeOn } from '../../../src/topics/what-a-grit-is/values.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { scratchesOf } from '../../../src/topics/what-a-grit-is/scratches.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import { loft } from '../../comparison/entries.ts';

const finished = (
  subject: Finish,
  baseline: Finish,
  more: Partial<ComparisonEntry> = {},
): ComparisonEntry => {
  const entry = loft();
  return {
    ...entry,
    ...more,
    knives: entry.knives.map((knife) =>
      knife.id === entry.subject
        ? { ...knife, finish: subject }
        : knife.id === entry.baseline
          ? { ...knife, finish: baseline }
          : knife,
    ),
  };
};
const P = (grit: number): Finish => ({ scale: 'FEPA-P', grit });
const said = (of: string, entry: ComparisonEntry): string => gritsWords[of]?.(sceneOf(entry)).join(' ') ?? '';
const control = (name: string) => {
  const found = gritsControls[name];
  if (!found) throw new Error(name);
  return found;
};

describe('one number on four scales', () => {
  // ISO 6344, ISO 8486 (memory), JIS R 6001 and ANSI B74.18 as reprinted: number 400.
  it.each([
    ['FEPA-P', 35],
    ['FEPA-F', 17.3],
    ['JIS', 30],
    ['CAMI', 23.6],
  ] as const)('400 on %s is %d µm', (scale, um) => {
    expect(sizeOn(scale, 400)).toBe(um);
  });

  // The published sizes, 162 over 18.3 µm and 141 over 9.2 µm, divided by hand.
  it.each([
    ['FEPA-P', 8.85],
    ['CAMI', 15.3],
  ] as const)('100 against 1000 on %s is ×%d', (scale, ratio) => {
    expect((sizeOn(scale, 100) ?? 0) / (sizeOn(scale, 1000) ?? 1)).toBeCloseTo(ratio, 1);
    expect(said('grits-by-scale', finished(P(100), P(1000)))).toMatch(`×${ratio}`);
  });

  it('has no size where the list does not reach', () => {
    expect(sizeOn('JIS', 220)).toBeNull();
    expect(sizeOn('CAMI', 1500)).toBeNull();
    expect(said('grits-by-scale', finished(P(220), P(1200)))).toMatch(/JIS: no answer.*220 does not lie/);
    expect(said('grits-refused', loft())).toMatch(/3000 is not between 80 and 2500/);
  });

  it('names every grade by itself, and tells a grain beyond either end', () => {
    for (const scale of scales) {
      const { rows } = gritTable(scale);
      for (const [grit, um] of rows) expect(gradeOn(scale, um)).toEqual({ grit, um });
      const sizes = rows.map(([, um]) => um);
      expect(gradeOn(scale, Math.max(...sizes) * 1.01)).toBe('none so coarse');
      expect(gradeOn(scale, Math.min(...sizes) * 0.99)).toBe('none so fine');
    }
  });
});

describe('the words of the grits', () => {
  it('say that the numbers mislead, unless they do not', () => {
    // 1200/220 = 5.45 where the sizes say 68/15.3 = 4.44.
    expect(said('grits-given', finished(P(220), P(1200)))).toMatch(/get 5\.45: .* not the right one/);
    expect(gritsNumbers['grits.ratio']?.(sceneOf(finished(P(220), P(1200))))).toBe('×4.44');
    // JIS 3000 and 4000: 4.0 and 3.0 µm.
    const jis = (grit: number): Finish => ({ scale: 'JIS', grit });
    expect(said('grits-given', finished(jis(3000), jis(4000)))).toMatch(/by luck the right one/);
    expect(said('grits', finished(jis(3000), jis(4000)))).toMatch(/happens to be right/);
  });

  it('give one grain the factor 1, whatever its names', () => {
    expect(said('grits', finished({ um: 35 }, P(400)))).toMatch(/the factor of the finish is 1/);
  });

  it('divide no numbers of two scales, and none that are not there', () => {
    const two = finished({ scale: 'JIS', grit: 1000 }, P(1000));
    expect(said('grits-given', two)).toMatch(/two scales/);
    expect(said('grits', two)).toMatch(/only the sizes can be compared/);
    expect(said('grits', finished({ um: 20 }, P(1000)))).toMatch(/cannot be misread/);
  });

  it('own up to a finish that is not known', () => {
    expect(said('grits', finished({ um: { unknown: true, low: 10, high: 80 } }, P(400)))).toMatch(
      /finish of Dunlin is not known/,
    );
  });

  it('claim no factor where wear does not end the edge', () => {
    const words = said('grits', finished(P(220), P(1200), { work: 'prying' }));
    expect(words).toMatch(/no factor of the finish is claimed/);
    expect(words).not.toMatch(/times as long/);
  });

  it('say that an exponent of 0 leaves nothing', () => {
    const entry = finished(P(220), P(1200), { assumptions: { finishExponent: 0 } });
    expect(said('grits', entry)).toMatch(/no weight at all/);
  });

  it('tell bands that touch from bands that do not', () => {
    expect(said('grits-scratch', finished(P(220), P(1200)))).toMatch(/bands overlap/);
    expect(said('grits-scratch', finished(P(80), P(2500)))).toMatch(/ends before the other begins/);
  });
});

// Three to five hundredths of the grain, a factor of two either way.
test('scratches are as deep as the rule says', () => {
  const { low, high, least, most } = scratchesOf(100);
  expect([least, low, high, most].map((um) => Number(um.toPrecision(12)))).toEqual([1.5, 3, 5, 10]);
});

describe('the controls', () => {
  it('step through the grades of the knife’s own scale and no further', () => {
    const grit = control('subject.grit');
    for (const scale of scales) {
      const { rows } = gritTable(scale);
      const [first] = rows.map(([each]) => each);
      const entry = finished({ scale, grit: first ?? 0 }, P(400));
      expect(grit.last?.(entry)).toBe(rows.length - 1);
      rows.forEach(([each], step) => {
        const moved = grit.write(entry, step);
        expect(finishesOf(sceneOf(moved)).subject.grit).toEqual({ scale, number: each });
        expect(grit.read(moved)).toBe(step);
      });
      expect(grit.read(grit.write(entry, grit.max))).toBe(rows.length - 1);
    }
  });

  it('read the same number on another scale, or the nearest number that scale has', () => {
    const scale = control('baseline.scale');
    const onJis = (grit: number) =>
      finishesOf(sceneOf(scale.write(finished(P(400), P(grit)), 2))).baseline.grit;
    expect(onJis(1200)).toEqual({ scale: 'JIS', number: 1200 });
    expect(onJis(220)).toEqual({ scale: 'JIS', number: 240 });
    expect(scale.read(scale.write(loft(), 3))).toBe(3);
  });
});

test('the worked example can be followed with the numbers it shows', () => {
  for (const entry of [loft(), finished({ um: 7 }, P(150)), finished(P(1500), P(100))]) {
    const steps = gritsWorked['grits']?.(sceneOf(entry)).steps ?? [];
    const shown = steps.map(
      ({ values }) =>
        (name: string) =>
          Number(values[name]),
    );
    const [divide, power, part, size] = shown;
    if (!divide || !power || !part || !size) throw new Error('a step is missing');
    expect(divide('a') / divide('b') / divide('ratio')).toBeCloseTo(1, 2);
    expect(power('ratio') ** power('e') / power('factor')).toBeCloseTo(1, 2);
    expect(Math.log(part('g') / part('from')) / Math.log(part('to') / part('from'))).toBeCloseTo(
      part('part'),
      3,
    );
    expect((size('coarse') * (size('fine') / size('coarse')) ** size('part')) / size('um')).toBeCloseTo(1, 2);
  }
});

test('a grain in µm becomes the grade whose grain is nearest, a grit stays what it is', () => {
  // FEPA P (ISO 6344): P400 is 35 µm, P360 40.5 µm.
  expect(asGrit({ um: 35 })).toEqual(P(400));
  expect(asGrit({ um: { value: 40, plusMinus: 3 } })).toEqual(P(360));
  expect(asGrit({ scale: 'JIS', grit: 1000 })).toEqual({ scale: 'JIS', grit: 1000 });
});
