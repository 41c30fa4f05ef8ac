/** Runs every check in turn and closes with one line of counts; `npm test` calls it after the install. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { findFirefox } from './firefox/find.ts';
import { getBrowser } from './site/browser.ts';

const results = 'test-results';
rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });

let passed = 0;
let failed = 0;

function step(name: string, command: string, args: string[]): boolean {
  console.log(`\n— ${name}`);
  const { status } = spawnSync(command, args, { stdio: 'inherit', shell: process.platform === 'win32' });
  return status === 0;
}

type Check = readonly [name: string, command: string, ...args: string[]];

/** A check that is one yes or no. What it says is shown in one piece, for others run beside it. */
async function check([name, command, ...args]: Check): Promise<void> {
  const child = spawn(command, args, { shell: process.platform === 'win32' });
  const said: Buffer[] = [];
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (piece: Buffer) => {
      said.push(piece);
    });
  const status = await new Promise<number | null>((done) => {
    child.on('error', () => done(null));
    child.on('close', done);
  });
  console.log(`\n— ${name}\n${Buffer.concat(said).toString()}`);
  if (status === 0) passed += 1;
  else failed += 1;
}

/** The build, and beside it the checks that touch nothing of it: two at a time. */
async function buildAndCheck(build: readonly Check[], others: readonly Check[]): Promise<void> {
  const waiting = [...others];
  const work = async (): Promise<void> => {
    for (let next = waiting.shift(); next; next = waiting.shift()) await check(next);
  };
  const inTurn = async (): Promise<void> => {
    for (const next of build) await check(next);
    await work();
  };
  await Promise.all([inTurn(), work()]);
}

interface VitestResult {
  numPassedTests: number;
  numFailedTests: number;
}
interface PlaywrightResult {
  stats: { expected: number; unexpected: number; flaky: number };
}

const read = <T>(file: string): T | undefined => {
  try {
    return JSON.parse(readFileSync(`${results}/${file}`, 'utf8')) as T;
  } catch {
    return undefined;
  }
};

/** A runner that counts its own tests; one that ends badly without a failed test counts as one failure. */
function runner(
  name: string,
  command: string,
  args: string[],
  count: () => { good: number; bad: number } | undefined,
): void {
  const ok = step(name, command, args);
  const counted = count() ?? { good: 0, bad: 1 };
  passed += counted.good;
  failed += counted.bad === 0 && !ok ? 1 : counted.bad;
}

/** What a run of vitest counts, from the report it leaves. */
function vitest(name: string, report: string, ...args: string[]): void {
  const file = `${results}/${report}`;
  runner(
    name,
    'vitest',
    ['run', ...args, '--reporter=default', '--reporter=json', `--outputFile.json=${file}`],
    () => {
      const result = read<VitestResult>(report);
      return result && { good: result.numPassedTests, bad: result.numFailedTests };
    },
  );
}

getBrowser();
await buildAndCheck(
  // Both write the types of the content.
  [
    ['build', 'astro', 'build'],
    ['types', 'astro', 'check'],
  ],
  [
    ['lint', 'eslint', '.'],
    ['nothing left over', 'knip'],
    ['spelling', 'cspell', '--no-progress', '--no-summary'],
    ['format', 'prettier', '--check', '.'],
    ['types of the model alone', 'tsc', '-p', 'src/model/tsconfig.json'],
  ],
);
vitest('unit and reference tests', 'unit.json');
runner('browser tests', 'playwright', ['test'], () => {
  const stats = read<PlaywrightResult>('site.json')?.stats;
  return stats && { good: stats.expected + stats.flaky, bad: stats.unexpected };
});
if (findFirefox())
  vitest('journeys in Firefox', 'firefox.json', '--config', 'tests/firefox/vitest.config.ts');
else console.log('\n— journeys in Firefox: skipped, there is no Firefox here (FIREFOX may name one)');

console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
