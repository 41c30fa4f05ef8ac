import { readFileSync, readdirSync } from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';

const [mostFunctionLines, mostFileLines] = [60, 400];

const source = new URL('../src/', import.meta.url);
const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter((file) =>
  /\.(?:ts|mjs|astro)$/.test(file),
);
const textOf = (file: string): string => readFileSync(new URL(file, source), 'utf8');

/** The TypeScript of a file; of a page its front matter and its scripts. */
const scriptsOf = (file: string, text: string): string[] =>
  file.endsWith('.astro')
    ? [...text.matchAll(/^---\n(.*?)\n---|<script[^>]*>(.*?)<\/script>/gs)].map(
        ([, front, script]) => front ?? script ?? '',
      )
    : [text];

/** The functions of a text that are longer than they may be, by name; a function without one by what holds it. */
function tooLong(text: string): string[] {
  const file = ts.createSourceFile('source.ts', text, ts.ScriptTarget.Latest, true);
  const lineAt = (place: number): number => file.getLineAndCharacterOfPosition(place).line;
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body) {
      const lines = lineAt(node.end) - lineAt(node.getStart(file)) + 1;
      const holder = node.parent as { name?: ts.Node };
      if (lines > mostFunctionLines)
        found.push((node.name ?? holder.name)?.getText(file) ?? 'without a name');
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

test(`no function is longer than ${mostFunctionLines} lines`, () => {
  const found = files.flatMap((file) =>
    scriptsOf(file, textOf(file)).flatMap((text) => tooLong(text).map((name) => `${file}: ${name}`)),
  );
  expect(found).toEqual([]);
});

test(`no file is longer than ${mostFileLines} lines`, () => {
  const found = files.filter((file) => textOf(file).trimEnd().split('\n').length > mostFileLines);
  expect(found).toEqual([]);
});

test.each([
  ['a function', (body: string) => `function long() {\n${body}}`],
  ['an arrow function', (body: string) => `const long = () => {\n${body}};`],
  ['a method', (body: string) => `class A {\n  long() {\n${body}}\n}`],
  ['a method of an object', (body: string) => `const a = {\n  long() {\n${body}},\n};`],
])('the length of %s is found', (_kind, written) => {
  expect(tooLong(written('  a();\n'.repeat(mostFunctionLines - 2)))).toEqual([]);
  expect(tooLong(written('  a();\n'.repeat(mostFunctionLines - 1)))).toEqual(['long']);
});
