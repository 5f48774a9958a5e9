// What keepers do beside each other and before others: no word of one is lost for another's, and what only they may see stays with them.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { openStore } from "../../../adapters/store/open-store.ts";
import {
  communityMemories,
  type IncomingMessage,
  type Knowledge,
  knowledgeOf,
  openBot,
  pagesOf,
  plainText,
  SignInLink,
  type Standing,
  type Store,
  signInLinkKind,
} from "../../../bot/index.ts";
import { loadHandbook } from "../../../knowledge/index.ts";
import { carefulFiles } from "../../support/careful-handbook.ts";
import { clockFrom, silentLog } from "../../support/community-talk.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";
import { keepSeen, seenCar, seenId } from "../../support/seen-cars.ts";
import { newPlaces } from "../../support/store-places.ts";

function processOn(store: Store, known: readonly Knowledge[] = [demoKnowledge()]) {
  const around = {
    knowledge: () => known,
    store,
    memories: communityMemories(store),
    clock: clockFrom(),
    log: silentLog,
    platform: "club",
    secretKey: "a secret that only tests know, and they tell everybody",
  };
  const bot = openBot(around);
  const receive = (from: string, text: string, standing?: Standing, more: Partial<IncomingMessage> = {}) =>
    bot.receive({
      conversation: `club:${from}`,
      from,
      name: from,
      text,
      ...(standing === undefined ? {} : { standing }),
      ...more,
    });
  return {
    bot,
    pages: pagesOf(around),
    receive,
    say: async (...said: Parameters<typeof receive>) => plainText(await receive(...said)),
  };
}

describe("an observation", () => {
  const seen = seenCar(1, { variant: "second", year: 1980, month: 6, by: "bert", stands: "waiting" });

  test("two keepers who ask about it at the same moment are both kept, and so is the reply", async () => {
    const store = memoryStore();
    await keepSeen(store, [seen]);
    const [one, other] = [processOn(store), processOn(store)];
    const id = seenId(0);
    await Promise.all([
      one.receive("kim", `ask about observation ${id}: Was it wet?`, "keeper"),
      other.receive("hanna", `ask about observation ${id}: Was it warm?`, "keeper"),
      other.receive("bert", `reply ${id}: It rained.`),
    ]);
    const shown = await one.say("kim", `observation ${id}`, "keeper");
    for (const words of ["Was it wet?", "Was it warm?", "It rained."]) expect(shown).toContain(words);
  });

  test("that is accepted is shown to all as all may see it, and to its author and keepers alone with more", async () => {
    const store = memoryStore();
    await keepSeen(store, [{ ...seen, stands: "accepted" }]);
    const { receive } = processOn(store);
    await receive("kim", `ask about observation ${seenId(0)}: Was it wet?`, "keeper");
    const others = await receive("ann", `observation ${seenId(0)}`);
    expect(others.isPrivate).not.toBe(true);
    expect(plainText(others)).not.toMatch(/bert|wet/u);
    for (const [from, standing] of [["kim", "keeper"], ["bert"]] as const) {
      const more = await receive(from, `observation ${seenId(0)}`, standing);
      expect(more.isPrivate).toBe(true);
      expect(plainText(more)).toMatch(/by bert[\s\S]*Was it wet/u);
    }
  });
});

describe("a keeper by invitation", () => {
  test("signs in as what the platform vouches for, so that the desk closes when the role ends", async () => {
    const store = memoryStore();
    const { say, pages } = processOn(store);
    const code = /redeem ([0-9a-f]{20})/u.exec(await say("olga", "invite a keeper", "owner"))?.[1];
    await say("hanna", `redeem ${code}`);
    await say("hanna", "sign in");
    const [id = ""] = await store.ids(signInLinkKind.kind);
    const { guest } = SignInLink.parse(await store.current(signInLinkKind.kind, id));
    expect(await pages.standing("home", guest.person, guest.standing)).toBe("keeper");
    await say("olga", "dismiss hanna", "owner");
    expect(await pages.standing("home", guest.person, guest.standing)).toBe("contributor");
  });
});

describe("a secret", () => {
  test.each([
    ["invite a keeper", /redeem ([0-9a-f]{20})/u],
    ["sign in", /sign-in\/home\/([0-9a-f]{64})/u],
  ])("that is told to %j is told once, and stands nowhere in the store", async (words, pattern) => {
    const place = await newPlaces.SQLite();
    const store = await openStore(place, silentLog);
    const { receive } = processOn(store);
    const first = JSON.stringify(await receive("olga", words, "owner", { id: "m1" }));
    const secret = pattern.exec(first)?.[1] ?? "none";
    expect(first).toContain(secret);
    const again = JSON.stringify(await receive("olga", words, "owner", { id: "m1" }));
    expect(again).toContain("That was told once");
    expect(again).not.toContain(secret);
    await store.close();
    const files = readdirSync(place.dataFolder).map((name) =>
      readFileSync(join(place.dataFolder, name), "latin1"),
    );
    expect(files.join()).toContain("That was told once");
    expect(files.join()).not.toContain(secret);
  });
});

describe("answers that were shared", () => {
  test("are counted once when they are taken back", async () => {
    const { say } = processOn(memoryStore());
    await say("ann", "rear spoiler, rough inside");
    await say("ann", "share this answer");
    expect(await say("ann", "stop sharing answers")).toBe("Taken back: 1 page.");
    expect(await say("ann", "stop sharing answers")).toBe("None of your answers is shared.");
    await say("ann", "share this answer");
    expect(await say("ann", "stop sharing answers")).toBe("Taken back: 1 page.");
  });
});

describe("what a keeper pins", () => {
  const kim = (process: ReturnType<typeof processOn>) => (text: string) => process.say("kim", text, "keeper");
  const idIn = (text: string) =>
    /\b[0-9a-hjkmnp-tv-z]{4}-[0-9a-hjkmnp-tv-z]{4}\b/u.exec(text)?.[0] ?? "no id";

  test("is kept whatever characters its words are made of", async () => {
    const process = processOn(memoryStore());
    const say = kim(process);
    for (const words of [`${"x".repeat(58)}🔧 and on`, "with a \0 in it", "half a pair \ud83d here"]) {
      await say(`pin for the question where is it: ${words}`);
      const id = idIn(await say("keep it"));
      expect(await say(`pin ${id}`)).toContain(words.slice(0, 11));
      expect(await say(`withdraw pin ${id} because \0 ${words}`)).toContain("is withdrawn");
    }
  });

  test("and replaces when its review is due is not due any more; what is not due yet keeps its date", async () => {
    const process = processOn(memoryStore());
    const say = kim(process);
    const pin = async (date: string) => {
      await say(`pin for the question where is the label of ${date}: Inside.`);
      await say(`review by ${date}`);
      return idIn(await say("keep it"));
    };
    const [due, later] = [await pin("March 2026"), await pin("March 2027")];
    expect(await say("queue")).toContain(due);
    await say(`replace pin ${due}: Inside, at the left.`);
    await say(`replace pin ${later}: Inside, at the right.`);
    expect(await say("queue")).toBe("Nothing waits for a keeper.");
  });

  test("and a case speaks against is told to its asker as theirs, to keepers as an asker's, and on no page", async () => {
    const process = processOn(memoryStore());
    const say = kim(process);
    const settings = await process.bot.settings("home");
    await process.bot.changeSettings("home", "set-up", { ...settings, platforms: { club: {} } });
    await say("rear spoiler, which kind is it?");
    await say("pin this: It is the moulded one.");
    await say("says moulded spoiler");
    await say("for any question");
    await say("keep it");
    for (const from of ["ann", "bert"]) {
      const words = "rear spoiler, inside is rough, the tips are square, it has two drain notches";
      expect(await process.say(from, words)).toContain(
        "What you told speaks against this: it is not the Moulded spoiler but the First spoiler with drains, likely",
      );
    }
    const queue = await say("queue");
    expect(queue).toMatch(
      /What an asker told speaks against this: by that it is not the Moulded spoiler but/u,
    );
    const notices = await process.bot.notices(10);
    expect(notices).toHaveLength(1);
    for (const { reply } of notices) expect(plainText(reply)).not.toContain("What you told");
    expect(JSON.stringify(await process.pages.pins("home"))).not.toContain("told");
  });
});

describe("a case that was handed over", () => {
  const loaded = loadHandbook(carefulFiles({}));
  if (!loaded.ok) throw new Error("the careful handbook is sound");
  const both = [demoKnowledge(), knowledgeOf(loaded.handbook)];
  const idIn = (text: string) =>
    /\b[0-9a-hjkmnp-tv-z]{4}-[0-9a-hjkmnp-tv-z]{4}\b/u.exec(text)?.[0] ?? "no id";

  test("of another handbook than the keeper's is called by its part, and its answer is pinned for that", async () => {
    const { say } = processOn(memoryStore(), both);
    await say("ann", "which door handle is this, it has a brass button");
    const id = idIn(await say("ann", "ask a keeper"));
    expect(await say("kim", "queue", "keeper")).toContain(`${id}: Door handle`);
    await say("kim", `answer ${id}: The early one.`, "keeper");
    expect(await say("kim", `pin ${id}`, "keeper")).toContain("holds for: Door handle");
    await say("kim", "keep it", "keeper");
    expect(await say("bert", "which door handle is this?")).toContain("The early one.");
  });

  test("and a pin of another handbook is held against that one, in the queue and while it is made", async () => {
    const { say } = processOn(memoryStore(), both);
    const kim = (text: string) => say("kim", text, "keeper");
    await kim("which door handle is this, flat lever?");
    await kim("pin this: It is the early one.");
    expect(await kim("only for built 1974")).toContain("cars built 1974");
    await kim("says early flat handle");
    const kept = await kim("keep it");
    expect(kept).toContain("The handbook speaks against this");
    await kim("new case: which rear spoiler is it? rough inside");
    expect(await kim("queue")).toContain("The handbook speaks against this");
  });

  test("without a part gives no pin, which would hold nowhere", async () => {
    const { say } = processOn(memoryStore());
    await say("ann", "it is 41 cm wide and grey");
    const id = idIn(await say("ann", "ask a keeper"));
    await say("kim", `answer ${id}: A spoiler.`, "keeper");
    expect(await say("kim", `pin ${id}`, "keeper")).toContain("names no part");
    expect(await say("kim", "keep it", "keeper")).not.toContain("Pinned as");
  });
});
