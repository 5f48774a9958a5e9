/**
 * `witness-mark learn`: from messages that somebody annotated, how owners speak of each state of a handbook, written beside it. A
 * line that cannot be read stops it, because a misspelt state would be missing without a word.
 */
import { readFile } from "node:fs/promises";
import {
  compileLexicon,
  type Handbook,
  type HandbookFile,
  type Interval,
  learntWordsPath,
  learnWords,
  loadHandbook,
  monthInterval,
  ofOftenTold,
  parseDateText,
  readAnnotatedMessages,
  type TaughtMessage,
} from "../../knowledge/index.ts";
import { OutsideError } from "../errors.ts";
import { readHandbookFolder, writeHandbookFiles } from "../handbook-folder/index.ts";
import { BrokenHandbookError } from "../handbooks.ts";
import { learntAsText, messagesAsText } from "./learn/as-text.ts";
import { readOptions, UsageError } from "./options.ts";

/** Of more lines that cannot be read only the number is told. */
const mostListed = 50;

export async function run(written: readonly string[]): Promise<void> {
  const { files: names, rest } = filesOf(written);
  const { handbook: folder } = readOptions("learn", rest, { handbook: "text" });
  if (folder === undefined) throw new UsageError("--handbook is needed: the folder to write into", "learn");
  const { files, handbook } = await openWithoutWords(folder);
  const messages = await readMessages(names, handbook);
  if (!messages.some(({ told }) => told.length > 0)) {
    throw new OutsideError(`${names.join(", ")}: no message tells a state, so nothing is learnt`);
  }
  print(messagesAsText(messages));
  const learnt = ofOftenTold(learnWords(compileLexicon(handbook), messages, todayOf(handbook)), messages);
  print(learntAsText(handbook, messages));
  if (Object.keys(learnt.parts).length === 0) {
    throw new OutsideError("too few messages to learn from, so nothing is written");
  }
  const file = { path: learntWordsPath, text: `${JSON.stringify(learnt)}\n` };
  const loaded = loadHandbook([...files, file]);
  if (!loaded.ok) throw new BrokenHandbookError(folder, loaded.problems);
  await writeHandbookFiles(folder, [file]);
  print([`written: ${folder}/${learntWordsPath}`]);
}

/** The names before the options. */
function filesOf(written: readonly string[]): {
  readonly files: readonly string[];
  readonly rest: readonly string[];
} {
  const end = written.findIndex((word) => word.startsWith("-"));
  const files = end < 0 ? written : written.slice(0, end);
  if (files.length === 0) throw new UsageError("a file of annotated messages is needed", "learn");
  return { files, rest: end < 0 ? [] : written.slice(end) };
}

/** The handbook as if nothing had been learnt before: the same messages then teach the same words, and broken ones stop nobody. */
async function openWithoutWords(
  folder: string,
): Promise<{ readonly files: readonly HandbookFile[]; readonly handbook: Handbook }> {
  const reading = await readHandbookFolder(folder);
  if (!reading.ok) throw new BrokenHandbookError(folder, reading.problems);
  const files = reading.files.filter(({ path }) => path !== learntWordsPath);
  const loaded = loadHandbook(files);
  if (!loaded.ok) throw new BrokenHandbookError(folder, loaded.problems);
  return { files, handbook: loaded.handbook };
}

async function readMessages(names: readonly string[], handbook: Handbook): Promise<readonly TaughtMessage[]> {
  const messages: TaughtMessage[] = [];
  const unread: string[] = [];
  for (const name of names) {
    const read = readAnnotatedMessages(await textOf(name), handbook);
    messages.push(...read.messages);
    unread.push(...read.problems.map(({ line, message }) => `${name}:${line}  ${message}`));
  }
  if (unread.length === 0) return messages;
  print(unread.slice(0, mostListed));
  if (unread.length > mostListed) print([`and ${unread.length - mostListed} more`]);
  const lines = unread.length === 1 ? "1 line was" : `${unread.length} lines were`;
  throw new OutsideError(`${lines} not read, so nothing was learnt or written; mend or delete what is named`);
}

async function textOf(name: string): Promise<string> {
  try {
    return await readFile(name, "utf8");
  } catch (failure) {
    throw new OutsideError(`${name}: cannot be read`, failure);
  }
}

/** Dates in messages are read as in the month of the edition; by the clock, the same messages would not always teach the same words. */
function todayOf({ cover }: Handbook): Interval {
  return parseDateText(cover.edited) ?? monthInterval(2000, 1);
}

function print(lines: readonly string[]): void {
  process.stdout.write(`${lines.join("\n")}\n`);
}
