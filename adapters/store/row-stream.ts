/** All rows of a store or of a backup one after another, in pages, so that a store of any size can be read with little memory. */
import type { Kysely } from "kysely";
import type { Tables, VersionRow } from "./tables.ts";

/** A row without its era, which belongs to one database and not to what is kept. */
export type PortableRow = Omit<VersionRow, "era">;

const PAGE = 200;

/** Ordered by kind, id and version. */
export async function* rowsOf(db: Kysely<Tables>): AsyncGenerator<PortableRow> {
  let last: PortableRow | undefined;
  for (;;) {
    const page: readonly VersionRow[] = await pageAfter(db, last);
    for (const { era: _, ...row } of page) yield row;
    if (page.length < PAGE) return;
    last = page.at(-1);
  }
}

function pageAfter(db: Kysely<Tables>, last: PortableRow | undefined): Promise<readonly VersionRow[]> {
  const page = db
    .selectFrom("version")
    .selectAll()
    .orderBy("kind")
    .orderBy("id")
    .orderBy("version")
    .limit(PAGE);
  if (last === undefined) return page.execute();
  return page
    .where(({ eb, refTuple, tuple }) =>
      eb(refTuple("kind", "id", "version"), ">", tuple(last.kind, last.id, last.version)),
    )
    .execute();
}

/** `rows` in groups of at most a page. */
export async function* pagesOf<Row>(rows: AsyncIterable<Row>): AsyncGenerator<readonly Row[]> {
  let page: Row[] = [];
  for await (const row of rows) {
    page.push(row);
    if (page.length < PAGE) continue;
    yield page;
    page = [];
  }
  if (page.length > 0) yield page;
}
