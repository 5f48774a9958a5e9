// What erasing promises in the databases: files without the words, other processes, backups, and kill -9 in the middle of it.
import { spawn } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { sql } from "kysely";
import { afterAll, describe, expect, test } from "vitest";
import { writeBackup } from "../../../adapters/store/backup-file.ts";
import { checkStore } from "../../../adapters/store/check-store.ts";
import { type DatabaseStore, databaseStore } from "../../../adapters/store/database-store.ts";
import { openEngine, type StorePlace } from "../../../adapters/store/open-engine.ts";
import { restore } from "../../../adapters/store/restore.ts";
import { rowsOf } from "../../../adapters/store/row-stream.ts";
import { silentLog } from "../../support/logs.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import type { EraserTask } from "../../support/store-eraser.ts";
import { newPlaces, newStoreFolder } from "../../support/store-places.ts";

const closing: { close(): Promise<void> }[] = [];
afterAll(async () => {
  for (const each of closing) await each.close();
});

async function storeAt(place: StorePlace, patienceMilliseconds = 10_000): Promise<DatabaseStore> {
  const store = databaseStore(await openEngine(place), { log: silentLog, patienceMilliseconds });
  closing.push(store);
  return store;
}

async function soundAt(place: StorePlace) {
  const engine = await openEngine(place);
  closing.push(engine);
  expect((await checkStore(engine)).problems).toEqual([]);
  return engine;
}

function say(store: DatabaseStore, id: string, words: string, message?: string): Promise<unknown> {
  const change = { kind: "person", id, by: "maud", at: 1_000, why: "said" };
  return store.advance(message === undefined ? change : { ...change, message }, (state) => ({
    state: [...((state ?? []) as readonly string[]), words],
    outcome: `heard ${words}`,
  }));
}

const erasing = (id: string) => ({ kind: "person", id, by: "keeper", at: 9_000, why: "asked for it" });

/** How often a word stands in any file of the folder. */
function found(folder: string, word: string): number {
  const files = readdirSync(folder).map((name) => readFileSync(join(folder, name)).toString("latin1"));
  return files.reduce((sum, text) => sum + text.split(word).length - 1, 0);
}

describe.each(Object.entries(newPlaces))("erasing on %s", (_name, newPlace) => {
  test("leaves the store sound, and its backup goes elsewhere and is sound there", async () => {
    const place = await newPlace();
    const store = await storeAt(place);
    for (let number = 0; number < 150; number++)
      await say(store, `p${number % 3}`, `zebra ${number}`, `m${number}`);
    await store.erase(erasing("p1"), () => undefined, { by: () => "" });
    await store.erase(erasing("p2"), (state) => (state as readonly string[]).map(() => "…"));
    await say(store, "p1", "anew");
    const engine = await soundAt(place);
    const file = join(newStoreFolder(), "backup.jsonl");
    await engine.readMoment((moment) => writeBackup(file, rowsOf(moment)));
    expect(readFileSync(file, "utf8").match(/zebra/gu)?.length).toBe(100);
    const other = await newPlace();
    const elsewhere = await openEngine(other);
    await restore(elsewhere, file, { replace: false, at: 0 });
    await elsewhere.close();
    await soundAt(other);
    const again = await storeAt(other);
    expect(await again.ids("person")).toEqual(["p0", "p1", "p2"]);
    for (const id of ["p0", "p1", "p2"])
      expect(await again.history("person", id)).toEqual(await store.history("person", id));
  });

  test("stops another process from going on from what was erased", async () => {
    const place = await newPlace();
    const [here, there] = [await storeAt(place), await storeAt(place)];
    await say(there, "maud", "zebra", "m1");
    await here.erase(erasing("maud"), () => ["…"]);
    await say(there, "maud", "rough inside", "m2");
    expect(await here.current("person", "maud")).toEqual(["…", "rough inside"]);
    await soundAt(place);
  });

  test("while other processes write loses nothing and leaves none of the words", async () => {
    const place = await newPlace();
    const stores = await Promise.all([1, 2, 3].map(() => storeAt(place)));
    const censor = (state: unknown) =>
      (state as readonly string[]).map((words) => words.replace("zebra", "…"));
    await Promise.all(
      stores.map(async (store, index) => {
        for (let number = 0; number < 25; number++) {
          await say(store, "maud", `zebra ${index} ${number}`);
          if (number % 8 === index) await store.erase(erasing("maud"), censor);
        }
      }),
    );
    await stores[0]?.erase(erasing("maud"), censor);
    const history = (await stores[0]?.history("person", "maud")) ?? [];
    expect(JSON.stringify(history)).not.toContain("zebra");
    expect(history.at(-1)?.state).toHaveLength(75);
    await soundAt(place);
  });

  test("is done wholly or not at all when the process is killed in the middle, and finished by the next", async () => {
    const place = await newPlace();
    const chance = chanceFrom(77);
    const erased: string[] = [];
    for (let kill = 0; kill < 8; kill++)
      erased.push(...(await killedEraser(place, `e${kill}`, chance() * 300)));
    const store = await storeAt(place);
    await say(store, "anybody", "waits for what the next process does at its start");
    await store.erase(erasing("anybody"), () => undefined);
    expect(erased.length).toBeGreaterThanOrEqual(8);
    let kept = 0;
    for await (const { id } of store.currents("secret", "")) {
      const history = await store.history("secret", id);
      const words = history.filter(({ state }) => JSON.stringify(state ?? "").includes("zebra"));
      const isErased = history.at(-1)?.why === "asked for";
      expect(words).toHaveLength(isErased ? 0 : history.length);
      expect(isErased || !erased.includes(id)).toBe(true);
      kept += words.length;
      if (place.databaseUrl === undefined && isErased) {
        expect(found(place.dataFolder, `zebra ${id.replace("-", " ")} `)).toBe(0);
      }
    }
    expect(kept).toBeLessThanOrEqual(4 * 8);
    await soundAt(place);
  }, 180_000);
});

describe("SQLite", () => {
  test("has the erased words in none of its files, of many records of all sizes that were written, restored and erased", async () => {
    const place = await newPlaces.SQLite();
    const store = await storeAt(place);
    const long = "square tips, two drain notches; ".repeat(300);
    for (let number = 0; number < 600; number++) {
      const words = `zebra${number % 5} ${number % 11 === 0 ? long : long.slice(0, number)}`;
      await say(store, `p${number % 40}`, words, `m${number}`);
    }
    const engine = await openEngine(place);
    const file = join(newStoreFolder(), "backup.jsonl");
    await engine.readMoment((moment) => writeBackup(file, rowsOf(moment)));
    await restore(engine, file, { replace: true, at: 0 });
    await engine.close();
    expect(found(place.dataFolder, "zebra3")).toBeGreaterThan(100);
    const those = Array.from({ length: 40 }, (_, id) => id).filter((id) => id % 5 === 3);
    await Promise.all(those.map((id) => store.erase(erasing(`p${id}`), () => undefined)));
    expect(found(place.dataFolder, "zebra3")).toBe(0);
    expect(found(place.dataFolder, "zebra2")).toBeGreaterThan(100);
    await store.close();
    expect(found(place.dataFolder, "zebra3")).toBe(0);
    await soundAt(place);
  });

  test("that another program still reads says that the files hold it, and the next start takes it out", async () => {
    const place = await newPlaces.SQLite();
    const store = await storeAt(place, 300);
    await say(store, "maud", "zebra");
    const reader = await openEngine(place);
    await reader.db.transaction().execute(async (moment) => {
      await sql`select count(*) from version`.execute(moment);
      await expect(store.erase(erasing("maud"), () => undefined)).rejects.toThrow(
        /gone from the records and not yet from the files, which another program still reads/u,
      );
    });
    await reader.close();
    expect(await store.current("person", "maud")).toBeUndefined();
    await store.close();
    const next = await storeAt(place);
    await say(next, "otis", "rough");
    await next.close();
    expect(found(place.dataFolder, "zebra")).toBe(0);
  });
});

/** The ids that it said were erased before it was killed, so long after the first. */
async function killedEraser(
  place: StorePlace,
  name: string,
  milliseconds: number,
): Promise<readonly string[]> {
  const { dataFolder, databaseUrl } = place;
  const task: EraserTask = { dataFolder, name, ...(databaseUrl === undefined ? {} : { databaseUrl }) };
  const program = fileURLToPath(new URL("../../support/store-eraser.ts", import.meta.url));
  const child = spawn(process.execPath, [program, JSON.stringify(task)], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  let printed = "";
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    if (printed === "") setTimeout(() => child.kill("SIGKILL"), milliseconds);
    printed += text;
  });
  await new Promise((resolve) => child.on("close", resolve));
  return printed.split("\n").slice(0, -1);
}
