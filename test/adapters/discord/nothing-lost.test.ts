// What members write and what they are told, whole: long forms, pages, notices, files, and the places where nobody would hear them.
import { describe, expect, test } from "vitest";
import type { Notice } from "../../../bot/index.ts";
import type { Channel, Message } from "../../doubles/discord/wire-shapes.ts";
import { asRead, labelsOn } from "./as-read.ts";
import type { Served } from "./served.ts";
import { eachServed } from "./tested.ts";

const begin = eachServed();
const question = "which rear spoiler is this? square tips";
const comparison = "compare first-type mirror with nylon ball and trade reproduction mirror";

async function withSetting(s: Served, discord: Record<string, string | null>): Promise<void> {
  const community = `discord-${s.guild.id}`;
  const settings = await s.bot.settings(community);
  const plain = { answers: "message", keepersChannel: null, keeperRoles: [], channels: [] };
  await s.bot.changeSettings(community, "discord:owner", {
    ...settings,
    platforms: { discord: { ...plain, ...discord } },
  });
}

function toldPrivately(s: Served, user: { readonly id: string }): readonly Message[] {
  return [...s.double.world.messages.values()].filter(({ onlyFor }) => onlyFor === user.id);
}

function formOn(message: Message): string {
  const buttons = message.components.flatMap(({ components }) => components ?? []);
  return buttons.find(({ label }) => label === "in words …")?.custom_id ?? "";
}

async function asked(s: Served): Promise<Message> {
  return s.answer(s.double.people.slash(s.ann, s.channel, "ask", { question }));
}

describe("forms", () => {
  test("a button of an earlier question opens no form that could not be taken", async () => {
    const s = await begin();
    const message = await asked(s);
    const old = formOn(message);
    s.double.people.press(s.bert, message, "cannot tell");
    await s.settled();
    const opened = s.double.people.pressId(s.ann, message, old);
    await s.settled();
    expect(opened.modal).toBeUndefined();
    expect(asRead(toldPrivately(s, s.ann)[0]?.content ?? "")).toContain("belongs to an earlier question");
  });

  test("what was written while the case went on comes back whole, in the message or as a file", async () => {
    const s = await begin();
    const message = await asked(s);
    const { people, world } = s.double;
    const short = people.press(s.ann, message, "in words …");
    await s.settled();
    people.press(s.bert, message, "cannot tell");
    await s.settled();
    people.fill(short, { "What else you can see": "two drain notches, _perhaps_" });
    await s.settled();
    expect(asRead(toldPrivately(s, s.ann)[0]?.content ?? "")).toContain(
      "You wrote:\ntwo drain notches, _perhaps_",
    );
    const long = people.press(s.ann, message, "in words …");
    await s.settled();
    people.press(s.bert, message, "cannot tell");
    await s.settled();
    const words = "It has two drain notches. ".repeat(140).trim();
    people.fill(long, { "What else you can see": words });
    await s.settled();
    const [, told, open] = toldPrivately(s, s.ann);
    expect(asRead(told?.content ?? "")).toContain("What you wrote is in the file.");
    const [file] = told?.attachments ?? [];
    expect(Buffer.from(world.files.get(new URL(file?.url ?? "").pathname) ?? []).toString()).toBe(words);
    expect(labelsOn(open ?? message)).toEqual(labelsOn(message));
  });
});

test("words for a case that is not known any more come back too", async () => {
  const s = await begin();
  const message = await asked(s);
  const form = s.double.people.press(s.ann, message, "in words …");
  await s.settled();
  const modal = form.modal;
  if (modal === undefined) throw new Error("no form");
  Object.assign(form, { modal: { ...modal, custom_id: modal.custom_id.replace(/~[^~]+~/u, "~forgotten~") } });
  s.double.people.fill(form, { "What else you can see": "two drain notches" });
  await s.settled();
  const told = toldPrivately(s, s.ann).map(({ content }) => asRead(content));
  expect(told[0]).toContain("two drain notches");
  expect(told[1]).toContain("I do not know that case any more");
});

describe("pages", () => {
  test("what stands before a long answer costs none of its lines when the page is turned", async () => {
    const s = await begin();
    const { people } = s.double;
    const files = [1, 2, 3, 4].map((number) => ({
      name: `a page of notes on the door mirror that is no photograph, number ${number}.pdf`,
      bytes: Buffer.from("%PDF"),
      type: "application/pdf",
    }));
    people.mention(s.ann, s.channel, comparison, { files });
    await s.settled();
    const message = s.last();
    const pages = [message.content];
    while (labelsOn(message).some((label) => label.startsWith("more"))) {
      const more = labelsOn(message).find((label) => label.startsWith("more")) ?? "";
      people.press(s.ann, message, more);
      await s.settled();
      pages.push(message.content);
    }
    expect(pages.length).toBeGreaterThan(1);
    const read = asRead(pages.join("\n"));
    expect(read.match(/left aside/gu)).toHaveLength(4);
    for (const line of ["comes from", "gasket groove", "What tells them apart", "length of the foot: 86 mm"])
      expect(read).toContain(line);
    expect(read.match(/- comes from/gu)).toHaveLength(1);
    expect(read).toContain("  - Trade reproduction mirror: reproduction; sold 1997 to 2021");
  });

  test("a notice too long for one message is several, with its buttons under the last", async () => {
    let waiting: readonly Notice[] = [];
    const s = await begin({
      around: (bot) => ({
        ...bot,
        notices: async () => waiting,
        async noticeSettled(id, outcome) {
          waiting = [];
          await bot.noticeSettled(id, outcome);
        },
      }),
    });
    await withSetting(s, { keepersChannel: s.channel.id });
    const seen = Array.from(
      { length: 60 },
      (_, at) => `fact ${at + 1}: two screws, said as “it has two screws”`,
    );
    waiting = [
      {
        id: `discord-${s.guild.id}/discord/1`,
        community: `discord-${s.guild.id}`,
        to: { audience: "keepers" },
        reply: {
          blocks: [
            { kind: "list", lead: "Seen:", items: seen },
            { kind: "choices", choices: [{ id: "pins", label: "pins", say: "pins" }] },
          ],
          summary: {} as never,
        },
      },
    ];
    await s.double.until("the notice", () => s.double.written(s.channel.id).length > 1, 10_000);
    await s.settled();
    const messages = s.double.written(s.channel.id);
    const read = messages.map(({ content }) => asRead(content)).join("\n");
    for (const fact of seen) expect(read.split(fact)).toHaveLength(2);
    expect(messages.map(labelsOn)).toEqual([...messages.slice(1).map(() => []), ["pins"]]);
    s.double.people.press(s.ann, messages.at(-1) ?? s.last(), "pins");
    await s.settled();
    expect(s.double.written(s.channel.id).length + toldPrivately(s, s.ann).length).toBeGreaterThan(
      messages.length,
    );
  });
});

describe("where nobody would hear it", () => {
  test("the bot's own answer is no post to ask about, and no words to pin", async () => {
    const s = await begin();
    const message = await asked(s);
    const about = await s.answer(s.double.people.menu(s.ann, s.channel, "Ask about this post", message));
    expect(about.content).toContain("That post is mine");
    const form = s.double.people.menu(s.owner, s.channel, "Pin as the answer", message);
    await s.settled();
    expect(form.modal?.components[0]?.component?.value ?? "").toBe("");
  });

  test("a question of many marks is not lost where answers live in threads", async () => {
    const s = await begin();
    await withSetting(s, { answers: "thread" });
    const long = "which_rear_spoiler_is_this ".repeat(74).trim();
    const interaction = s.double.people.slash(s.ann, s.channel, "ask", { question: `${long} square tips` });
    expect((await s.answer(interaction)).content).toContain("which");
    expect([...s.double.world.channels.values()].filter(({ type }) => type === 11)).toHaveLength(1);
  });

  test("what only one may read is refused where it cannot be brought to them, in a thread too", async () => {
    const s = await begin();
    await withSetting(s, { answers: "thread" });
    s.double.fault({
      method: "POST",
      path: /\/users\/@me\/channels$/u,
      times: 5,
      how: { kind: "status", status: 403, code: 50_007 },
    });
    s.double.people.slash(s.ann, s.channel, "ask", { question: "export mine" });
    await s.settled();
    const [thread] = [...s.double.world.channels.values()].filter(({ type }) => type === 11);
    expect(s.last(thread).content).toContain("in private only");
  });

  test("who writes in a thread whose words Discord hides is told so, once", async () => {
    const s = await begin();
    await withSetting(s, { answers: "thread" });
    const { people, world } = s.double;
    people.mention(s.ann, s.channel, question);
    await s.settled();
    const thread = [...world.channels.values()].find(({ type }) => type === 11) as Channel;
    people.write(s.ann, thread, "two drain notches");
    people.write(s.ann, thread, "hello?");
    await s.settled();
    const hints = s.double.written(thread.id).filter(({ content }) => content.includes("does not show me"));
    expect(hints).toHaveLength(1);
    people.write(s.ann, s.channel, "two drain notches");
    await s.settled();
    expect(s.double.written(s.channel.id)).toEqual([]);
  });

  test("a file that is no photograph, or too large for one, is named", async () => {
    const s = await begin();
    const { people, world } = s.double;
    const message = people.write(s.ann, s.channel, `<@${world.bot.id}> ${question}`, {
      mentions: [world.bot],
      files: [{ name: "huge.jpg", bytes: Buffer.alloc(26 * 1024 * 1024 + 1), type: "image/jpeg" }],
    });
    expect(message.attachments).toHaveLength(1);
    await s.settled();
    expect(asRead(s.last().content)).toContain(
      "huge.jpg is larger than the 25 MB that I take, and was left aside.",
    );
  });
});

describe("setting up", () => {
  test("a handbook chosen beside every handbook is that one, and every one can be chosen again", async () => {
    const s = await begin();
    const { people } = s.double;
    const community = `discord-${s.guild.id}`;
    const choose = async (...labels: readonly string[]) => {
      const message = await s.answer(people.slash(s.owner, s.channel, "setup"));
      people.choose(s.owner, message, ...labels);
      await s.settled();
      return (await s.bot.settings(community)).handbooks;
    };
    expect(await choose("every handbook", "Wexcombe Shrike")).toEqual(["wexcombe-shrike"]);
    expect(await choose("every handbook", "Wexcombe Shrike")).toBeNull();
    expect(await choose("Wexcombe Shrike")).toEqual(["wexcombe-shrike"]);
    expect(await choose("every handbook")).toBeNull();
  });

  test("going on without choosing changes nothing that the audit would tell", async () => {
    const s = await begin();
    const before = (await s.store.history("settings", `discord-${s.guild.id}/settings`)).length;
    const message = await s.answer(s.double.people.slash(s.owner, s.channel, "setup"));
    for (let step = 0; step < 6; step += 1) {
      s.double.people.press(s.owner, message, "next");
      await s.settled();
    }
    expect(message.content).toContain("That is all");
    expect(await s.store.history("settings", `discord-${s.guild.id}/settings`)).toHaveLength(before);
  });
});
