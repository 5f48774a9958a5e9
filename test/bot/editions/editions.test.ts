// What a changed handbook does to the people: keepers are told, open cases go on and say when their answer has turned.
import { describe, expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import {
  communityMemories,
  editionWatch,
  type Knowledge,
  knowledgeOf,
  openBot,
  plainText,
  type Reply,
} from "../../../bot/index.ts";
import { loadHandbook } from "../../../knowledge/index.ts";
import { carefulFiles, carefulHandbook } from "../../support/careful-handbook.ts";
import { clockFrom, silentLog } from "../../support/community-talk.ts";

const handle = "parts/door-handle.yaml";

function edition(...changes: readonly (readonly [string, string])[]) {
  const text = changes.reduce((before, [from, to]) => {
    expect(before).toContain(from);
    return before.replace(from, () => to);
  }, carefulHandbook[handle] ?? "");
  const files = carefulFiles({ [handle]: text });
  const loaded = loadHandbook(files);
  if (!loaded.ok) throw new Error(loaded.problems.map(({ message }) => message).join());
  return { handbook: loaded.handbook, files };
}

const first = edition();
/** The early handle has the brass button after all, and the late one the steel one. */
const swapped = edition(
  ['button: { steel: "nearly always, 9 of 9", sources: [measured] }', "button: { brass: nearly always }"],
  [
    "button: { brass: nearly always }\n      length: { mean: 132",
    "button: { steel: nearly always }\n      length: { mean: 132",
  ],
);
const reworded = edition(["Take the handle off and look", "Off with it, and look"]);

function club() {
  const [store, clock] = [memoryStore(), clockFrom()];
  let known: readonly Knowledge[] = [knowledgeOf(first.handbook)];
  const around = {
    store,
    memories: communityMemories(store),
    clock,
    log: silentLog,
    secretKey: "only for tests",
  };
  const bot = openBot({ ...around, knowledge: () => known, platform: "club" });
  const watch = editionWatch(around);
  return {
    bot,
    store,
    watch,
    async say(text: string): Promise<Reply> {
      return bot.receive({ conversation: "club:1", from: "ann", community: "tarn-club", text });
    },
    async serve({ handbook, files }: typeof first) {
      known = [knowledgeOf(handbook)];
      await watch.taken(handbook, files);
    },
    async toldToKeepers() {
      const notices = await bot.notices(100);
      for (const { id } of notices) await bot.noticeSettled(id, "told");
      return notices.map(({ community, to, reply }) => `${community} ${to.audience}: ${plainText(reply)}`);
    },
    async settle(handbooks: readonly string[] | null) {
      const settings = {
        handbooks,
        units: "metric" as const,
        retentionMonths: null,
        platforms: { club: {} },
      };
      await bot.changeSettings("tarn-club", "kim", settings);
    },
    async pin(id: string, variants: readonly string[]) {
      const scope = {
        handbook: "tarn",
        part: "door-handle",
        goal: null,
        built: null,
        models: [],
        trims: [],
        markets: [],
        variants,
        question: null,
      };
      const state = {
        text: "So it is.",
        author: "kim",
        authorName: "Kim",
        at: 1,
        scope,
        says: [],
        sources: [],
        review: null,
        stands: "standing",
        flagged: null,
      };
      await store.advance({ kind: "pin", id: `tarn-club/${id}`, by: "kim", at: 1, why: "pinned" }, () => ({
        state,
        outcome: null,
      }));
    },
  };
}

describe("keepers", () => {
  test("are told what changed in words, with how many pinned answers each change touches", async () => {
    const { serve, settle, pin, toldToKeepers } = club();
    await settle(null);
    await pin("1", []);
    await pin("2", ["flat-late"]);
    await pin("3", ["round"]);
    await serve(first);
    expect(await toldToKeepers()).toEqual([]);
    await serve(swapped);
    const [told = "", ...more] = await toldToKeepers();
    expect(more).toEqual([]);
    expect(told).toMatch(
      /^tarn-club keepers: Tarn handle book: edition [0-9a-f]{8} in place of [0-9a-f]{8}\./u,
    );
    expect(told).toContain(
      "The Late flat handle now “nearly always” has Steel (Push button); nothing was said before. 2 pinned answers touch it.",
    );
    expect(told).toContain(
      "The Early flat handle now “nearly always” has Brass (Push button); nothing was said before. One pinned answer touches it.",
    );
  });

  test("are told why changed files are not taken, once", async () => {
    const { watch, settle, serve, toldToKeepers } = club();
    await settle(["tarn"]);
    await serve(first);
    await watch.refused(first.handbook, ["cars.yaml:3:1  it is broken … mend it"]);
    await watch.refused(first.handbook, ["cars.yaml:3:1  it is broken … mend it"]);
    const told = await toldToKeepers();
    expect(told).toHaveLength(1);
    expect(told[0]).toContain("The changed handbook Tarn handle book is not taken");
    expect(told[0]).toContain("cars.yaml:3:1  it is broken … mend it");
  });

  test("read in its history what an edition changed, also after files that were refused in between", async () => {
    const { store, watch, serve } = club();
    await serve(first);
    await serve(swapped);
    const kept = () => store.current("edition", "tarn");
    const before = await kept();
    expect(before).toHaveProperty("changes.length", 5);
    await watch.refused(swapped.handbook, ["cars.yaml:3:1  it is broken … mend it"]);
    await serve(swapped);
    expect(await kept()).toEqual(before);
  });

  test("of communities that go by other handbooks, or have no place to meet, are told nothing", async () => {
    const { serve, settle, toldToKeepers } = club();
    await serve(first);
    await serve(swapped);
    await settle(["another"]);
    await serve(first);
    expect(await toldToKeepers()).toEqual([]);
  });
});

describe("an open case", () => {
  const facts = "door handle, flat lever, brass button";

  test("goes on under the new edition, and says when its answer has turned", async () => {
    const { say, serve } = club();
    const before = await say(facts);
    expect(before.summary.ranking[0]?.variant).toBe("flat-late");
    await serve(swapped);
    const after = await say("what do you know so far?");
    expect(after.summary.ranking[0]?.variant).toBe("flat-early");
    expect(after.summary.understood).toEqual(before.summary.understood);
    expect(plainText(after)).toMatch(
      /The handbook has a new edition \([0-9a-f]{8}, before [0-9a-f]{8}\), and it changes this answer: it was the Late flat handle, .* \(\d\d %\), and is now the Early flat handle, .* \(\d\d %\)\./u,
    );
    expect(plainText(await say("what do you know so far?"))).not.toContain("new edition");
  });

  test("says nothing of an edition that changes other things", async () => {
    const { say, serve } = club();
    await say(facts);
    await serve(reworded);
    expect(plainText(await say("what do you know so far?"))).not.toContain("new edition");
  });

  test("says when the same answer has become much surer or less sure", async () => {
    const { say, serve } = club();
    await say("door handle, flat lever");
    await serve(
      edition(
        ["lever: { flat: usually, hooked: sometimes }", "lever: { hooked: always }"],
        ["lever: { flat: always }", "lever: { round: usually, flat: rarely }"],
      ),
    );
    const after = plainText(await say("what do you know so far?"));
    expect(after).toMatch(/The handbook has a new edition/u);
  });

  test("whose answer is gone from the handbook names it by its id", async () => {
    const { say, serve } = club();
    await say("door handle, hooked lever");
    const block =
      (carefulHandbook[handle] ?? "").match(/ {2}- id: copy[\s\S]*?coil: always \}\n/u)?.[0] ?? "";
    await serve(edition([block, ""]));
    expect(plainText(await say("what do you know so far?"))).toMatch(/it was copy, .* and is now/u);
  });

  test("kept by an earlier version of the program is read as it is", async () => {
    const { say, store } = club();
    await say(facts);
    await store.advance({ kind: "conversation", id: "club:1", by: "x", at: 1, why: "older" }, (state) => ({
      state: JSON.parse(JSON.stringify(state), (key, value) => (key === "answered" ? undefined : value)),
      outcome: null,
    }));
    expect((await say("what do you know so far?")).summary.understood).toHaveLength(2);
  });
});
