// Setting a server up, observations and their review, cases handed over and answered, answers pinned.
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { addChannel, addRole } from "../../doubles/discord/world.ts";
import { asRead, labelsOn } from "./as-read.ts";
import type { Served } from "./served.ts";
import { eachServed } from "./tested.ts";
import { transcriptOf } from "./transcript.ts";

const begin = eachServed();
const folder = join(import.meta.dirname, "transcripts");

/** A server with a keepers' channel and a keeper, Kit. */
async function withKeepers(s: Served) {
  const desk = addChannel(s.double.world, s.guild, "keepers-desk");
  const role = addRole(s.double.world, s.guild, "keeper");
  const kit = s.member("Kit");
  s.guild.members.get(kit.id)?.roles.push(role);
  s.double.gateway.send("GUILD_ROLE_CREATE", s.guild.id, () => ({
    guild_id: s.guild.id,
    role: {
      id: role,
      name: "keeper",
      permissions: "0",
      position: 1,
      color: 0,
      hoist: false,
      managed: false,
      mentionable: false,
      flags: 0,
      colors: { primary_color: 0 },
    },
  }));
  const community = `discord-${s.guild.id}`;
  const settings = await s.bot.settings(community);
  const discord = { answers: "message", keepersChannel: desk.id, keeperRoles: [role], channels: [] };
  await s.bot.changeSettings(community, "discord:owner", { ...settings, platforms: { discord } });
  s.double.gateway.send("CHANNEL_CREATE", s.guild.id, () => ({
    id: desk.id,
    type: 0,
    name: desk.name,
    guild_id: s.guild.id,
    permission_overwrites: [],
  }));
  return { desk, kit, community };
}

describe("setting up", () => {
  test("a few questions, each answered with a select, set the server up", async () => {
    const s = await begin();
    const { people, world } = s.double;
    const desk = addChannel(world, s.guild, "keepers-desk");
    const role = addRole(world, s.guild, "keeper");
    const t = transcriptOf(s);
    await t.act("Orla: /setup", () => people.slash(s.owner, s.channel, "setup"));
    await t.act("Orla chooses every handbook", () => people.choose(s.owner, t.last(), "every handbook"));
    await t.act("Orla chooses a thread", () => people.choose(s.owner, t.last(), "a thread"));
    await t.act("Orla goes on", () => people.press(s.owner, t.last(), "next"));
    await t.act("Orla picks #keepers-desk", () => people.pick(s.owner, t.last(), [desk.id]));
    await t.act("Orla picks the role keeper", () => people.pick(s.owner, t.last(), [role]));
    await t.act("Orla chooses both units", () => people.choose(s.owner, t.last(), "both"));
    const settings = await s.bot.settings(`discord-${s.guild.id}`);
    expect(settings).toMatchObject({
      handbooks: null,
      units: "both",
      platforms: {
        discord: { answers: "thread", keepersChannel: desk.id, keeperRoles: [role], channels: [] },
      },
    });
    const ids = new Map([
      [desk.id, "keepers-desk"],
      [role, "keeper"],
    ]);
    const text = t.text().replaceAll(/\d{19}/gu, (id) => ids.get(id) ?? id);
    await expect(text).toMatchFileSnapshot(join(folder, "setting-up.txt"));
  });

  test("who does not manage the server can neither set it up nor see its settings", async () => {
    const s = await begin();
    const { people } = s.double;
    for (const name of ["setup", "settings"]) {
      const message = await s.answer(people.slash(s.ann, s.channel, name));
      expect(asRead(message.content)).toBe("That is for whoever manages this server.");
      expect(message.onlyFor).toBe(s.ann.id);
    }
    const setup = await s.answer(people.slash(s.owner, s.channel, "setup"));
    people.pressId(s.ann, setup, "setup~units", ["imperial"]);
    await s.settled();
    expect((await s.bot.settings(`discord-${s.guild.id}`)).units).toBe("metric");
  });
});

describe("the keepers' queue", () => {
  test("a case that is handed over comes to the keepers' channel, and their answer to its asker", async () => {
    const s = await begin();
    const { people } = s.double;
    const { desk, kit } = await withKeepers(s);
    const t = transcriptOf(s);
    await t.act("Ann: @witness-mark which rear spoiler is this? square tips", () =>
      people.mention(s.ann, s.channel, "which rear spoiler is this? square tips"),
    );
    await t.act("Ann: @witness-mark ask a keeper", () => people.mention(s.ann, s.channel, "ask a keeper"));
    const notice = await s.double.until("the notice", () => s.double.written(desk.id).at(-1));
    expect(labelsOn(notice)).toEqual(["answer", "ask back", "close"]);
    expect(asRead(notice.content)).toContain("Ann asks the keepers");
    const form = people.press(kit, notice, "answer");
    await s.settled();
    await t.act("Kit answers", () =>
      people.fill(form, { "What is still to be said": "The first spoiler; the tips were filed later." }),
    );
    const told = await s.double.until("the answer", () =>
      s.double.written(s.channel.id).find(({ content }) => content.includes("filed later")),
    );
    expect(asRead(told.content)).toContain("Kit, a keeper");
    expect(asRead(told.content)).toMatch(/^Ann$/mu);
  });

  test("an observation is recorded by buttons, reviewed by a keeper, and its author told", async () => {
    const s = await begin();
    const { people } = s.double;
    const { desk, kit } = await withKeepers(s);
    const t = transcriptOf(s);
    await t.act("Ann: /observe", () => people.slash(s.ann, s.channel, "observe"));
    await t.act("Ann chooses: rear spoiler", () => people.choose(s.ann, t.last(), "rear spoiler"));
    await t.act("Ann chooses: First spoiler", () => people.choose(s.ann, t.last(), "First spoiler"));
    const form = await t.act("Ann opens the form", () => people.press(s.ann, t.last(), "in words …"));
    await t.act("Ann fills it in: march 1979, Shrike S, home market", () =>
      people.fill(form, {
        [form.modal?.components.find(({ type }) => type === 18)?.label ?? ""]:
          "march 1979, Shrike S, home market",
      }),
    );
    await t.act("Ann presses: one owner from new", () => people.press(s.ann, t.last(), "one owner from new"));
    for (let step = 0; step < 8; step += 1) {
      const [first] = labelsOn(t.last());
      if (first === undefined) break;
      await t.act(`Ann presses: ${first}`, () => people.press(s.ann, t.last(), first));
    }
    const notice = await s.double.until("the notice", () => s.double.written(desk.id).at(-1));
    await s.settled();
    expect(labelsOn(notice).slice(1)).toEqual(["accept", "decline", "ask about"]);
    await t.act("Bert, who is no keeper, presses: accept", () => people.press(s.bert, notice, "accept"));
    const decline = await t.act("Kit presses: decline", () => people.press(kit, notice, "decline"));
    await t.act("Kit gives the reason", () =>
      people.fill(decline, { "What is still to be said": "the spoiler was changed in 1990" }),
    );
    await t.act("Ann is told", async () => {
      await s.double.until("the news", () =>
        [...s.double.world.messages.values()].find(({ content }) => content.includes("has declined")),
      );
    });
    const text = t.text().replaceAll(/\b[0-9a-z]{4}-[0-9a-z]{4}\b/gu, "xxxx-xxxx");
    await expect(text).toMatchFileSnapshot(join(folder, "an-observation.txt"));
  });
});
