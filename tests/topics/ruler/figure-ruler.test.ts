import { describe, expect, it } from 'vitest';
import { sizes } from '../../../src/figure-kit/figure.ts';
import { headlineOf } from '../../../src/scene/headline.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { withGuess } from '../../../src/scene/guessed.ts';
import { jobProfiles } from '../../../src/model/index.ts';
import { ruler } from '../../../src/topics/ruler/figure-ruler.ts';
import { ways, wayMarks } from '../../../src/topics/ruler/figure-ways.ts';
import { gainsAdded } from '../../../src/topics/ruler/figure-sum.ts';
import { sureOf } from '../../../src/scene/sure.ts';
import { temptingSum } from '../../../src/scene/terms.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import type { Scene } from '../../../src/scene/scene.ts';
import { base, sceneFor, scenes } from '../../figure-kit/scenes.ts';
import { drawingOf, labelsOf, overlapping } from './svg-labels.ts';

const loft = sceneFor(base);
const other: ComparisonEntry = { ...base, subject: base.baseline, baseline: base.subject };
const sizeNames = ['wide', 'narrow'] as const;

/** The scale of a drawing along the ruler: Plot leaves it on the SVG. */
type Scaled = SVGSVGElement & { scale(name: 'x'): { apply(ratio: number): number; domain: number[] } };
const scaleOf = (svg: SVGSVGElement) => (svg as Scaled).scale('x');

const numbers = (element: Element | undefined, ...names: string[]): number[] =>
  names.map((name) => Number(element?.getAttribute(name)));

/** The boxes of a drawing whose fill or class is asked for, as left and right, px. */
const boxes = (svg: SVGSVGElement, selector: string): [number, number][] =>
  [...svg.querySelectorAll(selector)].map((rect) => {
    const [x = 0, width = 0] = numbers(rect, 'x', 'width');
    return [x, x + width];
  });
const barsIn = (svg: SVGSVGElement) => boxes(svg, 'rect[fill^="url(#hatch"]');

/** The two corners of every range against each other: ratios of thousands. */
const [finest, coarsest] = ['finest', 'coarsest'].map(
  (which) => scenes[`a knife at the ${which} corner of every range`]?.knives[1],
);
if (!finest || !coarsest) throw new Error('the scenes have no corners');
const corners = (baseline: string): ComparisonEntry => ({
  ...base,
  knives: [
    { ...finest, id: 'finest', name: 'Finest' },
    { ...coarsest, id: 'coarsest', name: 'Coarsest' },
  ],
  baseline,
  subject: baseline === 'finest' ? 'coarsest' : 'finest',
});

const withOdd = (): [string, Scene][] => [
  ['the finest corner against the coarsest', sceneOf(corners('coarsest'))],
  ['the coarsest corner against the finest', sceneOf(corners('finest'))],

  ...Object.entries(scenes).map(([what, entry]): [string, Scene] => [what, sceneFor(entry)]),
  ['the loft the other way round', sceneOf(other)],
  ...[1e-4, 0.2, 1, 5, 20, 1e4].map((guess): [string, Scene] => [
    `a guess of ${guess}`,
    withGuess(loft, guess),
  ]),
  ...[0.2, 20].map((guess): [string, Scene] => [
    `equal knives, ${guess}`,
    withGuess(sceneFor(scenes['equal knives'] ?? base), guess),
  ]),
];

describe('the ruler', () => {
  it.each(sizeNames)('has its band where the headline is and its total where the factors end, %s', (size) => {
    const svg = drawingOf(ruler, loft, size);
    const { apply } = scaleOf(svg);
    const { low, high } = headlineOf(loft);
    const [[left, right] = [0, 0]] = boxes(svg, '.kf-ruler-range rect, rect.kf-ruler-range');
    expect(left).toBeCloseTo(apply(low), 4);
    expect(right).toBeCloseTo(apply(high), 4);
    const total = loft.row.careful.multiplied;
    const diamond = svg.querySelector('.kf-ruler-total path, path.kf-ruler-total');
    const [, x = 0] = /translate\(([\d.]+)/.exec(diamond?.getAttribute('transform') ?? '') ?? [];
    expect(Number(x)).toBeCloseTo(apply(total), 4);
    const texts = labelsOf(svg).map(({ text }) => text);
    // 15.9 of the model for the loft, shown to two figures.
    expect(texts).toContain(`${Number(total.toPrecision(2))}, if all multiply`);
    expect(texts).toContain(String(headlineOf(loft).middle));
  });

  it('lays its bars end to end from 1', () => {
    const svg = drawingOf(ruler, loft, 'wide');
    const { apply } = scaleOf(svg);
    let reached = 1;
    const expected = loft.row.careful.terms.map(({ factor }) => {
      const from = reached;
      reached *= factor;
      return [from, reached].map(apply).sort((a, b) => a - b);
    });
    const bars = barsIn(svg);
    expect(bars).toHaveLength(expected.length);
    bars.forEach((bar, index) => {
      expect(bar[0]).toBeCloseTo(expected[index]?.[0] ?? 0, 4);
      expect(bar[1]).toBeCloseTo(expected[index]?.[1] ?? 0, 4);
    });
  });

  it('goes left of 1 for losses, each beginning where the one before it ended', () => {
    const scene = sceneOf(other);
    const svg = drawingOf(ruler, scene, 'wide');
    const { apply, domain } = scaleOf(svg);
    const bars = barsIn(svg);
    expect(domain[0]).toBeLessThan(scene.row.careful.multiplied);
    expect(bars[0]?.[1]).toBeCloseTo(apply(1), 4);
    bars.slice(1).forEach(([, right], index) => expect(right).toBeCloseTo(bars[index]?.[0] ?? 0, 4));
  });

  it('gives no bar to what makes no difference', () => {
    const svg = drawingOf(ruler, sceneFor(scenes['equal knives'] ?? base), 'wide');
    expect(barsIn(svg)).toEqual([]);
    expect(labelsOf(svg).filter(({ text }) => text === 'no difference')).toHaveLength(7);
  });

  it('has one number in large type, the middle of the range', () => {
    for (const size of sizeNames) {
      const large = labelsOf(drawingOf(ruler, withGuess(loft, 5), size)).filter(({ sizePx }) => sizePx > 16);
      expect(large.map(({ text }) => text)).toEqual([String(headlineOf(loft).middle)]);
    }
  });

  it('marks the guess, and leads to one far off with an arrow', () => {
    const svg = drawingOf(ruler, withGuess(loft, 5), 'wide');
    const line = svg.querySelector('.kf-ruler-guess-line path, path.kf-ruler-guess-line');
    const [, x = 0] = /^M([\d.]+)/.exec(line?.getAttribute('d') ?? '') ?? [];
    expect(Number(x)).toBeCloseTo(scaleOf(svg).apply(5), 3);
    expect(labelsOf(svg).map(({ text }) => text)).toContain('you: 5');
    const far = drawingOf(ruler, withGuess(loft, 5000), 'wide');
    expect(labelsOf(far).map(({ text }) => text)).toContain('you: 5000 →');
    expect(scaleOf(far).domain).toEqual(scaleOf(drawingOf(ruler, loft, 'wide')).domain);
  });

  it('lets the bars of angle and thickness be taken, each by its end', () => {
    const rows = labelsOf(drawingOf(ruler, loft, 'wide')).filter(({ text }) =>
      ['Angle, as a wedge', 'Behind the edge', 'Finish'].includes(text),
    );
    const handles = rows.map(({ top, bottom }) =>
      ruler.drag?.(loft, sizes.wide, { x: 2, y: (top + bottom) / 2 }),
    );
    expect(handles.map((handle) => handle?.control)).toEqual(['subject.angle', 'subject.edge', undefined]);
    const [wedge] = handles;
    const [first] = loft.row.careful.terms;
    expect(wedge && 'stands' in wedge ? wedge.stands(loft, { x: 2, y: 0 }) : 0).toBe(first?.factor);
  });

  it('shows no range, factor or total of work whose edges end otherwise than by wear', () => {
    const work = jobProfiles.find(({ slicingChain }) => !slicingChain)?.id;
    if (!work) throw new Error('all work of the model is slicing');
    const scene = withGuess(sceneOf({ ...base, work }), 5);
    for (const figure of [ruler, ways, gainsAdded]) {
      const svg = drawingOf(figure, scene, 'wide');
      expect(svg.querySelectorAll('.kf-ruler-range, .kf-ruler-total, rect[fill^="url(#hatch"]')).toHaveLength(
        0,
      );
      expect(labelsOf(svg).map(({ text }) => text)).toContain('No slicing estimate for this work');
      expect(figure.caption(scene)).toMatch(/no slicing estimate/);
    }
  });
});

describe.each([
  ['ruler', ruler],
  ['ways', ways],
  ['gains-added', gainsAdded],
] as const)('the labels of %s', (_id, figure) => {
  it.each(withOdd())('stand clear of each other and on the sheet, of %s', (_what, scene) => {
    for (const size of sizeNames) {
      const svg = drawingOf(figure, scene, size);
      const labels = labelsOf(svg);
      expect(overlapping(labels)).toEqual([]);
      const [width = 0, height = 0] = numbers(svg, 'width', 'height');
      const outside = labels.filter(
        ({ left, right, top, bottom }) => left < -1 || right > width + 1 || top < 0 || bottom > height,
      );
      expect(outside).toEqual([]);
    }
  });
});

describe('the ways', () => {
  it('have the middle of the samples of each structure', () => {
    const { byStructure } = sureOf(loft);
    const ratioOf = (name: string) => wayMarks(loft).find(({ names }) => names.includes(name))?.ratio;
    expect(ratioOf('if the forces add')).toBe(byStructure.added.median);
    expect(ratioOf('to a limit')).toBe(byStructure.toLimit.median);
    expect(ratioOf('if all multiply')).toBe(byStructure.multiplied.median);
    expect(ratioOf('quick sum')).toBe(loft.row.quick.multiplied);
  });

  it('are one mark where they are shown with one number', () => {
    const equal = sceneFor(scenes['equal knives'] ?? base);
    expect(wayMarks(equal)).toHaveLength(1);
    expect(labelsOf(drawingOf(ways, equal, 'wide')).map(({ text }) => text)).toContain(
      'all three ways and quick sum: 1',
    );
  });
});

describe('the gains added', () => {
  const widths = (scene: Scene) =>
    ['added', 'multiplied'].map((which) => {
      const [[left, right] = [0, 0]] = boxes(
        drawingOf(gainsAdded, scene, 'wide'),
        `.kf-sum-${which} rect, rect.kf-sum-${which}`,
      );
      return right - left;
    });

  it('stand to the product as their bars do', () => {
    const [added = 0, multiplied = 1] = widths(loft);
    expect(added / multiplied).toBeCloseTo(temptingSum(loft.row.careful) / loft.row.careful.multiplied, 6);
  });

  it('have no bar where they come to nothing or less', () => {
    const scene = sceneOf(other);
    expect(temptingSum(scene.row.careful)).toBeLessThan(0);
    expect(widths(scene)[0]).toBe(0);
    expect(
      labelsOf(drawingOf(gainsAdded, scene, 'wide'))
        .map(({ text }) => text)
        .join(' '),
    ).toMatch(/less than nothing/);
  });
});
