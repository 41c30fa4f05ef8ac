import { describe, expect, test } from 'vitest';
import { sceneOf } from '../../../src/scene/scene.ts';
import { validate } from '../../../src/comparison/validate.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import { sentencesOf } from '../../../src/phrases/sentences-of.ts';
import { sureWords } from '../../../src/topics/how-sure/words.ts';
import { exact } from '../../model/knives.ts';
import { pair } from '../odd-comparisons.ts';

function described(of: string, entry: ComparisonEntry): string {
  expect(validate(entry)).toMatchObject({ ok: true });
  return sentencesOf(sureWords, of, sceneOf(entry))
    .filter((sentence) => sentence !== '')
    .join(' ');
}

describe('the band by hand beside the samples', () => {
  test('is one and the same where the only doubt is normal and small', () => {
    const hrc = { value: 61, plusMinus: 1, shape: 'normal' as const };
    expect(described('band-line', pair({ hrc }, {}, exact))).toMatch(
      /as wide as the range of 20,000 samples\. The ends agree as well\.$/,
    );
  });

  test('is wider where one even range is the only doubt', () => {
    // The central nine tenths of an even range of half width h reach to 0.9 h; a normal spread of the same standard
    // deviation, h/√3, to 1.645 of it: 1.645/(0.9 √3) = 1.055 (JCGM 100, 4.3.7).
    const open = {
      ...exact,
      assumptions: {
        ...exact.assumptions,
        angleExponent: { unknown: true as const, low: 1, high: 1.8 },
        structureWeights: [1, 0, 0] as [number, number, number],
      },
    };
    const said = described('band-line', pair({ angle: { deg: 10 } }, {}, open));
    expect(said).toMatch(/ [56]% wider than the range of 20,000 samples\./);
    expect(said).toMatch(/Where one evenly spread range matters most, the samples end sooner\.$/);
  });
});

test('the nearest two of a comparison may be distinguished all the same', () => {
  const two = pair({ angle: { deg: 10 } }, { angle: { deg: 26 } }, exact);
  const [plover] = two.knives;
  if (!plover) throw new Error('the pair has no knife');
  const three = (deg: number): ComparisonEntry => ({
    ...two,
    knives: [...two.knives, { ...plover, id: 'curlew', name: 'Curlew', angle: { deg } }],
  });
  // The slimmer edge lasts longer, and nothing else differs: the neighbour is that of the nearer angle.
  expect(described('band-nearest', three(12))).toMatch(
    /^Nearest to each other are Dunlin and Curlew\..* is ahead in every sample\. By the model that is a real difference\.$/,
  );
  expect(described('band-nearest', three(22))).toMatch(
    /^Nearest to each other are Curlew and Plover\. Curlew .* is ahead/,
  );
  expect(described('band-nearest', two)).toBe('');
});
