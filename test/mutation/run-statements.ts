// A process of its own for one try: reads which statements to run and with which sources changed, runs them until the first that fails, and
// writes what came of it. Nothing is remembered from one mutant to the next, and one that never ends can be ended.
import { readFileSync, writeSync } from "node:fs";
import { registerHooks } from "node:module";
import { pathToFileURL } from "node:url";
import type { Attempt, Outcome } from "./attempt.ts";

/** What the counting sources fill: mutant id to how often its place was reached, outside of any statement and within each. */
interface Counted {
  currentTestId: string | undefined;
  readonly mutantCoverage: {
    readonly static: Readonly<Record<string, number>>;
    readonly perTest: Readonly<Record<string, Readonly<Record<string, number>>>>;
  };
}

const attempt = JSON.parse(readFileSync(0, "utf8")) as Attempt;
const changed = new Map(attempt.sources.map(([file, text]) => [pathToFileURL(file).href, text]));
const statements = new URL("./statements.ts", import.meta.url).href;

registerHooks({
  resolve: (specifier, context, next) =>
    specifier === "vitest" && context.parentURL !== statements
      ? { url: statements, shortCircuit: true }
      : next(specifier, context),
  load: (url, context, next) => {
    const source = changed.get(url);
    return source === undefined ? next(url, context) : { format: "module", source, shortCircuit: true };
  },
});

const { takeStatements }: typeof import("./statements.ts") = await import(statements);
const counted: Counted = { currentTestId: undefined, mutantCoverage: { static: {}, perTest: {} } };
Object.assign(globalThis, { __stryker__: counted });
const outcome = await run();
writeSync(3, JSON.stringify(outcome));
process.exit(0);

async function run(): Promise<Outcome> {
  const seconds: number[] = [];
  for (const { file, chosen } of attempt.tests) {
    try {
      await import(pathToFileURL(file).href);
      const all = takeStatements();
      for (const index of chosen ?? all.keys()) {
        const before = process.cpuUsage();
        counted.currentTestId = `${index}`;
        await all[index]?.run();
        counted.currentTestId = undefined;
        seconds.push(secondsSince(before));
      }
    } catch (error) {
      return { passed: false, why: String(error), seconds, reached: [] };
    }
  }
  const { static: onImport, perTest } = counted.mutantCoverage;
  const reached = seconds.map((_, index) => Object.keys({ ...onImport, ...perTest[index] }));
  return { passed: true, why: "", seconds, reached };
}

function secondsSince(before: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}
