import { describe, expect, it, test } from 'vitest';
import {
  carbidesByDesignation,
  compositionsByDesignation,
  hardeningRange,
} from '../../../src/model/index.ts';
import { controls } from '../../../src/topics/base/controls.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { KnifeEntry, ComparisonEntry } from '../../../src/comparison/entry.ts';
import { steelNumbers } from '../../../src/topics/steel-fairly/numbers.ts';
import { steelWords } from '../../../src/topics/steel-fairly/words.ts';
import { steelWorthWords } from '../../../src/topics/steel-worth/words.ts';
import { steelWorked } from '../../../src/topics/steel-fairly/worked.ts';
import {
  hardenedOf,
  lineSpeaks,
  middleOf,
  steelsOf,
  tieSteelOf,
  worthAt,
  worthsOf,
} from '../../../src/scene/steel.ts';
import { steelBandsOf } from '../../../src/topics/steel-worth/bands.ts';
import { loft } from '../../comparison/entries.ts';

/** Dunlin and Plover, each changed, alone in their comparison. */
function pair(
  subject: Partial<KnifeEntry>,
  baseline: Partial<KnifeEntry> = {},
  more: Partial<ComparisonEntry> = {},
): ComparisonEntry {
  const entry = loft();
  return {
    ...entry,
    ...more,
    knives: entry.knives.flatMap((knife) =>
      knife.id === entry.subject
        ? [{ ...knife, ...subject }]
        : knife.id === entry.baseline
          ? [{ ...knife, ...baseline }]
          : [],
    ),
  };
}

const described = (of: string, entry: ComparisonEntry): string =>
  (({ ...steelWords, ...steelWorthWords })[of]?.(sceneOf(entry)) ?? [])
    .filter((sentence) => sentence !== '')
    .join(' ');

const chromium = (CrC: number): KnifeEntry['carbide'] => ({ volPercent: { CrC } });

describe('the steel of a knife', () => {
  // ASTM E140 table 1: 57 HRC is 633 HV, 61 HRC is 720 HV. ISO 18265 table A.1: 620 HV is 2070 MPa, 640 HV 2145.
  it('has Vickers, and strength where the table has one', () => {
    const { subject, baseline } = steelsOf(sceneOf(loft()));
    expect(baseline.vickers / 633).toBeCloseTo(1, 2);
    expect(subject.vickers / 720).toBeCloseTo(1, 2);
    expect(baseline.mpa).toBeGreaterThan(2070);
    expect(baseline.mpa).toBeLessThan(2145);
    expect(subject.mpa).toBeNull();
    expect(described('steel-hardness', loft())).toMatch(
      /Dunlin: .* harder than the table of strengths reaches/,
    );
    // 20 HRC is 238 HV, below the 250 the table begins at.
    expect(described('steel-hardness', pair({ hrc: 20 }))).toMatch(/softer than the table/);
  });

  it('is the baseline’s where its carbide is made equal', () => {
    const equalised = sceneOf({ ...loft(), madeEqual: ['carbideVolPercent'] });
    expect(steelsOf(equalised).subject.designation).toBeNull();
    expect(steelsOf(equalised).subject.carbidePercent).toBe(4);
  });
});

describe('the published line', () => {
  // Printed with it: 62 HRC, 13 CrVC, 9 MC at 30° included cut 714 mm; 56 HRC, 3 CrC cut 227 mm (Thomas 2018).
  const printed = pair(
    { hrc: 62, carbide: { volPercent: { CrVC: 13, MC: 9 } } },
    { hrc: 56, carbide: chromium(3) },
  );

  it('gives the printed cards, and their ratio as the worth of the steel', () => {
    const scene = sceneOf(printed);
    expect((worthAt(scene, 30)?.card ?? 0) / (714 / 227)).toBeCloseTo(1, 2);
    expect(scene.row.careful.families.steel / (714 / 227)).toBeCloseTo(1, 2);
  });

  it('adds, so that the better steel is worth more on a blunter edge', () => {
    const cards = worthsOf(sceneOf(printed)).map(({ card }) => card);
    expect(cards.length).toBeGreaterThan(10);
    cards.slice(1).forEach((card, index) => {
      expect(card).toBeGreaterThan(cards[index] ?? Infinity);
    });
    // −157 + 15.8 · 56 − 17.8 A + 11.2 · 3 falls to 100 mm at A = 37.1°.
    expect(worthsOf(sceneOf(printed)).at(-1)?.includedAngleDeg).toBe(37);
    expect(described('steel', printed)).toMatch(/Beyond 37° one of them would cut too little card/);
  });

  it('is not taken for a life where an edge would hardly blunt in the count', () => {
    // By the line 66 HRC with these carbides cuts −157 + 15.8 · 66 − 17.8 · 20 + 26.2 · 40 + 20.9 · 40 + 19.4 · 20
    // = 2802 mm at 20°, where 60 strokes of 45 mm are 2700 mm.
    const rich = sceneOf(pair({ hrc: 66, carbide: { volPercent: { MC: 40, MN: 40, CrN: 20 } } }));
    expect(worthAt(rich, 20)).toBeNull();
    const from = worthsOf(rich)[0]?.includedAngleDeg ?? 0;
    const mm = (angle: number) => 2802 - 17.8 * (angle - 20);
    expect(mm(from)).toBeLessThan(0.99 * 2700);
    expect(mm(from - 1)).toBeGreaterThan(0.99 * 2700);
  });

  it('not used, leaves one carbide at 1 and tells two apart from none', () => {
    // ASTM E140 table 1: 44, 46 and 48 HRC are 434, 458 and 484 HV; (458/434)^1.2 = 1.07, (458/484)^1.2 = 0.936.
    const soft = (hrc: number) => pair({ hrc: 46, carbide: chromium(6) }, { hrc, carbide: chromium(6) });
    expect(described('steel-worth', soft(44))).toMatch(
      /^The published line is not used here\. .*, and Dunlin has the carbide of Plover\. Hardness: ×1\.07, which speaks for Dunlin/,
    );
    expect(described('steel-worth', soft(48))).toMatch(/Hardness: ×0\.93\d, which speaks for Plover/);
    expect(described('steel-worth', soft(46))).toMatch(/Hardness: ×1\.00\.$/);
  });

  it('is refused outside its angles and hardness', () => {
    expect(worthAt(sceneOf(printed), 19)).toBeNull();
    expect(worthAt(sceneOf(printed), 41)).toBeNull();
    const soft = pair({ hrc: 46 });
    expect(lineSpeaks(sceneOf(soft))).toBe(false);
    expect(worthsOf(sceneOf(soft))).toEqual([]);
    expect(described('steel', soft)).toMatch(/left out, not taken as 1/);
    expect(described('steel', soft)).not.toMatch(/Carbide:/);
  });

  // 60 strokes of 45 mm would be 2700 mm: (2700 − 250)/(2700 − 500) · 2² = 4.4545, worked by hand.
  it('hides part of a lead in its fixed count', () => {
    expect(steelNumbers['hidden.life']?.(sceneOf(loft()))).toBe('×4.45');
    const { card = 0, life = 0 } = worthAt(sceneOf(printed), 30) ?? {};
    expect(life).toBeGreaterThan(card ** 2);
  });
});

describe('the bands', () => {
  it('have no width where nothing is left open', () => {
    const exact = pair(
      { hrc: 60, carbide: chromium(10) },
      { hrc: 58, carbide: chromium(4) },
      { assumptions: { residualCv: 0 } },
    );
    const { all, hardness, carbide } = steelBandsOf(sceneOf(exact));
    for (const { low, high } of [all, hardness, carbide ?? { low: 0, high: 1 }])
      expect(high / low).toBeCloseTo(1, 9);
    expect(described('steel-worth', exact)).toMatch(/Hardness: .* entered without a ±/);
  });

  // A uniform ±h has its central nine tenths at ±0.9 h (JCGM 100, 4.3.7); the line has 15.8 mm a point.
  it('are those of one ± worked by hand', () => {
    const one = pair(
      { hrc: { value: 60, plusMinus: 1 }, carbide: chromium(8) },
      { hrc: 60, carbide: chromium(8) },
    );
    const mm = -157 + 15.8 * 60 - 17.8 * 30 + 11.2 * 8;
    const { hardness } = steelBandsOf(sceneOf(one));
    expect(hardness.high).toBeCloseTo(1 + (0.9 * 15.8) / mm, 2);
    expect(hardness.low).toBeCloseTo(1 - (0.9 * 15.8) / mm, 2);
  });
});

describe('the tie line', () => {
  const of = (designation: string): KnifeEntry['carbide'] => ({ designation });

  it('is of the subject, else of the baseline, else an example', () => {
    const drawn = (entry: ComparisonEntry) => {
      const { designation, of: whose } = tieSteelOf(sceneOf(entry));
      return [designation, whose];
    };
    expect(drawn(pair({ carbide: of('AISI D2') }, { carbide: of('AISI O1') }))).toEqual([
      'AISI D2',
      'subject',
    ]);
    expect(drawn(pair({ carbide: chromium(5) }, { carbide: of('AISI O1') }))).toEqual([
      'AISI O1',
      'baseline',
    ]);
    expect(drawn(pair({ carbide: chromium(5) }))).toEqual(['AISI 440C', null]);
  });

  it.each(Object.keys(compositionsByDesignation))('balances for %s at temperatures of the table', (name) => {
    const rows = hardenedOf(tieSteelOf(sceneOf(pair({ carbide: of(name) }))));
    const { low, high } = hardeningRange(compositionsByDesignation[name]?.chromium ?? 0);
    const [cold, middle, hot, unknown] = rows;
    for (const { celsius, estimate } of [cold, middle, hot].flatMap((row) => row ?? [])) {
      expect(celsius).toBeGreaterThanOrEqual(low);
      expect(celsius).toBeLessThanOrEqual(high);
      const { matrix, whole, carbide, massFraction } = estimate.tieLine;
      expect((1 - massFraction) * matrix + massFraction * carbide).toBeCloseTo(whole, 9);
    }
    // More heat leaves no more carbide, and not knowing the heat leaves no smaller doubt.
    expect(hot?.percent).toBeLessThanOrEqual((cold?.percent ?? 0) + 1e-9);
    expect(unknown?.celsius).toBeNull();
    expect(unknown?.estimate.plusMinus).toBeGreaterThanOrEqual(middle?.estimate.plusMinus ?? Infinity);
  });

  it('says what is typical beside what is computed', () => {
    const [typical] = Object.values(carbidesByDesignation['AISI D2'] ?? {});
    expect(typical).toMatchObject({ value: 13 });
    expect(described('steel-tie', loft())).toMatch(/typical volumes, also from memory, has 13 ± 3\.9 %/);
    expect(described('steel-tie', pair({ carbide: of('AISI M2') }))).toMatch(/far hotter than the table/);
  });
});

test('the worked examples can be followed with the numbers they show', () => {
  const shown = (of: string, entry: ComparisonEntry) =>
    (steelWorked[of]?.(sceneOf(entry)).steps ?? []).map(
      ({ values }) =>
        (name: string) =>
          Number(values[name]),
    );
  const [va, , lineA, , hardness, carbide, both] = shown('steel', loft());
  if (!va || !lineA || !hardness || !carbide || !both) throw new Error('a step is missing');
  expect((223 * va('h') + 14500) / (100 - va('h')) / va('v')).toBeCloseTo(1, 3);
  const mm =
    lineA('k') * lineA('h') - lineA('perDegree') * lineA('angle') + lineA('carbide') - lineA('constant');
  expect(mm / lineA('mm')).toBeCloseTo(1, 3);
  const half = (p: number, q: number, r: number, s: number) => Math.sqrt((p / q) * (r / s));
  const [aa, ba, ab, bb] = ['aa', 'ba', 'ab', 'bb'].map(hardness);
  expect(half(aa ?? 0, ba ?? 0, ab ?? 0, bb ?? 0) / hardness('hardness')).toBeCloseTo(1, 3);
  expect(half(aa ?? 0, ab ?? 0, ba ?? 0, bb ?? 0) / carbide('carbide')).toBeCloseTo(1, 3);
  expect((both('hardness') * both('carbide')) / both('both')).toBeCloseTo(1, 2);

  const levers = shown('steel-lever', loft());
  for (const step of levers.filter((_, index) => index !== 1))
    expect((step('whole') - step('poor')) / (step('rich') - step('poor')) / step('mass')).toBeCloseTo(1, 2);
  const volume = levers[1];
  if (!volume) throw new Error('a step is missing');
  const carbidePart = volume('m') / volume('heavy');
  expect(carbidePart / (carbidePart + volume('rest') / volume('light')) / volume('volume')).toBeCloseTo(1, 2);

  // No carbide adds nothing, in words too.
  const bare = steelWorked['steel']?.(sceneOf(pair({ carbide: { volPercent: {} } })));
  expect(bare?.givens).toMatch(/^Dunlin, 61 HRC, no carbide; /);
  expect(bare?.steps[2]?.say).toBe('Card of Dunlin, in mm. Its carbide adds what it adds: no carbide.');
  expect(bare?.steps[2]?.values['carbide']).toBe('0');

  // Refused, the formulas keep their places and say so.
  const refused = steelWorked['steel']?.(sceneOf(pair({ hrc: 46 }))).steps ?? [];
  expect(refused[2]?.values['mm']).toBe('refused');
  expect(refused[5]?.values['carbide']).toBe('left out');
});

test('the hardness slider keeps the ± and moves its own knife only', () => {
  for (const role of ['subject', 'baseline'] as const) {
    const slider = controls[`${role}.hrc`];
    const before = loft();
    const after = slider?.write(before, 58.5);
    expect(after?.knives.find(({ id }) => id === before[role])?.hrc).toEqual({ value: 58.5, plusMinus: 1 });
    expect(after?.knives.filter(({ id }) => id !== before[role])).toEqual(
      before.knives.filter(({ id }) => id !== before[role]),
    );
    expect(after && slider?.read(after)).toBe(58.5);
  }
});

test('what is bound before the lever is named with its volume, and the density of cementite is the published one', () => {
  const lever = (designation: string) => {
    const scene = sceneOf(pair({ carbide: { designation } }));
    const [, volume] = steelWorked['steel-lever']?.(scene).steps ?? [];
    return { said: volume?.say ?? '', ...middleOf(tieSteelOf(scene)).estimate };
  };
  // Vanadium takes carbon before the lever does, in D2; in A2 molybdenum too (over 1 %); in 52100 there is neither.
  expect(lever('AISI D2').said).toMatch(
    /\(both from memory\)\. Beside it stands 1\.3 % MC by volume, bound before\.$/,
  );
  expect(lever('AISI A2').said).toMatch(
    /Beside it stand [\d.]+ % MC and [\d.]+ % M6C by volume, bound before\.$/,
  );
  expect(lever('AISI 52100').said).toMatch(
    /Fe3C 7\.69 and matrix [\d.]+ g\/cm³ \(the matrix from memory\)\.$/,
  );
  for (const designation of Object.keys(compositionsByDesignation)) {
    const { said, tieLine, volPercent } = lever(designation);
    expect(said).toContain(tieLine.formula);
    expect(said.includes('Beside it')).toBe((volPercent.MC ?? 0) + (volPercent.M6C ?? 0) > 0);
  }
});
