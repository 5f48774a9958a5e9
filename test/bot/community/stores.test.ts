// A community's conversations read the same whatever keeps them, and processes on one database hear each other.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import type { DatabaseStore } from "../../../adapters/store/database-store.ts";
import { openStore } from "../../../adapters/store/open-store.ts";
import { clockFrom, communityTalk, silentLog, withKeepersPlace } from "../../support/community-talk.ts";
import { parseGolden } from "../../support/golden-conversation.ts";
import { newPlaces } from "../../support/store-places.ts";

const folder = join(import.meta.dirname, "../../conversations/community");
const files = readdirSync(folder).filter((name) => name.endsWith(".txt"));

const open: DatabaseStore[] = [];
afterEach(async () => {
  for (const store of open.splice(0)) await store.close();
});

async function opened(place: Parameters<typeof openStore>[0]): Promise<DatabaseStore> {
  const store = await openStore(place, silentLog);
  open.push(store);
  return store;
}

describe.each(["SQLite", "Postgres"] as const)("a community on %s", (engine) => {
  test.each(files)("%s reads as it does in memory", async (name) => {
    const talk = await withKeepersPlace(communityTalk(await opened(await newPlaces[engine]())));
    for (const { said, reply } of parseGolden(readFileSync(join(folder, name), "utf8"))) {
      expect(`> ${said}\n${await talk.say(said)}`).toBe(`> ${said}\n${reply}`);
    }
  });

  test("of two processes that accept and withdraw one observation at the same moment, one is told that it came late", async () => {
    const place = await newPlaces[engine]();
    const [one, other] = [
      communityTalk(await opened(place)),
      communityTalk(await opened(place), clockFrom(Date.UTC(2026, 10, 1, 13))),
    ];
    await one.say("(ann) rear spoiler, rough inside, tips square, my car was built june 1980");
    for (const words of [
      "record an observation",
      "what I told decides",
      "one owner from new",
      "today",
      "none",
      "no",
    ]) {
      await one.say(`(ann) ${words}`);
    }
    const id = /[0-9a-z]{4}-[0-9a-z]{4}/u.exec(
      JSON.stringify(await one.bot.receive({ conversation: "club:bench", from: "ann", text: "record it" })),
    )?.[0];
    await other.say("(kim, keeper) queue");
    const keeper = { from: "kim", name: "kim", standing: "keeper" } as const;
    const said = await Promise.all([
      one.bot.receive({ ...keeper, conversation: "club:a", text: `accept observation ${id}` }),
      other.bot.receive({ conversation: "club:b", from: "ann", text: `withdraw observation ${id}` }),
    ]);
    const history = await one.store.history("observation", `home/${id}`);
    const last = history.at(-1)?.state;
    const replies = JSON.stringify(said.map(({ blocks }) => blocks));
    // Either the withdrawal came last, or the acceptance found it withdrawn and said so.
    expect(last).toMatchObject({ stands: "withdrawn" });
    expect(history.length === 3 || replies.includes("withdrawn already")).toBe(true);
  });

  test("a pin that two keepers make at the same moment from one message each is there once for each", async () => {
    const place = await newPlaces[engine]();
    const [one, other] = [communityTalk(await opened(place)), communityTalk(await opened(place))];
    const pinning = async (talk: typeof one, keeper: string) => {
      const said = (text: string, id: string) => ({
        conversation: `club:${keeper}`,
        from: keeper,
        standing: "keeper" as const,
        id: `${keeper} ${id}`,
        text,
      });
      await talk.bot.receive(said("rear spoiler", "1"));
      await talk.bot.receive(said(`pin this: the words of ${keeper}`, "2"));
      // The platform delivers the last one twice, to both processes.
      await Promise.all([one, other].map(({ bot }) => bot.receive(said("keep it", "3"))));
    };
    await Promise.all([pinning(one, "kim"), pinning(other, "kai")]);
    expect(await one.store.ids("pin")).toHaveLength(2);
    expect(await one.store.version("ledger", "home")).toBe(2);
  });
});
