// Disks that are full, files that are gone, databases that do not answer: what is said, and that nothing acknowledged is lost.
// A full disk and a read-only file are brought about on the connection itself (max_page_count, query_only): SQLite then gives the
// very errors of a real one, and it works for root in any container, where permissions and quotas do not.
import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { sql } from "kysely";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { checkStore } from "../../../adapters/store/check-store.ts";
import { databaseStore } from "../../../adapters/store/database-store.ts";
import { openEngine, openEngineFile } from "../../../adapters/store/open-engine.ts";
import { openPostgres } from "../../../adapters/store/postgres.ts";
import type { Change } from "../../../bot/index.ts";
import { rememberingLog, silentLog } from "../../support/logs.ts";
import { asked, newPostgresDatabase } from "../../support/postgres-database.ts";
import { newStoreFolder } from "../../support/store-places.ts";
import { wireTo } from "../../support/wire.ts";

const closing: { close(): Promise<void> }[] = [];
afterAll(async () => {
  for (const each of closing) await each.close();
});

function change(id: string, message?: string): Change {
  const made = { kind: "conversation", id, by: "maud", at: 1_000, why: "said" };
  return message === undefined ? made : { ...made, message };
}

const one = (state: unknown) => {
  const next = ((state ?? 0) as number) + 1;
  return { state: next, outcome: next };
};

async function until(claim: () => boolean): Promise<void> {
  await vi.waitUntil(claim, { timeout: 30_000, interval: 10 });
}

const options = { log: silentLog, askEveryMilliseconds: 20 };

describe("SQLite", () => {
  async function opened() {
    const folder = newStoreFolder();
    const file = join(folder, "store.sqlite");
    const engine = await openEngineFile(file);
    const { log, lines } = rememberingLog();
    const store = databaseStore(engine, { ...options, log });
    closing.push(store);
    return { folder, file, engine, store, lines };
  }

  test("on a full disk it says so, is not ready, and goes on once there is room", async () => {
    const { file, engine, store, lines } = await opened();
    await store.advance(change("garage"), one);
    const { rows } = await sql<{ page_count: number }>`pragma page_count`.execute(engine.db);
    await sql.raw(`pragma max_page_count = ${rows[0]?.page_count}`).execute(engine.db);
    const large = () => ({ state: "x".repeat(100_000), outcome: null });
    await expect(store.advance(change("large"), large)).rejects.toThrow(
      `store: ${file} cannot grow: the disk is full; make room on it`,
    );
    expect(store.isReady()).toBe(false);
    await sql`pragma max_page_count = 1000000`.execute(engine.db);
    await until(() => store.isReady());
    await store.advance(change("large"), large);
    expect(await store.current("conversation", "garage")).toBe(1);
    expect(lines.map(({ level, message }) => [level, message])).toEqual([
      ["error", "the store cannot be written"],
      ["info", "the store can be written again"],
    ]);
  });

  test("a file that may not be written is named with what to do, and reading goes on", async () => {
    const { file, engine, store } = await opened();
    await store.advance(change("garage"), one);
    await sql`pragma query_only = on`.execute(engine.db);
    await expect(store.advance(change("garage"), one)).rejects.toThrow(
      `store: ${file} may not be written; give`,
    );
    expect(store.isReady()).toBe(false);
    expect(await store.current("conversation", "garage")).toBe(1);
    await sql`pragma query_only = off`.execute(engine.db);
    await until(() => store.isReady());
    expect(await store.advance(change("garage"), one)).toBe(2);
  });

  test("a file that another process holds is waited for, without stopping this one", async () => {
    const { file, store } = await opened();
    const other = await openEngineFile(file);
    closing.push(other);
    let letGo = () => {};
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    let isHeld = false;
    const holding = other.db.connection().execute(async (alone) => {
      await sql`begin immediate`.execute(alone);
      isHeld = true;
      await held;
      await sql`commit`.execute(alone);
    });
    await until(() => isHeld);
    let isKept = false;
    const kept = store.advance(change("garage"), one).then(() => {
      isKept = true;
    });
    await new Promise((resolve) => setTimeout(resolve, 150));
    expect(isKept).toBe(false);
    letGo();
    await Promise.all([kept, holding]);
    expect(await store.current("conversation", "garage")).toBe(1);
  });

  test("one that is held for too long rejects with who is to blame", async () => {
    const { file, engine } = await opened();
    const store = databaseStore(engine, { ...options, patienceMilliseconds: 100 });
    const other = await openEngineFile(file);
    closing.push(other);
    await other.db.connection().execute(async (alone) => {
      await sql`begin immediate`.execute(alone);
      await expect(store.advance(change("garage"), one)).rejects.toThrow(/is locked by another process/u);
      await sql`rollback`.execute(alone);
    });
    expect(await store.advance(change("garage"), one)).toBe(1);
  });

  test("a file that was moved away is noticed before anything is written into nowhere", async () => {
    const { file, store } = await opened();
    await store.advance(change("garage"), one);
    renameSync(file, `${file}.away`);
    await expect(store.advance(change("garage"), one)).rejects.toThrow(
      /was removed or replaced while it was in use/u,
    );
    expect(store.isReady()).toBe(false);
    renameSync(`${file}.away`, file);
    await until(() => store.isReady());
    expect(await store.advance(change("garage"), one)).toBe(2);
  });

  test("a file that is something else is refused and left as it is", async () => {
    const file = join(newStoreFolder(), "kept.sqlite");
    writeFileSync(
      file,
      "this is a letter, not a database, and it is longer than the header of one would be.".repeat(20),
    );
    await expect(openEngineFile(file)).rejects.toThrow(
      `store: ${file} is no store of this program, or is damaged`,
    );
  });

  test("a folder that cannot be made is named", async () => {
    const file = join(newStoreFolder(), "letter");
    writeFileSync(file, "");
    await expect(openEngine({ dataFolder: join(file, "data") })).rejects.toThrow(
      /cannot be opened \(ENOTDIR\); name a folder that can be written/u,
    );
    const folder = join(newStoreFolder(), "witness-mark.sqlite");
    mkdirSync(folder);
    await expect(openEngineFile(folder)).rejects.toThrow(/cannot be opened; this user must be able to/u);
  });

  test("pages that are damaged are found by the check and named when they are met", async () => {
    const { file, store } = await opened();
    for (let number = 0; number < 300; number++) {
      await store.advance(change(`place ${number}`), () => ({
        state: `${number}`.repeat(200),
        outcome: null,
      }));
    }
    await store.close();
    const bytes = readFileSync(file);
    bytes.fill(0x5a, bytes.length / 2, bytes.length / 2 + 80_000);
    writeFileSync(file, bytes);
    const engine = await openEngineFile(file);
    closing.push(engine);
    expect((await checkStore(engine)).problems.length).toBeGreaterThan(0);
    const hurt = databaseStore(engine, options);
    const outcomes = await Promise.allSettled(
      Array.from({ length: 300 }, (_, number) => hurt.current("conversation", `place ${number}`)),
    );
    const reasons = outcomes.flatMap((outcome) =>
      outcome.status === "rejected" ? [String(outcome.reason)] : [],
    );
    expect(reasons[0]).toContain(
      `store: ${file} is damaged; put a backup back with: witness-mark store restore`,
    );
  });
});

describe("Postgres", () => {
  beforeAll(async () => {
    await newPostgresDatabase();
  });

  async function wired(limits = { connectMilliseconds: 5000, queryMilliseconds: 15_000 }) {
    const database = await newPostgresDatabase();
    const wire = await wireTo(database);
    const engine = await openPostgres(wire.address, limits);
    await engine.migrate();
    const { log, lines } = rememberingLog();
    const store = databaseStore(engine, { ...options, log });
    closing.push({
      async close() {
        wire.mend();
        await store.close();
        await wire.close();
      },
    });
    return { database, engine, wire, store, lines };
  }

  test("that forgets its named statements, as behind a pooler, is given them without names", async () => {
    const { engine, store } = await wired();
    await store.advance(change("garage", "m0"), one);
    await sql`deallocate all`.execute(engine.db);
    expect(await store.advance(change("garage", "m1"), one)).toBe(2);
    const { rows } = await sql`select name from pg_prepared_statements`.execute(engine.db);
    expect(rows).toEqual([]);
    expect(await store.advance(change("garage", "m2"), one)).toBe(3);
  });

  test("that is gone for a moment is waited for, and nothing is lost or done twice", async () => {
    const { wire, store } = await wired();
    await store.advance(change("garage", "m0"), one);
    wire.cut();
    const kept = Promise.all([1, 2, 3].map((n) => store.advance(change("garage", `m${n}`), one)));
    await new Promise((resolve) => setTimeout(resolve, 100));
    wire.mend();
    expect(await kept).toEqual([2, 3, 4]);
    expect(await store.history("conversation", "garage")).toHaveLength(4);
  });

  test("that stays away makes the store not ready until it is back, and the log says both", async () => {
    const { wire, store, lines } = await wired();
    wire.cut();
    await until(() => !store.isReady());
    wire.mend();
    await until(() => store.isReady());
    expect(await store.advance(change("garage"), one)).toBe(1);
    expect(lines.map(({ message }) => message)).toEqual([
      "the store cannot be written",
      "the store can be written again",
    ]);
    expect(JSON.stringify(lines[0])).toMatch(/postgres at 127\.0\.0\.1:\d+\/test_\w+ does not answer/u);
  });

  test.each([
    ["with an id", "m1"],
    ["without one", undefined],
  ])(
    "that carries a message %s out and cannot say so does it once, with the outcome of the first",
    async (_what, message) => {
      const { wire, store } = await wired();
      await store.advance(change("garage"), one);
      let runs = 0;
      wire.loseAnswerTo("insertion");
      const outcome = await store.advance(change("garage", message), (state) => {
        runs += 1;
        return one(state);
      });
      expect(outcome).toBe(2);
      expect(runs).toBe(1);
      expect(await store.history("conversation", "garage")).toHaveLength(2);
    },
  );

  test("that falls silent is not waited for without end: connections are given up and opened anew", async () => {
    const { wire, store } = await wired({ connectMilliseconds: 300, queryMilliseconds: 300 });
    await store.advance(change("garage", "m0"), one);
    wire.freeze();
    const kept = store.advance(change("garage", "m1"), one);
    await until(() => !store.isReady());
    wire.mend();
    expect(await kept).toBe(2);
    await until(() => store.isReady());
    expect(await store.history("conversation", "garage")).toHaveLength(2);
  });

  test("that nobody runs, or that lets nobody in, is said in one line without the password", async () => {
    const database = await newPostgresDatabase();
    const wire = await wireTo(database);
    wire.cut();
    const secret = new URL(database).password;
    const gone = await openPostgres(wire.address).then(String, String);
    expect(gone).toMatch(/postgres at 127\.0\.0\.1:\d+\/test_\w+ does not answer \(/u);
    await wire.close();
    const wrong = new URL(database);
    wrong.password = "not-the-password";
    const refused = await openPostgres(wrong.href).then(String, String);
    expect(refused).toMatch(
      /lets nobody in under this name; look at user, password and database in DATABASE_URL \(28P01\)/u,
    );
    expect(gone + refused).not.toMatch(new RegExp(`${secret}|not-the-password`, "u"));
  });

  test("that is read-only says so and is not ready", async () => {
    const { database, store } = await wired();
    await store.advance(change("garage"), one);
    const name = new URL(database).pathname.slice(1);
    const elsewhere = new URL(database);
    elsewhere.pathname = "/postgres";
    await asked(elsewhere.href, `alter database ${name} set default_transaction_read_only = on`);
    await terminateOthers(database);
    await expect(store.advance(change("garage"), one)).rejects.toThrow(/is read-only, perhaps a standby/u);
    expect(store.isReady()).toBe(false);
    await asked(elsewhere.href, `alter database ${name} set default_transaction_read_only = off`);
    await terminateOthers(database);
    await until(() => store.isReady());
    expect(await store.advance(change("garage"), one)).toBe(2);
  });
});

/** As a server that restarts does. */
async function terminateOthers(database: string): Promise<void> {
  await asked(
    database,
    "select pg_terminate_backend(pid) from pg_stat_activity where datname = current_database() and pid <> pg_backend_pid()",
  );
}
