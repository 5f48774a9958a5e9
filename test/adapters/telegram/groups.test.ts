// What a group must be spared, and what nobody may be left alone with: chatter answered, private answers told to all, commands that lead nowhere.
import { afterEach, beforeEach, expect, test } from "vitest";
import { OutsideError } from "../../../adapters/errors.ts";
import { anna, type Club, group, hans, karl, openClub, seen } from "./club.ts";

let club: Club;

beforeEach(async () => {
  club = await openClub();
});

afterEach(async () => {
  await club.close();
  expect(club.double.violations).toEqual([]);
  expect(club.double.rung).toEqual([]);
});

const name = "@witness_mark_bot";
const mirrors = "which door mirror is this? alloy housing, two screws";

function texts(chat: number): readonly string[] {
  return club.written(chat).map(({ text }) => text ?? "");
}

async function said(chat: number, person: number, ...words: readonly string[]): Promise<void> {
  for (const one of words) {
    club.double.people.say(chat, person, one);
    await club.settled();
  }
}

test("what is for one alone is never told to a group because an administrator speaks as the group", async () => {
  const { people, world } = club.double;
  for (const words of ["/mine", "/queue"]) {
    people.say(group, karl, words);
    const message = world.updates.at(-1)?.message;
    if (message === undefined) throw new Error("no message");
    const from = { id: 1087968824, is_bot: true, first_name: "Group", username: "GroupAnonymousBot" };
    Object.assign(message, { from, sender_chat: message.chat });
    await club.settled();
  }
  expect(club.replies.map(({ isPrivate }) => isPrivate)).toEqual([true, true]);
  expect(new Set(texts(group))).toEqual(
    new Set([
      "The answer is for one person alone, and you speak as the group. Say it here under your own name, and I answer you in private.",
    ]),
  );
});

test("where it reads along, chatter is left alone, and what is about a part is answered", async () => {
  club.double.people.setBot(group, "administrator", karl);
  await said(group, karl, "/listen");
  await said(
    group,
    anna,
    "Good morning all!",
    "I'll bring cake",
    "thanks Karl!",
    "has anybody a spare one for sale?",
  );
  expect(texts(group)).toHaveLength(1);
  await said(group, anna, mirrors);
  expect(texts(group).at(-1)).toContain("door mirror");
  const card = club.written(group).at(-1);
  await said(group, anna, "thanks", "that was quick");
  expect([club.written(group).length, card?.edits]).toEqual([2, 0]);
  await said(group, anna, "why this?", "it has no casting mark");
  expect(texts(group).at(-1)).toContain("no casting mark");
});

test("a listening that Telegram does not allow is not promised", async () => {
  await said(group, karl, "/listen");
  expect(texts(group).at(-1)).toContain("Make me an administrator of this group");
  club.double.people.setBot(group, "administrator", karl);
  await said(group, karl, "/listen");
  expect(texts(group).at(-1)).toContain("From now on I read everything");
});

test("the keepers' own group stays theirs when it becomes a supergroup", async () => {
  const { people } = club.double;
  const [desk, later] = [-5004, -1005004];
  people.group(desk, "Keepers of the Shrike", { type: "group" });
  people.join(desk, hans);
  await said(desk, hans, `/start${name} keepers_${group}`);
  people.upgrade(desk, later);
  await club.settled();
  await said(later, hans, "/pins");
  expect(club.heard.at(-1)).toMatchObject({ community: `telegram-${group}`, standing: "keeper" });
  await said(group, anna, `${name} ${mirrors}`, "/askkeeper");
  await expect.poll(() => texts(later).at(-1)).toContain("Anna asks the keepers");
});

test("a command that is touched in the list says what belongs behind it, and one that nobody knows gets help", async () => {
  await said(group, hans, "/answer", "/pin", "/accept", "/redeem");
  expect(club.heard).toEqual([]);
  expect(texts(group)).toEqual(
    [
      "answer 4rz2-9kd1: the first type, by its screws",
      "pin two screws: the first type",
      "accept 4rz2-9kd1",
      "redeem d5f6f47356567df69931",
    ].map((example) => `That needs a few words behind the command, in one message, as in “/${example}”.`),
  );
  await said(group, hans, "/frobnicate", `/frobnicate${name}`);
  expect(club.heard.map(({ text }) => text)).toEqual(["help"]);
});

test("what stands behind a command is understood", async () => {
  await said(
    anna,
    anna,
    "/changeovers door mirror",
    "/carswanted door mirror",
    "/photographs door mirror",
    "/observations of mine",
  );
  const [changes, wanted, photographs, observations] = texts(anna);
  expect(changes).toContain("Changes of the door mirror");
  expect(wanted).toContain("Of the door mirror");
  expect(photographs).toContain("Ask for these photographs of the door mirror");
  expect(observations).toContain("You have recorded nothing yet");
  await said(group, karl, "/settings units to both");
  expect(texts(group).at(-1)).toContain("both units");
});

test("a press in a group is answered below what was pressed, when the answer stands by itself", async () => {
  await said(group, anna, `${name} ${mirrors}`);
  const card = club.written(group).at(-1);
  if (card === undefined) throw new Error("no answer");
  club.double.people.press(group, card.id, karl, "why this?");
  await club.settled();
  expect(club.written(group).at(-1)).toMatchObject({ replyTo: card.id });
});

test("where the case stands stays to be read while its message is edited", async () => {
  await said(anna, anna, mirrors);
  const card = club.written(anna).at(-1);
  if (card === undefined) throw new Error("no answer");
  const standing = /Where it stands:\n.+\n.+/u.exec(card.text ?? "")?.[0] ?? "nothing";
  for (const label of ["why this?", "how do I check?", "cannot tell"]) {
    club.double.people.press(anna, card.id, anna, label);
    await club.settled();
    expect(card.text?.split(standing)).toHaveLength(2);
  }
});

test("cannot tell is an answer to the car of an observation, by its button", async () => {
  await said(group, anna, "/keepers");
  await said(anna, anna, "/observe");
  const press = async (label: string) => {
    const message = club.written(anna).at(-1);
    club.double.people.press(anna, message?.id ?? 0, anna, label);
    await club.settled();
    return texts(anna).at(-1);
  };
  await press("door mirror");
  await press("First-type mirror with nylon ball");
  const next = await press("cannot tell");
  expect(next).not.toContain("I could not read");
  expect(next).not.toContain("Which car was it on?");
});

test("a photograph that cannot be taken in costs neither the words nor the other photographs", async () => {
  await club.close();
  let count = 0;
  const take = async () => {
    count += 1;
    return count === 1
      ? ({ ok: false, problem: { message: "That is no photograph I can open." } } as const)
      : ({ ok: true, id: `p${count}` } as const);
  };
  club = await openClub({ photographs: { take, read: async () => undefined } });
  const { people } = club.double;
  const photo = Buffer.from("any");
  people.say(anna, anna, mirrors, { photo, album: "a" });
  people.say(anna, anna, "", { photo, album: "a" });
  await club.settled();
  expect(club.heard).toMatchObject([{ text: mirrors, photographs: ["p2"] }]);
  expect(seen(club.written(anna)[0] ?? ({} as never))).toMatch(
    /^That is no photograph I can open\.\n\nI read/u,
  );
});

test("a picture that cannot be drawn, or that Telegram refuses, is left out, and the words come all the same", async () => {
  for (const pictureOf of [
    () => Promise.reject(new OutsideError("picture: it is too large to be drawn")),
    async () => new Uint8Array(0),
  ]) {
    await club.close();
    club = await openClub({ pictureOf });
    await said(anna, anna, "which rear spoiler is this? square tips", "how do I check the moulder's mark?");
    expect(texts(anna)).toHaveLength(2);
    expect(texts(anna).at(-1)).toContain("left-hand tip");
    (club.double.violations as string[]).length = 0;
  }
});

test("in private, what is neither words nor a photograph is not met with silence", async () => {
  const { people, world } = club.double;
  people.say(anna, anna, "");
  const message = world.updates.at(-1)?.message;
  Object.assign(message ?? {}, {
    text: undefined,
    voice: { file_id: "v", file_unique_id: "v", duration: 3 },
  });
  await club.settled();
  expect(texts(anna)).toEqual([
    "I take in words and photographs, nothing else. Say in words what you see on the part.",
  ]);
});

test("of what is typed inline the newest is answered, every result by a name of its own", async () => {
  const { people, world } = club.double;
  const queries = ["compare", "compare first-type mirror", "compare first-type mirror with nylon ball"].map(
    (query) => people.ask(anna, query),
  );
  await club.settled();
  await expect.poll(() => world.inlineAnswers.get(queries[2] ?? "")?.length).toBeGreaterThan(2);
  expect(world.inlineAnswers.has(queries[1] ?? "")).toBe(false);
  const results = world.inlineAnswers.get(queries[2] ?? "") as readonly {
    readonly input_message_content: { readonly message_text: string };
  }[];
  for (const { input_message_content: content } of results)
    expect(content.message_text).toContain("side by side");
});

test("a chat that is stuck keeps newer messages from nobody, however many wait behind it", async () => {
  await club.close();
  let free = () => {};
  const stuck = new Promise<void>((resolve) => {
    free = resolve;
  });
  club = await openClub({ wait: () => stuck });
  const { people, world } = club.double;
  club.double.fail("sendMessage", { kind: "too many", seconds: 600 });
  people.say(karl, karl, "/help");
  await expect.poll(() => club.heard.length).toBe(1);
  for (let times = 0; times < 260; times += 1) people.say(group, hans, "nothing for the bot");
  people.setBot(group, "administrator", karl);
  for (let times = 0; times < 260; times += 1) people.say(group, hans, "nothing for the bot");
  people.say(anna, anna, "/help");
  await expect.poll(() => club.written(anna).length, { timeout: 20_000 }).toBe(1);
  expect(world.updates.length).toBeLessThan(100);
  free();
  await expect.poll(() => club.written(karl).length).toBe(1);
}, 40_000);

test("a press that was kept and could not be shown is not said to have come to nothing", async () => {
  await club.close();
  club = await openClub({ wait: async () => undefined });
  await said(anna, anna, mirrors);
  const card = club.written(anna).at(-1);
  club.double.fail("editMessageText", { kind: "too many", seconds: 600 }, 30);
  club.double.people.press(anna, card?.id ?? 0, anna, "cannot tell");
  await club.settled();
  await expect.poll(() => texts(anna).length).toBe(2);
  expect(texts(anna).at(-1)).toContain("Say it again, and you see where the case stands.");
});

test("the answer to a press is shown once Telegram takes it again", async () => {
  await club.close();
  club = await openClub({ wait: async () => undefined });
  await said(anna, anna, mirrors);
  const card = club.written(anna).at(-1);
  club.double.fail("editMessageText", { kind: "too many", seconds: 600 }, 3);
  club.double.people.press(anna, card?.id ?? 0, anna, "cannot tell");
  await club.settled();
  await expect.poll(() => card?.text).toContain("Car built: cannot tell.");
  expect(club.written(anna)).toHaveLength(1);
  club.double.people.press(anna, card?.id ?? 0, anna, "Home market");
  await club.settled();
  expect(card?.text).toContain("Home market");
});
