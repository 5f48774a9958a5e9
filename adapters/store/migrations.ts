/** How the tables came to be, step by step; a step that was released is never changed, only followed by another. */
import { type Kysely, sql } from "kysely";
import type { Migration } from "kysely/migration";

/** `text`: the column type whose order is that of code units in UTF-8, on any host. */
export function migrationsWith(text: "text" | 'text collate "C"'): Readonly<Record<string, Migration>> {
  const words = sql.raw(text);
  return {
    "0001-versions": {
      async up(db: Kysely<never>) {
        await db.schema
          .createTable("era")
          .addColumn("number", "integer", (column) => column.primaryKey())
          .addColumn("begun", "bigint", (column) => column.notNull())
          .execute();
        await sql`insert into era (number, begun) values (1, 0)`.execute(db);
        await db.schema
          .createTable("version")
          .addColumn("kind", sql`${words}`, (column) => column.notNull())
          .addColumn("id", sql`${words}`, (column) => column.notNull())
          .addColumn("version", "integer", (column) => column.notNull())
          .addColumn("era", "integer", (column) =>
            column.notNull().references("era.number").onDelete("cascade"),
          )
          .addColumn("at", "bigint", (column) => column.notNull())
          .addColumn("by", sql`${words}`, (column) => column.notNull())
          .addColumn("why", sql`${words}`, (column) => column.notNull())
          .addColumn("message", sql`${words}`)
          .addColumn("kept_start", "integer")
          .addColumn("kept_end", "integer")
          .addColumn("state", sql`${words}`, (column) => column.notNull())
          .addColumn("outcome", sql`${words}`)
          .addColumn("digest", sql`${words}`, (column) => column.notNull())
          .addPrimaryKeyConstraint("version_key", ["kind", "id", "version"])
          .addUniqueConstraint("version_message", ["kind", "id", "message"])
          .execute();
      },
    },
  };
}
