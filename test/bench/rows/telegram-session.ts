// A long session on the double of Telegram's Bot API, on SQLite: members who write, press, forge and send again, while calls are cut and
// refused. No limit of the platform may be broken, nothing be said twice, and what the process holds must not grow with the session.

import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { openStore } from "../../../adapters/store/open-store.ts";
import { randomSession } from "../../adapters/telegram/random-session.ts";
import { silentLog } from "../../support/logs.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { newStoreFolder } from "../../support/store-places.ts";
import { percentile } from "../percentiles.ts";
import type { Row } from "../row.ts";

const START = 20_261_125;
const WARM = 300;
const STEPS = 1200;

export const telegramSession: Row = {
  name: "telegram-session",
  about: `${STEPS} steps of a session that chance draws, through the whole door and back`,
  starts: [START],
  async measure() {
    const store = await openStore({ dataFolder: newStoreFolder() }, silentLog);
    const session = await randomSession(chanceFrom(START), store);
    await session.steps(WARM);
    const before = heldMegabytes();
    const times = await session.steps(STEPS);
    const growth = heldMegabytes() - before;
    await session.close();
    await store.close();
    const quick = times.filter((time) => time < 450);
    return [
      {
        what: "what did not hold",
        value: session.broken.length,
        unit: "",
        budget: { atMost: 0 },
        remark: session.broken[0] ?? "",
      },
      {
        what: "growth of the heap",
        value: growth,
        unit: "MB",
        budget: { atMost: 15 },
        remark: `over ${STEPS} steps`,
      },
      {
        what: "step without a fault, median",
        value: percentile(quick, 0.5),
        unit: "ms",
        budget: { atMost: 100 },
      },
      { what: "step without a fault, 95 %", value: percentile(quick, 0.95), unit: "ms" },
    ];
  },
};

/** After everything that nobody holds any more is gone. */
function heldMegabytes(): number {
  setFlagsFromString("--expose-gc");
  const collect: () => void = runInNewContext("gc");
  collect();
  collect();
  return process.memoryUsage().heapUsed / 2 ** 20;
}
