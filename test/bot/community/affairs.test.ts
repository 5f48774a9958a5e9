// What must never happen to a community's knowledge, whoever speaks at the same moment and however often a message comes.
import { describe, expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { communityMemories, openBot } from "../../../bot/index.ts";
import { clockFrom, communityTalk, silentLog, withKeepersPlace } from "../../support/community-talk.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";
import { seenCar, seenId } from "../../support/seen-cars.ts";

const keeper = { from: "kim", name: "kim", standing: "keeper" } as const;
const said = (text: string, more: object = {}) => ({
  conversation: "club:bench",
  from: "ann",
  name: "ann",
  text,
  ...more,
});

/** Two processes on one store, each with what it knows of it. */
function twoProcesses() {
  const store = memoryStore();
  const open = () =>
    openBot({
      knowledge: () => [demoKnowledge()],
      store,
      memories: communityMemories(store),
      clock: clockFrom(),
      log: silentLog,
      platform: "club",
      secretKey: "a secret that only tests know, and they tell everybody",
    });
  return { store, one: open(), other: open() };
}

const textOf = (reply: Awaited<ReturnType<ReturnType<typeof openBot>["receive"]>>) =>
  JSON.stringify(reply.blocks);
const idIn = (text: string) => /[0-9a-z]{4}-[0-9a-z]{4}/u.exec(text)?.[0] ?? "";

async function pinned(bot: ReturnType<typeof openBot>, words: string): Promise<string> {
  await bot.receive(said("rear spoiler", keeper));
  await bot.receive(said(`pin this: ${words}`, keeper));
  return idIn(textOf(await bot.receive(said("keep it", keeper))));
}

describe("a community over several processes", () => {
  test("a pin made in one process comes first in the next answer of the other", async () => {
    const { one, other } = twoProcesses();
    await other.receive(said("rear spoiler"));
    const id = await pinned(one, "Ask for the label.");
    const reply = await other.receive(said("new case"));
    expect(reply.summary.pinned).toEqual([]);
    expect((await other.receive(said("rear spoiler"))).summary.pinned).toEqual([id]);
  });

  test("of two keepers who change one pin at the same moment both are heard, one after the other", async () => {
    const { store, one, other } = twoProcesses();
    const id = await pinned(one, "First words.");
    await other.receive(said("pins", keeper));
    await Promise.all([
      one.receive(said(`replace pin ${id}: Words of the one.`, { ...keeper, conversation: "club:a" })),
      other.receive(said(`replace pin ${id}: Words of the other.`, { ...keeper, conversation: "club:b" })),
    ]);
    const versions = await store.history("pin", `home/${id}`);
    expect(versions).toHaveLength(3);
    expect(await store.version("ledger", "home")).toBe(3);
  });

  test("an invitation is taken up once, even by two at the same moment", async () => {
    const { one, other } = twoProcesses();
    const reply = textOf(await one.receive(said("invite a keeper", { standing: "owner" })));
    const code = /redeem ([0-9a-f]{20})/u.exec(reply)?.[1] ?? "";
    const taken = await Promise.all([
      one.receive(said(`redeem ${code}`, { from: "bert", conversation: "club:a" })),
      other.receive(said(`redeem ${code}`, { from: "carl", conversation: "club:b" })),
    ]);
    const keepers = taken.filter((each) => textOf(each).includes("You are a keeper here now"));
    expect(keepers).toHaveLength(1);
  });

  test("an invitation is taken up in capitals and with a full stop as well", async () => {
    const { one } = twoProcesses();
    const reply = textOf(await one.receive(said("invite a keeper", { standing: "owner" })));
    const code = /redeem ([0-9a-f]{20})/u.exec(reply)?.[1] ?? "";
    const taken = await one.receive(said(`redeem “${code.toUpperCase()}”.`, { from: "bert" }));
    expect(textOf(taken)).toContain("You are a keeper here now");
  });

  test("a message that comes twice pins once and is told once", async () => {
    const { store, one, other } = twoProcesses();
    const settings = await one.settings("home");
    await one.changeSettings("home", "set-up", { ...settings, platforms: { club: {} } });
    await one.receive(said("rear spoiler, rough inside"));
    const first = await one.receive(said("ask a keeper", { id: "m7" }));
    const second = await other.receive(said("ask a keeper", { id: "m7" }));
    expect(second).toEqual(first);
    expect(await store.ids("handed-over")).toHaveLength(1);
    expect(await other.notices(10)).toHaveLength(1);
  });

  test("a case that is handed over twice at the same moment is with the keepers once", async () => {
    const { store, one, other } = twoProcesses();
    await one.receive(said("rear spoiler, rough inside"));
    const told = await Promise.all(
      [one, one, other].map((bot, at) => bot.receive(said("ask a keeper", { id: `m${at}` }))),
    );
    expect(await store.ids("handed-over")).toHaveLength(1);
    expect(told.filter((reply) => textOf(reply).includes("with the keepers already"))).toHaveLength(2);
  });

  test("a notice is told until somebody says that it was, and then no more", async () => {
    const talk = await withKeepersPlace(communityTalk());
    await talk.bot.receive(said("rear spoiler, rough inside"));
    await talk.bot.receive(said("ask a keeper"));
    const [notice] = await talk.bot.notices(10);
    expect(await talk.bot.notices(10)).toEqual([notice]);
    await talk.bot.noticeSettled(notice?.id ?? "", "told");
    await talk.bot.noticeSettled(notice?.id ?? "", "told");
    expect(await talk.bot.notices(10)).toEqual([]);
  });
});

test("notices that cannot be told do not hold up those that can", async () => {
  const { bot } = await withKeepersPlace(communityTalk());
  for (let at = 0; at < 6; at += 1) {
    await bot.receive(said("rear spoiler, rough inside", { conversation: `club:${at}` }));
    await bot.receive(said("ask a keeper", { conversation: `club:${at}` }));
  }
  const seen = new Set<string>();
  for (let look = 0; look < 3; look += 1) for (const { id } of await bot.notices(2)) seen.add(id);
  expect(seen.size).toBe(6);
  expect(await bot.notices(10)).toHaveLength(6);
});

test("nobody is told anything by a community they have not spoken in, whatever records it takes in", async () => {
  const talk = await withKeepersPlace(communityTalk());
  const { bot } = talk;
  const seen = { ...seenCar(1, { variant: "second", year: 1980, month: 6, by: "bert", stands: "waiting" }) };
  const list = ["club:of-others", "club:bench"].map((conversation, at) => ({
    id: seenId(at),
    ...seen,
    conversation,
  }));
  await bot.receive(said(`import observations: ${JSON.stringify(list)}`, keeper));
  for (const at of [0, 1])
    await bot.receive(said(`decline observation ${seenId(at)} because buy here`, keeper));
  expect(await bot.notices(10)).toEqual([]);
  await bot.receive(said("rear spoiler", { from: "bert" }));
  for (const at of [0, 1])
    await bot.receive(said(`ask about observation ${seenId(at)}: Was it wet?`, keeper));
  expect((await bot.notices(10)).map(({ to }) => to)).toEqual([
    { audience: "person", person: "bert", conversation: "club:bench" },
  ]);
});

describe("communities apart", () => {
  test("what is pinned in one is neither shown nor found in another", async () => {
    const { one } = twoProcesses();
    const id = await pinned(one, "Only for us.");
    const elsewhere = { community: "other-club", conversation: "club:elsewhere" };
    expect((await one.receive(said("rear spoiler", elsewhere))).summary.pinned).toEqual([]);
    expect(textOf(await one.receive(said(`pin ${id}`, { ...elsewhere, ...keeper })))).toContain(
      "There is no pinned answer",
    );
  });

  test("a role in one is none in another", async () => {
    const { one } = twoProcesses();
    const reply = textOf(await one.receive(said("invite a keeper", { standing: "owner" })));
    await one.receive(said(`redeem ${/redeem ([0-9a-f]{20})/u.exec(reply)?.[1] ?? ""}`, { from: "bert" }));
    const queue = (community: string) => one.receive(said("queue", { from: "bert", community }));
    expect(textOf(await queue("home"))).toContain("Nothing waits");
    expect(textOf(await queue("other-club"))).toContain("for a keeper to do");
  });
});

describe("who may not", () => {
  test.each([
    ["pin this: mine"],
    ["pin for the question where: there"],
    ["queue"],
    ["open questions"],
    ["audit"],
    ["invite a keeper"],
    ["set units to imperial"],
    ["forget cases after 1 month"],
  ])("a contributor who says %j changes nothing", async (text) => {
    const { store, one } = twoProcesses();
    await one.receive(said("rear spoiler"));
    const before = await store.version("ledger", "home");
    const reply = textOf(await one.receive(said(text)));
    expect(reply).toMatch(/That is for (?:a keeper|an owner) to do/u);
    expect(await store.version("ledger", "home")).toBe(before);
  });

  test("a keeper cannot make an owner, nor settle what is the owner's", async () => {
    const { one } = twoProcesses();
    for (const text of ["invite an owner", "set units to both"]) {
      expect(textOf(await one.receive(said(text, keeper)))).toContain("That is for an owner to do");
    }
  });
});

describe("names while typing", () => {
  test.each([
    ["", "door mirror"],
    ["rear", "rear spoiler"],
    ["mirrer", "door mirror"],
    ["second spoiler", "Second spoiler (rear spoiler)"],
  ])("%j proposes %s", async (typed, name) => {
    const { bot } = communityTalk();
    expect((await bot.suggest("home", typed)).map((one) => one.name)).toContain(name);
  });

  test("a pinned answer is found by its words, and never more than 25 names", async () => {
    const { one } = twoProcesses();
    const id = await pinned(one, "Ask for the label inside.");
    expect((await one.suggest("home", "lable")).map(({ say }) => say)).toContain(`pin ${id}`);
    expect((await one.suggest("home", "s")).length).toBeLessThanOrEqual(25);
  });
});
