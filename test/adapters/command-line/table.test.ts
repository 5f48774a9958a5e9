import { readFileSync } from "node:fs";
import { join } from "node:path";
import { PassThrough } from "node:stream";
import { expect, test } from "vitest";
import { askerOver } from "../../../adapters/command-line/asker.ts";
import { readGuided } from "../../../adapters/command-line/table/read-guided.ts";
import { writeHandbookFiles } from "../../../adapters/handbook-folder/index.ts";
import { writeSheets } from "../../../adapters/spreadsheets/index.ts";
import { loadHandbook } from "../../../knowledge/index.ts";
import { carefulFiles, carefulHandbook } from "../../support/careful-handbook.ts";
import { commandLine, newFolder, root, run } from "../program.ts";

const yaml = carefulHandbook["parts/door-handle.yaml"] ?? "";

async function tarn(): Promise<string> {
  const folder = newFolder();
  await writeHandbookFiles(join(folder, "tarn"), carefulFiles());
  return folder;
}

const table = (folder: string, ...words: readonly string[]) =>
  run(commandLine, ["table", ...words], "", { folder });
const written = (folder: string) => readFileSync(join(folder, "tarn/parts/door-handle.yaml"), "utf8");

test("a table goes out and comes back, and nothing is written when nothing is different", async () => {
  const folder = await tarn();
  const out = await table(folder, "to", "handles.xlsx", "--handbook", "tarn");
  expect(out).toMatchObject({ status: 0, out: "handles.xlsx: door-handle; 4 variants\n", err: "" });
  const back = await table(folder, "from", "handles.xlsx", "--handbook", "tarn", "--write");
  expect(back).toMatchObject({ status: 0, err: "" });
  expect(back.out).toBe("door-handle: 41 cells, 0 not read\nNothing that is said has changed.\n");
  expect(written(folder)).toBe(yaml);
});

test("changes are said in words, and written only when asked for", async () => {
  const folder = await tarn();
  const rows = [
    ["variant", "lever: round"],
    ["round", "17/20"],
  ];
  await writeSheets(join(folder, "round.csv"), [{ name: "round", rows }]);
  const looked = await table(folder, "from", "round.csv", "--handbook", "tarn");
  expect(looked.out).toBe(
    "round: 2 cells, 0 not read\nThe Round handle has Round (Lever) on 17 of 20; until now “always”.\nnothing written\n",
  );
  expect(written(folder)).toBe(yaml);
  const wrote = await table(folder, "from", "round.csv", "--handbook", "tarn", "--write");
  expect(wrote.out).toMatch(/written: parts\/door-handle.yaml\n$/u);
  expect(written(folder)).toBe(yaml.replace("lever: { round: always }", 'lever: { round: "17 of 20" }'));
});

test("with a cell that was not read nothing is written, unless what was read is wanted alone", async () => {
  const folder = await tarn();
  const file = join(root, "test/adapters/spreadsheets/files/slips.csv");
  const whole = await table(folder, "from", file, "--handbook", "tarn", "--write");
  expect(whole.status).toBe(2);
  expect(whole.out).toContain("slips!C3 “85%”: a share does not say how many were looked at\n    → write");
  expect(whole.err).toContain("9 cells were not read");
  expect(written(folder)).toBe(yaml);
  const partly = await table(folder, "from", file, "--handbook", "tarn", "--partly");
  expect(partly.status).toBe(0);
  expect(written(folder)).toContain("length: { mean: 140.5, spread: 0.5, sources: [measured] }");
  expect(written(folder)).toContain("length: { mean: 132, spread: 0.5, sources: [measured] }");
});

test("a table that would make the handbook unsound is refused with the place", async () => {
  const folder = await tarn();
  const rows = [
    ["variant", "lever: flat", "lever: round", "lever: hooked"],
    ["copy", "always", "always", "always"],
  ];
  await writeSheets(join(folder, "all.csv"), [{ name: "all", rows }]);
  const { status, out, err } = await table(folder, "from", "all.csv", "--handbook", "tarn", "--partly");
  expect(status).toBe(2);
  expect(out).toMatch(/parts\/door-handle\.yaml:\d+:7 {2}these frequencies add up to about 294 %/u);
  expect(err).toContain("would not be sound");
  expect(written(folder)).toBe(yaml);
});

test("what is not said is asked for with the usage", async () => {
  const folder = await tarn();
  expect((await table(folder)).err).toMatch(/^witness-mark table: to FILE or from FILE is needed\n/u);
  expect((await table(folder, "from", "x.csv")).err).toMatch(/^witness-mark table: --handbook is needed/u);
  expect((await table(folder, "to", "x.csv", "--part", "dor-handle", "--handbook", "tarn")).err).toContain(
    "did you mean door-handle",
  );
});

test("somebody at a terminal is asked what a column means until it means something", async () => {
  const loaded = loadHandbook(carefulFiles());
  if (!loaded.ok) throw new Error("refused");
  const [part] = loaded.handbook.parts;
  if (part === undefined) throw new Error("no part");
  const [input, output] = [new PassThrough(), new PassThrough()];
  const asker = askerOver(input, output);
  const sheet = {
    name: "x",
    rows: [
      ["variant", "flat?", "colour"],
      ["round", "rarely", "red"],
    ],
  };
  const reading = readGuided({ part, sources: loaded.handbook.sources, sheet }, asker);
  for (const line of ["lever: flatt", "lever: flat", ""]) {
    await new Promise((resolve) => output.once("data", resolve));
    input.write(`${line}\n`);
  }
  const read = await reading;
  asker.close();
  expect(read.claims.get("round")?.get("lever")?.said).toEqual({ round: "always", flat: "rarely" });
  expect(read.unread.map(({ cell }) => cell)).toEqual(["C1"]);
  expect(await asker.ask("anybody?")).toBeUndefined();
});
