// A program that writes to a store as fast as it can until it is killed. It says on its output what it is about to do and what was
// acknowledged, a line each, written at once: what it has not said has not happened.
import { writeSync } from "node:fs";
import { databaseStore } from "../../adapters/store/database-store.ts";
import { openEngine } from "../../adapters/store/open-engine.ts";
import { countInLedgers, recordName, type WriterTask } from "./counted-record.ts";
import { silentLog } from "./logs.ts";

const { dataFolder, databaseUrl, name, from, records, unconfirmed, most }: WriterTask = JSON.parse(
  process.argv[2] ?? "",
);
const store = databaseStore(await openEngine({ dataFolder, databaseUrl }), { log: silentLog });

async function write(record: number, message: string): Promise<void> {
  writeSync(1, `sent ${record} ${message}\n`);
  const change = { kind: "record", id: recordName(record), by: name, at: 0, why: "counting", message };
  const { count } = await store.advance(change, countInLedgers(record, message, name));
  writeSync(1, `kept ${record} ${message} ${count}\n`);
}

for (const { record, message } of unconfirmed) await write(record, message);
let next = from;
async function writeOn(): Promise<void> {
  while (next < most) {
    const number = next;
    next += 1;
    await write(number % records, `${name}-${number}`);
  }
}
await Promise.all(Array.from({ length: 8 }, writeOn));
await store.close();
writeSync(1, "done\n");
