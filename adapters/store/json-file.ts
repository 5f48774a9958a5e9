/**
 * Conversations in one JSON-lines file: a line a conversation, the whole file written beside the old one, flushed
 * to the disk and renamed over it. A reader or a crash sees the old file or the new one, never half of one.
 * Rewriting everything is right for a club's few thousand conversations; beyond that a database is.
 */
import { mkdir, open, readFile, rename } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { z } from "zod";
import type { Store } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import { holdFile } from "./hold-file.ts";

const Line = z.strictObject({ conversation: z.string(), state: z.unknown() });

export interface FileStore extends Store {
  /** Waits for what is being written and lets the file go. */
  close(): Promise<void>;
}

/**
 * The store in `file`, which need not exist yet. Throws OutsideError when the file cannot be read, holds a line that is
 * not a conversation, or is held by another process.
 */
export async function openJsonFileStore(file: string): Promise<FileStore> {
  await mkdir(dirname(file), { recursive: true, mode: 0o700 }).catch((cause: unknown) => {
    throw new OutsideError(`store: the folder ${dirname(file)} cannot be made`, cause);
  });
  const release = await holdFile(`${file}.lock`);
  try {
    return storeOf(file, await readStates(file), release);
  } catch (problem) {
    await release();
    throw problem;
  }
}

function storeOf(file: string, states: Map<string, string>, release: () => Promise<void>): FileStore {
  let underWay: Promise<void> = Promise.resolve();
  let next: Promise<void> | undefined;

  /** Everything that arrives while one commit is under way shares the next: one flush for all of it. */
  function commit(): Promise<void> {
    if (next !== undefined) return next;
    const mine = underWay.then(() => {
      next = undefined;
      return replaceFile(file, states);
    });
    next = mine;
    underWay = mine.catch(() => undefined);
    return mine;
  }

  return {
    async read(conversation) {
      const text = states.get(conversation);
      return text === undefined ? undefined : JSON.parse(text);
    },
    async write(conversation, state) {
      const before = states.get(conversation);
      const text = JSON.stringify(state);
      states.set(conversation, text);
      try {
        await commit();
      } catch (cause) {
        if (states.get(conversation) === text) restore(states, conversation, before);
        throw new OutsideError(`store: ${file} cannot be written`, cause);
      }
    },
    async close() {
      await underWay;
      await release();
    },
  };
}

/** What was not acknowledged must not be read back either. */
function restore(states: Map<string, string>, conversation: string, before: string | undefined): void {
  if (before === undefined) states.delete(conversation);
  else states.set(conversation, before);
}

async function readStates(file: string): Promise<Map<string, string>> {
  const states = new Map<string, string>();
  const lines = (await readIfThere(file)).split("\n");
  for (const [index, line] of lines.entries()) {
    if (line === "") continue;
    const parsed = Line.safeParse(jsonOf(line));
    if (!parsed.success) {
      throw new OutsideError(`store: ${file}:${index + 1} is not a kept conversation`);
    }
    states.set(parsed.data.conversation, JSON.stringify(parsed.data.state));
  }
  return states;
}

async function readIfThere(file: string): Promise<string> {
  try {
    return await readFile(file, "utf8");
  } catch (cause) {
    if (cause instanceof Error && "code" in cause && cause.code === "ENOENT") return "";
    throw new OutsideError(`store: ${file} cannot be read`, cause);
  }
}

function jsonOf(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch (cause) {
    // A line that is no JSON is reported by the caller, with its place.
    return cause instanceof SyntaxError ? undefined : null;
  }
}

async function replaceFile(file: string, states: ReadonlyMap<string, string>): Promise<void> {
  const part = join(dirname(file), `.${basename(file)}.part`);
  const lines = [...states].map(
    ([conversation, state]) => `{"conversation":${JSON.stringify(conversation)},"state":${state}}\n`,
  );
  await writeFlushed(part, lines.join(""));
  await rename(part, file);
  await flushFolder(dirname(file));
}

async function writeFlushed(file: string, text: string): Promise<void> {
  const handle = await open(file, "w", 0o600);
  try {
    await handle.writeFile(text, "utf8");
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** The rename itself lives in the folder, and is only safe once the folder is flushed. Windows cannot open a folder. */
async function flushFolder(folder: string): Promise<void> {
  if (process.platform === "win32") return;
  const handle = await open(folder, "r");
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}
