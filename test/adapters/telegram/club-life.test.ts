// What a club does with the bot beside asking: keepers and their place, pinned answers, private answers, commands, inline mode.
import { afterEach, beforeEach, expect, test } from "vitest";
import { commands, wordsOfCommand } from "../../../adapters/telegram/commands.ts";
import { anna, botOn, type Club, group, hans, karl, openClub, seen } from "./club.ts";

let club: Club;

beforeEach(async () => {
  club = await openClub();
});

afterEach(async () => {
  await club.close();
  expect(club.double.violations).toEqual([]);
  expect(club.double.rung).toEqual([]);
});

const mirrors = "got a pair of mirrors for my Shrike, alloy housing, two screws, no casting mark. legit?";
const name = "@witness_mark_bot";

function newest(chat: number) {
  const last = club.written(chat).at(-1);
  if (last === undefined) throw new Error("the bot has written nothing");
  return last;
}

test("who made the group owns, its administrators keep, members are nothing the platform vouches for", async () => {
  const { people } = club.double;
  for (const person of [anna, hans, karl]) people.say(group, person, "/keepers");
  await club.settled();
  expect(club.heard.map(({ standing }) => standing)).toEqual([undefined, "keeper", "owner"]);
});

test("an administrator who speaks as the group keeps too", async () => {
  const { people, world } = club.double;
  people.say(group, hans, "/queue");
  const update = world.updates.at(-1);
  const message = update?.message;
  if (message === undefined) throw new Error("no message");
  Object.assign(message, {
    from: { id: 1087968824, is_bot: true, first_name: "Group", username: "GroupAnonymousBot" },
    sender_chat: message.chat,
  });
  await club.settled();
  expect(club.heard.at(-1)).toMatchObject({ from: `telegram:${group}`, standing: "keeper" });
});

test("in private a person speaks of the club they spoke in last, with their standing there", async () => {
  const { people } = club.double;
  people.say(hans, hans, "/pins");
  await club.settled();
  expect(club.heard.at(-1)).toMatchObject({ community: "home", isPrivate: true });
  people.say(group, hans, "/pins");
  await club.settled();
  people.say(hans, hans, "/pins");
  await club.settled();
  expect(club.heard.at(-1)).toMatchObject({
    conversation: `telegram:${hans}`,
    community: `telegram-${group}`,
    isPrivate: true,
    standing: "keeper",
  });
});

test("a case goes to the keepers' topic, and the keeper's answer back under the question", async () => {
  const { people } = club.double;
  const forum = -1003;
  people.group(forum, "Forum", { isForum: true });
  people.join(forum, anna);
  people.join(forum, hans, "administrator");
  people.say(forum, anna, "/keepershere", { topic: 5 });
  await club.settled();
  expect(newest(forum).text).toContain("Only a keeper");
  people.say(forum, hans, "/keepershere", { topic: 5 });
  await club.settled();
  people.say(forum, anna, `${name} ${mirrors}`, { topic: 2 });
  await club.settled();
  const asked = newest(forum);
  people.say(forum, anna, "/askkeeper", { topic: 2 });
  await club.settled();
  const inTopic = (topic: number) => club.written(forum).filter((kept) => kept.topic === topic);
  await expect.poll(() => inTopic(5).at(-1)?.text).toContain("Anna asks the keepers");
  const id = /\(([0-9a-z]{4}-[0-9a-z]{4})\)/u.exec(inTopic(5).at(-1)?.text ?? "")?.[1] ?? "";
  people.say(forum, hans, `/answer ${id}: the first type, by the two screws`, { topic: 5 });
  await club.settled();
  await expect.poll(() => inTopic(2).at(-1)?.text).toContain("the first type, by the two screws");
  expect(inTopic(2).at(-1)?.replyTo).toBe(asked.id);
  // Told once, however often it is asked.
  const { length } = club.written(forum);
  await new Promise((resolve) => setTimeout(resolve, 200));
  expect(club.written(forum)).toHaveLength(length);
});

test("the keepers meet in a group of their own: its keeper chooses it, and the club's memory is spoken of there", async () => {
  const { people } = club.double;
  const desk = -1004;
  people.group(desk, "Keepers of the Shrike");
  people.join(desk, hans);
  people.join(desk, anna);
  people.say(group, hans, "/keepersgroup");
  await club.settled();
  const url = newest(group).buttons[0]?.[0]?.url ?? "";
  expect(url).toBe(`https://t.me/witness_mark_bot?startgroup=keepers_${group}`);
  people.say(desk, anna, `/start${name} keepers_${group}`);
  await club.settled();
  expect(newest(desk).text).toContain("Only a keeper");
  people.say(desk, hans, `/start${name} keepers_${group}`);
  await club.settled();
  expect(newest(desk).text).toContain("comes here from now on");
  people.say(group, anna, `${name} ${mirrors}`);
  people.say(group, anna, "/askkeeper");
  await club.settled();
  await expect.poll(() => newest(desk).text).toContain("Anna asks the keepers");
  people.say(desk, hans, "/pins");
  await club.settled();
  expect(club.heard.at(-1)).toMatchObject({ community: `telegram-${group}` });
});

test("a keeper's answer to somebody in private comes in private; who has blocked the bot is not told, and nobody waits", async () => {
  const { people } = club.double;
  people.say(group, karl, "/keepershere");
  people.say(group, anna, "/pins");
  await club.settled();
  people.say(anna, anna, mirrors);
  people.say(anna, anna, "/askkeeper");
  await club.settled();
  await expect.poll(() => newest(group).text).toContain("Anna asks the keepers");
  const id = /\(([0-9a-z]{4}-[0-9a-z]{4})\)/u.exec(newest(group).text ?? "")?.[1] ?? "";
  people.block(anna);
  people.say(group, hans, `/answer ${id}: the first type`);
  await club.settled();
  await expect.poll(async () => (await club.bot.notices(9)).length).toBe(0);
  expect(
    club
      .written(anna)
      .map(({ text }) => text)
      .join(""),
  ).not.toContain("the first type");
});

test("a pinned answer is written in the group, kept by a press, and shown to whoever asks", async () => {
  const { people } = club.double;
  people.say(group, hans, `${name} ${mirrors}`);
  people.say(group, hans, "/pin Two screws: the first type. Measure the foot.");
  await club.settled();
  const draft = newest(group);
  const [card] = club.written(group);
  people.press(group, draft.id, anna, "keep it");
  await club.settled();
  expect(draft.text).toContain("This would be pinned");
  people.press(group, draft.id, hans, "for any question");
  await club.settled();
  people.press(group, draft.id, hans, "keep it");
  await club.settled();
  expect(draft.text).not.toContain("This would be pinned");
  expect(card?.text).toContain("part: door mirror");
  people.say(anna, anna, "hello");
  people.say(group, anna, `${name} which door mirror is this? two screws`);
  await club.settled();
  const shown = club.written(group).findLast(({ text }) => text?.includes("Pinned answer by Hans") === true);
  expect(shown?.text).toContain("Two screws: the first type. Measure the foot.");
});

test("what is for one alone is told in private, and in the group only how to hear it", async () => {
  const { people, world } = club.double;
  people.say(group, hans, "/queue");
  await club.settled();
  expect(club.written(group)).toEqual([]);
  expect(newest(hans).text).toContain("keeper");
  const room = world.rooms.get(hans);
  if (room !== undefined) room.hasStarted = false;
  people.say(group, hans, "/queue");
  await club.settled();
  expect(seen(newest(group))).toContain("for you alone");
  expect(newest(group).buttons[0]?.[0]?.url).toBe("https://t.me/witness_mark_bot?start=here");
});

test("a topic set aside is read along, and left alone again when that is asked", async () => {
  const { people } = club.double;
  people.setBot(group, "administrator", karl);
  people.say(group, anna, mirrors);
  people.say(group, karl, "/listen");
  people.say(group, anna, mirrors);
  await club.settled();
  expect(newest(group).text).toContain("door mirror");
  people.say(group, anna, "@hans have a look");
  people.say(group, karl, "/listenless");
  people.say(group, anna, "two screws");
  await club.settled();
  expect(club.heard.map(({ text }) => text)).toEqual([mirrors]);
});

test("commands are listed by scope and language, and each stands for words", async () => {
  await expect.poll(() => club.double.world.commands.size).toBe(6);
  const listed = (scope: string) => club.double.world.commands.get(scope) ?? [];
  expect([...club.double.world.commands.keys()]).toEqual([
    "all_private_chats",
    "all_group_chats",
    "all_chat_administrators",
    "all_private_chats de",
    "all_group_chats de",
    "all_chat_administrators de",
  ]);
  expect(listed("all_group_chats").map(({ command }) => command)).not.toContain("audit");
  expect(listed("all_chat_administrators").map(({ command }) => command)).toContain("audit");
  expect(listed("all_private_chats de").find(({ command }) => command === "undo")?.description).toBe(
    "die letzte Antwort zurücknehmen",
  );
  expect(wordsOfCommand("pin", "two screws")).toBe("pin this: two screws");
  expect(wordsOfCommand("accept", "ab12")).toBe("accept observation ab12");
  expect(new Set(commands.map((command) => command.name)).size).toBe(commands.length);
});

test("inline, two kinds are compared and pinned answers found, and no case is moved", async () => {
  const { people, world } = club.double;
  people.say(group, hans, `${name} ${mirrors}`);
  people.say(group, hans, "/pin Two screws: the first type. Measure the foot.");
  await club.settled();
  people.press(group, newest(group).id, hans, "keep it");
  people.say(group, anna, "/pins");
  await club.settled();
  const asked = [
    "compare first-type mirror with nylon ball and trade reproduction mirror",
    "measure the foot",
    "x",
    "trade reproduction vs second type",
  ];
  const queries: string[] = [];
  for (const query of asked) {
    queries.push(people.ask(anna, query));
    await club.settled();
  }
  const texts = queries.map((query) =>
    (world.inlineAnswers.get(query) ?? []).map(
      (result) =>
        (result as { input_message_content: { message_text: string } }).input_message_content.message_text,
    ),
  );
  expect(texts[0]?.[0]).toContain("side by side");
  expect(texts[1]?.some((text) => text.includes("Two screws: the first type"))).toBe(true);
  expect(texts[2]).toEqual([]);
  expect(await club.store.ids("conversation")).not.toContain(`telegram:${anna}`);
});

test("a bot that fails is tried again in its place in the row, and then says so in private", async () => {
  const inner = botOn(club.store);
  let failures = 0;
  const failing = await openClub({
    bot: {
      ...inner,
      receive(message) {
        failures += 1;
        return failures <= 3 ? Promise.reject(new Error("the store is gone")) : inner.receive(message);
      },
    },
  });
  failing.double.people.say(anna, anna, mirrors);
  failing.double.people.say(anna, anna, "/help");
  await failing.settled();
  expect(failing.written(anna).map(({ text }) => text?.slice(0, 16))).toEqual([
    "That message was",
    "Describe a part ",
  ]);
  await failing.close();
}, 40_000);
