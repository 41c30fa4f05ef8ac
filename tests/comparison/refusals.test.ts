import { describe, expect, test } from 'vitest';
import { found, ofKnife } from '../../src/comparison/found.ts';
import { canonicalJson } from '../../src/comparison/seal/canonical-json.ts';
import { differentControls } from '../../src/topics/are-they-different/controls.ts';
import { gritsControls } from '../../src/topics/what-a-grit-is/controls.ts';
import { migrate } from '../../src/comparison/migrations.ts';
import { readQuantity } from '../../src/comparison/read.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { plain, ratioInWords } from '../../src/scene/show.ts';
import { attributeNamed } from '../../src/topics/what-it-takes/attributes.ts';
import { orRefusal, unlessRefused } from '../../src/comparison/unless-refused.ts';
import type { SolvableAttribute } from '../../src/model/index.ts';
import { loft } from './entries.ts';

test.each<[string, () => unknown, string]>([
  [
    'a knife looked at that is not there',
    () => sceneOf({ ...loft(), subject: 'heron' }),
    'knife heron is none of: plover, dunlin, curlew, avocet',
  ],
  ['an id in a list', () => found([{ id: 'a' }, { id: 'b' }], 'c', 'thing'), 'thing c is none of: a, b'],
  ['a row of no knife', () => ofKnife([{ knife: 'a' }], 'b'), 'knife b is none of: a'],
  [
    'a work of no name',
    () => unlessRefused(() => sceneOf({ ...loft(), baseline: 'heron' })) ?? found([], 'x', 'the work'),
    'the work x is none of: ',
  ],
  [
    'an attribute nobody asks of',
    () => attributeNamed('microbevelAngleDeg' satisfies SolvableAttribute),
    'attribute microbevelAngleDeg is not one that is asked of',
  ],
  ['a version of no step', () => migrate({}, 0), 'document version 0 is not between 1 and '],
  [
    'a scale beyond the last',
    () => gritsControls['subject.scale']?.write(loft(), 9),
    'scale 9 is not between 0 and 3',
  ],
  [
    'a place before the first knife',
    () => differentControls['chosen.subject']?.write(loft(), -1),
    'place -1 is not between 0 and 2',
  ],
  [
    'a step before the first grade',
    () => gritsControls['subject.grit']?.write(loft(), -1),
    'step -1 is not between 0 and ',
  ],
])('%s is refused by its name', (_, ask, message) => {
  expect(ask).toThrow(message);
});

describe('what a function refuses', () => {
  const refusing = (): number => {
    throw new RangeError('20 is not between 0 and 1');
  };
  const failing = (): number => {
    throw new TypeError('a fault');
  };

  test('is null, or what its words are made into', () => {
    expect(unlessRefused(() => 7)).toBe(7);
    expect(unlessRefused(refusing)).toBeNull();
    expect(orRefusal(refusing, (message) => `${message}.`)).toBe('20 is not between 0 and 1.');
  });

  test('is no fault, which goes on', () => {
    expect(() => unlessRefused(failing)).toThrow(TypeError);
  });
});

test.each([NaN, Infinity, -Infinity])('%f has no place in a document that is signed', (value) => {
  expect(() => canonicalJson({ value })).toThrow();
});

test('numbers that are none are said as such', () => {
  expect(plain(NaN)).toBe('not known');
  for (const ratio of [0, -1, NaN, Infinity])
    expect(ratioInWords(ratio)).toBe('no length of time that can be given');
});

test.each([
  ['22 ± x', 'x'],
  ['not known (many)', 'many'],
])('“%s” is refused for what is wrong in it', (text, part) => {
  const read = readQuantity(text, { what: 'the angle' });
  expect(read.ok).toBe(false);
  expect(read.ok ? '' : read.message).toContain(part);
});
