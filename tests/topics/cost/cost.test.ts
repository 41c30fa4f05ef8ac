import { describe, expect, test } from 'vitest';
import { loft } from '../../../src/components/scene.ts';
import { costsOf } from '../../../src/topics/cost/values.ts';
import { firstTexts } from '../../../src/topics/cost/fields.ts';
import type { CostTexts } from '../../../src/topics/cost/fields.ts';
import { readCost } from '../../../src/topics/cost/read-cost.ts';
import { costTable, costVerdict, offerInWords } from '../../../src/topics/cost/words.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { validate } from '../../../src/comparison/validate.ts';
import { compare, steelRemovedMm2 } from '../../../src/model/index.ts';
import { oddComparisons } from '../odd-comparisons.ts';

const scene = sceneOf(loft());
const pair = { knife: 'plover', against: 'dunlin' };

const asked = (texts: Partial<CostTexts> = {}, of = scene) => {
  const read = readCost({ ...firstTexts, ...texts }, of, pair);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('; '));
  return read.asked;
};
const table = (texts: Partial<CostTexts> = {}) => {
  const question = asked(texts);
  const { columns, rows } = costTable(scene, question, costsOf(scene, question));
  return {
    columns,
    cell: (offer: string, head: string) =>
      rows.find(([first]) => first?.startsWith(head))?.[columns.indexOf(offer)],
  };
};
const verdict = (texts: Partial<CostTexts> = {}) => {
  const question = asked(texts);
  return costVerdict(scene, question, costsOf(scene, question)).join(' ');
};

test('a lower angle alone takes off the two triangles of the bevel over the whole edge', () => {
  const { cell } = table({ 'regrind-angle': '16', 'regrind-edge': '', length: '100', rate: '10' });
  // 0.60²/4 (cot 16° − cot 24°) = 0.1117 mm² by hand, times 100 mm; at 10 mm³ a minute.
  expect(steelRemovedMm2({ edgeMm: 0.6, fromAngleDeg: 24, toAngleDeg: 16 })).toBeCloseTo(0.1117, 3);
  expect(cell('Regrind', 'Steel taken off')).toBe('11.2 mm³');
  expect(cell('Regrind', 'Minutes')).toBe('1.12, for the steel alone');
  expect(cell('Regrind', 'Blade height lost')).toBe('0 mm');
});

test('the ratio gained is that of the knife with the offer taken up, beside itself as it is', () => {
  const [refinish] = costsOf(scene, asked({ 'refinish-grit': '400' }));
  const { knives } = scene.comparison;
  const [plover] = knives;
  if (!refinish || !('cost' in refinish) || !plover) throw new Error('not worked out');
  const then = { ...plover, id: 'then', finish: { scale: 'FEPA-P' as const, grit: 400 } };
  const { rows } = compare({ ...scene.comparison, baseline: 'plover', knives: [...knives, then] });
  const gained = rows.find(({ knife }) => knife === 'then')?.multiplied ?? 0;
  expect(refinish.cost.ratioGained).toBeCloseTo(gained, 12);
  // The price of 4 that stands there.
  expect(refinish.cost.gainPerMoney?.plain).toBeCloseTo((gained - 1) / 4, 12);
});

test('an empty field leaves its offer out, empty costs are not known', () => {
  expect(table({ 'refinish-grit': '', 'steel-hrc': ' ' }).columns).toEqual(['', 'Regrind']);
  const { cell } = table({ rate: '', 'regrind-price': '' });
  expect(cell('Regrind', 'Minutes')).toBe('not known');
  expect(cell('Regrind', 'Price')).toBe('not given');
  expect(cell('Regrind', 'Gain for each unit')).toBe('not known');
});

// tan 16°/tan 24° = 0.6440 and its square 0.4148: school tables.
test('the side load a lower angle gives up is a range', () => {
  const { cell } = table({ 'regrind-angle': '16', 'regrind-edge': '' });
  expect(cell('Regrind', 'Side load before it rolls')).toBe('41% to 64%');
  expect(cell('Refinish', 'Side load before it rolls')).toBe('100%');
  expect(cell('Regrind', 'Side load before it chips')).toBe('not known, without the toughness');
});

test('a price of 0 is a price, and nothing is gained for nothing', () => {
  const { cell } = table({ 'refinish-price': '0' });
  expect(cell('Refinish', 'Price')).toBe('0');
  expect(cell('Refinish', 'Gain for each unit')).toBe('not known');
});

test('minutes that come of the steel alone, and under one, are said as such', () => {
  const texts = { rate: '1000', 'refinish-grit': '', 'steel-hrc': '' };
  expect(verdict(texts)).toContain('Most for your time: a new grind, in under a minute of taking off steel.');
  const [regrind] = costsOf(scene, asked(texts));
  expect(regrind && offerInWords(regrind)).toMatch(
    /^Regrind to 16° per side and 0.4 mm behind the edge: [\d.]+ times as long as now, for a price of 25 and under a minute of taking off steel\.$/,
  );
});

test.each<[string, Partial<CostTexts>, RegExp]>([
  [
    'a thickness alone',
    { 'regrind-angle': '', 'regrind-minutes': '40' },
    /^Regrind to 0\.4 mm behind the edge: [\d.]+ times as long as now, for a price of 25 and 40 minutes of work\.$/,
  ],
  ['one minute', { 'regrind-minutes': '1' }, / and a minute of work\.$/],
  ['no price', { 'regrind-price': '', 'regrind-minutes': '40' }, /, for 40 minutes of work\.$/],
  ['nothing known of what it takes', { rate: '', 'regrind-price': '' }, /, for a price not given\.$/],
])('a regrind with %s is said in a sentence', (_, texts, said) => {
  const regrind = costsOf(scene, asked(texts)).find((one) => one.asked.of === 'regrind');
  expect(regrind && offerInWords(regrind)).toMatch(said);
});

test('another steel that is not named is called a steel', () => {
  const steel = { of: 'steel', offer: { kind: 'steel', hrc: 61, carbideVolPercent: { CrC: 13 } } } as const;
  const [offered] = costsOf(scene, { ...pair, edgeLengthMm: 110, offers: [steel] });
  expect(offered && offerInWords(offered)).toMatch(/^Another steel \(steel at 61 HRC\): /);
});

test('the verdict keeps to what is known', () => {
  const onlyRefused = { 'refinish-grit': '', 'steel-hrc': '', 'regrind-edge': '0.9' };
  expect(verdict(onlyRefused)).toBe('None of the offers can be worked out for Plover.');
  const free = { 'refinish-price': '', 'regrind-price': '', 'steel-price': '' };
  expect(verdict(free)).not.toContain('for the money');
  const timeless = { rate: '', 'refinish-minutes': '' };
  expect(verdict(timeless)).toContain('Most for your money: ');
  expect(verdict(timeless)).not.toContain('for the time');
});

test('an offer the model refuses says why, and keeps no other from its column', () => {
  const { cell } = table({ 'regrind-edge': '0.9' });
  expect(cell('Regrind', 'What you do')).toContain('steel can’t be put on');
  expect(cell('Regrind', 'Minutes')).toBe('–');
  expect(cell('Refinish', 'Cuts')).toMatch(/^×1\./);
});

test('an edge below its floor is named in the table and does not win', () => {
  const texts = { 'regrind-angle': '4', 'regrind-price': '0.01' };
  expect(table(texts).cell('Regrind', 'Floor')).toBe('below it: the edge breaks away');
  expect(verdict(texts)).toContain('A new grind doesn’t count: the edge would lie below its floor.');
  expect(verdict(texts)).not.toContain('Most for your money: a new grind');
});

test('a finer finish by the careful estimate is no gain, and no offer is said to be one', () => {
  const alone = { 'refinish-grit': '2500', 'regrind-angle': '', 'regrind-edge': '', 'steel-hrc': '' };
  expect(verdict(alone)).toBe('None of these makes Plover cut longer and keeps its edge.');
});

test.each([
  ['rate', '0', 'not between'],
  ['length', '', 'the length is empty'],
  ['length', 'long', 'is not readable'],
  ['refinish-price', '-3', 'not between'],
  ['regrind-angle', '95', 'not between'],
  ['steel-hrc', '6O', 'letter O for zero'],
  ['steel-minutes', '1,000', 'could be 1000 or 1.000'],
  ['steel-designation', 'AISI X9', 'is not known here'],
  ['steel-designation', 'constructor', 'is not known here'],
  ['steel-designation', '', 'is not known here'],
] as const)('%s “%s” is refused at its field', (field, text, why) => {
  const read = readCost({ ...firstTexts, [field]: text }, scene, pair);
  expect(read).toMatchObject({ ok: false, problems: [{ field }] });
  expect(read.ok ? '' : read.problems[0]?.message).toContain(why);
});

test('of a steel that is not offered no designation is asked', () =>
  expect(readCost({ ...firstTexts, 'steel-hrc': '', 'steel-designation': '' }, scene, pair).ok).toBe(true));

test('toughness on both sides tells what is given up before the edge chips', () => {
  const entry = loft();
  const tough = sceneOf({
    ...entry,
    knives: entry.knives.map((knife) => (knife.id === 'plover' ? { ...knife, toughness: 20 } : knife)),
  });
  const question = asked({ 'steel-toughness': '10' }, tough);
  const steel = costsOf(tough, question).at(-1);
  if (!steel || !('cost' in steel)) throw new Error('not worked out');
  // Half as tough at the same angle: half the load, at both ends of the range.
  expect(steel.cost.chipping).toEqual({ low: 0.5, high: 0.5 });
});

describe.each(Object.keys(oddComparisons))('of %s', (name) => {
  test('the table has no holes', () => {
    const checked = validate(oddComparisons[name]);
    if (!checked.ok) throw new Error(name);
    const here = sceneOf(checked.entry);
    const read = readCost(firstTexts, here, {
      knife: here.entry.baseline,
      against: here.entry.subject,
    });
    if (!read.ok) throw new Error(name);
    const offered = costsOf(here, read.asked);
    const { columns, rows } = costTable(here, read.asked, offered);
    expect(columns).toHaveLength(4);
    for (const row of rows) {
      expect(row).toHaveLength(4);
      for (const cell of row) expect(cell).toMatch(/\S/);
    }
    expect(JSON.stringify([rows, costVerdict(here, read.asked, offered)])).not.toMatch(
      /NaN|Infinity|undefined|null|\[object/,
    );
  });
});
