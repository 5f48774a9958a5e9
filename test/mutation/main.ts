// `npm run mutation -- --room NAME`: one small change after another in the sources of a room, and whether its tests notice. --files takes a
// few files of it instead of all, for a look between two cups of tea; the share that is noticed must be 80 % or more.
import { existsSync, globSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { Stryker } from "@stryker-mutator/core";

type Settings = NonNullable<ConstructorParameters<typeof Stryker>[0]>;
type MutantResult = Awaited<ReturnType<Stryker["runMutationTest"]>>[number];

const root = fileURLToPath(new URL("../../", import.meta.url));
const rooms = ["identification", "dating", "language"] as const;
const LEAST = 80;

const { values } = parseArgs({
  options: {
    room: { type: "string" },
    files: { type: "string" },
    tests: { type: "string" },
    lines: { type: "string" },
    survivors: { type: "boolean", default: false },
  },
});
const room = rooms.find((one) => one === values.room);
if (room === undefined) {
  process.stderr.write(
    `mutation: --room: one of ${rooms.join(", ")}; --files a,b: only these of it; --tests a,b: only these tests of it; --lines 10-40: only these lines of each; --survivors lists them\n`,
  );
  process.exit(2);
}

process.chdir(root);
// A mutant that only another room's tests would notice counts as unnoticed.
const sources = chosen(`knowledge/${room}`, values.files, ".ts");
const tests = chosen(`test/knowledge/${room}`, values.tests, ".test.ts");
const folder = join(tmpdir(), `wm-mutation-${process.pid}`);
try {
  const mutants = await new Stryker({
    // Its own runner for Vitest passes mutants by that tests notice (seen with 9.6.1 on Vitest 5.1): a process for each is slow and right.
    testRunner: "command",
    commandRunner: { command: `node_modules/.bin/vitest run --bail 1 ${tests.join(" ")}` },
    plugins: [],
    mutate: [...(values.lines === undefined ? sources : sources.map((file) => `${file}:${values.lines}`))],
    coverageAnalysis: "off",
    concurrency: 2,
    timeoutMS: 20_000,
    tempDirName: folder,
    symlinkNodeModules: true,
    ignorePatterns: ["data", "coverage"],
    reporters: [],
    logLevel: "error" as NonNullable<Settings["logLevel"]>,
    // It would rewrite the project's settings with a library that TypeScript 7 no longer is.
    tsconfigFile: "none",
    allowEmpty: true,
  }).runMutationTest();
  report(mutants);
} finally {
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
}

function chosen(under: string, names: string | undefined, ending: string): readonly string[] {
  if (names === undefined) return globSync(`${under}/**/*${ending}`).toSorted();
  return names.split(",").map((name) => {
    const path = `${under}/${basename(name, ending)}${ending}`;
    if (!existsSync(path)) throw new RangeError(`mutation: there is no ${path}`);
    return path;
  });
}

function report(mutants: readonly MutantResult[]): void {
  const score = (of: readonly MutantResult[]) => {
    const count = (...statuses: readonly MutantResult["status"][]) =>
      of.filter(({ status }) => statuses.includes(status)).length;
    const noticed = count("Killed", "Timeout");
    const all = noticed + count("Survived", "NoCoverage");
    return { noticed, all, share: all === 0 ? Number.NaN : (100 * noticed) / all };
  };
  const byFile = new Map<string, MutantResult[]>();
  for (const mutant of mutants) byFile.set(mutant.fileName, [...(byFile.get(mutant.fileName) ?? []), mutant]);
  for (const [file, of] of [...byFile].toSorted()) {
    const { noticed, all, share } = score(of);
    print(`${share.toFixed(1).padStart(6)} %  ${noticed} of ${all}  ${file.replace(root, "")}`);
    if (values.survivors) survivors(of);
  }
  const { noticed, all, share } = score(mutants);
  print(
    `${share.toFixed(1).padStart(6)} %  ${noticed} of ${all}  ${share >= LEAST ? "holds" : "MISSED"}, >= ${LEAST} %`,
  );
  process.exitCode = share >= LEAST ? 0 : 1;
}

function survivors(of: readonly MutantResult[]): void {
  for (const { status, location, mutatorName, replacement } of of) {
    if (status !== "Survived" && status !== "NoCoverage") continue;
    const words = (replacement ?? "").replaceAll(/\s+/gu, " ").slice(0, 80);
    print(
      `          line ${location.start.line}: ${mutatorName} -> ${words} (${status === "Survived" ? "survives" : "never run"})`,
    );
  }
}

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
