import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { writeHandbookFiles } from "../../../adapters/handbook-folder/index.ts";
import { carefulFiles, carefulHandbook } from "../../support/careful-handbook.ts";
import { commandLine, newFolder, run } from "../program.ts";

const inFolder = (folder: string) => ({ folder });
const learn = (folder: string, ...words: readonly string[]) =>
  run(commandLine, ["learn", ...words], "", inFolder(folder));

async function tarn(): Promise<string> {
  const folder = newFolder();
  await writeHandbookFiles(join(folder, "tarn"), carefulFiles());
  return folder;
}

const line = (text: string, ...states: readonly string[]): string =>
  `${JSON.stringify({
    text,
    context: { part: "door-handle" },
    facts: states.map((state) => ({ part: "door-handle", feature: "lever", state })),
  })}\n`;
/** Each of the nine states of the handle five times on average, two of them in all of it. */
const curls = Array.from({ length: 40 }, (_, at) =>
  line(at % 2 === 0 ? "ends in a crook" : "such a crook", "hooked"),
).join("");
const pencils = line("rolls like a pencil", "round").repeat(5);
const enough = curls + pencils;
const chatter = line("what is it worth?") + line("the weather was nice");
const wordsOf = (folder: string) => join(folder, "tarn/learnt-words.json");

test("messages of several files are learnt from, what is little known of is named, and the handbook then hears them", async () => {
  const folder = await tarn();
  writeFileSync(join(folder, "ina.jsonl"), curls);
  writeFileSync(join(folder, "bram.jsonl"), chatter + pencils);
  const { status, out, err } = await learn(folder, "ina.jsonl", "bram.jsonl", "--handbook", "tarn");
  expect({ status, err }).toEqual({ status: 0, err: "" });
  expect(out).toBe(
    `47 messages: 45 tell 45 states, 2 tell none
learning …
door-handle: 9 states, told 45 times; learnt, but little of those told in fewer than 5 messages:
  lever: flat 0
  foundry-mark: star 0
  foundry-mark: bare 0
  button: steel 0
  button: brass 0
  spring: coil 0
  spring: leaf 0
written: tarn/learnt-words.json
`,
  );
  expect(JSON.parse(readFileSync(wordsOf(folder), "utf8"))).toMatchObject({ messages: 47 });
  expect(readdirSync(join(folder, "tarn")).filter((name) => name.endsWith(".new"))).toEqual([]);
  const checked = await run(commandLine, ["check", "--handbook", "tarn"], "", inFolder(folder));
  expect(checked.out).toContain("sound, edition");
  expect(checked.out).toContain("0 faults, 0 doubts, 0 wishes");
});

test("the same messages write the same bytes, whatever was there before", async () => {
  const folder = await tarn();
  writeFileSync(join(folder, "ina.jsonl"), enough + chatter);
  await learn(folder, "ina.jsonl", "--handbook", "tarn");
  const first = readFileSync(wordsOf(folder), "utf8");
  writeFileSync(wordsOf(folder), "{ broken");
  const again = await learn(folder, "ina.jsonl", "--handbook", "tarn");
  expect(again.status).toBe(0);
  expect(readFileSync(wordsOf(folder), "utf8")).toBe(first);
});

test("when the handbook goes on being written, check says what was not learnt, and editions that it was learnt anew", async () => {
  const folder = await tarn();
  writeFileSync(join(folder, "ina.jsonl"), enough + chatter);
  await writeHandbookFiles(join(folder, "old"), carefulFiles());
  await learn(folder, "ina.jsonl", "--handbook", "tarn");
  const changed = await run(commandLine, ["editions", "--old", "old", "--new", "tarn"], "", inFolder(folder));
  expect(changed.out).toBe("Learnt words: learnt anew from 47 messages.\n");
  const handle = carefulHandbook["parts/door-handle.yaml"] ?? "";
  writeFileSync(
    join(folder, "tarn/parts/door-handle.yaml"),
    handle.replace(
      "      - { id: hooked",
      "      - { id: ridged, name: Ridged, also: [ridged lever] }\n      - { id: hooked",
    ),
  );
  const { status, out } = await run(commandLine, ["check", "--handbook", "tarn"], "", inFolder(folder));
  expect(status).toBe(0);
  expect(out).toContain(
    "learnt-words.json:1:1  wish  1 state is read by name alone, without learnt words: door-handle/lever/ridged\n" +
      "    → collect messages that tell of them, and learn the words again with witness-mark learn\n",
  );
});

test("lines that cannot be read are all named with their places, and nothing is written", async () => {
  const folder = await tarn();
  writeFileSync(join(folder, "ina.jsonl"), `${pencils}{ no json\n${line("a hook", "hookd")}`);
  const { status, out, err } = await learn(folder, "ina.jsonl", "--handbook", "tarn");
  expect(status).toBe(2);
  expect(out).toBe(
    `ina.jsonl:6  this is no JSON; one object a line is needed
ina.jsonl:7  unknown state of lever "hookd"; did you mean "hooked"?
`,
  );
  expect(err).toBe("2 lines were not read, so nothing was learnt or written; mend or delete what is named\n");
  expect(existsSync(wordsOf(folder))).toBe(false);
  writeFileSync(join(folder, "long.jsonl"), "no json\n".repeat(60));
  const long = await learn(folder, "long.jsonl", "--handbook", "tarn");
  expect(long.out.split("\n").slice(49)).toEqual([
    expect.stringMatching(/^long\.jsonl:50 /u),
    "and 10 more",
    "",
  ]);
});

test("from too few messages nothing is learnt, because names alone are then the better reading", async () => {
  const folder = await tarn();
  writeFileSync(join(folder, "ina.jsonl"), line("ends in a crook", "hooked"));
  const { status, out, err } = await learn(folder, "ina.jsonl", "--handbook", "tarn");
  expect({ status, err }).toEqual({
    status: 2,
    err: "too few messages to learn from, so nothing is written\n",
  });
  expect(out).toContain(
    "door-handle: 9 states, told once; too few to learn from (45 are needed), read by names as before\n",
  );
  expect(existsSync(wordsOf(folder))).toBe(false);
});

test("messages that tell nothing teach nothing", async () => {
  const folder = await tarn();
  writeFileSync(join(folder, "bram.jsonl"), chatter);
  const { status, err } = await learn(folder, "bram.jsonl", "--handbook", "tarn");
  expect({ status, err }).toEqual({
    status: 2,
    err: "bram.jsonl: no message tells a state, so nothing is learnt\n",
  });
});

test("what is missing or cannot be read is said in one line", async () => {
  const folder = await tarn();
  const first = async (...words: readonly string[]) => (await learn(folder, ...words)).err.split("\n")[0];
  expect(await first()).toBe("witness-mark learn: a file of annotated messages is needed");
  expect(await first("--handbook", "tarn")).toBe(
    "witness-mark learn: a file of annotated messages is needed",
  );
  expect(await first("ina.jsonl")).toBe("witness-mark learn: --handbook is needed: the folder to write into");
  expect(await first("gone.jsonl", "--handbook", "tarn")).toBe("gone.jsonl: cannot be read");
  expect(await first("gone.jsonl", "--handbook", "nowhere")).toContain(
    "handbook nowhere: the handbook folder",
  );
  writeFileSync(join(folder, "tarn/sources.yaml"), "sources: 4\n");
  expect(await first("gone.jsonl", "--handbook", "tarn")).toContain("handbook tarn: sources.yaml:1:10");
});
