// A fault is struck and lifted, and the store is looked at while everybody is silent.
import { databaseStore } from "../../adapters/store/database-store.ts";
import { openEngine } from "../../adapters/store/open-engine.ts";
import { silentLog } from "../support/logs.ts";
import { differences } from "./compare.ts";
import type { Crowd } from "./crowd.ts";
import { type FaultName, faults, type Struck } from "./faults.ts";
import { waitUntil } from "./waiting.ts";

const QUIET_WITHIN = 180_000;
const LATE_WITHIN = 180_000;

export async function strike(
  name: FaultName,
  struck: Struck,
  crowd: Crowd,
  place: Parameters<typeof openEngine>[0],
  note: (line: string) => void,
): Promise<readonly string[]> {
  const from = crowd.said();
  const lasting = faults[name](struck);
  if (typeof lasting === "string") {
    note(`${name}: left out, ${lasting}`);
    return [];
  }
  const problems: string[] = [];
  try {
    await lasting;
  } catch (failure) {
    problems.push(`${name}: ${failure instanceof Error ? failure.message : String(failure)}`);
  }
  problems.push(...(await lookedAt(name, crowd, place)));
  const to = crowd.said();
  note(
    `${name}: ${to.once - from.once} things said meanwhile, ${to.again - from.again} of them again; ${problems.length} problems`,
  );
  for (const problem of problems.slice(0, 3)) note(`  ${problem}`);
  crowd.goOn();
  return problems;
}

/** Everybody is silent while the store is compared; nobody may be left without an answer. */
export async function lookedAt(
  when: string,
  crowd: Crowd,
  place: Parameters<typeof openEngine>[0],
): Promise<readonly string[]> {
  const isQuiet = await crowd.quiet(QUIET_WITHIN);
  const store = databaseStore(await openEngine(place, true), { log: silentLog });
  let found = await differences(store, crowd.members);
  // Whoever was answered late may have taken the answer to one thing for that to the next, which is then still on its way.
  await waitUntil(
    async () => {
      if (found.length > 0) found = await differences(store, crowd.members);
      return found.length === 0;
    },
    LATE_WITHIN,
    2000,
  );
  await store.close();
  const lines = found.slice(0, 20).map((line) => `${when}: ${line}`);
  return isQuiet ? lines : [...lines, `${when}: somebody is still unanswered after ${QUIET_WITHIN / 1000} s`];
}
