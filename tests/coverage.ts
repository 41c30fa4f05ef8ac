/**
 * Prints what share of each folder's branches and lines the unit tests reach, and every branch they miss. Told apart are
 * fallbacks no run can reach: `array[i] ?? 0` within the array's length, which only the compiler asks for
 * (noUncheckedIndexedAccess), and what a comment `Unreachable: why` on the same line or the one above says cannot be.
 * `npm run coverage` calls it.
 */
import { readFileSync } from 'node:fs';
import ts from 'typescript';

interface Place {
  line?: number;
  column?: number;
}
/** What is read of a file's record in the report of istanbul's form. */
interface FileRecord {
  path: string;
  branchMap: Record<string, { type: string; locations: { start: Place }[]; loc: { start: Place } }>;
  b: Record<string, number[]>;
}

const report = JSON.parse(readFileSync('test-results/coverage/coverage-final.json', 'utf8')) as Record<
  string,
  FileRecord
>;
const records = Object.values(report);
const program = ts.createProgram(
  records.map(({ path }) => path),
  { strict: true, allowImportingTsExtensions: true, noEmit: true, target: ts.ScriptTarget.ESNext },
);
const checker = program.getTypeChecker();

/** Lines a comment calls unreachable: its own, and the next that is code. */
function excusedLines(path: string): Set<number> {
  const lines = readFileSync(path, 'utf8').split('\n');
  const excused = new Set<number>();
  lines.forEach((text, i) => {
    if (!/\bUnreachable: \S/.test(text)) return;
    let next = i + 1;
    while (/^\s*(\/\/|\*)/.test(lines[next] ?? '')) next += 1;
    excused.add(i + 1).add(next + 1);
  });
  return excused;
}

/** The array read at the root of `array[i]`, `array[i]?.name`, `array[i]?.(argument)`. */
function arrayRead(node: ts.Node): ts.ElementAccessExpression | undefined {
  if (ts.isElementAccessExpression(node)) return node;
  const inner = ts.isPropertyAccessExpression(node) || ts.isCallExpression(node);
  return inner && node.questionDotToken ? arrayRead(node.expression) : undefined;
}

/** Lines of a file on which an array is read with a fallback: without the compiler's caution none could be missing. */
function cautiousLines(path: string): Set<number> {
  const source = program.getSourceFile(path);
  const lines = new Set<number>();
  const visit = (node: ts.Node): void => {
    if (
      source &&
      ts.isBinaryExpression(node) &&
      node.operatorToken.kind === ts.SyntaxKind.QuestionQuestionToken
    ) {
      const read = arrayRead(node.left);
      const held = read && checker.getTypeAtLocation(read.expression).getNonNullableType();
      const isList = held?.getNumberIndexType() !== undefined && held.getProperty('length') !== undefined;
      if (isList) lines.add(source.getLineAndCharacterOfPosition(node.right.getStart()).line + 1);
    }
    ts.forEachChild(node, visit);
  };
  if (source) visit(source);
  return lines;
}

for (const folder of ['src/model', 'src/comparison', 'src/scene', 'src/topics', 'src/exercises']) {
  const counts = { all: 0, reached: 0, cautious: 0, excused: 0 };
  const missed: string[] = [];
  for (const { path, branchMap, b } of records) {
    const file = path.replaceAll('\\', '/');
    if (!file.includes(`/${folder}/`)) continue;
    const cautious = cautiousLines(path);
    const excused = excusedLines(path);
    for (const [id, { type, locations, loc }] of Object.entries(branchMap))
      for (const [index, location] of locations.entries()) {
        counts.all += 1;
        const line = location.start.line ?? loc.start.line ?? 0;
        if ((b[id]?.[index] ?? 0) > 0) counts.reached += 1;
        else if (type === 'binary-expr' && cautious.has(line)) counts.cautious += 1;
        else if (excused.has(line)) counts.excused += 1;
        else missed.push(`  ${file.slice(file.indexOf(folder))}:${line} ${type}, way ${index + 1}`);
      }
  }
  const reachable = counts.all - counts.cautious - counts.excused;
  console.log(
    `${folder}: ${((100 * counts.reached) / reachable).toFixed(1)}% of ${reachable} branches, ${missed.length} missed; besides ${counts.cautious} fallbacks only the compiler asks for and ${counts.excused} with a reason`,
  );
  for (const line of missed) console.log(line);
}
