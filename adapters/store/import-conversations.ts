/**
 * Conversations of the first days, which were kept in one file of JSON lines, are brought over once. The file is kept under another
 * name, so that nothing is lost whatever happens.
 */
import { readFile, rename } from "node:fs/promises";
import { z } from "zod";
import { conversationKind, type Log } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import type { Engine } from "./engine.ts";
import { noHead, rowAfter } from "./head.ts";
import type { VersionRow } from "./tables.ts";

const Line = z.strictObject({ conversation: z.string(), state: z.unknown() });
const PAGE = 200;

/** Does nothing when `file` is not there. Throws OutsideError when it cannot be read or holds a line that is not a conversation. */
export async function importConversations(engine: Engine, file: string, at: number, log: Log): Promise<void> {
  const text = await readIfThere(file);
  if (text === undefined) return;
  const { number: era } = await engine.db.selectFrom("era").select("number").executeTakeFirstOrThrow();
  const rows = rowsFrom(text, file, at, era);
  await engine.db.transaction().execute(async (one) => {
    for (let from = 0; from < rows.length; from += PAGE) {
      await one
        .insertInto("version")
        .values(rows.slice(from, from + PAGE))
        .onConflict((conflict) => conflict.doNothing())
        .execute();
    }
  });
  await rename(file, `${file}.imported`).catch((cause: unknown) => {
    // Gone: another process that started with us has brought it over too, and that counts once.
    if (!isMissing(cause)) throw new OutsideError(`store: ${file} cannot be renamed`, cause);
  });
  log.info(
    { file, conversations: rows.length, store: engine.place },
    "conversations brought over from a file",
  );
}

function rowsFrom(text: string, file: string, at: number, era: number): readonly VersionRow[] {
  const states = new Map<string, string>();
  for (const [index, line] of text.split("\n").entries()) {
    if (line === "") continue;
    const parsed = Line.safeParse(jsonOf(line));
    if (!parsed.success) throw new OutsideError(`store: ${file}:${index + 1} is not a kept conversation`);
    states.set(parsed.data.conversation, JSON.stringify(parsed.data.state) ?? "null");
  }
  return [...states].map(([id, state]) => {
    const change = { kind: conversationKind, id, by: "witness-mark", at, why: "brought over from a file" };
    return rowAfter(noHead, change, state, null, era);
  });
}

async function readIfThere(file: string): Promise<string | undefined> {
  try {
    return await readFile(file, "utf8");
  } catch (cause) {
    if (isMissing(cause)) return undefined;
    throw new OutsideError(`store: ${file} cannot be read`, cause);
  }
}

function isMissing(cause: unknown): boolean {
  return cause instanceof Error && "code" in cause && cause.code === "ENOENT";
}

function jsonOf(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch (failure) {
    if (failure instanceof SyntaxError) return undefined;
    throw failure;
  }
}
