import { afterEach, beforeEach, expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import type { Reply } from "../../../bot/index.ts";
import { plainSummary } from "../../support/plain-summary.ts";
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

/** The newest message of the bot in a chat. */
function newest(chat: number) {
  const last = club.written(chat).at(-1);
  if (last === undefined) throw new Error("the bot has written nothing");
  return last;
}

function questionOf(reply: Reply | undefined) {
  return reply?.blocks.find((block) => block.kind === "question");
}

test("a post in a private chat is answered with what was read, where it stands, and one question with buttons", async () => {
  club.double.people.say(anna, anna, mirrors);
  await club.settled();
  const question = questionOf(club.replies.at(-1));
  expect(club.written(anna).map(seen)).toEqual([
    [
      "I read:",
      "• part: door mirror",
      "• housing material: cast alloy",
      "• fixing screws: two screws",
      "• casting mark: no casting mark",
      "",
      "You want to know whether it is genuine.",
      "",
      "Where it stands:",
      "████████░░ a genuine part, likely (83 %)",
      "█░░░░░░░░░ a reproduction, unlikely (15 %)",
      "",
      "Closest kind: First-type mirror with nylon ball, about as likely as not (53 %).",
      "",
      "! Toughened glass bursts from an edge knock: goggles, gloves, long sleeves; no scraping at the mark.",
      "! Follow the maker's manual, local codes and licensed practice.",
      "",
      // Which question tells most changes with the handbook.
      question?.text ?? "no question",
      ...(question?.answers ?? []).map(({ label }) => `[${label}]`),
      "[cannot tell] [why this?]",
      "[how do I check?] [undo]",
    ].join("\n"),
  ]);
});

test("one message is edited as the case moves, by buttons and by words", async () => {
  const { people } = club.double;
  people.say(anna, anna, mirrors);
  await club.settled();
  const { id } = newest(anna);
  people.press(anna, id, anna, "why this?");
  await club.settled();
  expect(newest(anna)).toMatchObject({ id, text: expect.stringContaining("this helps to tell them apart") });
  people.press(anna, id, anna, "cannot tell");
  await club.settled();
  expect(newest(anna)).toMatchObject({
    id,
    text: expect.stringContaining("cannot tell. I will not ask again."),
  });
  people.say(anna, anna, "the glass is 3 mm thick", { replyTo: id });
  await club.settled();
  expect(club.written(anna)).toHaveLength(1);
  expect(newest(anna)).toMatchObject({ id, text: expect.stringContaining("a reproduction") });
});

test("an answer that was given stays; what is asked about it comes below", async () => {
  const { people } = club.double;
  people.say(anna, anna, `${mirrors} no week mark, glass 3 mm`);
  await club.settled();
  const answer = newest(anna);
  expect(answer.text).toContain("Left open");
  people.press(anna, answer.id, anna, "show the sources");
  await club.settled();
  expect(club.written(anna)).toHaveLength(2);
  expect(answer.text).toContain("Left open");
  expect(newest(anna).text).toContain("grade");
});

test("in a group it speaks when spoken to: a command, its name, an answer to its message", async () => {
  const { people } = club.double;
  people.say(group, anna, "nice weather for a drive");
  people.say(group, anna, "@hans look at these mirrors");
  people.say(group, anna, "?");
  people.say(group, anna, "/help@another_bot");
  people.say(group, anna, "/weather");
  await club.settled();
  expect(club.written(group)).toEqual([]);
  const post = people.say(group, anna, `${name} ${mirrors}`);
  await club.settled();
  expect(newest(group)).toMatchObject({ replyTo: post.id, text: expect.stringContaining("door mirror") });
  people.say(group, hans, "/help");
  await club.settled();
  expect(newest(group).text).toContain("in your own words");
  people.say(group, anna, "3 mm glass", { replyTo: club.written(group)[0]?.id ?? 0 });
  await club.settled();
  expect(club.written(group)[0]?.text).toContain("thickness of the glass: 3 mm");
});

test("an administrator bot hears everything in a group, and still keeps silent where it is not meant", async () => {
  const { people } = club.double;
  people.setBot(group, "administrator", karl);
  const theirs = people.say(group, hans, mirrors);
  people.say(group, anna, "two screws?", { replyTo: theirs.id });
  people.say(group, anna, "@karl what do you think of these mirrors");
  await club.settled();
  expect(club.written(group)).toEqual([]);
});

test.each(["measurement", "choice"] as const)(
  "a question for a %s in a group says how to be heard only where words are wanted, because nothing else written there arrives",
  async (expects) => {
    const question = {
      kind: "question" as const,
      feature: "glass",
      text: "How thick is the glass?",
      effort: 1,
      photographDoes: false,
      answers: [],
      expects,
      besides: [],
    };
    const receive = async () => ({ summary: plainSummary, blocks: [question] });
    const asking = await openClub({ bot: { ...botOn(memoryStore()), receive } });
    asking.double.people.say(group, anna, `${name} a mirror`);
    asking.double.people.say(anna, anna, "a mirror");
    await asking.settled();
    const hint = expects === "choice" ? "" : "\n\nAnswer by replying to this message.";
    expect(asking.written(group).map(({ text }) => text)).toEqual([`How thick is the glass?${hint}`]);
    expect(asking.written(anna).map(({ text }) => text)).toEqual(["How thick is the glass?"]);
    await asking.close();
  },
);

test("each topic of a forum is a place of its own", async () => {
  const { people } = club.double;
  const forum = -1002;
  people.group(forum, "Forum", { isForum: true });
  people.join(forum, anna);
  people.say(forum, anna, `${name} ${mirrors}`, { topic: 7 });
  people.say(forum, anna, `${name} which rear spoiler is this?`, { topic: 9 });
  await club.settled();
  expect(club.written(forum).map(({ topic }) => topic)).toEqual([7, 9]);
  expect(await club.store.ids("conversation")).toEqual(["telegram:-1002:7", "telegram:-1002:9"]);
});

test("somebody else's post is asked about by a command in answer to it, as that person's words", async () => {
  const { people } = club.double;
  const post = people.say(group, hans, mirrors);
  people.say(group, anna, "/ask", { replyTo: post.id });
  await club.settled();
  expect(club.heard.at(-1)).toMatchObject({
    from: `telegram:${anna}`,
    quoted: { from: `telegram:${hans}`, name: "Hans", text: mirrors },
  });
  expect(newest(group).text).toContain("housing material: cast alloy");
});

test("button data that somebody made up changes nothing", async () => {
  const { people, world } = club.double;
  people.say(anna, anna, mirrors);
  await club.settled();
  const { id, buttons } = newest(anna);
  const data = buttons[0]?.[0]?.callback_data ?? "";
  const [key] = data.split(".");
  const before = await club.store.history("conversation", `telegram:${anna}`);
  const forged = [
    "",
    "x",
    "🦊",
    `${key}.zz`,
    `${key}.-1`,
    "AAAAAAAAAAA.0",
    "__proto__.0",
    data.toUpperCase(),
  ];
  const presses = forged.map((made) => people.forge(anna, id, anna, made));
  // What is offered to Anna is nothing in Karl's chat.
  people.say(karl, karl, "hello");
  await club.settled();
  presses.push(people.forge(karl, newest(karl).id, karl, data));
  await club.settled();
  expect(await club.store.history("conversation", `telegram:${anna}`)).toHaveLength(before.length);
  for (const press of presses) {
    expect(world.callbacks.get(press)).toEqual({ count: 1, answer: expect.stringContaining("lapsed") });
  }
});
