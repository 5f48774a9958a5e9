// A process of its own for one try: reads which statements to run and with which sources changed, runs them until the first that fails, and
// writes what came of it. Nothing is remembered from one mutant to the next, and one that never ends can be ended.
import { readFileSync, writeSync } from "node:fs";
import { registerHooks } from "node:module";
import { pathToFileURL } from "node:url";
import type { Attempt, Outcome } from "./attempt.ts";

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
// What the noting sources write into: 1 at the id of each mutant whose place was reached.
const reachedMutants = new Uint8Array(2 ** 16);
Object.assign(globalThis, { reachedMutants });
const outcome = await run();
writeSync(3, JSON.stringify(outcome));
process.exit(0);

async function run(): Promise<Outcome> {
  const seconds: number[] = [];
  const reached: (readonly number[])[] = [];
  let openingSeconds = 0;
  for (const { file, chosen } of attempt.tests) {
    const opened = process.cpuUsage();
    try {
      await import(pathToFileURL(file).href);
      openingSeconds += secondsSince(opened);
      const onOpening = takeReached();
      const all = takeStatements();
      for (const index of chosen ?? all.keys()) {
        const before = process.cpuUsage();
        await all[index]?.run();
        seconds.push(secondsSince(before));
        reached.push([...onOpening, ...takeReached()]);
      }
    } catch (error) {
      return { passed: false, why: String(error), seconds, openingSeconds, reached };
    }
  }
  return { passed: true, why: "", seconds, openingSeconds, reached };
}

function takeReached(): readonly number[] {
  const ids: number[] = [];
  for (let id = reachedMutants.indexOf(1); id >= 0; id = reachedMutants.indexOf(1, id + 1)) ids.push(id);
  reachedMutants.fill(0);
  return ids;
}

function secondsSince(before: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}
