/** `witness-mark editions`: which editions of a handbook have served, and what changed between any two, in words. */
import {
  changeInWords,
  EditionRecord,
  editionKind,
  keptHandbook,
  nothingChanged,
  type Store,
} from "../../bot/index.ts";
import { changesBetween, type Handbook, shortEdition } from "../../knowledge/index.ts";
import { parseConfiguration } from "../configuration.ts";
import { OutsideError } from "../errors.ts";
import { openHandbook } from "../handbooks.ts";
import { readOptions, UsageError } from "./options.ts";

export async function run(written: readonly string[]): Promise<void> {
  const options = readOptions("editions", written, { store: "text", old: "text", new: "text" });
  const { store: file, old, new: newer } = options;
  if ((old === undefined) !== (newer === undefined)) {
    throw new UsageError("--old and --new belong together", "editions");
  }
  if (old === undefined || newer === undefined) return withStore(file, printHistory);
  // Two folders need no store at all.
  const folders = await Promise.all([old, newer].map(folderAt));
  const [one, other] = folders;
  if (one !== undefined && other !== undefined) return printChanges(one, other);
  await withStore(file, async (store) => {
    printChanges(one ?? (await servedAs(store, old)), other ?? (await servedAs(store, newer)));
  });
}

function printChanges(older: Handbook, newer: Handbook): void {
  const words = changesBetween(older, newer).map(changeInWords);
  print(words.length === 0 ? [nothingChanged] : words);
}

async function printHistory(store: Store): Promise<void> {
  const ids = await store.ids(editionKind);
  if (ids.length === 0) return print(["no handbook has served from this store yet"]);
  for (const id of ids) {
    for (const { at, why, state } of await store.history(editionKind, id)) {
      const { edition, name, changes, refused } = EditionRecord.parse(state);
      const when = new Date(at).toISOString().slice(0, 16).replace("T", " ");
      const lines = why === "refused" ? refused : changes;
      print([
        `${when}  ${name}, edition ${shortEdition(edition)} ${why}`,
        ...lines.map((line) => `  ${line}`),
      ]);
    }
  }
}

/** The handbook in a folder; undefined for what looks like an edition's beginning. */
async function folderAt(written: string): Promise<Handbook | undefined> {
  return /^[0-9a-f]{8,64}$/u.test(written) ? undefined : (await openHandbook(written)).handbook;
}

/** A kept edition by the beginning of its hash, as answers cite it. */
async function servedAs(store: Store, beginning: string): Promise<Handbook> {
  for (const id of await store.ids(editionKind)) {
    for (const { state } of await store.history(editionKind, id)) {
      const { edition } = EditionRecord.parse(state);
      const found = edition.startsWith(beginning) ? await keptHandbook(store, edition) : undefined;
      if (found !== undefined) return found;
    }
  }
  throw new OutsideError(
    `edition ${beginning}: has not served from this store; without --old and --new they are listed`,
  );
}

async function openStoreOf(file: string | undefined) {
  const { openLog } = await import("../log.ts");
  const { openStore, openStoreFile } = await import("../store/open-store.ts");
  const log = openLog({ level: "error" });
  if (file !== undefined) return openStoreFile(file, log);
  const { DATA_DIR, DATABASE_URL } = process.env;
  const parsed = parseConfiguration({ DATA_DIR, DATABASE_URL });
  if (!parsed.ok) throw new OutsideError(parsed.problems.join("; "));
  return openStore(parsed.configuration, log);
}

async function withStore(file: string | undefined, work: (store: Store) => Promise<void>): Promise<void> {
  const store = await openStoreOf(file);
  try {
    await work(store);
  } finally {
    await store.close();
  }
}

function print(lines: readonly string[]): void {
  process.stdout.write(`${lines.join("\n")}\n`);
}
