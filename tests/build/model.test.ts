import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import ts from 'typescript';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { writeModel } from '../../src/build/model/integration.mjs';
import * as door from '../../src/model/index.ts';
import { digestOf } from '../model/panel.ts';

let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'model-'));
  await writeModel(folder);
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

/** A notebook beside `model.js`, as another program would write it: what it gets right, and what its types must refuse. */
const notebook = `
import { compare, runsNeeded, welch } from './model.js';
import type { Comparison, Knife, Plan, WelchResult } from './model.js';

const plover: Knife = {
  id: 'plover',
  angleDeg: { value: 20, plusMinus: 1 },
  edgeMm: 0.4,
  finish: { scale: 'JIS', grit: 1000 },
  grind: { form: 'flat', spineMm: 3, heightMm: 16 },
  hrc: 59,
  carbideVolPercent: { CrC: 6 },
};
const asked: Comparison = { knives: [plover], baseline: 'plover' };
export const factors: readonly (number | null)[] = compare(asked).rows.flatMap(({ terms }) => terms.map(({ factor }) => factor));
export const means: WelchResult = welch([3, 4, 5], [1, 2, 3]);
const plan: Plan = { cv: 0.2, ratio: 1.5 };
export const runs: number = runsNeeded(plan);

// @ts-expect-error a hardness is a number
export const soft: Knife = { ...plover, hrc: 'soft' };
// @ts-expect-error no grind has this form
export const wavy: Knife = { ...plover, grind: { form: 'wavy', spineMm: 3, heightMm: 16 } };
// @ts-expect-error the baseline is the name of a knife
compare({ knives: [plover], baseline: 1 });
`;

const options: ts.CompilerOptions = {
  strict: true,
  noEmit: true,
  module: ts.ModuleKind.ESNext,
  moduleResolution: ts.ModuleResolutionKind.Bundler,
  target: ts.ScriptTarget.ES2024,
  lib: ['lib.es2024.d.ts'],
  types: [],
  // The file of types is checked too, and not only what imports it.
  skipLibCheck: false,
};

function programOf(): ts.Program {
  const file = join(folder, 'notebook.ts');
  writeFileSync(file, notebook);
  return ts.createProgram([file], options);
}

test('the types beside model.js need no other file, and hold for a program that imports it', () => {
  const program = programOf();
  const faults = ts
    .getPreEmitDiagnostics(program)
    .map(
      ({ messageText, file }) => `${file?.fileName} ${ts.flattenDiagnosticMessageText(messageText, '\n')}`,
    );
  expect(faults).toEqual([]);
  const read = program
    .getSourceFiles()
    .filter((file) => !program.isSourceFileDefaultLibrary(file))
    .map(({ fileName }) => fileName.replace(/^.*\//, ''));
  expect(read.sort()).toEqual(['model.d.ts', 'notebook.ts']);
});

test('the built script gives the results of the source, to the last digest', async () => {
  const built = (await import(
    /* @vite-ignore */ pathToFileURL(join(folder, 'model.js')).href
  )) as typeof door;
  expect(built.MODEL_NUMBER).toBe(door.MODEL_NUMBER);
  expect(digestOf(built)).toBe(digestOf(door));
});

test('script and types have the names of the one door, no more and no fewer', async () => {
  const namesIn = (program: ts.Program, file: string) => {
    const source = program.getSourceFile(file);
    const symbol = source && program.getTypeChecker().getSymbolAtLocation(source);
    return symbol
      ? program
          .getTypeChecker()
          .getExportsOfModule(symbol)
          .map(({ name }) => name)
          .sort()
      : [];
  };
  const model = (await import(/* @vite-ignore */ pathToFileURL(join(folder, 'model.js')).href)) as object;
  expect(Object.keys(model).sort()).toEqual(Object.keys(door).sort());
  const built = namesIn(programOf(), join(folder, 'model.d.ts'));
  const written = namesIn(
    ts.createProgram(['src/model/index.ts'], { ...options, allowImportingTsExtensions: true }),
    'src/model/index.ts',
  );
  expect(written.length).toBeGreaterThan(Object.keys(door).length);
  expect(built).toEqual(written);
});
