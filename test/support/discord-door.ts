// The door to Discord in a process of its own, so that it is measured without the double that plays Discord: started by
// fork, told where the double is, asked for its heap.

import { systemClock } from "../../adapters/clock.ts";
import { startDiscord } from "../../adapters/discord/index.ts";
import { photographKeeper } from "../../adapters/photographs/index.ts";
import { pngOf } from "../../adapters/pictures/png.ts";
import { openStore } from "../../adapters/store/open-store.ts";
import { communityMemories, knowledgeOf, openBot } from "../../bot/index.ts";
import { demoHandbook } from "./demo-handbook.ts";
import { silentLog } from "./logs.ts";

const { DOUBLE_TOKEN: token = "", DOUBLE_BASE: apiBase = "", DOOR_FOLDER: dataFolder = "" } = process.env;
const store = await openStore({ dataFolder, databaseUrl: undefined }, silentLog);
const handbook = demoHandbook();
const knowledge = knowledgeOf(handbook);
for (const { id } of handbook.parts) knowledge.compiled(id);
const clock = systemClock();
const bot = openBot({
  knowledge: () => [knowledge],
  store,
  memories: communityMemories(store),
  clock,
  log: silentLog,
  secretKey: "a secret of the bench, long enough to be one",
  platform: "discord",
});
// The first turns of a process read and compile; a community's bot has long had them.
for (let turn = 0; turn < 30; turn += 1)
  await bot.receive({
    conversation: `warm-up-${turn}`,
    from: "bench",
    text: "which rear spoiler is this? square tips",
  });
const door = await startDiscord({
  token,
  apiBase,
  bot,
  store,
  clock,
  log: silentLog,
  handbooks: [{ id: handbook.cover.id, name: handbook.cover.name }],
  pngOf,
  photographs: photographKeeper(store, clock),
});

// Whoever started it is gone.
process.on("disconnect", () => process.exit(0));
process.on("message", async (asked) => {
  if (asked === "heap") {
    await door.settled();
    globalThis.gc?.();
    globalThis.gc?.();
    process.send?.({ heap: process.memoryUsage().heapUsed / 2 ** 20 });
  }
  if (asked === "close") {
    await door.close();
    await store.close();
    process.exit(0);
  }
});
process.send?.({ isReady: true });
