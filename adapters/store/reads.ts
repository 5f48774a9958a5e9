/** Records as they are read: the newest version, a history, the answer to a message. */
import type { ExpressionBuilder, Kysely } from "kysely";
import type { Change, Version } from "../../bot/index.ts";
import { ERASED, type Head, noHead } from "./head.ts";
import type { Tables, VersionRow } from "./tables.ts";
import { headOrThrow, versionsFrom } from "./versions-from.ts";

/** What a head is put together from. */
export const headColumns = ["kind", "id", "version", "kept_start", "kept_end", "state", "digest"] as const;

/** What a version is put together from; the outcomes stay where they are. */
const stateColumns = [...headColumns, "at", "by", "why", "message"] as const;

export async function readHead(db: Kysely<Tables>, place: string, kind: string, id: string): Promise<Head> {
  const rows = await db
    .selectFrom("version")
    .select(headColumns)
    .where("kind", "=", kind)
    .where("id", "=", id)
    .where("version", ">=", (from) => lastWhole(from, kind, id))
    .orderBy("version")
    .execute();
  return rows.reduce((head: Head, row) => headOrThrow(head, row, place), noHead);
}

/** The versions that came after `after`. */
export async function readHistory(
  db: Kysely<Tables>,
  place: string,
  kind: string,
  id: string,
  after: number,
): Promise<readonly Version[]> {
  const all = db.selectFrom("version").select(stateColumns).where("kind", "=", kind).where("id", "=", id);
  const needed =
    after <= 0
      ? all
      : all.where("version", ">=", (from) => lastWhole(from, kind, id).where("whole.version", "<=", after));
  const rows = await needed.orderBy("version").execute();
  return versionsFrom(rows, place).filter(({ version }) => version > after);
}

/** What everything after it is put together on. */
function lastWhole(from: ExpressionBuilder<Tables, "version">, kind: string, id: string) {
  return from
    .selectFrom("version as whole")
    .select((each) => each.fn.max("whole.version").as("version"))
    .where("whole.kind", "=", kind)
    .where("whole.id", "=", id)
    .where("whole.kept_start", "is", null);
}

/** 0: the record does not exist. The key holds the answer; no row is read. */
export async function readVersion(db: Kysely<Tables>, kind: string, id: string): Promise<number> {
  const newest = await db
    .selectFrom("version")
    .select("version")
    .where("kind", "=", kind)
    .where("id", "=", id)
    .orderBy("version", "desc")
    .limit(1)
    .executeTakeFirst();
  return newest?.version ?? 0;
}

/** Of the records that are not erased. */
export async function readIds(db: Kysely<Tables>, kind: string): Promise<readonly string[]> {
  const rows = await db
    .selectFrom("version")
    .select("id")
    .where("kind", "=", kind)
    .where("version", "=", 1)
    .where(
      (from) =>
        from
          .selectFrom("version as newest")
          .select((row) =>
            row
              .case()
              .when(row.and([row("newest.kept_start", "is", null), row("newest.state", "=", ERASED)]))
              .then(1)
              .else(0)
              .end()
              .as("is_erased"),
          )
          .where("newest.kind", "=", kind)
          .whereRef("newest.id", "=", "version.id")
          .orderBy("newest.version", "desc")
          .limit(1),
      "=",
      0,
    )
    .orderBy("id")
    .execute();
  return rows.map(({ id }) => id);
}

/**
 * The outcome of a change that is already there: by its message, or because it is one of `sent`, the digests of rows that were on their
 * way when the connection broke. undefined: it is not there.
 */
export async function readOutcome(
  db: Kysely<Tables>,
  change: Change,
  sent: readonly string[],
): Promise<Pick<VersionRow, "outcome" | "digest"> | undefined> {
  const { kind, id, message } = change;
  if (message === undefined && sent.length === 0) return undefined;
  return db
    .selectFrom("version")
    .select(["outcome", "digest"])
    .where("kind", "=", kind)
    .where("id", "=", id)
    .where((each) =>
      each.or([
        ...(message === undefined ? [] : [each("message", "=", message)]),
        ...(sent.length === 0 ? [] : [each("digest", "in", sent)]),
      ]),
    )
    .executeTakeFirst();
}
