// The guide for historians is followed to the letter: its files are written into an empty folder, and its commands are run.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { smallestHandbook } from "../../adapters/configuration.ts";
import { frequencyWords } from "../../knowledge/handbook/frequency.ts";
import { commandLine, newFolder, root, run } from "./program.ts";

const guide = readFileSync(join(root, "knowledge/handbooks/guide.md"), "utf8");
const blocks = [...guide.matchAll(/^```(\S+)(?: (\S+))?\n([\s\S]*?)^```$/gmu)].map(
  ([, language = "", path = "", text = ""]) => ({ language, path, text }),
);
const files = blocks.filter(({ language }) => language === "yaml");
const messages = blocks.filter(({ language }) => language === "jsonl");

function followed(): string {
  const folder = newFolder();
  for (const { path, text } of files) {
    mkdirSync(dirname(join(folder, "marlpit-wren", path)), { recursive: true });
    writeFileSync(join(folder, "marlpit-wren", path), text);
  }
  for (const { path, text } of messages) writeFileSync(join(folder, path), text);
  return folder;
}

const shell = (folder: string, words: string, input = "") =>
  run(
    commandLine,
    words
      .replace(/^witness-mark /u, "")
      .trim()
      .split(/\s+/u),
    input,
    { folder },
  );

test("the files of the guide are the smallest shipped handbook, byte for byte", () => {
  expect(files.map(({ path }) => path)).toEqual([
    "handbook.yaml",
    "cars.yaml",
    "sources.yaml",
    "parts/window-catch.yaml",
  ]);
  for (const { path, text } of files) expect(text).toBe(readFileSync(join(smallestHandbook, path), "utf8"));
});

test("each command of the guide does what stands under it", async () => {
  const folder = followed();
  const commands = blocks.flatMap(({ language, text }, index) =>
    language === "sh" ? [{ words: text, shown: blocks[index + 1] }] : [],
  );
  expect(commands).toHaveLength(5);
  for (const { words, shown } of commands) {
    const said = shown?.language === "text" ? shown.text : "";
    const typed = [...said.matchAll(/^> (.*)$/gmu)].map(([, line = ""]) => `${line}\n`).join("");
    const { status, out, err } = await shell(folder, words, typed);
    expect({ words, status, err }).toEqual({ words, status: 0, err: "" });
    const file = /to (\S+\.csv)/u.exec(words)?.[1];
    const made = file === undefined ? out : readFileSync(join(folder, file), "utf8").replaceAll("\r\n", "\n");
    const plain = made.replace(/edition [0-9a-f]{64}/u, "edition …");
    expect(plain).toContain(said.replaceAll(/^> .*\n\n/gmu, "").trim());
  }
});

test("the slip that the guide makes is told as the guide says", async () => {
  const folder = followed();
  const path = join(folder, "marlpit-wren/parts/window-catch.yaml");
  writeFileSync(path, readFileSync(path, "utf8").replace('nylon: "always, 12 of 12"', "nylon: alway"));
  const { out } = await shell(folder, "witness-mark check --handbook marlpit-wren");
  const shown = blocks.find(({ text }) => text.includes('"alway" is no frequency'));
  expect(out).toContain(shown?.text ?? "?");
});

test("the guide's table of frequency words is the program's", () => {
  for (const [word, { mean }] of Object.entries(frequencyWords)) {
    expect(guide).toMatch(new RegExp(`^\\| ${word} +\\| ${Math.round(mean * 100)} % `, "mu"));
  }
});
