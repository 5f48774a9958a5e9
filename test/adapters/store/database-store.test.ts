// What the databases promise beyond a store in memory: the next process, other processes, backups, checks, migrations.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { sql } from "kysely";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readBackup, writeBackup } from "../../../adapters/store/backup-file.ts";
import { checkStore } from "../../../adapters/store/check-store.ts";
import { type DatabaseStore, databaseStore } from "../../../adapters/store/database-store.ts";
import type { Engine } from "../../../adapters/store/engine.ts";
import { openEngine, type StorePlace } from "../../../adapters/store/open-engine.ts";
import { openStore } from "../../../adapters/store/open-store.ts";
import { restore } from "../../../adapters/store/restore.ts";
import { rowsOf } from "../../../adapters/store/row-stream.ts";
import type { Change } from "../../../bot/index.ts";
import { countOn } from "../../support/counted-record.ts";
import { rememberingLog, silentLog } from "../../support/logs.ts";
import { newPostgresDatabase } from "../../support/postgres-database.ts";
import { newPlaces, newStoreFolder } from "../../support/store-places.ts";

beforeAll(async () => {
  await newPostgresDatabase();
});

const closing: { close(): Promise<void> }[] = [];
afterAll(async () => {
  for (const each of closing) await each.close();
});

async function engineAt(place: StorePlace): Promise<Engine> {
  const engine = await openEngine(place);
  closing.push(engine);
  return engine;
}

async function storeAt(place: StorePlace): Promise<DatabaseStore> {
  const store = databaseStore(await openEngine(place), { log: silentLog });
  closing.push(store);
  return store;
}

function change(id: string, message?: string): Change {
  const made = { kind: "conversation", id, by: "maud", at: 1_000, why: "said" };
  return message === undefined ? made : { ...made, message };
}

const one = (state: unknown) => {
  const next = ((state ?? 0) as number) + 1;
  return { state: next, outcome: next };
};

async function filled(place: StorePlace): Promise<void> {
  const store = await storeAt(place);
  for (let number = 0; number < 150; number++) {
    const message = number % 3 === 0 ? `m${number}` : undefined;
    await store.advance(change(`Žluť ${number % 7}`, message), countOn(`word ${number}`));
  }
  await store.close();
}

async function backupOf(place: StorePlace): Promise<string> {
  const file = join(newStoreFolder(), "backup.jsonl");
  const engine = await engineAt(place);
  await engine.readMoment((moment) => writeBackup(file, rowsOf(moment)));
  return file;
}

describe.each(Object.entries(newPlaces))("a store on %s", (_name, newPlace) => {
  test("is read again by the next process, answers to old messages included", async () => {
    const place = await newPlace();
    const first = await storeAt(place);
    expect(await first.advance(change("garage", "m1"), one)).toBe(1);
    await first.close();
    const second = await storeAt(place);
    expect(await second.advance(change("garage", "m1"), one)).toBe(1);
    expect(await second.advance(change("garage", "m2"), one)).toBe(2);
  });

  test("may be opened for the first time by several processes at once", async () => {
    const place = await newPlace();
    const stores = await Promise.all([1, 2, 3, 4].map(() => storeAt(place)));
    await Promise.all(stores.map((store) => store.advance(change("garage"), one)));
    expect(await stores[0]?.current("conversation", "garage")).toBe(4);
  });

  test("two that race for one record lose no change, and give a message sent to both one outcome", async () => {
    const place = await newPlace();
    const stores = [await storeAt(place), await storeAt(place)];
    const outcomes = await Promise.all(
      Array.from({ length: 40 }, async (_, n) => {
        await Promise.all(stores.map((store) => store.advance(change("garage"), one)));
        return Promise.all(stores.map((store) => store.advance(change("garage", `m${n}`), one)));
      }),
    );
    for (const [here, there] of outcomes) expect(here).toBe(there);
    const history = (await stores[0]?.history("conversation", "garage")) ?? [];
    expect(history.map(({ state }) => state)).toEqual(Array.from({ length: 120 }, (_, n) => n + 1));
  });

  test("what arrives together shares a commit", async () => {
    const place = await newPlace();
    const engine = await openEngine(place);
    const insertions = countedInsertions(engine);
    const store = databaseStore(insertions.engine, { log: silentLog });
    closing.push(store);
    await Promise.all(Array.from({ length: 64 }, (_, n) => store.advance(change(`place ${n}`), one)));
    expect(insertions.count()).toBe(1);
  });

  test("a state of a megabyte grows by what is added, not by its size", async () => {
    const place = await newPlace();
    const store = await storeAt(place);
    const added = (state: unknown) => ({
      state: [...((state ?? ["x".repeat(1_000_000)]) as string[]), "rough inside"],
      outcome: null,
    });
    for (let number = 0; number < 20; number++) await store.advance(change("garage"), added);
    const engine = await engineAt(place);
    const rows = await engine.db.selectFrom("version").select("state").execute();
    expect(rows.reduce((sum, { state }) => sum + state.length, 0)).toBeLessThan(1_010_000);
    expect(await store.current("conversation", "garage")).toHaveLength(21);
  });

  test("a closed store refuses, and everything asked for before it was closed is kept", async () => {
    const place = await newPlace();
    const store = await storeAt(place);
    const asked = Array.from({ length: 30 }, () => store.advance(change("garage"), one));
    await store.close();
    expect(await Promise.all(asked)).toHaveLength(30);
    await expect(store.advance(change("garage"), one)).rejects.toThrow(/is closed/u);
    expect(await (await storeAt(place)).current("conversation", "garage")).toBe(30);
  });

  test("an id that no database keeps is refused by itself", async () => {
    const store = await storeAt(await newPlace());
    const outcomes = await Promise.allSettled(
      ["a\0", "b", "c\ud800"].map((id) => store.advance(change(id), one)),
    );
    expect(outcomes.map(({ status }) => status)).toEqual(["rejected", "fulfilled", "rejected"]);
  });

  test.each(Object.entries(newPlaces))(
    "its backup goes into %s and comes out the same",
    async (_other, newOther) => {
      const place = await newPlace();
      await filled(place);
      const file = await backupOf(place);
      const other = await newOther();
      const restored = await restore(await engineAt(other), file, { replace: false, at: 5 });
      expect(restored).toEqual({ records: 7, versions: 150 });
      expect(readFileSync(await backupOf(other), "utf8")).toBe(readFileSync(file, "utf8"));
      expect((await checkStore(await engineAt(other))).problems).toEqual([]);
    },
  );

  test("a backup does not take the place of what is kept unless told to", async () => {
    const place = await newPlace();
    await filled(place);
    const file = await backupOf(place);
    const engine = await engineAt(place);
    await expect(restore(engine, file, { replace: false, at: 5 })).rejects.toThrow(
      /holds something already/u,
    );
    await expect(restore(engine, file, { replace: true, at: 5 })).resolves.toEqual({
      records: 7,
      versions: 150,
    });
  });

  test("a program that serves goes on from a backup that is put back under it", async () => {
    const place = await newPlace();
    const store = await storeAt(place);
    await store.advance(change("garage", "m1"), one);
    const file = await backupOf(place);
    await store.advance(change("garage", "m2"), one);
    await store.advance(change("garage", "m3"), one);
    await restore(await engineAt(place), file, { replace: true, at: 5 });
    expect(await store.advance(change("garage", "m4"), one)).toBe(2);
    expect(await store.advance(change("garage", "m1"), one)).toBe(1);
    expect((await store.history("conversation", "garage")).map(({ message }) => message)).toEqual([
      "m1",
      "m4",
    ]);
    expect(store.isReady()).toBe(true);
  });

  test("a backup that is put back while others write leaves whole histories, and everybody is answered", async () => {
    const place = await newPlace();
    await filled(place);
    const file = await backupOf(place);
    const stores = [await storeAt(place), await storeAt(place)];
    const engine = await engineAt(place);
    let isPutBack = false;
    const writing = stores.map(async (store, index) => {
      for (let number = 0; !isPutBack || number < 10; number++) {
        await store.advance(change(`Žluť ${number % 7}`, `w${index}-${number}`), countOn("word"));
      }
    });
    for (let times = 0; times < 3; times++) await restore(engine, file, { replace: true, at: 5 });
    isPutBack = true;
    await Promise.all(writing);
    const { problems, records, versions } = await checkStore(engine);
    expect({ problems, records }).toEqual({ problems: [], records: 7 });
    expect(versions).toBeGreaterThanOrEqual(150);
  });

  test("a backup taken while others write is of one moment", async () => {
    const place = await newPlace();
    const store = await storeAt(place);
    let isBackedUp = false;
    const writing = (async () => {
      while (!isBackedUp) {
        await store.advance(change("a"), one);
        await store.advance(change("b"), one);
      }
    })();
    await store.advance(change("b"), one);
    const file = await backupOf(place);
    isBackedUp = true;
    await writing;
    const last: Record<string, number> = {};
    for await (const { id, version } of readBackup(file)) last[id] = version;
    const { a = 0, b = 0 } = last;
    expect(Math.abs(a - b)).toBeLessThanOrEqual(2);
  });

  test.each([
    [
      "a state",
      sql`update version set state = '9' where version = 2 and id = 'garage'`,
      "version 2: is not what was written",
    ],
    [
      "an outcome",
      sql`update version set outcome = '9' where version = 1 and id = 'garage'`,
      "version 1: is not what was written",
    ],
    [
      "a name",
      sql`update version set by = 'otis' where version = 3 and id = 'garage'`,
      "version 3: is not what was written",
    ],
    [
      "a version taken out",
      sql`delete from version where version = 2 and id = 'garage'`,
      "version 3: version 2 is missing",
    ],
  ])("the check finds %s that was changed from outside", async (_what, statement, problem) => {
    const place = await newPlace();
    const store = await storeAt(place);
    for (let number = 0; number < 4; number++) await store.advance(change("garage", `m${number}`), one);
    await store.advance(change("sound"), one);
    const engine = await engineAt(place);
    await statement.execute(engine.db);
    expect(await checkStore(engine)).toEqual({
      problems: [`conversation "garage", ${problem}`],
      records: 2,
      versions: problem.includes("missing") ? 4 : 5,
    });
  });

  test("a damaged record is named when it is used, and the others go on", async () => {
    const place = await newPlace();
    const store = await storeAt(place);
    await store.advance(change("sound"), one);
    await store.advance(change("hurt"), () => ({ state: ["a long state", "indeed"], outcome: null }));
    await store.advance(change("hurt"), () => ({ state: ["a long state", "indeed", 1], outcome: null }));
    const engine = await engineAt(place);
    await sql`update version set kept_start = 99 where kept_start is not null`.execute(engine.db);
    const next = await storeAt(place);
    await expect(next.current("conversation", "hurt")).rejects.toThrow(/"hurt" is damaged at version 2/u);
    const [hurt, sound] = await Promise.allSettled(
      ["hurt", "sound"].map((id) => next.advance(change(id), one)),
    );
    expect([hurt?.status, sound?.status]).toEqual(["rejected", "fulfilled"]);
    expect(next.isReady()).toBe(true);
  });

  test("conversations of a JSON-lines file are brought over once, and the log says so", async () => {
    const place = await newPlace();
    const file = join(place.dataFolder, "conversations.jsonl");
    writeFileSync(
      file,
      '{"conversation":"garage","state":{"n":1}}\n{"conversation":"club","state":{"n":2}}\n',
    );
    const { log, lines } = rememberingLog();
    const store = await openStore(place, log);
    closing.push(store);
    expect(await store.current("conversation", "club")).toEqual({ n: 2 });
    expect(await store.history("conversation", "garage")).toMatchObject([
      { version: 1, why: "brought over from a file" },
    ]);
    expect(lines).toMatchObject([{ level: "info", fields: { file, conversations: 2 } }]);
    expect(readFileSync(`${file}.imported`, "utf8")).toContain("garage");
    const again = rememberingLog();
    closing.push(await openStore(place, again.log));
    expect(again.lines).toEqual([]);
  });

  test("a damaged line of such a file is named, and nothing is brought over", async () => {
    const place = await newPlace();
    const file = join(place.dataFolder, "conversations.jsonl");
    writeFileSync(file, '{"conversation":"garage","state":{}}\n{"conversation":"club\n');
    await expect(openStore(place, silentLog)).rejects.toThrow(`${file}:2 is not a kept conversation`);
    expect(await (await storeAt(place)).ids("conversation")).toEqual([]);
  });

  test("a store of a newer version of the program is left alone", async () => {
    const place = await newPlace();
    const engine = await engineAt(place);
    await sql`insert into kysely_migration (name, timestamp) values ('9999-later', '2999-01-01T00:00:00.000Z')`.execute(
      engine.db,
    );
    await expect(openEngine(place)).rejects.toThrow(/written by a newer version of this program/u);
  });
});

test.each([
  ["nothing", () => "", "was cut short"],
  ["another file", () => '{"a":1}\n', "is no backup"],
  ["a backup cut short", (whole: string) => whole.slice(0, -40), /is damaged|was cut short/u],
  ["a backup without its end", (whole: string) => whole.split("\n").slice(0, -2).join("\n"), "was cut short"],
  [
    "a backup with a changed letter",
    (whole: string) => whole.replace("maud", "mawd"),
    "is not what was written",
  ],
  [
    "a backup with a line left out",
    (whole: string) => whole.replace(/\n.*\n/u, "\n"),
    /is missing|not what was written/u,
  ],
])("%s is not put back", async (_what, spoil, problem) => {
  const place = { dataFolder: newStoreFolder() };
  await filled(place);
  const file = await backupOf(place);
  writeFileSync(file, spoil(readFileSync(file, "utf8")));
  const target = await engineAt({ dataFolder: newStoreFolder() });
  await expect(restore(target, file, { replace: false, at: 5 })).rejects.toThrow(problem);
  expect((await checkStore(target)).versions).toBe(0);
});

/** The same engine, with a count of the insertions that went to it. */
function countedInsertions(engine: Engine): { readonly engine: Engine; readonly count: () => number } {
  let count = 0;
  const insert: Engine["insert"] = (insertion, rows) => {
    count += 1;
    return engine.insert(insertion, rows);
  };
  return { engine: { ...engine, insert }, count: () => count };
}
