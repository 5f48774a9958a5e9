/**
 * Postgres, for several processes that serve one community. Every write is one statement that commits by itself, so no lock outlives a
 * process that dies; how long anything may take is bounded here, so that a silent network is noticed.
 */
import { Kysely, PostgresDialect, sql } from "kysely";
import { Migrator } from "kysely/migration";
import pg from "pg";
import { OutsideError } from "../errors.ts";
import type { Engine, Trouble } from "./engine.ts";
import { migrated } from "./migrated.ts";
import { migrationsWith } from "./migrations.ts";
import type { Tables } from "./tables.ts";

export interface PostgresLimits {
  readonly connectMilliseconds: number;
  readonly queryMilliseconds: number;
}

const LIMITS: PostgresLimits = { connectMilliseconds: 5000, queryMilliseconds: 15_000 };
/** For commands that move the whole store. */
export const patientLimits: PostgresLimits = { connectMilliseconds: 10_000, queryMilliseconds: 3_600_000 };
const MOST_CONNECTIONS = 8;
/** Object identifier of bigint; pg gives it as text, and none of ours is beyond 2^53. */
const BIGINT = 20;

/** The store at a postgres:// address. Throws OutsideError when nobody answers there. */
export async function openPostgres(address: string, limits: PostgresLimits = LIMITS): Promise<Engine> {
  const place = placeOf(address);
  const pool = new pg.Pool({
    connectionString: address,
    max: MOST_CONNECTIONS,
    connectionTimeoutMillis: limits.connectMilliseconds,
    query_timeout: limits.queryMilliseconds,
    keepAlive: true,
    // With it a query that times out closes its connection; without it the next one would wait behind it.
    pipeline: true,
    application_name: "witness-mark",
    types: {
      getTypeParser: (type: number, format?: "text" | "binary") =>
        type === BIGINT ? Number : pg.types.getTypeParser(type, format),
    },
  });
  // A connection that breaks while nobody uses it is no failure: the next query opens another. One that breaks in use tells its query,
  // and then once more everybody, and without a listener that would end the process.
  pool.on("error", () => undefined);
  pool.on("connect", (client) => client.on("error", () => undefined));
  const troubleOf = (failure: unknown) => postgresTrouble(place, failure);
  try {
    await pool.query("select 1");
  } catch (failure) {
    await pool.end();
    throw new OutsideError(troubleOf(failure).message, failure);
  }
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  let isMarked = false;
  return {
    db,
    place,
    insert: insertingInto(pool),
    troubleOf,
    stillThere: () => undefined,
    // Nothing here stops the process.
    neverBlock: () => undefined,
    readMoment: (read) =>
      db.transaction().setIsolationLevel("repeatable read").setAccessMode("read only").execute(read),
    migrate: () =>
      migrated(
        new Migrator({ db, provider: { getMigrations: async () => migrationsWith('text collate "C"') } }),
        place,
      ),
    markErased: async () => {
      isMarked = true;
    },
    // The places of the rows as they were are given free; the server does so by itself too, later. Its log and its copies are its
    // administrator's.
    scrub: async () => {
      if (isMarked) await sql`vacuum version`.execute(db);
      isMarked = false;
      return true;
    },
    // Every page that is read has its checksum verified by the server; reading all rows is part of the check.
    ownCheck: async () => [],
    close: () => db.destroy(),
  };
}

/** More rows make long plans, which the server would keep for each connection. */
const MOST_NAMED_ROWS = 8;
/** SQLSTATE of a named statement that is not there, or there already: somebody between us and the server shares its connections out. */
const LOST_NAME = /^(?:26000|42P05)$/u;

/**
 * A statement with a name is parsed and planned once on each connection, which for one row took as long as inserting it. Where names
 * get lost (a pooler that gives every statement another connection) the same goes without: what has no name was not run.
 */
function insertingInto(pool: pg.Pool): Engine["insert"] {
  const names = new Map<string, string>();
  let isNaming = true;
  return async (insertion, rows) => {
    const { sql: text, parameters } = insertion;
    const values = [...parameters];
    if (isNaming && rows <= MOST_NAMED_ROWS) {
      const name = names.get(text) ?? `insertion ${names.size + 1}`;
      names.set(text, name);
      try {
        return (await pool.query({ name, text, values })).rows;
      } catch (failure) {
        if (!(failure instanceof pg.DatabaseError && LOST_NAME.test(failure.code ?? ""))) throw failure;
        isNaming = false;
      }
    }
    return (await pool.query({ text, values })).rows;
  };
}

/** The address without user and password. */
function placeOf(address: string): string {
  const { hostname, port, pathname } = new URL(address);
  return `postgres at ${hostname}${port === "" ? "" : `:${port}`}${pathname}`;
}

/** By SQLSTATE or class of it, https://www.postgresql.org/docs/18/errcodes-appendix.html */
const troubles: readonly (readonly [RegExp, Trouble["kind"], string])[] = [
  [/^23503$/u, "era", "was replaced by a backup meanwhile"],
  [/^23505$/u, "taken", "holds this version already"],
  [
    /^28|^3D000$/u,
    "storage",
    "lets nobody in under this name; look at user, password and database in DATABASE_URL",
  ],
  [/^42501$/u, "storage", "does not let this user write; grant it the rights on the database"],
  [
    /^25006$/u,
    "storage",
    "is read-only, perhaps a standby; set DATABASE_URL to the server that takes writes",
  ],
  [/^53100$|^53200$/u, "storage", "cannot grow: its disk or memory is full; make room there"],
  [
    /^XX00[12]$|^58/u,
    "storage",
    "reports damage or a failing disk; look at its log, and put a backup back if need be",
  ],
  [/^40|^53|^55P03$|^57|^08/u, "again", "is busy, starting or stopping; if this lasts, look at the server"],
];

function postgresTrouble(place: string, failure: unknown): Trouble {
  if (failure instanceof OutsideError) return { kind: "storage", message: failure.message };
  const code = codeOf(failure);
  if (failure instanceof TypeError) return { kind: "refused", message: `store: ${failure.message}` };
  if (!(failure instanceof pg.DatabaseError)) {
    const reason = code ?? (failure instanceof Error ? failure.message : String(failure));
    return {
      kind: "again",
      message: `store: ${place} does not answer (${reason}); start it, or look at DATABASE_URL and the network`,
    };
  }
  const known = troubles.find(([pattern]) => pattern.test(code ?? ""));
  if (known !== undefined) return { kind: known[1], message: `store: ${place} ${known[2]} (${code})` };
  return { kind: "refused", message: `store: ${place} refused this (${code}: ${failure.message})` };
}

function codeOf(failure: unknown): string | undefined {
  return failure instanceof Error && "code" in failure && typeof failure.code === "string"
    ? failure.code
    : undefined;
}
