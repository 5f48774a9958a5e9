// What somebody can see, take along and end; and that the end is one, in the files too.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { photographKeeper } from "../../../adapters/photographs/index.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { openStoreFile } from "../../../adapters/store/open-store.ts";
import {
  communityMemories,
  emptyConversation,
  eraseAllDue,
  forgetOld,
  type Store,
} from "../../../bot/index.ts";
import { clockFrom, communityTalk, silentLog, withKeepersPlace } from "../../support/community-talk.ts";

/** Words that nobody else says. */
const telling = "zanzibarred";
const annsLines = [
  `(anneliese) rear spoiler, rough inside, tips square, my car was built june 1980, ${telling}`,
  `(anneliese) ${telling} it has two drain notches`,
  "(anneliese) ask a keeper",
  `(kim, keeper) ask back <1>: why ${telling}?`,
  `(anneliese) reply <1>: because ${telling}`,
  "(anneliese) record an observation",
  "(anneliese) what I told decides",
  "(anneliese) one owner from new",
  "(anneliese) today",
  `(anneliese) https://example.org/${telling}`,
  "(anneliese) yes",
  "(anneliese) record it",
  "(kim, keeper) accept observation <2>",
  "(anneliese) share car sheet",
];

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

async function everything(store: Store): Promise<string> {
  const kinds = [
    [
      "conversation",
      "observation",
      "pin",
      "handed-over",
      "asked",
      "notices",
      "ledger",
      "keepers",
      "settings",
    ],
    ["person", "shared-sheet", "erasure", "photograph"],
  ].flat();
  const kept: unknown[] = [];
  for (const kind of kinds) {
    for await (const { id } of store.currents(kind, "")) kept.push(kind, id, await store.history(kind, id));
  }
  return JSON.stringify(kept);
}

async function told(store: Store, lines: readonly string[] = annsLines) {
  const talk = await withKeepersPlace(communityTalk(store));
  for (const line of lines) await talk.say(line);
  return talk;
}

describe("what is mine", () => {
  test("is counted, and exported whole, for its owner only", async () => {
    const talk = await told(memoryStore());
    expect(await talk.say("(anneliese) mine")).toMatch(
      /only to the one who asked[\s\S]*1 case with 3 facts[\s\S]*1 observation[\s\S]*1 case handed to the keepers[\s\S]*1 car sheet shared/u,
    );
    const reply = await talk.bot.receive({
      conversation: "club:bench",
      from: "anneliese",
      text: "export mine",
    });
    const file = reply.blocks.find((block) => block.kind === "file");
    expect(file?.kind === "file" && JSON.parse(file.text)).toMatchObject({
      cases: [
        {
          case: "case-1",
          facts: [{ feature: "inside-finish" }, { feature: "tips" }, { feature: "drain-notches" }],
        },
      ],
      observations: [{ by: "anneliese", stands: "accepted" }],
    });
    expect(await talk.say("(bert) mine")).toContain("Nothing of yours is kept here.");
    const his = await talk.bot.receive({ conversation: "club:bench", from: "bert", text: "export mine" });
    expect(JSON.stringify(his.blocks)).not.toContain(telling);
  });
});

describe("erasing what is mine", () => {
  test("takes name and words out of every version of every record, and leaves what others said", async () => {
    const store = memoryStore();
    const talk = await told(store, [
      ...annsLines,
      "(bert) door mirror, cast alloy, my own car built june 1981",
    ]);
    expect(await everything(store)).toContain(telling);
    expect(await talk.say("(anneliese) erase mine")).toContain("Shall it?");
    expect(await talk.say("(anneliese) erase all of it")).toContain("It is erased.");
    const left = await everything(store);
    expect(left).not.toContain(telling);
    expect(left).not.toContain("anneliese");
    expect(left).toContain("cast alloy");
    expect(await talk.say("(anneliese) mine")).toContain("Nothing of yours is kept here.");
    expect(await talk.say("(bert) what do you know so far?")).toContain("housing material");
  });

  test("keeps the sighting without the name when its owner says so, and the answers still go by it", async () => {
    const store = memoryStore();
    const talk = await told(store);
    await talk.say("(anneliese) erase mine");
    expect(await talk.say("(anneliese) erase, but keep sightings without my name")).toContain(
      "It is erased.",
    );
    const left = await everything(store);
    expect(left).not.toContain(telling);
    expect(left).not.toContain("anneliese");
    expect(left).toContain('"stands":"accepted"');
    expect(await talk.say("(kim, keeper) observation <2>")).toContain("somebody who has left");
  });

  test("a message that the platform delivers again is told that its answer is gone", async () => {
    const store = memoryStore();
    const { bot } = communityTalk(store);
    const said = { conversation: "club:bench", from: "ann", id: "m1", text: "rear spoiler, rough inside" };
    await bot.receive(said);
    for (const text of ["erase mine", "erase all of it"]) await bot.receive({ ...said, id: text, text });
    expect(JSON.stringify((await bot.receive(said)).blocks)).toContain("This answer was erased");
    expect(JSON.stringify((await bot.receive({ ...said, id: "m2" })).blocks)).toContain("I read");
  });

  test("asks first, and does nothing when left", async () => {
    const store = memoryStore();
    const talk = await told(store);
    await talk.say("(anneliese) erase mine");
    expect(await talk.say("(anneliese) leave it")).toContain("Nothing is erased.");
    expect(await everything(store)).toContain(telling);
  });

  test("what a crash has left to be erased is erased at the next start", async () => {
    const store = memoryStore();
    const talk = await told(store);
    const broken: Store = {
      ...store,
      erase: () => Promise.reject(new Error("the power went")),
    };
    const interrupted = communityTalk(broken, clockFrom(Date.UTC(2026, 10, 1, 13)));
    await interrupted.say("(anneliese) erase mine");
    await expect(interrupted.say("(anneliese) erase all of it")).rejects.toThrow("the power went");
    expect(await everything(store)).toContain(telling);
    const place = (id: string, state: unknown) =>
      store.advance({ kind: "door-place", id, by: "door", at: 1, why: "shown" }, () => ({
        state,
        outcome: null,
      }));
    await place("1", { asker: "anneliese" });
    await place("2", { asker: "anneliese the second" });
    await eraseAllDue(store, Date.UTC(2026, 10, 2), [{ kind: "door-place" }]);
    expect(await everything(store)).not.toContain(telling);
    expect(await talk.say("(anneliese) mine")).toContain("Nothing of yours is kept here.");
    expect(await store.ids("door-place")).toEqual(["2"]);
  });

  test("the last owner is kept from locking everybody out", async () => {
    const talk = communityTalk();
    await talk.say("(root, owner) invite an owner");
    await talk.say("(olga) redeem <1>");
    expect(await talk.say("(olga) erase mine")).toContain("You are the last owner here");
  });

  test("what was erased is in no file of the database, photographs included", async () => {
    const folder = mkdtempSync(join(tmpdir(), "erase-"));
    folders.push(folder);
    const store = await openStoreFile(join(folder, "kept.sqlite"), silentLog);
    const keeper = photographKeeper(store, clockFrom());
    const sharp = (await import("sharp")).default;
    const pixels = await sharp({ create: { width: 60, height: 40, channels: 3, background: "#a05030" } })
      .png()
      .toBuffer();
    const taken = await keeper.take(pixels, "anneliese");
    expect(taken.ok).toBe(true);
    const id = taken.ok ? taken.id : "";
    const talk = await told(store);
    await talk.say("(anneliese) erase mine");
    await talk.say("(anneliese) erase all of it");
    expect(await keeper.read(id)).toBeUndefined();
    await store.close();
    for (const name of readdirSync(folder)) {
      const bytes = readFileSync(join(folder, name), "latin1");
      expect(bytes.includes(telling)).toBe(false);
      expect(bytes.includes("anneliese")).toBe(false);
    }
  });
});

describe("how long cases are kept", () => {
  test("cases that nobody touched for longer than the community says are forgotten, younger ones are not", async () => {
    const store = memoryStore();
    const old = communityTalk(store, clockFrom(Date.UTC(2024, 0, 15)));
    await old.bot.receive({ conversation: "club:old", from: "ann", text: "rear spoiler, rough inside" });
    const young = communityTalk(store, clockFrom(Date.UTC(2026, 8, 15)));
    await young.bot.receive({ conversation: "club:young", from: "ann", text: "rear spoiler, rough inside" });
    const memories = communityMemories(store);
    const now = Date.UTC(2026, 10, 1);
    expect(await forgetOld(store, memories, now)).toBe(0);
    await young.bot.receive({
      conversation: "club:young",
      from: "olga",
      standing: "owner",
      text: "forget cases after 12 months",
    });
    expect(await forgetOld(store, memories, now)).toBe(1);
    // The numbers its cases had are all that is left.
    expect(await store.current("conversation", "club:old")).toEqual({ ...emptyConversation, lastGone: 1 });
    expect(JSON.stringify(await store.history("conversation", "club:old"))).not.toMatch(/rough|ann\b/u);
    expect(await store.current("conversation", "club:young")).toHaveProperty("cases.length", 1);
    expect(await forgetOld(store, memories, now)).toBe(0);
    expect(await forgetOld(store, memories, Date.UTC(2040, 0, 1))).toBe(1);
  });

  test("a case after one that was forgotten has a number of its own, and can be put to the keepers", async () => {
    const store = memoryStore();
    const old = communityTalk(store, clockFrom(Date.UTC(2024, 0, 15)));
    await old.say("(olga, owner) forget cases after 12 months");
    await old.say("(ann) rear spoiler, rough inside");
    expect(await old.say("(ann) ask a keeper")).toContain("with the keepers now");
    expect(await forgetOld(store, communityMemories(store), Date.UTC(2026, 10, 1))).toBe(1);
    const later = communityTalk(store, clockFrom());
    await later.say("(bert) door mirror, two screws");
    expect(await later.say("(bert) ask a keeper")).toContain("with the keepers now, with its notes, as <1>");
    expect(
      await later.bot.receive({ conversation: "club:bench", from: "bert", text: "door mirror" }),
    ).toMatchObject({
      summary: { case: "case-2" },
    });
  });

  test("a case after one that was erased has a number of its own", async () => {
    const { bot, say } = communityTalk();
    await say("(ann) rear spoiler, rough inside");
    await say("(ann) erase mine");
    await say("(ann) erase all of it");
    const reply = await bot.receive({
      conversation: "club:bench",
      from: "bert",
      text: "door mirror, two screws",
    });
    expect(reply.summary.case).toBe("case-2");
  });
});
