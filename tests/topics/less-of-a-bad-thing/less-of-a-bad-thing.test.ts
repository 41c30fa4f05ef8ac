import { describe, expect, it, test } from 'vitest';
import { lessControls } from '../../../src/topics/less-of-a-bad-thing/controls.ts';
import { lessNumbers } from '../../../src/topics/less-of-a-bad-thing/numbers.ts';
import { lessOf, lessPercentOf, readLess } from '../../../src/topics/less-of-a-bad-thing/values.ts';
import { lessWords } from '../../../src/topics/less-of-a-bad-thing/words.ts';
import { lessWorked } from '../../../src/topics/less-of-a-bad-thing/worked.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import { loft, loftWith } from '../../comparison/entries.ts';

const typed = (faceValues: number[] | null, more: Partial<ComparisonEntry> = {}): ComparisonEntry => ({
  ...loft(),
  faceValues,
  ...more,
});
const number = (name: string, entry: ComparisonEntry): string => lessNumbers[name]?.(sceneOf(entry)) ?? '';
const said = (entry: ComparisonEntry): string => lessWords['less']?.(sceneOf(entry)).join(' ') ?? '';

describe('less of something harmful', () => {
  // Larrick & Soll 2008, example of the press reports: from 18 to 28 miles on a gallon. The fuel for a mile falls by
  // 10/28; the distance on a gallon is the inverse of it.
  it('is worth the inverse where a rate turns over', () => {
    expect(readLess((10 / 28) * 100, 0.5).inverse).toBeCloseTo(28 / 18, 12);
  });

  // Of the same report: 12 to 14 saves 119 gallons in 10,000 miles, 30 to 40 only 83, though 40 is a third more than 30.
  it('falls less than the rate rises', () => {
    const saved = (from: number, to: number) => {
      const percent = (1 - from / to) * 100;
      expect(readLess(percent, 1).inverse).toBeCloseTo(to / from, 12);
      return (10_000 / from) * (percent / 100);
    };
    expect(Math.round(saved(12, 14))).toBe(119);
    expect(Math.round(saved(30, 40))).toBe(83);
  });

  // Powers of two: three quarters less leaves a quarter, the inverse is 4, its square root 2, its square 16.
  it.each([
    [0.5, 2],
    [0, 1],
    [1, 4],
    [2, 16],
  ])('takes exponent %d of a quarter left as %d', (exponent, damped) => {
    const less = readLess(75, exponent);
    expect(less.faceValue).toBe(1.75);
    expect(less.inverse).toBe(4);
    expect(less.damped).toBeCloseTo(damped, 12);
  });

  it('is the first percentage typed, without its sign', () => {
    expect(lessPercentOf(typed([-40, 70]))).toBe(40);
    expect(lessPercentOf(typed([25]))).toBe(25);
  });

  // 14° of 24° is 7/12; 24° of 14° is the same pair.
  it.each([null, [], [100], [400]])(
    'is that of the angles where %j is no percentage of less',
    (faceValues) => {
      expect(lessPercentOf(typed(faceValues))).toBeCloseTo(500 / 12, 12);
      expect(lessPercentOf(typed(faceValues, { subject: 'plover', baseline: 'dunlin' }))).toBeCloseTo(
        500 / 12,
        12,
      );
    },
  );

  it('takes the exponent the visitor assumes, above 1 too', () => {
    const entry = typed([-50], { assumptions: { thicknessExponent: 3 } });
    expect(lessOf(sceneOf(entry)).damped).toBeCloseTo(8, 12);
  });
});

describe('the slider of less', () => {
  const slider = lessControls['less'];
  it('writes a fall, leaves the other percentages, and reads back what it wrote', () => {
    const written = slider?.write(typed([10, 20]), 35);
    expect(written?.faceValues).toEqual([-35, 20]);
    expect(written && slider?.read(written)).toBe(35);
    expect(slider?.write(typed(null), 0).faceValues).toEqual([0]);
  });
});

describe('there and back', () => {
  // +25% and −25%: 1.25 × 0.75 = 15/16; 1/1.25 = 0.8, so −20% undoes it; 1/0.75 = 4/3, so +33.3% undoes the fall.
  it('loses the percentage taken of itself', () => {
    const entry = typed([-25]);
    expect(number('less.back', entry)).toBe('×0.938');
    expect(number('less.back.percent', entry)).toBe('−6.25%');
    expect(number('less.undo', entry)).toBe('−20%');
    expect(number('less.undo.fall', entry)).toBe('+33.3%');
  });

  it('counts out the splices of a shift', () => {
    expect(number('less.splice.after', typed([-40]))).toBe('6 minutes');
    expect(number('less.splices.before', typed([-40]))).toBe('30 splices');
    expect(number('less.splices.after', typed([-40]))).toBe('50 splices');
  });
});

describe('the words of less', () => {
  it('say of a thinner knife that it has less in the way', () => {
    // 0.25 mm of 0.60 mm is 5/12: 58.3% less, inverse 2.4, its square root 1.549.
    expect(said(loft())).toMatch(
      /58\.3% less .* 1\.58 at face value and 2\.40 as the inverse\..* to the power 0\.50: 1\.55 for Dunlin/,
    );
  });

  it('turn the percentage over for the thicker one', () => {
    const turned = said({ ...loft(), subject: 'plover', baseline: 'dunlin' });
    expect(turned).toMatch(/140% more of what is in the way for Plover/);
    expect(turned).toMatch(/the inverse makes 0\.417/);
  });

  it('say where nothing is less', () => {
    expect(said(loftWith('dunlin', { edgeMm: 0.6 }))).toMatch(/both have 0\.60 mm behind the edge/);
  });
});

// tan(24° + φ)/tan(14° + φ) with φ = arctan of what slicing three to one leaves of a friction of 0.25: 1.636 by an own
// calculation outside the model; the thickness by its square root, (0.60/0.25)^½ = 1.549.
test('the careful estimate is given beside the readings, at its middle settings', () => {
  expect(said(loft())).toContain(
    'raises the inverse to the power 0.50: 1.55 for Dunlin, at the middle settings.',
  );
  expect(said(loft())).toContain('the careful estimate makes it 1.64 for Dunlin, at the middle settings.');
});

// Worked with the values the page shows: what a reader with a calculator gets.
test('the worked example can be followed with the numbers it shows', () => {
  for (const faceValues of [[-40], [-12.5], [-88], null]) {
    const steps = lessWorked['less-of-a-bad-thing']?.(sceneOf(typed(faceValues))).steps ?? [];
    const value = (name: string) =>
      Number(
        steps
          .map(({ values }) => values[name])
          .find((text) => text !== undefined)
          ?.replace('−', '-'),
      );
    const p = value('p');
    const careful = (shown: number, own: number) => expect(Math.abs(shown / own - 1)).toBeLessThan(0.003);
    careful(value('left'), 1 - p / 100);
    careful(value('face'), 1 + p / 100);
    careful(value('inverse'), 1 / value('left'));
    careful(value('damped'), value('inverse') ** value('e'));
    careful(value('back'), (1 + p / 100) * (1 - p / 100));
    careful((1 + p / 100) * (1 + value('undo') / 100), 1);
  }
});

test('only an exponent of one half is called a square root', () => {
  const damped = (thicknessExponent: number): string =>
    lessWorked['less-of-a-bad-thing']?.(sceneOf(typed([-40], { assumptions: { thicknessExponent } })))
      .steps.map(({ say }) => say)
      .find((say) => say.startsWith('Damped')) ?? '';
  expect(damped(0.5)).toBe('Damped: the inverse to the power 0.5. That is its square root.');
  expect(damped(0.8)).toBe('Damped: the inverse to the power 0.8.');
});
