/** Files that a reply brings, saved where the person finds them: never over another file, and for their eyes only. */
import { mkdir, writeFile } from "node:fs/promises";
import { extname, join } from "node:path";
import type { Block, Reply } from "../../bot/index.ts";
import * as phrases from "./phrases.ts";

type FileBlock = Extract<Block, { kind: "file" }>;

/** Where each file of the reply lies now, or why it could not be saved. */
export type SavedFiles = ReadonlyMap<Block, { readonly path: string } | { readonly problem: string }>;

export async function saveFiles({ blocks }: Reply, folder: string): Promise<SavedFiles> {
  const saved = new Map<Block, { path: string } | { problem: string }>();
  for (const block of blocks) if (block.kind === "file") saved.set(block, await save(block, folder));
  return saved;
}

async function save(block: FileBlock, folder: string) {
  const name = plainName(block.name);
  try {
    await mkdir(folder, { recursive: true, mode: 0o700 });
    return { path: await writeNew(folder, name, block.text) };
  } catch (failure) {
    if (!(failure instanceof Error && "code" in failure)) throw failure;
    return { problem: phrases.notSaved(name, String(failure.code)) };
  }
}

/** More files of one name than this are not looked through. */
const MOST_OF_A_NAME = 1000;

/** "mine.json", and "mine-2.json" beside it. */
async function writeNew(folder: string, name: string, text: string): Promise<string> {
  const ending = extname(name);
  const stem = name.slice(0, name.length - ending.length);
  for (let number = 1; ; number += 1) {
    const path = join(folder, number === 1 ? name : `${stem}-${number}${ending}`);
    try {
      await writeFile(path, text, { flag: "wx", mode: 0o600 });
      return path;
    } catch (failure) {
      const isTaken = failure instanceof Error && "code" in failure && failure.code === "EEXIST";
      if (!isTaken || number === MOST_OF_A_NAME) throw failure;
    }
  }
}

/** A name that stays in its folder and hides nowhere. */
function plainName(name: string): string {
  const plain = name.replace(/[^\p{L}\p{N}._ -]+/gu, "-").replace(/^[.\s-]+/u, "");
  return plain === "" ? "file.txt" : plain;
}
