// A program that keeps secrets and erases each again as fast as it can until it is killed. It says on its output which are erased.
import { writeSync } from "node:fs";
import { databaseStore } from "../../adapters/store/database-store.ts";
import { openEngine } from "../../adapters/store/open-engine.ts";
import { silentLog } from "./logs.ts";

export interface EraserTask {
  readonly dataFolder: string;
  readonly databaseUrl?: string;
  readonly name: string;
}

const { dataFolder, databaseUrl, name }: EraserTask = JSON.parse(process.argv[2] ?? "");
const store = databaseStore(await openEngine({ dataFolder, databaseUrl }), { log: silentLog });
for (let number = 0; ; number++) {
  const change = { kind: "secret", id: `${name}-${number}`, by: "maud", at: 0, why: "said" };
  for (let version = 0; version < 4; version++) {
    await store.advance({ ...change, message: `m${version}` }, (state) => ({
      state: [...((state ?? []) as readonly string[]), `zebra ${name} ${number} ${version};`],
      outcome: `heard zebra ${name} ${number} ${version};`,
    }));
  }
  await store.erase({ ...change, why: "asked for" }, number % 2 === 0 ? () => undefined : () => ["gone"]);
  writeSync(1, `${change.id}\n`);
}
