// Trouble in the middle of changes that are made together, and of erasing: a full disk, a file that may not be written, a lock, a
// connection that breaks. Whatever comes, all of it is kept or nothing. On a disk that is really full with
// FULL_DISK naming a folder on one of two megabytes (mount -t tmpfs -o size=2m tmpfs FOLDER).
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { sql } from "kysely";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { checkStore } from "../../../adapters/store/check-store.ts";
import { type DatabaseStore, databaseStore } from "../../../adapters/store/database-store.ts";
import type { Engine } from "../../../adapters/store/engine.ts";
import { openEngineFile } from "../../../adapters/store/open-engine.ts";
import { openPostgres } from "../../../adapters/store/postgres.ts";
import type { Change } from "../../../bot/index.ts";
import { silentLog } from "../../support/logs.ts";
import { newPostgresDatabase } from "../../support/postgres-database.ts";
import { newStoreFolder } from "../../support/store-places.ts";
import { type Wire, wireTo } from "../../support/wire.ts";

const closing: { close(): Promise<void> }[] = [];
afterAll(async () => {
  for (const each of closing) await each.close();
});

const options = { log: silentLog, askEveryMilliseconds: 20 };
const erasing = { kind: "pin", id: "p", by: "keeper", at: 9_000, why: "asked for it" };

/** A word more in the conversation and in the pin beside it. */
function pin(store: DatabaseStore, words: string, message?: string): Promise<number> {
  const made = { kind: "conversation", id: "garage", by: "maud", at: 1_000, why: "said" };
  const change: Change = message === undefined ? made : { ...made, message };
  const added = (state: unknown) => [...((state ?? []) as readonly string[]), words];
  return store.advance(change, (state) => ({
    state: added(state),
    outcome: added(state).length,
    alongside: [{ change: { ...made, kind: "pin", id: "p" }, advance: added }],
  }));
}

async function expectBoth(store: DatabaseStore, count: number): Promise<void> {
  expect(await store.current("conversation", "garage")).toHaveLength(count);
  expect(await store.current("pin", "p")).toHaveLength(count);
}

async function until(claim: () => boolean): Promise<void> {
  await vi.waitUntil(claim, { timeout: 30_000, interval: 10 });
}

describe("SQLite", () => {
  async function opened(folder = newStoreFolder(), patienceMilliseconds = 10_000) {
    const file = join(folder, "store.sqlite");
    const engine = await openEngineFile(file);
    const store = databaseStore(engine, { ...options, patienceMilliseconds });
    closing.push(store);
    return { file, engine, store };
  }

  async function limitTo(engine: Engine, pages: number | undefined): Promise<void> {
    const { rows } = await sql<{ page_count: number }>`pragma page_count`.execute(engine.db);
    await sql.raw(`pragma max_page_count = ${pages ?? rows[0]?.page_count}`).execute(engine.db);
  }

  test("on a full disk keeps neither of two changes, and both once there is room", async () => {
    const { engine, store } = await opened();
    await pin(store, "rough inside");
    await limitTo(engine, undefined);
    await expect(pin(store, "x".repeat(100_000), "m")).rejects.toThrow(/the disk is full; make room on it/u);
    await expectBoth(store, 1);
    expect(store.isReady()).toBe(false);
    await limitTo(engine, 1_000_000);
    await until(() => store.isReady());
    expect(await pin(store, "x".repeat(100_000), "m")).toBe(2);
    await expectBoth(store, 2);
  });

  test("on a full disk erases nothing and says so, and all once there is room", async () => {
    const { engine, store } = await opened();
    await pin(store, "rough inside");
    await limitTo(engine, undefined);
    const grown = () => ["x".repeat(100_000)];
    await expect(store.erase(erasing, grown)).rejects.toThrow(/the disk is full; make room on it/u);
    expect(await store.history("pin", "p")).toHaveLength(1);
    await limitTo(engine, 1_000_000);
    await store.erase(erasing, grown);
    expect(await store.current("pin", "p")).toEqual(grown());
    expect((await checkStore(engine)).problems).toEqual([]);
  });

  test("in a file that may not be written keeps neither, and erases nothing", async () => {
    const { engine, store } = await opened();
    await pin(store, "rough inside");
    await sql`pragma query_only = on`.execute(engine.db);
    await expect(pin(store, "square tips")).rejects.toThrow(/may not be written; give/u);
    await expect(store.erase(erasing, () => undefined)).rejects.toThrow(/may not be written; give/u);
    await expectBoth(store, 1);
    await sql`pragma query_only = off`.execute(engine.db);
    await until(() => store.isReady());
    expect(await pin(store, "square tips")).toBe(2);
  });

  test("in a file that another process holds waits with both, and with erasing, as long as its patience lasts", async () => {
    const { file, store } = await opened();
    const hasty = databaseStore(await openEngineFile(file), { ...options, patienceMilliseconds: 100 });
    closing.push(hasty);
    await pin(store, "rough inside");
    const other = await openEngineFile(file);
    closing.push(other);
    let waiting: Promise<unknown> | undefined;
    await other.db.connection().execute(async (alone) => {
      await sql`begin immediate`.execute(alone);
      waiting = pin(store, "square tips");
      await expect(pin(hasty, "lost")).rejects.toThrow(/is locked by another process/u);
      await expect(hasty.erase(erasing, () => undefined)).rejects.toThrow(/is locked by another process/u);
      await sql`commit`.execute(alone);
    });
    expect(await waiting).toBe(2);
    await expectBoth(store, 2);
  });

  test.runIf(process.env.FULL_DISK)(
    "on a disk that is really full keeps what it said it kept, whole, and goes on once there is room",
    async () => {
      const folder = mkdtempSync(join(process.env.FULL_DISK ?? "", "store-"));
      const { engine, store } = await opened(folder);
      writeFileSync(join(folder, "ballast"), Buffer.alloc(800_000));
      let kept = 0;
      const filling = async () => {
        while (kept < 100_000) kept = await pin(store, `${kept} `.repeat(3000));
      };
      await expect(filling()).rejects.toThrow(/the disk is full|is full; look at the disk/u);
      expect(kept).toBeGreaterThan(3);
      expect(store.isReady()).toBe(false);
      await expectBoth(store, kept);
      rmSync(join(folder, "ballast"));
      await until(() => store.isReady());
      expect(await pin(store, "goes on")).toBe(kept + 1);
      await store.erase(erasing, () => undefined);
      expect((await checkStore(engine)).problems).toEqual([]);
      await store.close();
      rmSync(folder, { recursive: true });
    },
  );
});

describe("Postgres", () => {
  beforeAll(async () => {
    await newPostgresDatabase();
  });

  async function wired(): Promise<{
    readonly wire: Wire;
    readonly store: DatabaseStore;
    readonly engine: Engine;
  }> {
    const wire = await wireTo(await newPostgresDatabase());
    const engine = await openPostgres(wire.address, { connectMilliseconds: 2000, queryMilliseconds: 2000 });
    await engine.migrate();
    const store = databaseStore(engine, options);
    closing.push({
      async close() {
        wire.mend();
        await store.close();
        await wire.close();
      },
    });
    return { wire, store, engine };
  }

  test("that is gone for a moment keeps both changes of each, once", async () => {
    const { wire, store } = await wired();
    await pin(store, "rough inside");
    wire.cut();
    const kept = Promise.all([1, 2, 3].map((number) => pin(store, `word ${number}`, `m${number}`)));
    await new Promise((resolve) => setTimeout(resolve, 100));
    wire.mend();
    expect(await kept).toEqual([2, 3, 4]);
    await expectBoth(store, 4);
  });

  test.each([
    ["with an id", "m1"],
    ["without one", undefined],
  ])("that makes both changes of a message %s and cannot say so makes them once", async (_what, message) => {
    const { wire, store } = await wired();
    await pin(store, "rough inside");
    wire.loseAnswerTo("insertion");
    expect(await pin(store, "square tips", message)).toBe(2);
    await expectBoth(store, 2);
    expect(await pin(store, "drain notches")).toBe(3);
    await expectBoth(store, 3);
  });

  test("that falls silent or breaks while it erases has erased in the end, and the record is sound", async () => {
    const { wire, store, engine } = await wired();
    await pin(store, "zebra", "m1");
    wire.loseAnswerTo("commit");
    await store.erase(erasing, () => ["…"]);
    wire.freeze();
    const erased = store.erase(erasing, () => ["gone"]);
    await new Promise((resolve) => setTimeout(resolve, 300));
    wire.mend();
    await erased;
    const states = (await store.history("pin", "p")).map(({ state }) => state);
    expect(new Set(states.map((state) => JSON.stringify(state)))).toEqual(new Set(['["gone"]']));
    expect((await checkStore(engine)).problems).toEqual([]);
  });
});
