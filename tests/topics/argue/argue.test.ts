import { expect, test } from 'vitest';
import { compare, logSd, welch } from '../../../src/model/index.ts';
import { argueChoices } from '../../../src/topics/argue/choices.ts';
import { argueWords } from '../../../src/topics/argue/words.ts';
import { assumedCv, ratioHeld, trialsOf, swings } from '../../../src/topics/argue/numbers.ts';
import { decodeLink, encodeLink } from '../../../src/comparison/link/codec.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { validate } from '../../../src/comparison/validate.ts';
import { loft } from '../../comparison/entries.ts';

const scene = sceneOf(loft());

test('nobody’s position multiplies, and each structure held gives its own total', () => {
  expect(ratioHeld(scene)).toBeCloseTo(scene.row.careful.multiplied, 10);
  for (const structure of ['multiplied', 'added', 'toLimit'] as const) {
    const held = sceneOf(argueChoices['structure']?.write(loft(), structure) ?? loft());
    expect(ratioHeld(held)).toBeCloseTo(held.row.careful[structure], 10);
  }
});

// The loft at its middle settings by an own calculation outside the model: 16.06, 6.63 and 8.08.
test('the swing of the structures is that of the three totals', () => {
  const { options = [] } = swings(scene).find(({ dispute }) => dispute === 'structure') ?? {};
  expect(options.map(({ value, ratio }) => [value, ratio.toFixed(2)])).toEqual([
    ['multiplied', '16.06'],
    ['added', '6.63'],
    ['toLimit', '8.08'],
  ]);
});

test('where the force has a limit the apex is said not to be held otherwise', () => {
  const said = (position: ComparisonEntry['position'] & object): string =>
    argueWords['argue-follows']?.(sceneOf({ ...loft(), position })).join(' ') ?? '';
  expect(said({ structure: 'toLimit' })).toMatch(/the apex counts as steel to wear away/);
  expect(said({ structure: 'toLimit', apex: 'wear' })).not.toMatch(/whatever you hold/);
  expect(said({ structure: 'added' })).not.toMatch(/whatever you hold/);
});

// tan θf = tan 5°·(697/HV)^k, ASTM E140: 57 HRC 633 HV, 63 HRC 772 HV. The root is the least a moving floor says.
test('the trial of the floor gives the least the moving floor says', () => {
  const [row] = trialsOf(scene).filter(({ dispute }) => dispute === 'floor');
  expect(row?.says[0]).toBeCloseTo(Math.sqrt(772 / 633), 2);
});

test('each pair of structures is settled by a trial', () => {
  const rows = trialsOf(scene).filter(({ dispute }) => dispute === 'structure');
  expect(rows.map(({ between }) => between.join(' '))).toEqual([
    'multiplied added',
    'multiplied toLimit',
    'added toLimit',
  ]);
  const said = argueWords['argue-settle-structure']?.(scene).join(' ') ?? '';
  expect(said.match(/sharpenings of each knife would tell\./g)).toHaveLength(3);
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
  for (const { knife, multiplied } of compare(scene.comparison).rows)
    if (knife === scene.entry.subject) expect(ratioHeld(scene)).toBeCloseTo(multiplied, 10);
});
