/**
 * The newest state of every record whose id begins with a prefix, a page of records at a time. A page is chosen from the key alone;
 * of each of its records only the rows since the last whole state are read.
 */
import { setImmediate as nextTurn } from "node:timers/promises";
import type { Kysely } from "kysely";
import type { Current } from "../../bot/index.ts";
import { type Head, noHead, stateOf } from "./head.ts";
import { headColumns } from "./reads.ts";
import type { Tables } from "./tables.ts";
import { type HeadRow, headOrThrow } from "./versions-from.ts";

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
    const page = await idsAfter(db, kind, prefix, after);
    const ids = page.filter((id) => id.startsWith(prefix));
    const [first, last] = [ids[0], ids.at(-1)];
    if (first === undefined || last === undefined) return;
    for (const { id, head } of newestOf(await rowsBetween(db, kind, first, last), place)) {
      if (head.text !== undefined) yield { id, version: head.version, state: stateOf(head) };
    }
    if (ids.length < PAGE) return;
    after = last;
    // A synchronous engine would else keep everybody waiting until the last page.
    await nextTurn();
  }
}

async function idsAfter(
  db: Kysely<Tables>,
  kind: string,
  prefix: string,
  after: string | undefined,
): Promise<readonly string[]> {
  const rows = await db
    .selectFrom("version")
    .select("id")
    .distinct()
    .where("kind", "=", kind)
    .where("id", after === undefined ? ">=" : ">", after ?? prefix)
    .orderBy("id")
    .limit(PAGE)
    .execute();
  return rows.map(({ id }) => id);
}

/** Both ends are given to each table, so that Postgres knows how few rows it is about, and walks along the key. */
function rowsBetween(
  db: Kysely<Tables>,
  kind: string,
  first: string,
  last: string,
): Promise<readonly HeadRow[]> {
  return (
    db
      .with("chosen", (from) =>
        from
          .selectFrom("version")
          .select("id")
          .distinct()
          .where("kind", "=", kind)
          .where("id", ">=", first)
          .where("id", "<=", last),
      )
      .selectFrom("chosen")
      // SQLite keeps the order of a cross join; it would else walk through the whole kind and look each row up among the chosen.
      .crossJoin("version")
      .select(headColumns.map((column) => `version.${column}` as const))
      .where("version.kind", "=", kind)
      .where("version.id", ">=", first)
      .where("version.id", "<=", last)
      .whereRef("version.id", "=", "chosen.id")
      .where("version.version", ">=", (from) =>
        from
          .selectFrom("version as whole")
          .select((each) => each.fn.max("whole.version").as("version"))
          .where("whole.kind", "=", kind)
          .whereRef("whole.id", "=", "chosen.id")
          .where("whole.kept_start", "is", null),
      )
      .orderBy("chosen.id")
      .orderBy("version.version")
      .execute()
  );
}

function newestOf(
  rows: readonly HeadRow[],
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
