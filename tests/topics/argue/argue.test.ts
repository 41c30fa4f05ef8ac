import { expect, test } from 'vitest';
import { compare, logSd, welch } from '../../../src/model/index.ts';
import { argueChoices } from '../../../src/topics/argue/choices.ts';
import { assumedCv, ratioHeld, trialsOf, swings } from '../../../src/topics/argue/numbers.ts';
import { decodeLink, encodeLink } from '../../../src/comparison/link/codec.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { validate } from '../../../src/comparison/validate.ts';
import { loft } from '../../comparison/entries.ts';

const scene = sceneOf(loft());

test('nobody’s position is the careful estimate, and the rival where the forces add', () => {
  expect(ratioHeld(scene)).toBeCloseTo(scene.row.careful.product, 10);
  const adding = sceneOf(argueChoices['forces']?.write(loft(), 'add') ?? loft());
  expect(ratioHeld(adding)).toBeCloseTo(adding.row.careful.rival, 10);
});

test('a position goes into the comparison, along in a link, and out again', () => {
  const held = argueChoices['apex']?.write(loft(), 'wear') ?? loft();
  expect(held.position).toEqual({ apex: 'wear' });
  const read = decodeLink(encodeLink(held));
  expect(read.ok && read.entry.position).toEqual({ apex: 'wear' });
  expect(argueChoices['apex']?.write(held, 'between')).toEqual(loft());
});

test.each(Object.entries(argueChoices))(
  'the switch of %s shows what it wrote, and first the careful estimate’s own',
  (of, choice) => {
    expect(choice.read(loft())).toBe(choice.options[0]?.value);
    for (const { value } of choice.options) {
      const held = choice.write(loft(), value);
      expect(choice.read(held)).toBe(value);
      expect(validate(held)).toMatchObject({ ok: true });
      // The other switches stay where they are.
      for (const [other, its] of Object.entries(argueChoices))
        if (other !== of) expect(its.read(held)).toBe(its.read(loft()));
    }
  },
);

test('each dispute is shown with every option, the held one among them', () => {
  for (const { held, options } of swings(scene)) expect(options.map(({ value }) => value)).toContain(held);
});

/** A small generator of its own, so that the power is not tested by what it was computed with. */
function normals(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

test('the runs named settle the dispute with the power stated, by simulation', () => {
  const [row] = trialsOf(scene).filter(
    ({ dispute, between }) => dispute === 'apex' && between[1] === 'tooth',
  );
  expect(row?.runs).toBeGreaterThan(2);
  if (!row?.runs) return;
  const next = normals(7);
  const sd = logSd(assumedCv);
  // The one form says `says[0]`; the truth is the other: how often is the first refused?
  const trials = 3000;
  let refused = 0;
  for (let trial = 0; trial < trials; trial += 1) {
    const wide = Array.from({ length: row.runs }, () => sd * next());
    const slim = Array.from({ length: row.runs }, () => Math.log(row.says[1] / row.says[0]) + sd * next());
    if (welch(slim, wide).p < 0.05) refused += 1;
  }
  // Three standard errors of a share of 0.8 over 3000 trials are 0.022; runs are rounded up, so power may lie above.
  expect(refused / trials).toBeGreaterThan(0.8 - 0.025);
  expect(refused / trials).toBeLessThan(0.95);
});

test('what the trial of the push would give is the statics of a wedge', () => {
  // tan(24° + φ)/tan(12° + φ), φ = arctan 0.25, worked by hand.
  const phi = Math.atan(0.25);
  const tan = (degrees: number) => Math.tan((degrees * Math.PI) / 180 + phi);
  const [row] = trialsOf(scene).filter(({ dispute }) => dispute === 'push');
  expect(row?.says[0]).toBeCloseTo(tan(24) / tan(12), 8);
});

test('every ratio stays what compare gives where nothing is disputed', () => {
  for (const { knife, product } of compare(scene.comparison).rows)
    if (knife === scene.entry.subject) expect(ratioHeld(scene)).toBeCloseTo(product, 10);
});
