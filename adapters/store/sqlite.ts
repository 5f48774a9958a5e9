/**
 * SQLite in one file, through the driver that Node brings. Write-ahead log and synchronous=FULL: a commit that returned is on the
 * disk, and readers (a backup) stop no writer. Several processes may share the file; who finds it locked asks again later.
 */
import { closeSync, fsyncSync, mkdirSync, openSync, statSync } from "node:fs";
import { dirname } from "node:path";
import { DatabaseSync, type StatementSync } from "node:sqlite";
import { setTimeout as pause } from "node:timers/promises";
import { Kysely, type SqliteDatabase, SqliteDialect, type SqliteStatement, sql } from "kysely";
import { Migrator } from "kysely/migration";
import { OutsideError } from "../errors.ts";
import type { Engine, Trouble } from "./engine.ts";
import { migrated } from "./migrated.ts";
import { migrationsWith } from "./migrations.ts";
import { markErased, scrubbed } from "./sqlite-scrub.ts";
import type { Tables } from "./tables.ts";

/** For opening and for commands, which have nothing else to do. */
const PATIENCE_MILLISECONDS = 10_000;
/** While serving, the queue waits instead. */
const SERVING_PATIENCE_MILLISECONDS = 10;
/** Batches of each size have their own statement. */
const MOST_PREPARED = 300;

/** The store in `file`, which need not exist yet. Throws OutsideError when it cannot be opened or is no such file. */
export async function openSqlite(file: string): Promise<Engine> {
  const troubleOf = (failure: unknown) => sqliteTrouble(file, failure);
  try {
    make(file);
    const connection = new DatabaseSync(file, { timeout: PATIENCE_MILLISECONDS });
    return await engineOn(connection, file, troubleOf);
  } catch (failure) {
    if (failure instanceof OutsideError) throw failure;
    throw new OutsideError(troubleOf(failure).message, failure);
  }
}

/** SQLite would make the file readable to everybody. */
function make(file: string): void {
  const folder = dirname(file);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  if (statSync(file, { throwIfNoEntry: false }) !== undefined) return;
  closeSync(openSync(file, "a", 0o600));
  if (process.platform === "win32") return;
  const handle = openSync(folder, "r");
  fsyncSync(handle);
  closeSync(handle);
}

async function engineOn(
  connection: DatabaseSync,
  file: string,
  troubleOf: (failure: unknown) => Trouble,
): Promise<Engine> {
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: preparing(connection) }) });
  try {
    connection.exec("pragma journal_mode = wal; pragma synchronous = full; pragma fullfsync = on");
    connection.prepare("select count(*) from sqlite_schema").get();
  } catch (failure) {
    await db.destroy();
    connection.close();
    throw failure;
  }
  const opened = identityOf(file);
  return {
    db,
    place: file,
    // Statements are kept by their text, and kysely lets nobody into a transaction of somebody else's.
    insert: async (insertion) => (await db.executeQuery(insertion)).rows,
    troubleOf,
    stillThere() {
      if (identityOf(file) === opened) return;
      throw new OutsideError(
        `store: ${file} was removed or replaced while it was in use; put it back, or start the program again`,
      );
    },
    // A transaction here begins with its first read and sees that moment to its end.
    readMoment: (read) => db.transaction().execute(read),
    neverBlock: () => connection.exec(`pragma busy_timeout = ${SERVING_PATIENCE_MILLISECONDS}`),
    migrate: () =>
      exclusively(db, (alone) =>
        migrated(
          new Migrator({ db: alone, provider: { getMigrations: async () => migrationsWith("text") } }),
          file,
        ),
      ),
    markErased,
    scrub: () => scrubbed(db, file),
    ownCheck: () => checkOf(db),
    async close() {
      await db.destroy();
      if (connection.isOpen) connection.close();
    },
  };
}

/** kysely holds no lock over SQLite's migrations, and two processes may start at once. */
async function exclusively(
  db: Kysely<Tables>,
  work: (alone: Kysely<Tables>) => Promise<void>,
): Promise<void> {
  await db.connection().execute(async (alone) => {
    await begun(alone);
    try {
      await work(alone);
      await sql`commit`.execute(alone);
    } catch (failure) {
      await sql`rollback`.execute(alone);
      throw failure;
    }
  });
}

/** SQLite's own waiting would stop the process, and with it a holder of the lock that is in the same one. */
async function begun(alone: Kysely<Tables>): Promise<void> {
  const deadline = performance.now() + PATIENCE_MILLISECONDS;
  await sql.raw(`pragma busy_timeout = ${SERVING_PATIENCE_MILLISECONDS}`).execute(alone);
  for (;;) {
    try {
      await sql`begin immediate`.execute(alone);
      break;
    } catch (failure) {
      if (sqliteTrouble("", failure).kind !== "again" || performance.now() > deadline) throw failure;
      await pause(SERVING_PATIENCE_MILLISECONDS);
    }
  }
  await sql.raw(`pragma busy_timeout = ${PATIENCE_MILLISECONDS}`).execute(alone);
}

async function checkOf(db: Kysely<Tables>): Promise<readonly string[]> {
  const { rows } = await sql<{ integrity_check: string }>`pragma integrity_check(20)`.execute(db);
  return rows.map((row) => row.integrity_check).filter((line) => line !== "ok");
}

/** Which file stands under a name now; undefined: none. */
function identityOf(file: string): string | undefined {
  const found = statSync(file, { throwIfNoEntry: false, bigint: true });
  return found === undefined ? undefined : `${found.dev}:${found.ino}`;
}

/** node:sqlite in the shape kysely asks for, with statements kept: preparing one costs more than running it. */
function preparing(connection: DatabaseSync): SqliteDatabase {
  const kept = new Map<string, SqliteStatement>();
  return {
    close: () => connection.close(),
    prepare(text) {
      const known = kept.get(text);
      if (known !== undefined) return known;
      const statement = shaped(connection.prepare(text));
      if (kept.size >= MOST_PREPARED) kept.clear();
      kept.set(text, statement);
      return statement;
    },
  };
}

type Values = Parameters<StatementSync["all"]>;

function shaped(statement: StatementSync): SqliteStatement {
  return {
    reader: statement.columns().length > 0,
    all: (values) => statement.all(...(values as Values)),
    run: (values) => statement.run(...(values as Values)),
    iterate: (values) => statement.iterate(...(values as Values)),
  };
}

/** By extended result code, else by primary one, https://www.sqlite.org/rescode.html */
const troubles: Readonly<Record<number, readonly [Trouble["kind"], string]>> = {
  5: ["again", "is locked by another process; if this lasts, find and end it"],
  6: ["again", "is locked; if this lasts, start the program again"],
  8: ["storage", "may not be written; give this user the right to write the file and its folder"],
  10: [
    "storage",
    "cannot be read or written: the disk fails or is full; look at the disk and the system's log",
  ],
  11: ["storage", "is damaged; put a backup back with: witness-mark store restore"],
  13: ["storage", "cannot grow: the disk is full; make room on it"],
  14: ["storage", "cannot be opened; this user must be able to read and write the file and its folder"],
  19: ["era", "was replaced by a backup meanwhile"],
  1555: ["taken", "holds this version already"],
  2067: ["taken", "holds this message already"],
  26: ["storage", "is no store of this program, or is damaged; name another file, or put a backup back"],
};

function sqliteTrouble(file: string, failure: unknown): Trouble {
  if (failure instanceof OutsideError) return { kind: "storage", message: failure.message };
  const code =
    failure instanceof Error && "errcode" in failure && typeof failure.errcode === "number"
      ? failure.errcode
      : 0;
  const [kind, words] = troubles[code] ??
    troubles[code & 0xff] ?? ["refused", `refused this (${reasonOf(failure)})`];
  if (code === 0 && isOfTheSystem(failure)) {
    return {
      kind: "storage",
      message: `store: ${file} cannot be opened (${failure.code}); name a folder that can be written`,
    };
  }
  return { kind, message: `store: ${file} ${words}` };
}

function isOfTheSystem(failure: unknown): failure is Error & { code: string } {
  return (
    failure instanceof Error && "syscall" in failure && "code" in failure && typeof failure.code === "string"
  );
}

function reasonOf(failure: unknown): string {
  return failure instanceof Error ? failure.message : String(failure);
}
