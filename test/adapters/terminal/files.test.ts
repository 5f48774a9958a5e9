import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { renderReply } from "../../../adapters/terminal/render.ts";
import { saveFiles } from "../../../adapters/terminal/save-files.ts";
import { takePhotographs } from "../../../adapters/terminal/take-photographs.ts";
import type { Reply } from "../../../bot/index.ts";
import { commandLine, newFolder, run } from "../program.ts";
import { reply } from "./replies.ts";

function fileReply(name: string, text: string): Reply {
  return reply({
    kind: "file",
    name,
    mediaType: "application/json",
    text,
    alternative: "What is kept about you",
  });
}

test("a file is saved for its owner's eyes, and never over another", async () => {
  const folder = join(newFolder(), "exports");
  const paths: string[] = [];
  for (const text of ["one", "two"]) {
    const brought = fileReply("../mine.json", text);
    const files = await saveFiles(brought, folder);
    const saved = brought.blocks[0] && files.get(brought.blocks[0]);
    const lines = renderReply(brought, { width: 40, colour: false, saved: files });
    expect(lines).toEqual([
      "[file] What is kept about you",
      `  ${saved !== undefined && "path" in saved ? saved.path : ""}`,
    ]);
    paths.push(saved !== undefined && "path" in saved ? saved.path : "");
  }
  expect(paths).toEqual([join(folder, "mine.json"), join(folder, "mine-2.json")]);
  expect(paths.map((path) => readFileSync(path, "utf8"))).toEqual(["one", "two"]);
  expect(statSync(paths[0] ?? "").mode & 0o777).toBe(0o600);
});

test("where nothing can be saved, that is said and the text is still there to print", async () => {
  const blocked = join(newFolder(), "file");
  writeFileSync(blocked, "");
  const [saved] = (await saveFiles(fileReply("mine.json", "one"), blocked)).values();
  expect(renderReply(fileReply("mine.json", "one"), { width: 80, colour: false }).at(-1)).toBe("one");
  expect(saved).toEqual({ problem: "mine.json could not be saved (EEXIST); here it is:" });
});

test("a photograph that is not there, or is no file, or is refused, is said with its path", async () => {
  const folder = newFolder();
  mkdirSync(join(folder, "album"));
  writeFileSync(join(folder, "words.jpg"), "words");
  writeFileSync(join(folder, "good.jpg"), "good");
  const take = async (bytes: Uint8Array, by: string) =>
    bytes.length === 4
      ? ({ ok: true, id: `${by}-1` } as const)
      : ({ ok: false, problem: { code: "no-photograph", message: "No photograph." } } as const);
  const taken = await takePhotographs(
    ["none.jpg", "album/", "words.jpg", "good.jpg", "good.jpg"],
    folder,
    take,
    "you",
  );
  expect(taken).toEqual({
    ids: ["you-1"],
    refusals: ["There is no file none.jpg.", "album/ is not a file.", "words.jpg: No photograph."],
  });
});

test("a photograph typed in the chat goes into the observation that asks for it", async () => {
  const folder = newFolder();
  const png =
    "iVBORw0KGgoAAAANSUhEUgAAACAAAAAgCAIAAAD8GO2jAAAAKklEQVR4nGOoiLKhKWIYtWDUglELRi0YtWDUglELRi0YtWDUglELhooFAPvbOD2/VkWIAAAAAElFTkSuQmCC";
  writeFileSync(join(folder, "seen.png"), Buffer.from(png, "base64"));
  const lines = [
    "record an observation",
    "rear spoiler",
    "1",
    "built May 1980",
    "documented from new",
    "today",
    "photograph seen.png",
    "no",
  ];
  const { status, out } = await run(commandLine, ["chat"], `${lines.join("\n")}\n`, { folder });
  expect(status).toBe(0);
  expect(out).toMatch(/photographs and links +photograph 1/u);
  expect(readdirSync(folder)).toEqual(["seen.png"]);
});
