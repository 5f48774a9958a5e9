// Ways to ask and to be answered, one by one.
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import type { Reply } from "../../../bot/index.ts";
import type { Channel } from "../../doubles/discord/wire-shapes.ts";
import { addChannel, addRole } from "../../doubles/discord/world.ts";
import { asRead, labelsOn } from "./as-read.ts";
import type { Served } from "./served.ts";
import { eachServed } from "./tested.ts";

const begin = eachServed();
const question = "which rear spoiler is this? square tips";

async function withSetting(s: Served, discord: Record<string, string | string[] | null>): Promise<void> {
  const community = `discord-${s.guild.id}`;
  const settings = await s.bot.settings(community);
  const plain = { answers: "message", keepersChannel: null, keeperRoles: [], channels: [] };
  await s.bot.changeSettings(community, "discord:owner", {
    ...settings,
    platforms: { discord: { ...plain, ...discord } },
  });
}

describe("where an answer lives", () => {
  test("words that follow edit the one message, in a channel for all", async () => {
    const s = await begin();
    const { people } = s.double;
    people.mention(s.ann, s.channel, question);
    await s.settled();
    const message = s.last();
    people.mention(s.ann, s.channel, "two drain notches", { replyTo: message });
    await s.settled();
    expect(s.double.written(s.channel.id)).toHaveLength(1);
    expect(asRead(message.content)).toContain("two drain notches");
  });

  test("where the server prefers threads, a mention and a command each begin one", async () => {
    const s = await begin();
    await withSetting(s, { answers: "thread" });
    const { people, world } = s.double;
    people.mention(s.ann, s.channel, question);
    people.slash(s.bert, s.channel, "ask", { question: "which road wheel is this? eight spokes" });
    await s.settled();
    const threads = [...world.channels.values()].filter(({ type }) => type === 11);
    expect(threads.map(({ name }) => name)).toEqual([question, "which road wheel is this? eight spokes"]);
    for (const thread of threads) expect(labelsOn(s.last(thread))).toContain("cannot tell");
    const [own] = threads;
    people.mention(s.ann, own as Channel, "two drain notches");
    await s.settled();
    const [before, after] = s.double.written(own?.id ?? "");
    expect(labelsOn(before ?? s.last(own))).toEqual([]);
    expect(asRead(after?.content ?? "")).toContain("two drain notches");
  });

  test("without the permission to begin threads it answers in the channel, and says which is missing", async () => {
    const s = await begin();
    await withSetting(s, { answers: "thread" });
    s.channel.lacking = 1n << 35n;
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
    expect(asRead(s.last().content)).toContain("No thread, because I lack Create Public Threads here.");
  });

  test("what is asked privately is seen by nobody else, and goes on so", async () => {
    const s = await begin();
    const { people } = s.double;
    const message = await s.answer(people.slash(s.ann, s.channel, "ask", { question, private: true }));
    expect(message.onlyFor).toBe(s.ann.id);
    people.press(s.ann, message, "cannot tell");
    await s.settled();
    expect(message.edits).toBe(1);
    expect(s.double.written(s.channel.id).every(({ onlyFor }) => onlyFor === s.ann.id)).toBe(true);
  });
});

describe("who is spoken to", () => {
  test("members who talk to each other, other bots and a message without words are left alone", async () => {
    const s = await begin({ hasMessageContent: true });
    await withSetting(s, { channels: [s.channel.id] });
    const { people, world } = s.double;
    const post = people.write(s.ann, s.channel, "?");
    people.write(s.ann, s.channel, `<@${s.bert.id}> ${question}`, { mentions: [s.bert] });
    people.write(s.bert, s.channel, question, { replyTo: post });
    people.write({ id: world.nextId(), username: "other", bot: true }, s.channel, question);
    people.write(s.bert, s.channel, "lovely weather for the hill climb on Sunday");
    await s.settled();
    expect(s.double.written(s.channel.id)).toEqual([]);
  });

  test("in a channel set aside for it, with the content intent, plain words are answered", async () => {
    const s = await begin({ hasMessageContent: true });
    await withSetting(s, { channels: [s.channel.id] });
    s.double.people.write(s.ann, s.channel, question);
    await s.settled();
    expect(asRead(s.last().content)).toContain("square tips");
  });

  test("in every other channel they are not, and without the intent nothing is overheard", async () => {
    const s = await begin();
    await withSetting(s, { channels: [s.channel.id] });
    s.double.people.write(s.ann, s.channel, question);
    await s.settled();
    expect(s.double.written(s.channel.id)).toEqual([]);
  });

  test("a mention below another member's post asks about that post", async () => {
    const s = await begin({ hasMessageContent: true });
    const { people } = s.double;
    const post = people.write(s.bert, s.channel, question);
    people.mention(s.ann, s.channel, "", { replyTo: post });
    await s.settled();
    expect(asRead(s.last().content)).toContain("square tips");
    people.press(s.bert, s.last(), "undo");
    await s.settled();
    expect(asRead(s.last().content)).toContain("Taken back");
  });
});

describe("questions within Discord's limits", () => {
  test("names are offered while somebody types, misspelt ones too", async () => {
    const s = await begin();
    const typing = s.double.people.typing(s.ann, s.channel, "ask", "question", "rear spoyler");
    await s.settled();
    expect(typing.suggestions?.map(({ name }) => name.toLowerCase())).toContain("rear spoiler");
  });

  test("more than five answers are a select, and choosing one answers", async () => {
    const s = await begin();
    const { people } = s.double;
    people.mention(s.ann, s.channel, "which part is this?");
    await s.settled();
    expect(labelsOn(s.last())).toContain("door mirror");
    people.choose(s.ann, s.last(), "door mirror");
    await s.settled();
    expect(asRead(s.last().content)).toContain("door mirror");
  });

  test("a drawing comes as a picture with words, and goes with the next answer", async () => {
    const s = await begin();
    const { people } = s.double;
    const message = await s.answer(people.slash(s.ann, s.channel, "ask", { question }));
    people.press(s.ann, message, "how do I check?");
    await s.settled();
    const [picture] = message.attachments;
    expect(picture?.description).toMatch(/\w/u);
    const bytes = s.double.world.files.get(new URL(picture?.url ?? "").pathname);
    expect(bytes?.subarray(1, 4)).toEqual(new TextEncoder().encode("PNG"));
    people.press(s.ann, message, "cannot tell");
    await s.settled();
    expect(message.attachments).toEqual([]);
  });

  test("a long answer is turned page by page, nothing is left out and the question stands on each", async () => {
    const sentences = Array.from(
      { length: 90 },
      (_, at) => `Sentence ${at} tells of a bracket that was never drawn.`,
    );
    const s = await begin({
      around: (bot) => ({
        ...bot,
        async receive(message): Promise<Reply> {
          const reply = await bot.receive(message);
          return { ...reply, blocks: [{ kind: "text", text: sentences.join(" ") }, ...reply.blocks] };
        },
      }),
    });
    const { people } = s.double;
    const message = await s.answer(people.slash(s.ann, s.channel, "ask", { question }));
    const read = [asRead(message.content)];
    for (let on = labelsOn(message).find((label) => label.startsWith("more")); on !== undefined; ) {
      people.press(s.bert, message, on);
      await s.settled();
      read.push(asRead(message.content));
      on = labelsOn(message).find((label) => label.startsWith("more"));
    }
    expect(read.length).toBeGreaterThan(2);
    for (const sentence of sentences) expect(read.join("\n")).toContain(sentence);
    for (const page of read) expect(page).toContain("moulded mark under the left tip");
    people.press(s.ann, message, "back");
    await s.settled();
    expect(asRead(message.content)).toBe(read.at(-2));
  });
});

describe("photographs", () => {
  test("what a member attaches is taken in without where and when it was taken", async () => {
    const heard: string[] = [];
    const s = await begin({
      around: (bot) => ({
        ...bot,
        receive: (message) => {
          heard.push(...(message.photographs ?? []));
          return bot.receive(message);
        },
      }),
    });
    const pixels = { width: 640, height: 480, channels: 3, background: "#885533" } as const;
    const bytes = await sharp({ create: pixels })
      .withExif({ IFD0: { Copyright: "Ann at 12 Tannery Row" } })
      .jpeg()
      .toBuffer();
    expect(bytes.includes("Tannery Row")).toBe(true);
    s.double.people.mention(s.ann, s.channel, question, {
      files: [
        { name: "tip.jpg", bytes: new Uint8Array(bytes), type: "image/jpeg" },
        { name: "broken.jpg", bytes: new TextEncoder().encode("no photograph"), type: "image/jpeg" },
      ],
    });
    await s.settled();
    expect(heard).toHaveLength(1);
    expect(asRead(s.last().content)).toContain("That is no photograph I can open.");
    const { photographKeeper } = await import("../../../adapters/photographs/index.ts");
    const { clock } = await import("./served.ts");
    const kept = await photographKeeper(s.store, clock).read(heard[0] ?? "");
    expect(Buffer.from(kept?.bytes ?? []).includes("Tannery Row")).toBe(false);
  });
});

describe("keepers", () => {
  test("an answer of the bot is pinned in the channel by a keeper, and by nobody else", async () => {
    const s = await begin();
    const { people } = s.double;
    const message = await s.answer(people.slash(s.ann, s.channel, "ask", { question }));
    people.menu(s.bert, s.channel, "Pin in this channel", message);
    await s.settled();
    expect(message.pinned).toBe(false);
    people.menu(s.owner, s.channel, "Pin in this channel", message);
    await s.settled();
    expect(message.pinned).toBe(true);
  });

  test("a post is pinned as the answer through a form, by whoever has a keeper's role", async () => {
    const s = await begin();
    const { people, world, gateway } = s.double;
    const role = addRole(world, s.guild, "keeper");
    gateway.send("GUILD_ROLE_CREATE", s.guild.id, () => ({
      guild_id: s.guild.id,
      role: {
        id: role,
        name: "keeper",
        permissions: "0",
        position: 1,
        color: 0,
        colors: { primary_color: 0 },
      },
    }));
    await withSetting(s, { keeperRoles: [role] });
    const kit = s.member("Kit");
    s.guild.members.get(kit.id)?.roles.push(role);
    people.mention(s.ann, s.channel, question);
    await s.settled();
    const post = people.write(s.bert, s.channel, "Square tips were only ever on the first spoiler.");
    const form = people.menu(kit, s.channel, "Pin as the answer", post);
    await s.settled();
    const filled = people.fill(form, {
      "The pinned answer": "Square tips were only ever on the first spoiler.",
    });
    await s.settled();
    expect(asRead(filled.original?.content ?? "")).toContain(
      "Square tips were only ever on the first spoiler.",
    );
    people.press(kit, filled.original ?? s.last(), labelsOn(filled.original ?? s.last())[0] ?? "");
    await s.settled();
    const pins = await s.answer(people.slash(s.ann, s.channel, "pins"));
    expect(asRead(pins.content)).toContain("Square tips were only ever on the first spoiler");
  });
});

describe("the bot itself", () => {
  test("commands are told once, and again only when they changed", async () => {
    const s = await begin();
    expect(s.double.world.registrations).toBe(1);
    await s.restart();
    expect(s.double.world.registrations).toBe(1);
    s.double.world.commands = s.double.world.commands.slice(1);
    await s.restart();
    expect(s.double.world.registrations).toBe(2);
  });

  test("the link it prints asks for exactly what it needs", async () => {
    const s = await begin();
    const link = new URL(/https?:\S+/u.exec(s.door().where)?.[0] ?? "");
    const { granted } = await import("../../doubles/discord/world.ts");
    expect(link.searchParams.get("permissions")).toBe(String(granted));
    expect(link.searchParams.get("scope")).toBe("bot applications.commands");
  });

  test("as many shards are opened as Discord asks for, and each serves its servers", async () => {
    const s = await begin({ shards: 2 });
    expect(s.double.gateway.sessions()).toBe(2);
    const other = addChannel(s.double.world, s.guild, "garage");
    s.double.gateway.send("CHANNEL_CREATE", s.guild.id, () => ({
      id: other.id,
      type: 0,
      name: "garage",
      guild_id: s.guild.id,
    }));
    s.double.people.mention(s.ann, other, question);
    s.double.people.direct(s.bert, question);
    await s.settled();
    expect(asRead(s.last(other).content)).toContain("square tips");
  });
});
