import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { loft } from '../../../src/components/scene.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { draw } from '../../../src/figure-kit/draw.ts';
import { sizes } from '../../../src/figure-kit/figure.ts';
import { guessDots } from '../../../src/topics/ask/figure-guess-dots.ts';

const scene = sceneOf(loft());
const held = { answer: 12.5, sum: 4.1, measured: 9 };
const one = (ratio: number, count = 1) => ({ ratio, count });

describe.each([
  ['one guess', [one(3)], 1],
  ['guesses far apart', [one(1e-9), one(1), one(1e9)], 3],
  ['a crowd of one mind', [one(2, 240)], 24],
  ['a crowd that needs a dot for several', [one(2, 1_000_000), one(3, 1)], 25],
])('%s', (_name, guesses, dots) => {
  test.each(Object.entries(sizes))('draws as many dots as it says, %s', (_size, size) => {
    const { document } = parseHTML('<html><body></body></html>');
    const figure = guessDots(guesses, held);
    const svg = draw(figure, scene, size, document as unknown as Document, 'x');
    expect(svg.outerHTML).not.toMatch(/NaN|undefined|Infinity/);
    expect(svg.querySelectorAll('circle')).toHaveLength(dots);
    expect(figure.caption(scene)).not.toMatch(/NaN|undefined/);
    expect(figure.caption(scene).includes('A dot stands for')).toBe(guesses.some(({ count }) => count > 24));
  });
});

test('leaves out what is not there', () => {
  const { rows } = guessDots([one(3)], { answer: 2, sum: null, measured: null }).table(scene);
  expect(rows.map(([what]) => what)).toEqual([
    'Guesses',
    'The guess in the middle',
    'Gave the model’s middle',
    'Guessed the other knife',
    'Model, the middle of its range',
  ]);
});
