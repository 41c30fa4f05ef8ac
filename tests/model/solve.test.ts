import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compare } from '../../src/model/compare.ts';
import { whatItTakes, type SolvableAttribute } from '../../src/model/solve.ts';
import type { Knife, LineUp } from '../../src/model/types.ts';

// Invented knives of an invented harbour rigging loft.
const plover: Knife = {
  id: 'plover',
  angleDeg: 20,
  edgeMm: 0.5,
  finish: { scale: 'FEPA-P', grit: 400 },
  grind: { form: 'flat', spineMm: 3, heightMm: 25 },
  hrc: 58,
  carbideVolPercent: { CrC: 4 },
};
const curlew: Knife = {
  ...plover,
  id: 'curlew',
  angleDeg: 15,
  edgeMm: 0.4,
  hrc: 60,
  carbideVolPercent: { CrC: 8 },
};
const loft: LineUp = { knives: [plover, curlew], baseline: 'plover' };
const ATTRIBUTES: SolvableAttribute[] = ['angleDeg', 'edgeMm', 'finish', 'hrc'];

const put = (attribute: SolvableAttribute, value: number, knife = 'plover'): LineUp => ({
  ...loft,
  knives: loft.knives.map((k) =>
    k.id === knife
      ? { ...k, ...(attribute === 'finish' ? { finish: { um: value } } : { [attribute]: value }) }
      : k,
  ),
});
const ratio = (lineUp: LineUp, a: string, b: string): number => {
  const { rows } = compare(lineUp);
  const product = (id: string): number => rows.find((row) => row.knife === id)?.product ?? NaN;
  return product(a) / product(b);
};

describe('what it would take', () => {
  it.each(ATTRIBUTES)('put back, gives the target to 1e-9: %s', (attribute) => {
    let reached = 0;
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 2, noNaN: true }), (target) => {
        const { value } = whatItTakes(loft, { knife: 'plover', against: 'curlew', attribute, target });
        if (value === null) return;
        reached += 1;
        expect(Math.abs(ratio(put(attribute, value), 'plover', 'curlew') / target - 1)).toBeLessThan(1e-9);
      }),
      { numRuns: 12, seed: 1 },
    );
    expect(reached).toBeGreaterThan(0);
  });

  it('draws level when no target is given, also for the baseline against another', () => {
    const { value } = whatItTakes(loft, { knife: 'plover', against: 'curlew', attribute: 'angleDeg' });
    expect(value).toBeLessThan(20);
    expect(ratio(put('angleDeg', value ?? NaN), 'plover', 'curlew')).toBeCloseTo(1, 9);
  });

  it('asked for the present ratio, gives the present value back', () => {
    for (const attribute of ATTRIBUTES) {
      const target = ratio(loft, 'curlew', 'plover');
      const { value } = whatItTakes(loft, { knife: 'curlew', against: 'plover', attribute, target });
      const present = { angleDeg: 15, microbevelAngleDeg: NaN, edgeMm: 0.4, finish: 35, hrc: 60 }[attribute];
      // P400 is 35.0 µm (FEPA P, ISO 6344-3).
      expect((value ?? NaN) / present).toBeCloseTo(1, 9);
    }
  });

  it('says where nothing does it', () => {
    const answer = whatItTakes(loft, { knife: 'plover', against: 'curlew', attribute: 'hrc', target: 50 });
    expect(answer).toEqual({ value: null, note: 'not in reach' });
  });

  it('says where the edge would break away', () => {
    // 4.3° lies below where a 58 HRC edge breaks away, about 5.2° by the strength rule.
    const target = ratio(put('angleDeg', 4.3), 'plover', 'curlew');
    const { value, note } = whatItTakes(loft, {
      knife: 'plover',
      against: 'curlew',
      attribute: 'angleDeg',
      target,
    });
    expect(value).toBeCloseTo(4.3, 9);
    expect(note).toBe('below the floor');
  });

  it('solves a microbevel only where there is one', () => {
    const ask = { knife: 'plover', against: 'curlew', attribute: 'microbevelAngleDeg' } as const;
    expect(() => whatItTakes(loft, ask)).toThrow('the knife has no microbevel');
    const lineUp = { ...loft, knives: [{ ...plover, angleDeg: 12, microbevelAngleDeg: 25 }, curlew] };
    const { value } = whatItTakes(lineUp, ask);
    if (value !== null) expect(value).toBeGreaterThanOrEqual(12);
  });

  it('refuses what is no question', () => {
    const ask = { knife: 'plover', against: 'curlew', attribute: 'hrc' } as const;
    expect(() => whatItTakes(loft, { ...ask, target: 0 })).toThrow('target 0 is not a number above 0');
    expect(() => whatItTakes(loft, { ...ask, knife: 'heron' })).toThrow(
      "knife heron is not one of the line-up's",
    );
    expect(() => whatItTakes(loft, { ...ask, against: 'plover' })).toThrow(
      'against plover is the knife itself',
    );
    expect(() => whatItTakes(loft, { ...ask, attribute: 'name' as 'hrc' })).toThrow(
      'attribute name is not one of angleDeg',
    );
  });
});
