// `npm run mutation -- --room NAME`: one small change after another in the sources of a room, and whether its tests notice: 80 % of them or
// more. The changes are Stryker's; trying them is our own, because its runners start anew for each (seconds) or pass some by.
import { globSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { wilsonInterval } from "../../knowledge/numbers/wilson-interval.ts";
import { some } from "../support/draws.ts";
import { chanceFrom } from "../support/random-tables.ts";
import { eachAtOnce } from "./each-at-once.ts";
import { type Mutant, mutantsOf } from "./mutants.ts";
import { reachOf } from "./reach.ts";
import { type Verdict, verdictOn } from "./verdict.ts";

type Judged = Mutant & { readonly verdict: Verdict };

const rooms = ["identification", "dating", "language"] as const;
const LEAST = 80;

const { values } = parseArgs({
  options: {
    room: { type: "string" },
    files: { type: "string" },
    tests: { type: "string" },
    sample: { type: "string" },
    seed: { type: "string", default: "1" },
    survivors: { type: "boolean", default: false },
  },
});
const room = rooms.find((one) => one === values.room);
if (room === undefined) {
  process.stderr.write(
    `mutation: --room: one of ${rooms.join(", ")}; --files a,b: only these of it; --tests a,b: only these tests of it; --sample N: so many mutants, drawn by --seed; --survivors lists them\n`,
  );
  process.exit(2);
}

process.chdir(fileURLToPath(new URL("../../", import.meta.url)));
const sources = await mutantsOf(chosen(globSync(`knowledge/${room}/**/*.ts`), values.files, ".ts"));
const reach = await reachOf(sources, chosen(testsOf(room), values.tests, ".test.ts"));
const { sample, seed } = values;
const drawn =
  sample === undefined ? sources.mutants : some(chanceFrom(Number(seed)), sources.mutants, Number(sample));
let tried = 0;
const judged = await eachAtOnce(drawn, async (mutant): Promise<Judged> => {
  const verdict = await verdictOn(mutant, reach.get(mutant.id) ?? []);
  tried += 1;
  process.stderr.write(`${tried} of ${drawn.length}  ${verdict}  ${mutant.file}:${described(mutant)}\n`);
  return { ...mutant, verdict };
});
report(judged);

/** A mutant that only another room's tests would notice counts as unnoticed. */
function testsOf(name: string): readonly string[] {
  const published = globSync("test/published/*.test.ts");
  const ofRoom = published.filter((file) => readFileSync(file, "utf8").includes(`/knowledge/${name}/`));
  return [...globSync(`test/knowledge/${name}/**/*.test.ts`), ...ofRoom];
}

function chosen(all: readonly string[], names: string | undefined, ending: string): readonly string[] {
  if (names === undefined) return all.toSorted();
  return names.split(",").map((name) => {
    const path = all.find((one) => basename(one, ending) === basename(name, ending));
    if (path === undefined) throw new RangeError(`mutation: there is no ${name} in the room`);
    return path;
  });
}

function report(mutants: readonly Judged[]): void {
  for (const file of new Set(mutants.map((mutant) => mutant.file).toSorted())) {
    const those = mutants.filter((mutant) => mutant.file === file);
    print(`${line(those)}  ${file}`);
    if (values.survivors) survivors(those);
  }
  const { low, high } = wilsonInterval(noticed(mutants), mutants.length, 0.95);
  const holds = share(mutants) >= LEAST;
  const among = sample === undefined ? "" : `, drawn from ${sources.mutants.length} by seed ${seed}`;
  print(`${line(mutants)}  ${holds ? "holds" : "MISSED"}, >= ${LEAST} %${among}`);
  if (sample !== undefined)
    print(`95 % interval (Wilson): ${(100 * low).toFixed(1)} to ${(100 * high).toFixed(1)} %`);
  process.exitCode = holds ? 0 : 1;
}

function line(mutants: readonly Judged[]): string {
  return `${share(mutants).toFixed(1).padStart(6)} %  ${noticed(mutants)} of ${mutants.length}`;
}

function noticed(mutants: readonly Judged[]): number {
  return mutants.filter(({ verdict }) => verdict === "noticed" || verdict === "hung or fell").length;
}

function share(mutants: readonly Judged[]): number {
  return mutants.length === 0 ? 100 : (100 * noticed(mutants)) / mutants.length;
}

function survivors(mutants: readonly Judged[]): void {
  const inOrder = mutants.toSorted((one, other) => one.line - other.line || one.column - other.column);
  for (const mutant of inOrder) {
    if (mutant.verdict !== "survives" && mutant.verdict !== "never run") continue;
    print(`          ${described(mutant)} (${mutant.verdict})`);
  }
}

function described({ line: row, column, kind, original, replacement }: Mutant): string {
  return `${row}:${column + 1} ${kind} ${inOneLine(changeOf(original, replacement))}`;
}

/** What is changed and what becomes of it, with a little of what stands before: a pattern may be a thousand signs long. */
function changeOf(original: string, replacement: string): string {
  if (original.length < 40) return `${original} -> ${replacement}`;
  let same = 0;
  while (same < original.length && original[same] === replacement[same]) same += 1;
  const start = Math.max(0, same - 40);
  return `${original.slice(start, same + 20)} -> ${replacement.slice(start, same + 20)}`;
}

function inOneLine(text: string): string {
  return text.replaceAll(/\s+/gu, " ").slice(0, 160);
}

function print(text: string): void {
  process.stdout.write(`${text}\n`);
}
