/**
 * Putting a backup back, all of it or nothing. The row of the era goes first and takes every version with it; programs that still serve
 * find their era gone at their next write, forget what they knew, and go on from what was put back.
 */
import type { Kysely } from "kysely";
import { sql } from "kysely";
import { OutsideError } from "../errors.ts";
import { readBackup } from "./backup-file.ts";
import type { Engine } from "./engine.ts";
import { type PortableRow, pagesOf } from "./row-stream.ts";
import { historyCheck } from "./sound-history.ts";
import type { Tables } from "./tables.ts";

export interface Restored {
  readonly records: number;
  readonly versions: number;
}

/** Throws OutsideError, and changes nothing, when the file is not sound or the store holds something and is not to be replaced. */
export async function restore(
  engine: Engine,
  file: string,
  options: { readonly replace: boolean; readonly at: number },
): Promise<Restored> {
  const sound = await soundBackup(file);
  await engine.db.transaction().execute(async (one) => {
    const next = await newEra(one, engine.place, options);
    for await (const page of pagesOf(readBackup(file))) await insert(one, page, next);
  });
  return sound;
}

async function soundBackup(file: string): Promise<Restored> {
  const check = historyCheck();
  for await (const row of readBackup(file)) {
    const problem = check.take(row);
    if (problem !== undefined) throw new OutsideError(`backup: ${file}: ${problem}`);
  }
  return { records: check.records, versions: check.versions };
}

async function newEra(
  one: Kysely<Tables>,
  place: string,
  { replace, at }: { readonly replace: boolean; readonly at: number },
): Promise<number> {
  // Writing first takes the lock; a transaction that begins by reading may find that it can no longer write.
  await one.updateTable("era").set({ begun: sql`begun` }).execute();
  const { number } = await one.selectFrom("era").select("number").executeTakeFirstOrThrow();
  const held = await one.selectFrom("version").select("kind").limit(1).execute();
  if (held.length > 0 && !replace) {
    throw new OutsideError(
      `store: ${place} holds something already; back it up, then use --replace to put the backup in its place`,
    );
  }
  await one.deleteFrom("era").execute();
  await one
    .insertInto("era")
    .values({ number: number + 1, begun: at })
    .execute();
  return number + 1;
}

async function insert(one: Kysely<Tables>, page: readonly PortableRow[], era: number): Promise<void> {
  await one
    .insertInto("version")
    .values(page.map((row) => ({ ...row, era })))
    .execute();
}
