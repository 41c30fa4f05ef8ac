import { readdirSync, readFileSync } from 'node:fs';
import { crc32, deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MODEL_NUMBER } from '../../../src/model/index.ts';
import { decodeLink, encodeLink } from '../../../src/comparison/link/codec.ts';
import { pack } from '../../../src/comparison/link/packing.ts';
import { runPacking } from '../../../src/comparison/link/run-packing.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { sureOf } from '../../../src/scene/sure.ts';
import { validate } from '../../../src/comparison/validate.ts';
import { documentVersion, migrate } from '../../../src/comparison/migrations.ts';
import type { KnifeEntry, ComparisonEntry } from '../../../src/comparison/entry.ts';
import { notRecorded } from '../../../src/runs/log.ts';
import type { NamedRun, Run } from '../../../src/runs/log.ts';
import { aRun } from '../../runs/runs.ts';
import { anyEntry, loft } from '../entries.ts';

const kindOf = (fragment: string) => {
  const read = decodeLink(fragment);
  if (read.ok) return 'opened';
  expect(read.why).toMatch(/^[A-Z].{10,}\.$/s);
  return read.kind;
};

/** A link made by zlib from anything, with a checksum that holds: what only somebody who means it can send. */
function crafted(positions: unknown, version = 1): string {
  const text = typeof positions === 'string' ? positions : JSON.stringify(positions);
  const packed = deflateRawSync(Buffer.from(text));
  return sealed(packed, version);
}

function sealed(packed: Buffer, version = 1): string {
  const head = Buffer.alloc(6);
  head.writeUInt32BE(crc32(packed));
  head.writeUInt16BE(packed.length & 0xffff, 4);
  return `#with=${version}.${Buffer.concat([head, packed]).toString('base64url')}`;
}

/** A run as a link has it. */
const runList = (change: Partial<NamedRun>): unknown[] =>
  runPacking(loft().knives.map(({ id }) => id)).pack(aRun(change)) as unknown[];

describe('there and back', () => {
  test('any comparison comes back equal, from this model', () =>
    fc.assert(
      fc.property(anyEntry, (entry) => {
        const link = encodeLink(entry);
        expect(link).toMatch(/^#with=4\.[A-Za-z0-9_-]+$/);
        const read = decodeLink(link);
        expect(read).toMatchObject({ ok: true, modelNumber: MODEL_NUMBER, sameModel: true });
        // Runs stay behind where they would make the link too long, and the link says so.
        const { runs, ...rest } = entry;
        if (read.ok) expect(read.entry).toEqual(read.runsLeftBehind ? rest : entry);
        if (read.ok && read.runsLeftBehind) expect(runs?.length).toBeGreaterThan(20);
      }),
      // Each link holds a band of its own, which takes many samples.
      { numRuns: 40 },
    ));

  test('another model’s number is told', () => {
    const read = decodeLink(crafted(['before', ...pack(loft())]));
    expect(read).toEqual({ ok: true, entry: loft(), modelNumber: 'before', sameModel: false });
  });
});

describe('every link ever made opens', () => {
  const versions = readdirSync('tests/comparison/link/links').filter((file) => file.endsWith('.txt'));

  test('there is an example of every version', () =>
    expect(versions).toEqual(Array.from({ length: documentVersion }, (_, at) => `v${at + 1}.txt`)));

  test.each(versions)('%s', (file) => {
    const links = readFileSync(`tests/comparison/link/links/${file}`, 'utf8').trim().split('\n');
    const entries = JSON.parse(
      readFileSync(`tests/comparison/link/links/${file.replace('.txt', '.json')}`, 'utf8'),
    ) as ComparisonEntry[];
    expect(links).toHaveLength(entries.length);
    for (const [index, link] of links.entries()) {
      expect(decodeLink(link)).toMatchObject({
        ok: true,
        entry: migrate(entries[index], Number(file[1])) as ComparisonEntry,
        modelNumber: { 'v1.txt': '1', 'v2.txt': '2', 'v3.txt': '2' }[file] ?? MODEL_NUMBER,
      });
    }
  });
});

test('a link carries what the model said when it was made, and that it left runs behind', () => {
  const { row } = sceneOf(loft());
  const read = decodeLink(encodeLink(loft()));
  const said = read.ok ? read.said : undefined;
  for (const structure of ['multiplied', 'added', 'toLimit'] as const)
    expect(said?.[structure]).toBeCloseTo(row.careful[structure], 2);
  expect(said?.quick).toBeCloseTo(row.quick.multiplied, 1);
  const { low, median, high } = sureOf(sceneOf(loft()));
  for (const [carried, own] of [
    [said?.low, low],
    [said?.middle, median],
    [said?.high, high],
  ])
    expect(carried).toBe(Number(own?.toPrecision(4)));

  const run = (index: number): Run => ({
    knife: 'plover',
    batch: `lot ${index % 7}`,
    sharpening: `sharpening ${(index * 7919) % 1013}`,
    cutMm: 9000 + ((index * 104_729) % 5003),
    endPoint: notRecorded,
    checkedEvery: notRecorded,
    startSharpness: notRecorded,
    angleDeg: notRecorded,
    burrChecked: notRecorded,
    judge: notRecorded,
  });
  const few = { ...loft(), runs: Array.from({ length: 10 }, (_, index) => run(index)) };
  expect(decodeLink(encodeLink(few))).toMatchObject({ ok: true, entry: few });
  const many = decodeLink(
    encodeLink({ ...loft(), runs: Array.from({ length: 2000 }, (_, index) => run(index)) }),
  );
  expect(many).toMatchObject({ ok: true, entry: loft(), runsLeftBehind: true });
});

describe('length', () => {
  const names = [
    'The long slicing knife from the bench beside the north window, reground in spring',
    'Old splicing knife with the walnut handle, the one the apprentice found in a shed',
    'Short hooked knife for the tarred lines, bought second-hand and sharpened by Anna',
    'Spare blade of the machine that cuts mooring rope, edge as it came out of the box',
  ].map((name) => name.slice(0, 80));

  const full = (names: readonly string[]): ComparisonEntry => {
    const entry = loft();
    const odd = (value: number, n: number) => ({
      value: value + n * 0.37,
      plusMinus: 0.13 + n * 0.11,
      shape: 'normal' as const,
    });
    return {
      ...entry,
      title:
        'Four knives for tarred and untarred natural-fibre rope, measured with one gauge in one week of late autumn by two men'.slice(
          0,
          120,
        ),
      friction: odd(0.2, 0),
      assumptions: {
        angleExponent: odd(1.2, 1),
        thicknessExponent: odd(0.4, 1),
        finishExponent: odd(0.2, 1),
        hardnessExponent: odd(1, 1),
        lifeExponent: odd(1.4, 1),
        wedgingShare: odd(0.31, 0),
        limitPower: odd(1.4, 1),
        structureWeights: [0.31, 0.42, 0.27],
      },
      faceValues: [12.5, 37.5, -12.5, 41, 43, -17, 19, 23, 29, 31],
      knives: entry.knives.map((knife, n) => ({
        ...knife,
        id: `knife-with-a-long-id-${n}`,
        name: names[n] as string,
        angle: { deg: odd(15.3, n) },
        microbevelDeg: odd(21.9, n),
        edgeMm: odd(0.31, n / 10),
        finish: { um: odd(17.2, n) },
        grind: { form: 'convex', spineMm: 2.57 + n / 7.3, heightMm: 14.3 + n, radiusMm: 151.7 + n },
        hrc: odd(58.1, n),
        carbide: { volPercent: { Fe3C: odd(2.3, n), CrC: odd(4.1, n), MC: odd(1.7, n) } },
        toughness: odd(18.3, n),
      })),
      baseline: 'knife-with-a-long-id-0',
      subject: 'knife-with-a-long-id-3',
    };
  };

  test('four knives with the longest names and a ± on everything stay within 1,200 characters', () => {
    const link = encodeLink(full(names));
    expect(decodeLink(link).ok).toBe(true);
    expect(link.length).toBeLessThanOrEqual(1200);
  });

  test('the longest comparison there can be, of signs and digits that do not compress, opens from its link', () => {
    let state = 7;
    const next = (): number => (state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0) / 2 ** 32;
    const signs = (many: number): string =>
      Array.from({ length: many }, () => String.fromCharCode(0x4e00 + Math.floor(next() * 20_000))).join('');
    const digits = (low: number, high: number): number => low + next() * (high - low);
    const odd = (low: number, high: number) => ({
      value: digits(low, high),
      plusMinus: digits(0, (high - low) / 4),
      shape: 'triangular' as const,
    });
    const kinds = ['Fe3C', 'CrC', 'CrVC', 'MC', 'M6C', 'MN', 'CrN'];
    const knives = Array.from({ length: 8 }, (_, place): KnifeEntry => ({
      id: `${place}-${Math.floor(next() * 1e15)}`,
      name: signs(80),
      state: 'not recorded',
      angle: { deg: odd(10, 20) },
      microbevelDeg: odd(25, 40),
      edgeMm: odd(0.2, 0.6),
      finish: { um: odd(5, 90) },
      grind: { form: 'convex', spineMm: digits(2, 4), heightMm: digits(12, 20), radiusMm: digits(500, 900) },
      hrc: odd(55, 63),
      carbide: { volPercent: Object.fromEntries(kinds.map((kind) => [kind, odd(1, 4)])) },
      toughness: odd(5, 30),
    }));
    const [{ id: baseline } = { id: '' }, { id: subject } = { id: '' }] = knives;
    const { runs: _runs, ...rest } = loft();
    const longest: ComparisonEntry = {
      ...rest,
      title: signs(120),
      knives,
      baseline,
      subject,
      slicePush: digits(1, 9),
      contactDepthMm: digits(5, 9),
      friction: odd(0.2, 0.3),
      assumptions: {
        angleExponent: odd(1.2, 1.5),
        thicknessExponent: odd(0.3, 0.7),
        finishExponent: odd(0.2, 0.4),
        hardnessExponent: odd(1, 1.5),
        residualCv: odd(0.05, 0.2),
        lifeExponent: odd(1, 2),
        wedgingShare: odd(0.2, 0.5),
        limitPower: odd(1, 2),
        structureWeights: [digits(0, 9), digits(0, 9), digits(1, 9)],
      },
      gaugeBias: { angleDeg: digits(0, 1), edgeMm: digits(0, 0.1), hrc: digits(0, 1) },
      position: { apex: 'wear', push: 'buried', structure: 'toLimit', floor: 'still' },
      outcome: 'fixed-strokes',
      plan: {
        cv: digits(0.1, 1),
        ratio: digits(1.1, 2),
        runs: 200,
        batches: 20,
        control: signs(80),
        correlation: digits(0, 0.9),
        endPoint: digits(10, 90),
        start: { low: digits(80, 90), high: digits(100, 110) },
        blind: true,
        seed: 999_999,
        closed: true,
        reopened: true,
      },
      faceValues: Array.from({ length: 10 }, () => digits(-80, 200)),
    };
    expect(validate(longest)).toMatchObject({ ok: true });
    expect(decodeLink(encodeLink(longest))).toMatchObject({ ok: true, entry: longest });
  });

  test('the loft is under 400', () => expect(encodeLink(loft()).length).toBeLessThan(400));
});

describe('damage', () => {
  const link = encodeLink(loft());
  const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.#=%+/ ';

  test('cut short at any length, it never opens and says so', () => {
    for (let length = 0; length < link.length; length += 1) {
      expect(kindOf(link.slice(0, length))).toBe(length < '#with='.length ? 'not a comparison' : 'cut short');
    }
  });

  test('no other character at any place opens anything', () => {
    for (let at = 0; at < link.length; at += 1) {
      for (const character of alphabet) {
        if (character === link[at]) continue;
        expect(kindOf(link.slice(0, at) + character + link.slice(at + 1))).not.toBe('opened');
      }
    }
  });

  test('an altered payload is called altered', () => {
    const at = link.length - 40;
    expect(kindOf(link.slice(0, at) + (link[at] === 'A' ? 'B' : 'A') + link.slice(at + 1))).toBe('altered');
  });

  test('two places swapped, a piece doubled, a piece lost: never a wrong comparison', () =>
    fc.assert(
      fc.property(
        fc.nat(link.length - 1),
        fc.nat(link.length - 1),
        fc.integer({ min: 1, max: 40 }),
        (a, b, length) => {
          const damaged = [
            link.slice(0, a) + link.slice(a + length),
            link.slice(0, a) + link.slice(b, b + length) + link.slice(a),
          ];
          for (const text of damaged) {
            const read = decodeLink(text);
            if (read.ok) expect(read.entry).toEqual(loft());
          }
        },
      ),
    ));

  test.each(['.', ')', '>', '.)', '…', '”', ',', '%20', '\n'])(
    'what a mail program adds, %j, is passed over or told',
    (tail) => {
      const kind = kindOf(link + tail);
      expect(kind).toBe(tail === '%20' ? 'altered' : 'opened');
    },
  );

  test.each([
    ['', 'not a comparison'],
    ['#', 'not a comparison'],
    ['#results', 'not a comparison'],
    ['#with=hello', 'not a comparison'],
    ['#with=0.abc', 'not a comparison'],
    ['#with=5.AAAA', 'newer version'],
    ['#with=999.AAAA', 'newer version'],
    ['#with=1.', 'cut short'],
    ['#with=1.AAAA', 'cut short'],
    [`#with=1.${'A'.repeat(11_000)}`, 'too large'],
    [`#with=1.${'A'.repeat(10_000_000)}`, 'too large'],
  ])('%.20s is told', (fragment, kind) => expect(kindOf(fragment)).toBe(kind));

  test('any text is answered, never thrown at', () =>
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => kindOf(`#with=1.${text}`) !== 'opened')));
});

describe('links made to do harm', () => {
  test('a few bytes that unpack to megabytes are stopped', () => {
    const started = performance.now();
    expect(kindOf(crafted(`["1",${'1,'.repeat(2_000_000)}1]`))).toBe('too large');
    expect(performance.now() - started).toBeLessThan(2000);
  });

  test('up to 256 KB is unpacked and then judged', () =>
    expect(kindOf(crafted(`["1",${'1,'.repeat(120_000)}1]`))).toBe('not valid'));

  test.each<[string, unknown]>([
    ['no JSON', '{{{'],
    ['an object', { __proto__: null, title: 'x' }],
    ['a number', 7],
    ['null', null],
    ['nothing', []],
    ['a model number that is a list', [[], ...pack(loft())]],
    ['numbers where names stand', ['1', ...pack(loft()).map(() => 1)]],
    ['lists where numbers stand', ['1', ...pack(loft()).map(() => [[[]]])]],
    ['names of Object where places stand', ['1', 't', 0, [], '__proto__', 'constructor']],
    ['lists a thousand deep', `["1",${'['.repeat(1000)}${']'.repeat(1000)}]`],
    ['text that is not UTF-8', Buffer.from([0xff, 0xfe, 0x22])],
  ])('%s is not valid', (_, positions) => {
    const fragment = Buffer.isBuffer(positions) ? sealed(deflateRawSync(positions)) : crafted(positions);
    expect(kindOf(fragment)).toBe('not valid');
  });

  test('bytes that are no deflate stream are altered, whatever their checksum says', () => {
    // Block type 3 is reserved (RFC 1951, 3.2.3).
    const read = decodeLink(sealed(Buffer.from([0b111, 0xff, 0xff])));
    expect(read).toMatchObject({ kind: 'altered', why: 'The link was altered: it cannot be unpacked.' });
  });

  test.each<[string, unknown[]]>([
    ['below 0', [-1.5, 2, 2]],
    ['of nothing', [1.5, 0, 2]],
    ['beyond all sense', [1.5, 2, 1e9]],
    ['in words', ['1.5', 2, 2]],
    ['left out', [1.5, 2]],
  ])('ratios %s in its head are not told, and the comparison opens', (_, head) => {
    const read = decodeLink(crafted([MODEL_NUMBER, head, ...pack(loft())], 2));
    expect(read).toEqual({ ok: true, entry: loft(), modelNumber: MODEL_NUMBER, sameModel: true });
  });

  const readings = runList({ series: [{ cut: 0, sharpness: 90 }] }).slice(0, 12);

  test.each<[string, unknown, string]>([
    ['a word', 'Plover', 'the knife (an object) is neither the id of a knife nor what a log calls one'],
    ['a list of nothing', [], 'the knife (an object) is neither the id of a knife nor what a log calls one'],
    ['one whose readings are no pairs', [...readings, [7, 8]], 'the cut of a reading must be a number'],
    ['one whose readings are no list', [...readings, 7], 'the series must be a list of readings'],
  ])('a run that is %s is named as what cannot be used', (_, damaged, message) => {
    const text = JSON.stringify([MODEL_NUMBER, [1, 1, 1], ...pack({ ...loft(), runs: [aRun()] })]);
    const own = JSON.stringify(runList({}));
    expect(text).toContain(own);
    const read = decodeLink(crafted(text.replace(own, JSON.stringify(damaged)), 2));
    const why = `The comparison in the link cannot be used: ${message}.`;
    expect(read).toEqual({ ok: false, kind: 'not valid', why });
  });

  test('a key named __proto__ reaches nothing', () => {
    const text = JSON.stringify(['1', ...pack(loft())])
      .replace('[{', '[{"__proto__":{"polluted":1},')
      .replace('"Plover"', '{"__proto__":{"polluted":1}}');
    expect(kindOf(crafted(text))).toBe('not valid');
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
  });

  test('a comparison the model refuses is refused with the model’s reason', () => {
    const entry = loft();
    const broken = { ...entry, knives: entry.knives.map((knife) => ({ ...knife, edgeMm: 4.5 })) };
    const read = decodeLink(crafted(['1', ...pack(broken)]));
    expect(read).toMatchObject({
      ok: false,
      kind: 'not valid',
      why: expect.stringContaining('4.5') as string,
    });
  });
});
