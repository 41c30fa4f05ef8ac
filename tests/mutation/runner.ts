/**
 * Runs the tests of the model for Stryker in one process, loaded once: a mutant is switched on and the tests that
 * reach it are called, the quickest first, until one fails or their time is over.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { registerHooks } from 'node:module';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import fc from 'fast-check';
import type { Test } from './tests.ts';

/** Files of tests that take long: only for mutants of a file they are named after. */
const slow = /\/(compare|first-order.*|monotone|runs-coverage|solve.*|uncertainty-coverage)\.test/;

/** Whether a file of tests is named after a file of the model, by its first word. */
const isOwn = (tests: string, mutated: string): boolean =>
  basename(tests, '.test.ts')
    .split('-')
    .includes(basename(mutated, '.ts').split('-')[0] ?? '');

/** A mutant that so many microseconds of tests have not found counts as not found. */
const longest = 1e6 * Number(process.env['MUTANT_SECONDS']);

/** The files of the model that are mutated in this run. */
const mutated = (process.env['MUTATED'] ?? '').split(',');

/** How long each test took, for a process that takes over after a mutant that ran for ever. */
const kept = 'times.json';

/** What the instrumented model reads and writes. */
interface Switch {
  activeMutant?: string;
  currentTestId?: string;
  mutantCoverage?: unknown;
  hitCount?: number;
}
const model = ((globalThis as { __stryker__?: Switch }).__stryker__ ??= {});

/** What Stryker asks of a run with one mutant. */
interface Asked {
  activeMutant: { id: string };
  sandboxFileName: string;
  testFilter?: string[];
}

class InProcess {
  tests: Test[] = [];
  took = new Map<string, number>();

  /** Said so that Stryker starts no new process: nothing is loaded anew, since what runs once at load is not mutated. */
  capabilities() {
    return { reloadEnvironment: true };
  }

  async init(): Promise<void> {
    const standIn = pathToFileURL(join('tests', 'mutation', 'tests.ts')).href;
    registerHooks({
      resolve: (name, context, next) =>
        name === 'vitest' && context.parentURL !== standIn
          ? { url: standIn, shortCircuit: true }
          : next(name, context),
    });
    // A counterexample is enough; the smallest is not needed.
    fc.configureGlobal({ endOnFailure: true });
    const { takeIn, tests } = (await import(standIn)) as typeof import('./tests.ts');
    for (const folder of ['tests/model', 'tests/reference'])
      for (const name of readdirSync(folder).filter((file) => file.endsWith('.test.ts'))) {
        const file = `${folder}/${name}`;
        if (!slow.test(file) || mutated.some((of) => isOwn(file, of))) await takeIn(file);
      }
    this.tests = tests;
    if (existsSync(kept)) this.took = new Map(JSON.parse(readFileSync(kept, 'utf8')) as [string, number][]);
  }

  async dryRun(): Promise<object> {
    const results = [];
    for (const { id, run } of this.tests) {
      model.currentTestId = id;
      const from = performance.now();
      const failure = await failureOf(run);
      const timeSpentMs = performance.now() - from;
      this.took.set(id, timeSpentMs);
      results.push(
        failure === undefined
          ? { id, name: id, timeSpentMs, status: 0 }
          : { id, name: id, timeSpentMs, status: 1, failureMessage: failure },
      );
    }
    delete model.currentTestId;
    writeFileSync(kept, JSON.stringify([...this.took]));
    return { status: 'complete', tests: results, mutantCoverage: model.mutantCoverage };
  }

  async mutantRun(options: Asked): Promise<object> {
    const asked = new Set(options.testFilter);
    const chosen = this.tests
      .filter(({ id, file }) => asked.has(id) && (!slow.test(file) || isOwn(file, options.sandboxFileName)))
      .sort((a, b) => (this.took.get(a.id) ?? 0) - (this.took.get(b.id) ?? 0));
    model.activeMutant = options.activeMutant.id;
    let nrOfTests = 0;
    try {
      const from = process.cpuUsage().user;
      for (const { id, run } of chosen) {
        const tookMs = this.took.get(id) ?? 0;
        if (process.cpuUsage().user - from + 1000 * tookMs > longest) break;
        nrOfTests += 1;
        const over = performance.now() + 2000 + 20 * tookMs;
        model.hitCount = 0;
        // Asked at every pass through the mutant, which fails once there are more of them than this.
        Object.defineProperty(model, 'hitLimit', {
          get: () => ((model.hitCount ?? 0) % 1024 === 0 && performance.now() > over ? -1 : Infinity),
          configurable: true,
        });
        const failureMessage = await failureOf(run);
        if (failureMessage !== undefined)
          return { status: 'killed', killedBy: [id], failureMessage, nrOfTests };
      }
      return { status: 'survived', nrOfTests };
    } finally {
      delete model.activeMutant;
    }
  }
}

/** What a test failed with, or nothing where it passed. */
async function failureOf(run: () => unknown): Promise<string | undefined> {
  try {
    await run();
    return undefined;
  } catch (error) {
    return String(error);
  }
}

export const strykerPlugins = [{ kind: 'TestRunner', name: 'in-process', injectableClass: InProcess }];
