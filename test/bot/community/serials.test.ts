// A chassis number tells one car from another and is given away to nobody: not by the store, not by a reply, not by a notice.
import { describe, expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { communityTalk, withKeepersPlace } from "../../support/community-talk.ts";

/** The same car, 1432, in the spellings people use; and a seventeen-character number. */
const spellings = [
  "chassis number WS-1432",
  "chassis no. ws 1432",
  "my chassis is WS1432",
  "VIN 01432",
  "the plate says WS-1432 on it",
  "serial: 1432",
];
const vin = "1M8GDM9AXKP042788";

const kinds = [
  "conversation",
  "observation",
  "pin",
  "handed-over",
  "asked",
  "notices",
  "ledger",
  "keepers",
  "settings",
];

async function everythingKept(store: ReturnType<typeof memoryStore>): Promise<string> {
  const kept: unknown[] = [];
  for (const kind of kinds) {
    for (const id of await store.ids(kind)) kept.push(id, await store.history(kind, id));
  }
  return JSON.stringify(kept);
}

describe("chassis numbers", () => {
  test.each([...spellings, vin, `vin ${vin}`])(
    "%j is neither kept nor repeated, whatever is done with it",
    async (spelling) => {
      const store = memoryStore();
      const talk = await withKeepersPlace(communityTalk(store));
      const figures = spelling.includes(vin) ? "042788" : "1432";
      const replies: string[] = [];
      for (const line of [
        `(ann) hello, ${spelling}`,
        `(ann) rear spoiler, rough inside, ${spelling}`,
        "(ann) ask a keeper",
        `(kim, keeper) ask back <1>: is it ${spelling}?`,
        `(ann) reply <1>: yes, ${spelling}`,
        `(kim, keeper) answer <1>: the first kind. ${spelling} has it too.`,
        `(kim, keeper) rear spoiler`,
        `(kim, keeper) pin this: as on ${spelling}`,
        `(kim, keeper) sources: ${spelling}`,
        "(kim, keeper) keep it",
        `(kim, keeper) pin for the question what of ${spelling}: it has it`,
        "(kim, keeper) keep it",
        "(ann) record an observation",
        "(ann) first spoiler",
        `(ann) ${spelling}`,
        "(ann) one owner from new",
        "(ann) today",
        `(ann) https://example.org/?car=x ${spelling}`,
        "(ann) yes",
        "(ann) record it",
        `(ann) nonsense ${spelling} nonsense`,
        "(kim, keeper) queue",
        "(kim, keeper) audit",
      ]) {
        replies.push(await talk.say(line));
      }
      expect(replies.join("\n")).not.toContain(figures);
      expect(await everythingKept(store)).not.toContain(figures);
    },
  );

  test("the spellings of one car have one digest, which another community does not share", async () => {
    const digests = new Set<string>();
    const found = async (community: string, spelling: string) => {
      const { bot, store } = communityTalk();
      await bot.receive({
        community,
        conversation: "c",
        from: "ann",
        text: `rear spoiler, my car has ${spelling}`,
      });
      const kept = JSON.stringify(await store.current("conversation", "c"));
      return /"serialDigest":"([0-9a-f]+)"/u.exec(kept)?.[1] ?? `none in ${spelling}`;
    };
    for (const spelling of spellings) digests.add(await found("home", spelling));
    expect([...digests]).toHaveLength(1);
    expect(await found("other-club", spellings[0] ?? "")).not.toBe([...digests][0]);
  });
});
