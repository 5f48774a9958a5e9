/**
 * The newest state of every record whose id begins with a prefix, a page of records at a time. A page is chosen from the key alone;
 * of each of its records only the rows since the last whole state are read.
 */
import { setImmediate as nextTurn } from "node:timers/promises";
import type { Kysely } from "kysely";
import type { Current } from "../../bot/index.ts";
import { type Head, noHead, stateOf } from "./head.ts";
import { stateColumns } from "./reads.ts";
import type { Tables } from "./tables.ts";
import { headOrThrow, type StateRow } from "./versions-from.ts";

const PAGE = 500;

/** In the order of code points, which is that of bytes in UTF-8, and so that ids with one prefix stand together. */
export async function* readCurrents(
  db: Kysely<Tables>,
  place: string,
  kind: string,
  prefix: string,
): AsyncGenerator<Current> {
  let after: string | undefined;
  for (;;) {
    const rows = await pageOf(db, kind, prefix, after);
    const page = newestOf(rows, place);
    for (const { id, head } of page) {
      if (!id.startsWith(prefix)) return;
      yield { id, version: head.version, state: stateOf(head) };
    }
    if (page.length < PAGE) return;
    after = page.at(-1)?.id;
    // A synchronous engine would else keep everybody waiting until the last page.
    await nextTurn();
  }
}

function pageOf(
  db: Kysely<Tables>,
  kind: string,
  prefix: string,
  after: string | undefined,
): Promise<readonly StateRow[]> {
  const ids = db
    .selectFrom("version")
    .select("id")
    .distinct()
    .where("kind", "=", kind)
    .where("id", after === undefined ? ">=" : ">", after ?? prefix)
    .orderBy("id")
    .limit(PAGE);
  return db
    .with("chosen", () => ids)
    .selectFrom("chosen")
    .innerJoin("version", "version.id", "chosen.id")
    .select(stateColumns.map((column) => `version.${column}` as const))
    .where("version.kind", "=", kind)
    .where("version.version", ">=", (from) =>
      from
        .selectFrom("version as whole")
        .select((each) => each.fn.max("whole.version").as("version"))
        .where("whole.kind", "=", kind)
        .whereRef("whole.id", "=", "chosen.id")
        .where("whole.kept_start", "is", null),
    )
    .orderBy("version.id")
    .orderBy("version.version")
    .execute();
}

function newestOf(
  rows: readonly StateRow[],
  place: string,
): readonly { readonly id: string; readonly head: Head }[] {
  const newest: { readonly id: string; head: Head }[] = [];
  for (const row of rows) {
    let last = newest.at(-1);
    if (last?.id !== row.id) {
      last = { id: row.id, head: noHead };
      newest.push(last);
    }
    last.head = headOrThrow(last.head, row, place);
  }
  return newest;
}
