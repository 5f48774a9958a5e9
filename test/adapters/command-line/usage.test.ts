import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { commandLine, root, run } from "../program.ts";

test("help names every command, and each command explains itself", async () => {
  const { status, out, err } = await run(commandLine, ["help"]);
  expect({ status, err }).toEqual({ status: 0, err: "" });
  for (const command of [
    "chat",
    "converse",
    "model",
    "simulate",
    "report",
    "changeover",
    "new",
    "check",
    "editions",
    "table",
    "learn",
    "schema",
    "store",
    "observations",
  ]) {
    expect(out).toContain(command);
    const byWord = await run(commandLine, ["help", command]);
    const byFlag = await run(commandLine, [command, "--help"]);
    expect(byWord.out).toBe(byFlag.out);
    expect(byWord.out).toMatch(new RegExp(`^witness-mark ${command} `, "u"));
  }
});

const slips: readonly [readonly string[], string][] = [
  [[], "witness-mark: a command is needed"],
  [["convrese"], "witness-mark: convrese: no such command; did you mean converse"],
  [["model", "--prat", "x"], "witness-mark model: --prat: no such option; did you mean --part"],
  [["model"], "witness-mark model: --part: a part kind is needed"],
  [["model", "--part"], "witness-mark model: --part: a value is needed"],
  [["model", "--part", "a", "--part", "b"], "witness-mark model: --part: given twice"],
  [["model", "--json=yes", "--part", "a"], "witness-mark model: --json: takes no value"],
  [
    ["schema", "--file", "parts"],
    "witness-mark schema: --file parts: no such file of a handbook; did you mean part",
  ],
  [["store"], "witness-mark store: check, backup FILE or restore FILE is needed"],
  [["store", "backup", "--replace"], "witness-mark store: a file is needed"],
  [["chat", "now"], "witness-mark chat: now: not expected here"],
  [
    ["model", "--part", "rear-spoiler", "--goal", "genuin"],
    "witness-mark model: --goal: did you mean genuine",
  ],
  [
    ["simulate", "--part", "rear-spoiler", "--n", "0"],
    "witness-mark simulate: --n: a whole number from 1 to 100000 is needed",
  ],
];

test.each(slips)("%j is refused with status 2, the reason first, then the usage", async (words, reason) => {
  const { status, out, err } = await run(commandLine, words);
  expect({ status, out }).toEqual({ status: 2, out: "" });
  expect(err.split("\n")[0]).toBe(reason);
  expect(err).toMatch(/\nwitness-mark /u);
});

test("the schema of a part kind's file is printed as JSON Schema 2020-12", async () => {
  const { status, out } = await run(commandLine, ["schema", "--file", "part"]);
  expect(status).toBe(0);
  const schema = JSON.parse(out);
  expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
  expect(schema.required).toEqual(expect.arrayContaining(["id", "name", "features", "variants"]));
});

// The Node of the system, where it is too old to read TypeScript itself.
const oldNode = ["/usr/bin/node", "/usr/local/bin/node"].find((path) => existsSync(path));
const launcher = join(root, "adapters/command-line/witness-mark.mjs");

test("the linked command answers alike on this Node and through it on the system's", async () => {
  const here = await run(launcher, ["help"]);
  expect(here).toMatchObject({ status: 0, err: "" });
  const failing = await run(launcher, ["convrese"]);
  expect(failing.status).toBe(2);
  if (oldNode === undefined) return;
  expect(await run(launcher, ["help"], "", { node: oldNode })).toEqual(here);
  expect(await run(launcher, ["convrese"], "", { node: oldNode })).toEqual(failing);
});
