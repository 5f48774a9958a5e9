// Nothing that was said stays unanswered for good: what stands in the way is outlasted, and who had to be given up is told.
import { setTimeout as pause } from "node:timers/promises";
import { describe, expect, test } from "vitest";
import { UnavailableError } from "../../../adapters/errors.ts";
import type { Notice, Store } from "../../../bot/index.ts";
import { directChannel } from "../../doubles/discord/world.ts";
import { asRead } from "./as-read.ts";
import type { Served } from "./served.ts";
import { eachServed } from "./tested.ts";

const begin = eachServed();
const question = "which rear spoiler is this? square tips";
const sends = /\/channels\/\d+\/messages$/u;
const original = /\/messages\/@original$/u;

/** A memory that cannot be written while `isFull`; of `kinds` alone, when some are named. */
function memoryThatFills(...kinds: readonly string[]) {
  const state = { isFull: false, refused: 0 };
  const around = (store: Store): Store => ({
    ...store,
    advance(change, advance) {
      if (!state.isFull || (kinds.length > 0 && !kinds.includes(change.kind)))
        return store.advance(change, advance);
      state.refused += 1;
      return Promise.reject(new UnavailableError("store: the disk is full"));
    },
  });
  return { state, around };
}

async function refusals(s: Served, state: { readonly refused: number }, least: number): Promise<void> {
  await s.double.until("refusals", () => state.refused >= least, 20_000);
}

const texts = (s: Served, channel = s.channel) =>
  s.double.written(channel.id).map(({ content }) => asRead(content));

describe("a memory that cannot be written for a while", () => {
  test("words, commands and presses are answered once it can, in the order in which they came, and once", async () => {
    const { state, around } = memoryThatFills();
    const s = await begin({ aroundStore: around });
    const { people } = s.double;
    const message = await s.answer(people.slash(s.ann, s.channel, "ask", { question }));
    state.isFull = true;
    people.press(s.ann, message, "cannot tell");
    await refusals(s, state, 1);
    people.mention(s.bert, s.channel, "it has two drain notches");
    const wheel = people.slash(s.bert, s.channel, "ask", {
      question: "which road wheel is this? eight spokes",
    });
    await refusals(s, state, 4);
    expect(texts(s)).toHaveLength(1);
    expect(message.edits).toBe(0);
    state.isFull = false;
    await s.settled();
    expect(asRead((wheel.original ?? message).content)).toContain("eight spokes");
    const told = texts(s).join("\n");
    expect(told).not.toContain("That message was lost");
    const history = await s.store.history("conversation", `discord:${s.channel.id}`);
    expect(history.map(({ by }) => by)).toEqual(
      [s.ann, s.ann, s.bert, s.bert].map(({ id }) => `discord:${id}`),
    );
  });

  test("an answer that was shown and could not be noted stays one message, and its buttons work", async () => {
    const { state, around } = memoryThatFills("discord-place");
    const s = await begin({ aroundStore: around });
    const { people } = s.double;
    state.isFull = true;
    people.mention(s.ann, s.channel, question);
    await refusals(s, state, 3);
    state.isFull = false;
    await s.settled();
    expect(texts(s)).toHaveLength(1);
    await s.restart();
    people.press(s.ann, s.last(), "cannot tell");
    await s.settled();
    expect(texts(s)).toHaveLength(1);
    expect(texts(s)[0]).toContain("cannot tell. I will not ask again");
  });

  test("a press whose edit could not be noted is taken as the press it was", async () => {
    const { state, around } = memoryThatFills("discord-place");
    const s = await begin({ aroundStore: around });
    const message = await s.answer(s.double.people.slash(s.ann, s.channel, "ask", { question }));
    state.isFull = true;
    s.double.people.press(s.ann, message, "cannot tell");
    await refusals(s, state, 3);
    state.isFull = false;
    await s.settled();
    expect(message.edits).toBe(1);
    expect(asRead(message.content)).toContain("cannot tell. I will not ask again");
  });

  test("when it lasts too long, who spoke is told; who did not speak to the bot is not", async () => {
    const { state, around } = memoryThatFills();
    const s = await begin({ aroundStore: around, patienceMilliseconds: 600 });
    const { people } = s.double;
    state.isFull = true;
    people.write(s.bert, s.channel, "does anybody come on Sunday?");
    people.mention(s.ann, s.channel, question);
    people.slash(s.bert, s.channel, "ask", { question });
    await s.settled();
    expect(texts(s)).toHaveLength(2);
    for (const text of texts(s)) expect(text).toContain("That message was lost");
  });

  test("what was said between members is nobody's loss when not even the settings can be read", async () => {
    let isGone = false;
    const s = await begin({
      patienceMilliseconds: 600,
      around: (bot) => ({
        ...bot,
        settings: (community) =>
          isGone ? Promise.reject(new UnavailableError("store: gone")) : bot.settings(community),
      }),
    });
    isGone = true;
    s.double.people.write(s.bert, s.channel, "does anybody come on Sunday?");
    s.double.people.mention(s.ann, s.channel, question);
    await s.settled();
    expect(texts(s)).toEqual([expect.stringContaining("That message was lost")]);
  });

  test("a door that closes does not wait: who waits is told", async () => {
    const { state, around } = memoryThatFills();
    const s = await begin({ aroundStore: around });
    state.isFull = true;
    s.double.people.mention(s.ann, s.channel, question);
    await refusals(s, state, 1);
    const from = performance.now();
    await s.restart();
    expect(performance.now() - from).toBeLessThan(5000);
    expect(texts(s)).toEqual([expect.stringContaining("That message was lost")]);
  });
});

describe("a Discord that cannot be reached for longer than a call is repeated", () => {
  const away = { times: 40, how: { kind: "status", status: 503 } } as const;

  test("the answer to words comes when it is back", async () => {
    const s = await begin();
    s.double.fault({ ...away, method: "POST", path: sends });
    s.double.people.mention(s.ann, s.channel, question);
    await s.settled();
    expect(texts(s)).toEqual([expect.stringContaining("square tips")]);
  });

  test("so do those to a command and to a press", async () => {
    const s = await begin();
    s.double.fault({ ...away, method: "PATCH", path: original });
    const message = await s.answer(s.double.people.slash(s.ann, s.channel, "ask", { question }));
    s.double.fault({ ...away, method: "PATCH", path: original });
    s.double.people.press(s.ann, message, "cannot tell");
    await s.settled();
    expect(asRead(message.content)).toContain("cannot tell. I will not ask again");
    expect(message.edits).toBe(1);
    expect(texts(s)).toHaveLength(1);
  });

  test("who asked alone and can be answered there no more is told directly", async () => {
    const s = await begin();
    const interaction = s.double.people.slash(s.ann, s.channel, "ask", { question, private: true });
    interaction.isExpired = true;
    await s.settled();
    await pause(50);
    expect(texts(s, directChannel(s.double.world, s.ann))).toEqual([
      expect.stringContaining("Say it again, and you see where the case stands"),
    ]);
  });
});

describe("what was said while nobody listened", () => {
  const more = "it has two drain notches";

  test("is heard in the next session when the one before is forgotten, in channels and directly, once", async () => {
    const s = await begin();
    const { people, gateway } = s.double;
    await s.answer(people.slash(s.bert, s.channel, "ask", { question }));
    people.direct(s.ann, question);
    await s.settled();
    gateway.cut({ code: 4000, forget: true });
    people.mention(s.bert, s.channel, more);
    people.write(s.ann, s.channel, "does anybody come on Sunday?");
    people.direct(s.ann, more);
    await s.double.until("a new session", () => gateway.sessions() === 1, 30_000);
    const direct = directChannel(s.double.world, s.ann);
    await s.double.until("the direct answer", () => texts(s, direct).length === 2, 10_000);
    await s.settled();
    expect(texts(s)).toEqual([expect.stringContaining("two drain notches")]);
    expect(texts(s, direct)[1]).toContain("two drain notches");
  });

  test("is heard by the next process, once, as from whom it came", async () => {
    const s = await begin();
    const { people } = s.double;
    people.mention(s.owner, s.channel, question);
    await s.settled();
    await s.door().close();
    people.mention(s.owner, s.channel, "pin this: Ask the register before you pay.");
    people.write(s.bert, s.channel, "does anybody come on Sunday?");
    await s.restart();
    await s.settled();
    expect(texts(s)).toHaveLength(2);
    expect(texts(s)[1]).toContain("Ask the register before you pay");
    await s.restart();
    await s.settled();
    expect(texts(s)).toHaveLength(2);
  });

  test("is heard by the next process where answers live in threads, too", async () => {
    const s = await begin();
    const { people, world } = s.double;
    const community = `discord-${s.guild.id}`;
    const settings = await s.bot.settings(community);
    await s.bot.changeSettings(community, `discord:${s.owner.id}`, {
      ...settings,
      platforms: { discord: { answers: "thread" } },
    });
    people.mention(s.ann, s.channel, question);
    await s.settled();
    await s.door().close();
    const missed = people.mention(s.bert, s.channel, "which road wheel is this? eight spokes");
    await s.restart();
    await s.settled();
    const thread = world.channels.get(missed.id);
    if (thread === undefined) throw new Error("no thread was begun");
    expect(texts(s, thread)).toEqual([expect.stringContaining("eight spokes")]);
    const before = world.messages.size;
    await s.restart();
    await s.settled();
    expect(world.messages.size).toBe(before);
  });

  test("what was taken in by a process that died before it answered is answered by the next", async () => {
    const s = await begin();
    const { people } = s.double;
    people.mention(s.ann, s.channel, question);
    await s.settled();
    await s.door().close();
    const { id } = people.mention(s.ann, s.channel, more);
    const from = `discord:${s.ann.id}`;
    const community = `discord-${s.guild.id}`;
    await s.bot.receive({ conversation: `discord:${s.channel.id}`, id, from, community, text: more });
    await s.restart();
    await s.settled();
    expect(texts(s)).toEqual([expect.stringContaining("two drain notches")]);
    const { edits } = s.last();
    await s.restart();
    await s.settled();
    expect([s.last().edits, texts(s).length]).toEqual([edits, 1]);
    expect(await s.store.history("conversation", `discord:${s.channel.id}`)).toHaveLength(2);
  });

  test("what was said to be lost stays lost", async () => {
    const { state, around } = memoryThatFills();
    const s = await begin({ aroundStore: around });
    const { people } = s.double;
    people.mention(s.ann, s.channel, question);
    await s.settled();
    state.isFull = true;
    people.mention(s.ann, s.channel, more);
    await refusals(s, state, 1);
    await s.door().close();
    state.isFull = false;
    await s.restart();
    await s.settled();
    expect(texts(s)).toEqual([
      expect.stringContaining("square tips"),
      expect.stringContaining("That message was lost"),
    ]);
  });
});

test("a notice that Discord refuses holds up no other", async () => {
  const settled: string[] = [];
  let waiting: readonly Notice[] = [];
  const s = await begin({
    around: (bot) => ({
      ...bot,
      notices: async () => waiting,
      noticeSettled: async (id) => {
        settled.push(id);
        waiting = [];
      },
    }),
  });
  const conversation = `discord:${s.channel.id}`;
  const person = `discord:${s.ann.id}`;
  const reply = await s.bot.receive({ conversation, from: person, text: question });
  const to = { audience: "person", conversation, person } as const;
  const refused = { kind: "status", status: 400, code: 50035 } as const;
  s.double.fault({ method: "POST", path: sends, times: 1, how: refused });
  waiting = ["one", "other"].map((id) => ({ id, community: `discord-${s.guild.id}`, to, reply }));
  await s.double.until("a settled notice", () => settled.length > 0);
  expect(settled).toEqual(["other"]);
});
