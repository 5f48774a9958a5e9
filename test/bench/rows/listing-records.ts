// How long it takes to go through every record of a kind, and to ask for the number of one version, in a store that has many.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { databaseStore } from "../../../adapters/store/database-store.ts";
import { noHead, rowAfter } from "../../../adapters/store/head.ts";
import { openEngine } from "../../../adapters/store/open-engine.ts";
import { silentLog } from "../../support/logs.ts";
import type { Figure, Row } from "../row.ts";

const RECORDS = 100_000;
const PAGE = 500;
const words = "rough inside, square tips, two drain notches; ".repeat(5);

export const listingRecords: Row = {
  name: "listing-records",
  about: `the newest state of each of ${RECORDS} records in SQLite, by prefix`,
  starts: [],
  measure,
};

async function measure(): Promise<readonly Figure[]> {
  const folder = mkdtempSync(join(tmpdir(), "wm-bench-"));
  const engine = await openEngine({ dataFolder: folder });
  try {
    await engine.db.transaction().execute(async (one) => {
      for (let from = 0; from < RECORDS; from += PAGE) {
        const rows = Array.from({ length: PAGE }, (_, index) => {
          const change = { kind: "observation", id: `home/${from + index}`, by: "u1", at: 0, why: "said" };
          return rowAfter(noHead, change, JSON.stringify({ words, number: from + index }), null, 1);
        });
        await one.insertInto("version").values(rows).execute();
      }
    });
    const store = databaseStore(engine, { log: silentLog });
    let listed = 0;
    const begun = performance.now();
    for await (const _ of store.currents("observation", "home/")) listed += 1;
    const seconds = (performance.now() - begun) / 1000;
    const asked = performance.now();
    for (let number = 0; number < 1000; number++) await store.version("observation", `home/${number}`);
    const milliseconds = (performance.now() - asked) / 1000;
    await store.close();
    return [
      { what: "records listed", value: listed, unit: "", budget: { atLeast: RECORDS } },
      { what: "listing them all", value: seconds, unit: "s", budget: { atMost: 3 } },
      {
        what: "the number of a record's newest version",
        value: milliseconds,
        unit: "ms",
        budget: { atMost: 1 },
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
