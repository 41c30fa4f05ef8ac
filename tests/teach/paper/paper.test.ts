import { describe, expect, test } from 'vitest';
import { cards } from '../../../src/components/content/cards.ts';
import { logRulerMarks } from '../../../src/teach/paper/log-ruler.ts';
import { rulerSvg } from '../../../src/teach/paper/ruler-svg.ts';
import { STRIPS, stripsSvg } from '../../../src/teach/paper/strips-svg.ts';

describe('the ruler of ratios', () => {
  // Common logarithms to five places, as four- and five-figure tables give them (memory).
  test.each([
    [1, 0],
    [1.5, 0.17609],
    [2, 0.30103],
    [3, 0.47712],
    [5, 0.69897],
    [7, 0.8451],
    [10, 1],
  ])('has %d at %d of its length', (value, part) => {
    const mark = logRulerMarks(1, 10, 200).find((one) => one.value === value);
    expect(mark?.label).toBe(String(value));
    expect(mark?.atMm).toBeCloseTo(200 * part, 2);
    const half = logRulerMarks(0.1, 10, 200).find((one) => one.value === value);
    expect(half?.atMm).toBeCloseTo(100 + 100 * part, 2);
  });

  test('rises from end to end, without a number twice', () => {
    for (const marks of [logRulerMarks(1, 10, 200), logRulerMarks(0.1, 10, 200)]) {
      for (const [index, { atMm }] of marks.entries())
        if (index > 0) expect(atMm).toBeGreaterThan(marks[index - 1]?.atMm ?? NaN);
      expect(marks.at(-1)?.atMm).toBe(200);
    }
  });

  test('has room for each of its numbers', () => {
    for (const from of [1, 0.1]) {
      const written = logRulerMarks(from, 10, 200).filter(({ label }) => label);
      for (const [index, { atMm }] of written.entries())
        if (index > 0) expect(atMm - (written[index - 1]?.atMm ?? NaN), String(index)).toBeGreaterThan(3.4);
    }
  });

  test.each([
    [2, 10, 200],
    [10, 1, 200],
    [1, 10, 0],
  ])('from %d to %d over %d mm is refused', (from, to, long) => {
    expect(() => logRulerMarks(from, to, long)).toThrow(RangeError);
  });

  test('says its size in millimetres', () => {
    expect(rulerSvg(1, 10, 200)).toMatch(/width="42mm" height="212mm" viewBox="0 0 42 212"/);
  });
});

describe('the strips', () => {
  const svg = stripsSvg(STRIPS, 200, 196);
  const strips = [
    ...svg.matchAll(/x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="([\d.]+)"[^]*?× ([\d.]+)</g),
  ].map((found) => {
    const [x, y, width, height, factor] = found.slice(1).map(Number);
    return { x: x ?? NaN, y: y ?? NaN, width: width ?? NaN, height: height ?? NaN, factor: factor ?? NaN };
  });
  const long = (factor: number) => strips.find((strip) => strip.factor === factor)?.height ?? NaN;

  test('laid end to end make the product', () => {
    expect(strips).toHaveLength(STRIPS.length);
    expect(long(2) + long(1.5)).toBeCloseTo(long(3), 2);
    expect(long(1.6) + long(2.5)).toBeCloseTo(long(4), 2);
    expect(long(1.25)).toBeCloseTo(long(0.8), 2);
    // 20 cm for a factor of ten: ten to the length in parts of it is the ratio.
    for (const { factor, height } of strips)
      expect(10 ** (height / 200)).toBeCloseTo(factor < 1 ? 1 / factor : factor, 3);
  });

  test('fit the narrower of both papers, and none lies on another', () => {
    const width = Number(/width="([\d.]+)mm"/.exec(svg)?.[1]);
    // A4 is 210 mm wide, with 15 mm kept free on either side.
    expect(width).toBeLessThanOrEqual(180);
    for (const one of strips) {
      expect(one.y + one.height).toBeLessThanOrEqual(197);
      for (const other of strips)
        if (one !== other && one.x === other.x)
          expect(one.y >= other.y + other.height || other.y >= one.y + one.height).toBe(true);
    }
  });
});

describe('the card sort', () => {
  test('has enough of each heap, and a reason for every card', () => {
    const heap = (way: string) => cards.filter((card) => card.way === way).length;
    expect(heap('multiply')).toBeGreaterThanOrEqual(6);
    expect(heap('add')).toBeGreaterThanOrEqual(6);
    expect(heap('neither')).toBeGreaterThanOrEqual(2);
    for (const { why, text } of cards) {
      expect(why).toMatch(/\.$/);
      expect(text).not.toMatch(/knife|blade|edge/i);
    }
  });

  test.each(cards.filter(({ works }) => works !== undefined))(
    '$works is right, and done the way of its heap',
    ({ works = '', way }) => {
      const [, one, sign, other, result] = /^([\d.]+) ([×+]) ([\d.]+) = ([\d.]+)$/.exec(works) ?? [];
      expect(sign).toBe(way === 'multiply' ? '×' : '+');
      const [a, b] = [Number(one), Number(other)];
      expect(sign === '×' ? a * b : a + b).toBeCloseTo(Number(result), 10);
    },
  );
});
