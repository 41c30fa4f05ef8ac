import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  brief,
  countInWords,
  fixed,
  inDecimals,
  inFigures,
  percent,
  plain,
  readAlike,
  readsAsNone,
  readsAsOne,
  roundRatio,
  roundedPercent,
  short,
  signedPercent,
  thousands,
  times,
  typedPercent,
  whole,
} from '../../src/scene/show.ts';

/** Ratios of two knives, both ways, with many close to 1. */
const ratios = fc.oneof(
  fc.double({ min: -0.02, max: 0.02, noNaN: true }).map(Math.exp),
  fc.double({ min: -4, max: 4, noNaN: true }).map(Math.exp),
);

describe('what reads as one', () => {
  // Own calculation: to three figures everything from 0.5% below 1, by its inverse, to 0.5% above it is 1.00.
  it.each([1, 1.0049, 1 / 1.0049, 0.997, 1.003])('takes ×%d as one', (ratio) =>
    expect(readsAsOne(ratio)).toBe(true),
  );
  it.each([1.0051, 1 / 1.0051, 0.99, 1.01, 0, -1, Infinity, Number.NaN])(
    'does not take ×%d as one',
    (ratio) => expect(readsAsOne(ratio)).toBe(false),
  );

  it('is what is shown as ×1.00, and nothing else', () => {
    fc.assert(fc.property(ratios, (ratio) => readsAsOne(ratio) === (times(ratio) === '×1.00')));
  });

  it('does not depend on which of two knives is the baseline', () => {
    fc.assert(
      fc.property(ratios, (ratio) => {
        // At the very edge of the threshold the inverse may fall on the other side by its last binary digit.
        fc.pre(Math.abs(Math.abs(Math.log(ratio)) - Math.log(1.005)) > 1e-12);
        return readsAsOne(ratio) === readsAsOne(1 / ratio);
      }),
    );
  });

  it('says of two ratios that they read alike where they are shown with the same figures', () => {
    fc.assert(
      fc.property(ratios, fc.double({ min: -0.01, max: 0.01, noNaN: true }), (ratio, apart) => {
        const other = ratio * Math.exp(apart);
        return readAlike(ratio, other) === (times(ratio) === times(other));
      }),
    );
  });

  it('shows a ratio as the number it is rounded to', () => {
    fc.assert(fc.property(ratios, (ratio) => Number(times(ratio).slice(1)) === roundRatio(ratio)));
  });

  it('leaves more figures alone where more are asked for', () => expect(times(0.9971, 4)).toBe('×0.9971'));
});

describe('numbers for readers', () => {
  // The formatter of the language itself (ECMA-402), which rounds by decimal digits.
  const figures = (value: number, maximumSignificantDigits: number): number =>
    Number(new Intl.NumberFormat('en', { maximumSignificantDigits, useGrouping: false }).format(value));
  it('rounds to figures as the formatter of the language does', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 9e5, noNaN: true }),
        fc.integer({ min: 1, max: 4 }),
        (value, most) => {
          expect(inFigures(value, most)).toBe(figures(value, most));
          expect(Number(plain(value, most))).toBe(figures(value, most));
        },
      ),
    );
  });
  it('sets thousands apart as the formatter of the language does', () => {
    fc.assert(
      fc.property(fc.nat(), (value) => thousands(value) === new Intl.NumberFormat('en').format(value)),
    );
  });

  it.each([
    ['a size with its zeros', plain(24), '24.0'],
    ['nothing', plain(0), '0'],
    ['a very small number', plain(1.234e-5), '1.23 × 10^−5'],
    ['a number that is not known', plain(Number.NaN), 'not known'],
    ['a typed value', brief(0.5), '0.5'],
    ['a measure', short(14.235), '14.2'],
    ['a measure below 0', short(-0.5), '−0.5'],
    ['two figures', short(1234, 2), '1200'],
    ['fixed decimals', fixed(-24, 1), '−24.0'],
    ['decimals', inDecimals(12.345, 1), 12.3],
    ['a whole number', whole(41.6), 42],
    ['a share', percent(0.556), '56%'],
    ['a fall', signedPercent(-0.4), '−40%'],
    ['no change', signedPercent(-0.001), '+0%'],
    ['a typed rise', typedPercent(12.5), '+12.5%'],
    ['a rounded rise', roundedPercent(12.34), '+12.3%'],
    ['a count in words', countInWords(8), 'eight'],
    ['a count too large for a word', countInWords(1200), '1,200'],
  ])('writes %s', (_what, written, expected) => expect(written).toBe(expected));

  it('takes a share that rounds to 0% as none', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.01, noNaN: true }), (share) => {
        fc.pre(Math.abs(share - 0.005) > 1e-12);
        return readsAsNone(share) === (percent(share) === '0%');
      }),
    );
  });
});

describe('the examples in the docstrings', () => {
  const files = ['scene', 'phrases'].flatMap((room) =>
    readdirSync(`src/${room}`)
      .filter((name) => name.endsWith('.ts'))
      .map((name) => `src/${room}/${name}`),
  );
  const examples = files.flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(/^ *\* @example (.+) \/\/ → (.+)$/gm)].map(
      ([, expression = '', written = '']) => [file, expression, written] as const,
    ),
  );

  test('every function that writes numbers has one', () =>
    expect(examples.filter(([file]) => file.endsWith('/show.ts')).length).toBeGreaterThan(15));

  test.each(examples)('%s: %s', async (file, expression, written) => {
    const names = (await import(`../../${file}`)) as Record<string, unknown>;
    const evaluate = (text: string): unknown =>
      (new Function(...Object.keys(names), `return (${text});`) as (...values: unknown[]) => unknown)(
        ...Object.values(names),
      );
    expect(evaluate(expression)).toEqual(evaluate(written));
  });
});

describe('one place for numbers', () => {
  /** Rooms above the scene in the order of the rooms: they cannot ask it, and what they write is for files and fields. */
  const above = /^src\/(model|runs|exercises|comparison)\//;
  /** Coordinates of drawings, in pixels or millimetres: nobody reads them. */
  const coordinates = [
    'src/elements/figure/page-sheet.ts',
    'src/pictures/drawing.ts',
    'src/pictures/frame.ts',
    'src/pictures/sheet.ts',
    'src/teach/forms/moved-picture.ts',
    'src/teach/paper/ruler-svg.ts',
    'src/teach/paper/strips-svg.ts',
    'src/teach/tally/tally-dots.ts',
  ];
  const exempt = [
    ...coordinates,
    // An `@example` of a coordinate.
    'src/teach/paper/log-ruler.ts',
    // What Plot is built with in place of its own formats; the figures give their axes formats of `show.ts`.
    'src/figure-kit/plot-without/formats.mjs',
  ];
  const formats = /\.to(?:Fixed|Precision|Exponential|LocaleString)\(|Intl\.NumberFormat/;

  const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .map((name) => `src/${name.replaceAll('\\', '/')}`)
    .filter((name) => /\.(?:ts|astro|mjs)$/.test(name));
  const formatting = sources.filter((name) => formats.test(readFileSync(name, 'utf8')));

  it('is show.ts: no other file rounds or formats a number for readers', () => {
    const others = formatting.filter((name) => !above.test(name) && !exempt.includes(name));
    expect(others).toEqual(['src/scene/show.ts']);
  });

  it('has no exemption for a file that needs none', () => {
    expect(exempt.filter((name) => !formatting.includes(name))).toEqual([]);
  });

  it('decides there alone what reads as one', () => {
    // A distance from 1, or of a logarithm from 0, held against half a per cent or less.
    const threshold = /(?:Math\.abs\([^;\n]*|[<>]=? ?)(?:\b5e-[34]\b|\b0\.00?05\b|\b0\.995\b|\b1\.005\b)/;
    const deciding = sources.filter((name) => threshold.test(readFileSync(name, 'utf8')));
    expect(deciding.filter((name) => !above.test(name))).toEqual(['src/scene/show.ts']);
  });
});
