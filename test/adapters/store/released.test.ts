// What released versions left on people's disks is read by this one: the tables of each version, and each edition of the backup.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { writeBackup } from "../../../adapters/store/backup-file.ts";
import { checkStore } from "../../../adapters/store/check-store.ts";
import { databaseStore } from "../../../adapters/store/database-store.ts";
import type { Engine } from "../../../adapters/store/engine.ts";
import { openEngine, openEngineFile } from "../../../adapters/store/open-engine.ts";
import { restore } from "../../../adapters/store/restore.ts";
import { rowsOf } from "../../../adapters/store/row-stream.ts";
import { silentLog } from "../../support/logs.ts";
import { newPlaces, newStoreFolder } from "../../support/store-places.ts";

const released = (name: string) => fileURLToPath(new URL(`released/${name}`, import.meta.url));

/** All of it is there and goes on: states, answers, history. */
async function expectTheReleasedContent(engine: Engine): Promise<void> {
  expect(await checkStore(engine)).toEqual({ problems: [], records: 2, versions: 3 });
  const store = databaseStore(engine, { log: silentLog });
  const again = { kind: "conversation", id: "garage", by: "maud", at: 0, why: "said", message: "m1" };
  expect(await store.advance(again, () => ({ state: null, outcome: null }))).toEqual({
    text: "answer to m1",
  });
  const history = await store.history("conversation", "garage");
  expect(history.map(({ why, state }) => [why, state])).toEqual([
    ["said", ["rough inside", "square tips"]],
    ["answered", ["rough inside", "square tips", "two drain notches"]],
  ]);
  expect(await store.current("conversation", "Žluť")).toEqual(["鏡"]);
  expect(await store.advance({ ...again, message: "m2" }, () => ({ state: 1, outcome: "new" }))).toBe("new");
  await store.close();
}

test.each(["tables-0001.sql"])("a file with %s is brought up to date and keeps all of it", async (name) => {
  const file = join(newStoreFolder(), "store.sqlite");
  const db = new DatabaseSync(file);
  db.exec(readFileSync(released(name), "utf8"));
  db.close();
  await expectTheReleasedContent(await openEngineFile(file));
});

test.each(Object.entries(newPlaces))("a backup of edition 1 goes into %s", async (_engine, newPlace) => {
  const engine = await openEngine(await newPlace());
  await restore(engine, released("backup-1.jsonl"), { replace: false, at: 0 });
  await expectTheReleasedContent(engine);
});

test("a backup is still written as edition 1 was, byte by byte", async () => {
  const engine = await openEngine({ dataFolder: newStoreFolder() });
  await restore(engine, released("backup-1.jsonl"), { replace: false, at: 0 });
  const file = join(newStoreFolder(), "backup.jsonl");
  await engine.readMoment((moment) => writeBackup(file, rowsOf(moment)));
  await engine.close();
  expect(readFileSync(file, "utf8")).toBe(readFileSync(released("backup-1.jsonl"), "utf8"));
});
