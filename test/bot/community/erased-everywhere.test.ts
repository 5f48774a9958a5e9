// That somebody who has erased what is theirs is nowhere any more: not in other conversations, in what keepers did, nor in another process.
import { describe, expect, test } from "vitest";
import { doorKinds } from "../../../adapters/door-kinds.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { type Bot, communityMemories, openBot, pagesOf, plainText, type Store } from "../../../bot/index.ts";
import { clockFrom, silentLog } from "../../support/community-talk.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";

/** A process of its own on the store, and how people speak to it: in the conversation and with a message id each. */
function processOn(store: Store) {
  const around = {
    knowledge: () => [demoKnowledge()],
    store,
    memories: communityMemories(store),
    clock: clockFrom(),
    log: silentLog,
    platform: "club",
    secretKey: "a secret that only tests know, and they tell everybody",
    doorKinds,
  };
  const bot: Bot = openBot(around);
  let number = 0;
  return {
    bot,
    pages: pagesOf(around),
    async say(conversation: string, from: string, text: string, more: object = {}): Promise<string> {
      number += 1;
      const name = `${from[0]?.toUpperCase()}${from.slice(1)}`;
      const id = `${conversation} ${number}`;
      const reply = await bot.receive({ conversation, from: `club:${from}`, name, id, text, ...more });
      return plainText(reply);
    },
  };
}

const keeper = { standing: "keeper" } as const;
const owner = { standing: "owner" } as const;
const idIn = (text: string) => /\b[0-9a-hjkmnp-tv-z]{4}-[0-9a-hjkmnp-tv-z]{4}\b/u.exec(text)?.[0] ?? "no id";
const own = "which rear spoiler is it? rough inside, tips square, my car was built june 1980";

type Process = ReturnType<typeof processOn>;

async function recorded({ say }: Process, from: string, where: string): Promise<string> {
  for (const text of [
    own,
    "record an observation",
    "what I told decides",
    "one owner",
    "today",
    "none",
    "yes",
  ])
    await say(where, from, text);
  return idIn(await say(where, from, "record it"));
}

async function everythingKept(store: Store, kinds: readonly string[]): Promise<string> {
  const kept: unknown[] = [];
  for (const kind of kinds) {
    for await (const { id } of store.currents(kind, "")) kept.push(kind, id, await store.history(kind, id));
  }
  return JSON.stringify(kept);
}

const kindsOfCommunity = [
  ["conversation", "observation", "pin", "handed-over", "notices", "ledger", "keepers", "settings", "person"],
  ["sign-in-link", "shared-sheet", "shared-answer", "erasure", "web-transcript"],
].flat();

async function eraseAll({ say }: Process, from: string, confirmed = "erase all of it"): Promise<string> {
  await say("club:aside", from, "erase mine");
  return say("club:aside", from, confirmed);
}

describe("what is asked of one's own", () => {
  test.each(["what is mine?", "Mine?", "mine!!"])(
    "%j finds what was said in another conversation",
    async (text) => {
      const { say } = processOn(memoryStore());
      await say("club:yard", "anneliese", own);
      expect(await say("club:bench", "anneliese", text)).toContain("1 case with");
    },
  );

  test.each(["Erase all of it!!", "erase all of it...", "erase all of it?"])(
    "%j erases the other conversations too",
    async (text) => {
      const store = memoryStore();
      const one = processOn(store);
      await one.say("club:yard", "anneliese", own);
      expect(await eraseAll(one, "anneliese", text)).toContain("It is erased.");
      expect(await everythingKept(store, kindsOfCommunity)).not.toContain("anneliese");
    },
  );

  test("a conversation that can no longer be read is erased with the others", async () => {
    const store = memoryStore();
    const one = processOn(store);
    await one.say("club:yard", "anneliese", own);
    await store.advance({ kind: "conversation", id: "club:yard", by: "hand", at: 1, why: "damaged" }, () => ({
      state: { version: 0, words: "of anneliese" },
      outcome: null,
    }));
    await one.say("club:bench", "anneliese", own);
    await eraseAll(one, "anneliese");
    expect(await everythingKept(store, kindsOfCommunity)).not.toContain("anneliese");
  });

  test("who has only answered others, or shared an answer, is told so and can erase it", async () => {
    const one = processOn(memoryStore());
    await one.say("club:yard", "bert", own);
    const id = idIn(await one.say("club:yard", "bert", "ask a keeper"));
    await one.say("club:keepers", "hanna", `answer ${id}: It is the first one.`, keeper);
    expect(await one.say("club:aside", "hanna", "mine", keeper)).toContain(
      "1 reply of yours to others’ cases and observations",
    );
    await one.say("club:yard", "bert", "share this answer");
    expect(await one.say("club:yard", "bert", "mine")).toContain("1 answer shared as a page");
    expect(await eraseAll(one, "hanna")).toContain("It is erased.");
    expect(await one.say("club:aside", "hanna", "mine", keeper)).toContain("Nothing of yours is kept here.");
  });
});

describe("a keeper who has left", () => {
  test("is named in nothing that they did: invitations, answers, reviews, pins, links to the desk", async () => {
    const store = memoryStore();
    const one = processOn(store);
    const settings = await one.bot.settings("home");
    await one.bot.changeSettings("home", "set-up", { ...settings, platforms: { club: {} } });
    const code = /redeem ([0-9a-f]{20})/u.exec(
      await one.say("club:top", "olga", "invite a keeper", owner),
    )?.[1];
    await one.say("club:keepers", "hanna", `redeem ${code}`);
    const seen = await recorded(one, "bert", "club:yard");
    await one.say("club:keepers", "hanna", `ask about observation ${seen}: Was it wet?`);
    await one.say("club:keepers", "hanna", `accept observation ${seen}`);
    const asked = idIn(await one.say("club:yard", "bert", "ask a keeper"));
    await one.say("club:keepers", "hanna", `answer ${asked}: Zanzibarred, and the first one.`);
    await one.say("club:keepers", "hanna", "pin for the question where is the label: Inside.");
    const pin = idIn(await one.say("club:keepers", "hanna", "keep it"));
    await one.say("club:top", "olga", `replace pin ${pin}: Inside, at the left.`, owner);
    await one.say("club:keepers", "hanna", "sign in");
    await one.say("club:top", "olga", "dismiss Hanna", owner);
    await eraseAll(one, "hanna");
    const left = await everythingKept(store, kindsOfCommunity);
    expect(left).not.toMatch(/hanna/iu);
    // What they said to others is for those others, and stays; who said it is not.
    expect(left).toContain("Was it wet?");
    expect(left).toContain("Inside, at the left.");
    expect(await one.say("club:top", "olga", "audit", owner)).not.toMatch(/hanna|zanzibarred/iu);
  });

  test("is not named on the page of somebody to whom they answered, where the answer stays", async () => {
    const store = memoryStore();
    const one = processOn(store);
    await one.say("club:yard", "bert", own);
    const asked = idIn(await one.say("club:yard", "bert", "ask a keeper"));
    await one.say("club:keepers", "hanna", `answer ${asked}: It is the first one.`, keeper);
    const turn = (id: string, text: string) => ({ id, said: "", blocks: [{ kind: "text", text }] });
    const page = { turns: [turn("1", "Which part is it?"), turn("2", "Hanna, a keeper, on your case 1:")] };
    await store.advance({ kind: "web-transcript", id: "club:yard", by: "web", at: 1, why: "said" }, () => ({
      state: page,
      outcome: null,
    }));
    await eraseAll(one, "hanna");
    const left = await everythingKept(store, kindsOfCommunity);
    expect(left).not.toContain("Hanna");
    expect(left).toContain("Which part is it?");
    expect(left).toContain("somebody who has left, a keeper, on your case 1:");
    expect(left).toContain("It is the first one.");
  });

  test("is gone from what another process knows as well", async () => {
    const store = memoryStore();
    const [one, other] = [processOn(store), processOn(store)];
    await one.say("club:yard", "bert", own);
    const asked = idIn(await one.say("club:yard", "bert", "ask a keeper"));
    await one.say("club:keepers", "hanna", `ask back ${asked}: Is it heavy?`, keeper);
    expect(JSON.stringify(await other.pages.cases("home"))).toContain("Hanna");
    await eraseAll(one, "hanna");
    expect(JSON.stringify(await other.pages.cases("home"))).not.toContain("Hanna");
  });
});

describe("somebody whose case went through the keepers’ hands", () => {
  test("is no longer in the answers that the keepers were given about it", async () => {
    const store = memoryStore();
    const one = processOn(store);
    await one.say("club:yard", "anneliese", own);
    const asked = idIn(await one.say("club:yard", "anneliese", "ask a keeper"));
    const look = { conversation: "club:keepers", from: "club:hanna", name: "Hanna", id: "look", ...keeper };
    const reply = async () => JSON.stringify(await one.bot.receive({ ...look, text: "queue" }));
    expect(await reply()).toContain("Anneliese");
    const answer = { ...look, id: "answer", text: `answer ${asked}: It is the first one.` };
    expect(JSON.stringify(await one.bot.receive(answer))).toContain("Anneliese");
    await one.say("club:keepers", "hanna", "rear spoiler, rough inside", keeper);
    await eraseAll(one, "anneliese");
    expect(await reply()).toContain("This answer was erased");
    expect(JSON.stringify(await one.bot.receive(answer))).toContain("This answer was erased");
    expect(await one.say("club:keepers", "hanna", "what do you know so far?", keeper)).toContain("rough");
  });

  test("leaves accepted sightings when they say so, and none that nobody goes by", async () => {
    const store = memoryStore();
    const one = processOn(store);
    const accepted = await recorded(one, "anneliese", "club:yard");
    const waiting = await recorded(one, "anneliese", "club:shed");
    await one.say("club:keepers", "kim", `accept observation ${accepted}`, keeper);
    await eraseAll(one, "anneliese", "erase, but keep sightings without my name");
    expect(await store.ids("observation")).toEqual([`home/${accepted}`]);
    expect(await one.say("club:keepers", "kim", `observation ${waiting}`, keeper)).toContain("There is no");
    expect(
      await one.say("club:keepers", "kim", `ask about observation ${accepted}: Was it wet?`, keeper),
    ).toContain("has left");
    await one.say("club:keepers", "kim", `decline observation ${accepted} because it was wet`, keeper);
    expect(await store.ids("notices")).not.toContain("home/erased");
  });
});

test("a wish to be erased that comes again after a crash is carried out before it is answered", async () => {
  const store = memoryStore();
  const dying = processOn({ ...store, erase: () => Promise.reject(new Error("the power went")) });
  await dying.say("club:yard", "anneliese", own);
  await dying.say("club:yard", "anneliese", "erase mine");
  const wish = { conversation: "club:yard", from: "club:anneliese", id: "wish", text: "erase all of it" };
  await expect(dying.bot.receive(wish)).rejects.toThrow("the power went");
  const { bot } = processOn(store);
  await bot.receive(wish);
  expect(await everythingKept(store, kindsOfCommunity)).not.toContain("anneliese");
});

test("what a group’s place shows to them is forgotten in all its versions, and what it shows to others stays", async () => {
  const store = memoryStore();
  const { bot } = processOn(store);
  const place = { kind: "telegram-place", id: "telegram:-7", by: "telegram", at: 1, why: "shown" };
  const board = (person: number) => ({
    key: `board of ${person}`,
    case: "case-1",
    person,
    messages: [1],
    question: null,
    subject: null,
    buttons: [],
    after: 0,
    isSent: true,
  });
  for (const persons of [[55], [55, 66], [66]]) {
    const state = { boards: persons.map(board), answered: [`answered to ${persons.join()}`] };
    await store.advance(place, () => ({ state, outcome: null }));
  }
  const said = { conversation: "telegram:-7", community: "telegram--7", from: "telegram:55" };
  for (const text of [own, "erase mine", "erase all of it"]) await bot.receive({ ...said, text });
  const left = JSON.stringify(await store.history(place.kind, place.id));
  expect(left).not.toContain("board of 55");
  expect(left).toContain("board of 66");
});
