/** `witness-mark new`: a handbook begun from a few questions, or a copy of the smallest one; with the schemas for editors. */
import { readdir } from "node:fs/promises";
import { reviewHandbook } from "../../knowledge/index.ts";
import { smallestHandbook } from "../configuration.ts";
import { OutsideError } from "../errors.ts";
import {
  readHandbookFolder,
  schemaLine,
  writeEditorFiles,
  writeHandbookFiles,
} from "../handbook-folder/index.ts";
import { askerOver } from "./asker.ts";
import { remarksAsText } from "./check/remarks-as-text.ts";
import { firstFiles } from "./new/first-files.ts";
import { interview } from "./new/interview.ts";
import { readOptions, UsageError } from "./options.ts";

export async function run(written: readonly string[]): Promise<void> {
  const { folder, example } = readOptions("new", written, { folder: "text", example: "flag" });
  if (folder === undefined) throw new UsageError("--folder is needed: where the handbook shall stand", "new");
  if (!(await isEmpty(folder))) throw new OutsideError(`${folder}: is not empty; name a new folder`);
  const files = example ? await exampleFiles() : await askedFiles();
  await writeHandbookFiles(folder, files);
  await writeEditorFiles(folder);
  const lines = [
    ...files.map(({ path }) => `written: ${folder}/${path}`),
    ...remarksAsText(folder, reviewHandbook(files)),
    "",
    `Talk to it:    witness-mark chat --handbook ${folder}`,
    `Check it:      witness-mark check --handbook ${folder}`,
    `As a table:    witness-mark table to ${folder}.xlsx --handbook ${folder}`,
  ];
  process.stdout.write(`${lines.join("\n")}\n`);
}

async function askedFiles() {
  const asker = askerOver(process.stdin, process.stdout);
  try {
    const beginning = await interview(asker);
    process.stdout.write("\n");
    return firstFiles(beginning, new Date().toISOString().slice(0, 7));
  } finally {
    asker.close();
  }
}

async function exampleFiles() {
  const reading = await readHandbookFolder(smallestHandbook);
  if (!reading.ok) throw new OutsideError(`${smallestHandbook}: cannot be read`);
  return reading.files.map(({ path, text }) => ({
    path,
    text: path.endsWith(".yaml") ? `${schemaLine(path)}\n${text}` : text,
  }));
}

async function isEmpty(folder: string): Promise<boolean> {
  try {
    return (await readdir(folder)).length === 0;
  } catch (failure) {
    if (failure instanceof Error && "code" in failure && failure.code === "ENOENT") return true;
    throw new OutsideError(`${folder}: is no folder that can be written into`, failure);
  }
}
