import { describe, expect, test } from "vitest";
import type { Message } from "../../doubles/discord/wire-shapes.ts";
import { asRead, labelsOn } from "./as-read.ts";
import type { Served } from "./served.ts";
import { eachServed } from "./tested.ts";

const begin = eachServed();
const question = "which rear spoiler is this? square tips";
const callback = /\/callback$/u;
const original = /\/messages\/@original$/u;

/** Ann's case in its one message, which asks for the moulder's mark. */
async function asked(s: Served): Promise<Message> {
  return s.answer(s.double.people.slash(s.ann, s.channel, "ask", { question }));
}

/** What a person was told that nobody else can see, the last of it. */
function toldPrivately(s: Served, user: { readonly id: string }): Message {
  const told = [...s.double.world.messages.values()].filter(({ onlyFor }) => onlyFor === user.id).at(-1);
  if (told === undefined) throw new Error("nothing was told privately");
  return told;
}

describe("people at cross purposes", () => {
  test("of two who press the same button the first is heard, the second is shown the question that is open now", async () => {
    const s = await begin();
    const { people } = s.double;
    const message = await asked(s);
    people.press(s.ann, message, "WC in a ring");
    people.press(s.bert, message, "WC in a ring");
    await s.settled();
    expect(message.edits).toBe(1);
    const told = toldPrivately(s, s.bert);
    expect(asRead(told.content)).toContain("belongs to an earlier question");
    expect(labelsOn(told)).toEqual(labelsOn(message));
  });

  test("the offered question can be answered from the copy, which then goes away", async () => {
    const s = await begin();
    const { people, world } = s.double;
    const message = await asked(s);
    people.press(s.ann, message, "WC in a ring");
    people.press(s.bert, message, "cannot tell");
    await s.settled();
    const copy = toldPrivately(s, s.bert);
    people.press(s.bert, copy, "cannot tell");
    await s.settled();
    expect(message.edits).toBe(2);
    expect(world.messages.has(copy.id)).toBe(false);
  });

  test("a button that was pressed twice by one person counts once", async () => {
    const s = await begin();
    const message = await asked(s);
    s.double.people.press(s.ann, message, "cannot tell");
    s.double.people.press(s.ann, message, "cannot tell");
    await s.settled();
    expect(message.edits).toBe(1);
  });

  test("a forged button changes nothing", async () => {
    const s = await begin();
    const { people } = s.double;
    const message = await asked(s);
    const shown = message.content;
    const own = message.components[0]?.components?.[0]?.custom_id ?? "";
    for (const forged of [
      "nonsense",
      own.replace(/\d$/u, "99"),
      own.replace("case-1", "case-7"),
      "o~case-1~1~0",
      "setup~units",
    ])
      people.pressId(s.bert, message, forged);
    await s.settled();
    expect(message.content).toBe(shown);
    expect(message.edits).toBe(0);
    expect(await s.bot.settings(`discord-${s.guild.id}`)).toMatchObject({ units: "metric" });
  });

  test("nobody takes back another's facts", async () => {
    const s = await begin();
    const { people } = s.double;
    const message = await asked(s);
    people.press(s.ann, message, "WC in a ring");
    await s.settled();
    people.press(s.bert, message, "undo");
    await s.settled();
    const reply = await s.bot.receive({
      conversation: `discord:${s.channel.id}`,
      from: `discord:${s.ann.id}`,
      text: "what do you know so far?",
    });
    expect(reply.summary.understood.map(({ feature }) => feature)).toContain("maker-mark");
  });

  test("what was written into a form that came too late is given back", async () => {
    const s = await begin();
    const { people } = s.double;
    const message = await asked(s);
    const form = people.press(s.ann, message, "in words …");
    await s.settled();
    people.press(s.bert, message, "cannot tell");
    await s.settled();
    people.fill(form, { "What else you can see": "two drain notches, I looked for an hour" });
    await s.settled();
    expect(asRead(toldPrivately(s, s.ann).content)).toContain("two drain notches, I looked for an hour");
    expect(message.edits).toBe(1);
  });

  test("when the asker has left, the case stays and others can go on with it", async () => {
    const s = await begin();
    const { people } = s.double;
    const message = await asked(s);
    people.leave(s.ann, s.guild.id);
    people.press(s.bert, message, "cannot tell");
    await s.settled();
    expect(message.edits).toBe(1);
  });
});

describe("things that are gone", () => {
  test("a deleted message is written anew at the next turn", async () => {
    const s = await begin();
    const { people } = s.double;
    const message = await asked(s);
    people.erase(message);
    people.mention(s.ann, s.channel, "it has two drain notches");
    await s.settled();
    expect(asRead(s.last().content)).toContain("two drain notches");
    expect(s.double.written(s.channel.id)).toHaveLength(1);
  });

  test("a message that is deleted while its button is pressed is written anew", async () => {
    const s = await begin();
    const message = await asked(s);
    s.double.people.press(s.ann, message, "cannot tell");
    s.double.world.messages.delete(message.id);
    await s.settled();
    expect(asRead(s.last().content)).toContain("cannot tell");
  });

  test("a deleted channel costs nothing but its answers", async () => {
    const s = await begin();
    const { people } = s.double;
    const message = await asked(s);
    people.mention(s.ann, s.channel, "it has two drain notches");
    people.eraseChannel(s.channel);
    await s.settled();
    people.direct(s.ann, question);
    await s.settled();
    expect(message).toBeDefined();
    expect(s.log.filter(({ level }) => level === "error")).toEqual([]);
  });

  test("an interaction whose token has expired is answered by the bot's own token", async () => {
    const s = await begin();
    const { people } = s.double;
    const message = await asked(s);
    s.double.fault({
      method: "PATCH",
      path: original,
      times: 1,
      how: { kind: "status", status: 401, code: 50027 },
    });
    people.press(s.ann, message, "cannot tell");
    await s.settled();
    expect(message.edits).toBe(1);
    s.double.fault({
      method: "PATCH",
      path: original,
      times: 1,
      how: { kind: "status", status: 404, code: 10015 },
    });
    people.slash(s.bert, s.channel, "ask", { question: "which road wheel is this? eight spokes" });
    await s.settled();
    expect(asRead(s.last().content)).toContain("eight spokes");
  });

  test("an interaction that is known no more when it is acknowledged is still heard, and shown where all can read", async () => {
    const s = await begin();
    const message = await asked(s);
    s.double.fault({
      method: "POST",
      path: callback,
      times: 1,
      how: { kind: "status", status: 404, code: 10062 },
    });
    const pressed = s.double.people.press(s.ann, message, "cannot tell");
    pressed.isExpired = true;
    await s.settled();
    expect(asRead(message.content)).toContain("cannot tell. I will not ask again");
  });
});

describe("what Discord does not grant", () => {
  test("where the bot may not write, the one who asked is told which permissions are missing", async () => {
    const s = await begin();
    s.channel.lacking = (1n << 11n) | (1n << 15n);
    s.double.gateway.send("CHANNEL_UPDATE", s.guild.id, () => ({
      id: s.channel.id,
      type: 0,
      name: s.channel.name,
      guild_id: s.guild.id,
      permission_overwrites: [
        { id: s.double.world.bot.id, type: 1, allow: "0", deny: String(s.channel.lacking) },
      ],
    }));
    s.double.people.mention(s.ann, s.channel, question);
    await s.settled();
    const direct = [...s.double.world.channels.values()].find(({ type }) => type === 1);
    expect(asRead(s.last(direct).content)).toContain("I lack Send Messages, Attach Files");
    expect(s.double.written(s.channel.id)).toEqual([]);
  });

  test("a member who takes no direct messages gets none, and nothing breaks", async () => {
    const s = await begin();
    s.channel.lacking = 1n << 11n;
    const { directChannel } = await import("../../doubles/discord/world.ts");
    directChannel(s.double.world, s.ann).lacking = 1n;
    s.double.people.mention(s.ann, s.channel, question);
    await s.settled();
    expect(s.log.filter(({ level }) => level === "error")).toEqual([]);
  });
});

describe("Discord in trouble", () => {
  test.each([
    ["a 429", { kind: "status", status: 429, retryAfter: 1 }],
    ["a 503", { kind: "status", status: 503 }],
    ["a cut before it arrives", { kind: "cut", when: "before" }],
    ["a cut after it arrived", { kind: "cut", when: "after" }],
  ] as const)("%s costs neither acknowledgement, edit nor message", async (_, how) => {
    const s = await begin();
    const { people } = s.double;
    s.double.fault({ method: "POST", path: callback, times: 1, how });
    s.double.fault({ method: "PATCH", path: original, times: 1, how });
    const message = await asked(s);
    expect(asRead(message.content)).toContain("square tips");
    people.press(s.ann, message, "cannot tell");
    await s.settled();
    expect(asRead(message.content)).toContain("cannot tell. I will not ask again");
    s.double.fault({ method: "POST", path: /\/channels\/\d+\/messages$/u, times: 1, how });
    people.mention(s.bert, s.channel, "which road wheel is this? eight spokes");
    await s.settled();
    expect(s.double.written(s.channel.id)).toHaveLength(2);
    s.double.fault({ method: "PATCH", path: /\/channels\/\d+\/messages\/\d+$/u, times: 1, how });
    people.mention(s.bert, s.channel, "cannot tell", { replyTo: s.last() });
    await s.settled();
    expect(s.double.written(s.channel.id)).toHaveLength(2);
  });

  test("events that arrive twice are answered once", async () => {
    const s = await begin();
    const { people } = s.double;
    const interaction = people.slash(s.ann, s.channel, "ask", { question });
    people.again(interaction);
    const said = people.mention(s.bert, s.channel, "which road wheel is this? eight spokes");
    people.again(said);
    await s.settled();
    people.again(said);
    people.again(interaction);
    await s.settled();
    expect(s.double.written(s.channel.id)).toHaveLength(2);
  });

  test("a cut connection is resumed, and what was said meanwhile is answered once", async () => {
    const s = await begin();
    const { people, gateway } = s.double;
    const message = await asked(s);
    gateway.cut();
    people.press(s.ann, message, "cannot tell");
    await s.double.until("the resume", () => gateway.resumed() === 1);
    await s.settled();
    expect(message.edits).toBe(1);
    expect(gateway.identified()).toBe(1);
  });

  test("a session that cannot be resumed begins anew, with the case as it was", async () => {
    const s = await begin();
    const { people, gateway } = s.double;
    const message = await asked(s);
    gateway.cut({ code: 4000, forget: true });
    await s.double.until(
      "a new session",
      () => gateway.identified() === 2 && gateway.sessions() === 1,
      30_000,
    );
    await new Promise((resolve) => setTimeout(resolve, 200));
    people.press(s.ann, message, "cannot tell");
    await s.settled();
    expect(message.edits).toBe(1);
    expect(s.double.written(s.channel.id)).toHaveLength(1);
  });

  test("buttons outlive the process", async () => {
    const s = await begin();
    const message = await asked(s);
    await s.restart();
    s.double.people.press(s.ann, message, "cannot tell");
    await s.settled();
    expect(asRead(message.content)).toContain("cannot tell. I will not ask again");
    expect(asRead(message.content)).toContain("First spoiler");
  });

  test("when the bot's memory fails, the member is told that the message was lost", async () => {
    let isBroken = false;
    const s = await begin({
      around: (bot) => ({
        ...bot,
        receive: (message) => (isBroken ? Promise.reject(new Error("no store")) : bot.receive(message)),
      }),
    });
    isBroken = true;
    s.double.people.slash(s.ann, s.channel, "ask", { question });
    s.double.people.mention(s.bert, s.channel, question);
    await s.settled();
    const written = s.double.written(s.channel.id).map(({ content }) => asRead(content));
    expect(written).toHaveLength(2);
    for (const text of written) expect(text).toContain("That message was lost");
  });

  test("a bot that thinks for four seconds is acknowledged at once all the same", async () => {
    const s = await begin({
      around: (bot) => ({
        ...bot,
        receive: async (message) => {
          await new Promise((resolve) => setTimeout(resolve, 4000));
          return bot.receive(message);
        },
      }),
    });
    const interaction = s.double.people.slash(s.ann, s.channel, "ask", { question });
    await s.double.until("the acknowledgement", () => interaction.acknowledgedAt !== undefined, 1000);
    expect((interaction.acknowledgedAt ?? 0) - interaction.sentAt).toBeLessThan(1000);
    expect(asRead((await s.answer(interaction)).content)).toContain("square tips");
  });
});
