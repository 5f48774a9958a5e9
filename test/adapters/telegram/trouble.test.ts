import { Api } from "grammy";
import { afterEach, beforeEach, expect, test } from "vitest";
import { UnavailableError } from "../../../adapters/errors.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";
import type { Store } from "../../../bot/index.ts";
import { rememberingLog } from "../../support/logs.ts";
import { anna, type Club, group, karl, openClub } from "./club.ts";

let club: Club;

beforeEach(async () => {
  club = await openClub();
});

afterEach(async () => {
  await club.close();
  expect(club.double.violations).toEqual([]);
});

const mirrors = "got a pair of mirrors for my Shrike, alloy housing, two screws, no casting mark. legit?";
const name = "@witness_mark_bot";
const read = "door mirror";
const unknown = "cannot tell. I will not ask again.";

function newest(chat: number) {
  const last = club.written(chat).at(-1);
  if (last === undefined) throw new Error("the bot has written nothing");
  return last;
}

function isConflict({ answer }: Club["double"]["calls"][number]): boolean {
  return answer !== "cut" && !answer.ok && answer.error_code === 409;
}

async function versions(conversation: string): Promise<number> {
  return club.store.version("conversation", conversation);
}

test("an update that comes again changes nothing and says nothing", async () => {
  const { people, world } = club.double;
  people.say(anna, anna, mirrors);
  await club.settled();
  const { id, edits } = newest(anna);
  people.redeliver();
  await club.settled();
  const press = people.press(anna, id, anna, "cannot tell");
  await club.settled();
  const after = await versions(`telegram:${anna}`);
  const { text } = newest(anna);
  people.redeliver();
  await club.settled();
  expect(club.written(anna)).toHaveLength(1);
  expect(newest(anna)).toMatchObject({ id, text, edits: edits + 1 });
  expect(await versions(`telegram:${anna}`)).toBe(after);
  expect(world.callbacks.get(press)?.answer).toBe("");
});

test("too many calls: the platform's wait is kept, and the answer comes after it", async () => {
  const { people } = club.double;
  club.double.fail("sendMessage", { kind: "too many", seconds: 1 });
  const begun = performance.now();
  people.say(anna, anna, mirrors);
  await club.settled();
  expect(performance.now() - begun).toBeGreaterThan(990);
  expect(club.written(anna)).toHaveLength(1);
});

test.each([["cut after"], ["cut before"], ["server error after"], ["server error"]] as const)(
  "a send that ends with a %s is said once",
  async (kind) => {
    const { people } = club.double;
    club.double.fail("sendMessage", { kind });
    // Others write meanwhile, so that the lost message is not the very next.
    people.say(group, anna, `${name} ${mirrors}`);
    await club.settled();
    expect(club.written(group)).toHaveLength(1);
    people.press(group, newest(group).id, anna, "cannot tell");
    await club.settled();
    expect(newest(group).text).toContain(unknown);
  },
);

test("a lost answer while others write in the group is still said once", async () => {
  const { people, world } = club.double;
  club.double.fail("sendMessage", { kind: "cut after" });
  people.say(group, anna, `${name} ${mirrors}`);
  const before = club.double.calls.length;
  await expect.poll(() => club.double.calls.slice(before).some(({ answer }) => answer === "cut")).toBe(true);
  for (let index = 0; index < 3; index += 1) people.say(group, karl, `chatter ${index}`);
  await club.settled();
  expect(club.written(group)).toHaveLength(1);
  expect(world.rooms.get(group)?.messages).toHaveLength(5);
});

test("an edit whose answer is lost is one edit", async () => {
  const { people } = club.double;
  people.say(anna, anna, mirrors);
  await club.settled();
  const { id } = newest(anna);
  club.double.fail("editMessageText", { kind: "cut after" });
  people.press(anna, id, anna, "cannot tell");
  await club.settled();
  expect(newest(anna)).toMatchObject({ id, edits: 1 });
});

test.each([
  ["too old", { isTooOld: true }],
  ["deleted", { isDeleted: true }],
])("a message that is %s cannot be edited: the case goes on in a new one", async (_, state) => {
  const { people } = club.double;
  people.say(anna, anna, mirrors);
  await club.settled();
  const old = newest(anna);
  Object.assign(old, state);
  people.say(anna, anna, "no week mark", { replyTo: old.id });
  await club.settled();
  const next = newest(anna);
  expect(next.id).toBeGreaterThan(old.id);
  people.press(anna, next.id, anna, "cannot tell");
  await club.settled();
  expect(newest(anna)).toMatchObject({ id: next.id, edits: 1 });
});

test("a bot that was blocked keeps quiet, hears everybody else, and goes on when it is let in again", async () => {
  const { people, world } = club.double;
  people.say(anna, anna, mirrors);
  await club.settled();
  const room = world.rooms.get(anna);
  people.say(anna, anna, "no week mark");
  people.block(anna);
  await club.settled();
  people.say(karl, karl, mirrors);
  await club.settled();
  expect(newest(karl).text).toContain(read);
  room?.members.set(world.bot.id, "member");
  people.say(anna, anna, "glass 3 mm");
  await club.settled();
  expect(newest(anna).text).toContain("3 mm");
});

test("kicked from a group, silenced in it, let in again: it keeps quiet and then goes on", async () => {
  const { people, world } = club.double;
  const room = world.rooms.get(group);
  if (room === undefined) throw new Error("no group");
  room.mayWrite = false;
  people.say(group, anna, `${name} ${mirrors}`);
  await club.settled();
  expect(club.written(group)).toEqual([]);
  room.mayWrite = true;
  people.setBot(group, "kicked", karl);
  await club.settled();
  people.setBot(group, "member", karl);
  people.say(group, anna, `${name} no week mark`);
  await club.settled();
  expect(newest(group).text).toContain("week mark on the glass: no week mark");
});

test("a group that becomes a supergroup takes its cases along", async () => {
  const { people } = club.double;
  const old = -55;
  const now = -1_000_055;
  people.group(old, "Small group", { type: "group" });
  people.join(old, anna);
  people.say(old, anna, `${name} ${mirrors}`);
  await club.settled();
  people.upgrade(old, now);
  people.say(now, anna, `${name} no week mark`);
  await club.settled();
  expect(newest(now).text).toContain("week mark on the glass: no week mark");
  expect(await club.store.ids("conversation")).toEqual([`telegram:${old}`]);
  expect(club.heard.at(-1)).toMatchObject({ conversation: `telegram:${old}`, community: `telegram-${old}` });
});

test("a move that the bot hears of only when it is refused is followed", async () => {
  const { people, world } = club.double;
  const old = -56;
  const now = -1_000_056;
  people.group(old, "Small group", { type: "group" });
  people.join(old, anna);
  people.say(old, anna, `${name} ${mirrors}`);
  people.upgrade(old, now);
  // The notes of the move are lost: only the question itself arrives.
  world.updates = world.updates.filter(({ message }) => message?.text !== undefined);
  await club.settled();
  expect(newest(now).text).toContain(read);
  people.press(now, newest(now).id, anna, "cannot tell");
  await club.settled();
  expect(newest(now).text).toContain(unknown);
});

test("words that look like marks stand as they were written, and names in them ring for nobody", async () => {
  const { people } = club.double;
  const post = `mirror <b>alloy</b> & "two" <script> &lt; @karl_of_wexcombe ${"<".repeat(50)}`;
  people.say(anna, anna, post);
  people.say(group, anna, `${name} ${post}`);
  await club.settled();
  expect(club.double.rung).toEqual([]);
  expect(club.written(group)).toHaveLength(1);
});

test("another poller with the same token ends the fetch; it is tried again when that one is gone", async () => {
  const api = new Api(club.double.token, { apiRoot: club.double.root });
  await api.getUpdates({ timeout: 0 });
  await expect.poll(() => club.double.calls.some(isConflict)).toBe(true);
  club.double.people.say(anna, anna, mirrors);
  await club.settled();
  expect(newest(anna).text).toContain(read);
});

test("a fetch of updates that is cut or refused is tried again", async () => {
  const { people } = club.double;
  for (const kind of ["cut before", "server error"] as const) club.double.fail("getUpdates", { kind });
  people.say(anna, anna, mirrors);
  await club.settled();
  expect(newest(anna).text).toContain(read);
});

test("the log says what failed, and neither the token nor what people wrote", async () => {
  const { log, lines } = rememberingLog();
  const logged = await openClub({ log });
  logged.double.people.say(anna, anna, mirrors);
  logged.double.fail("sendMessage", { kind: "cut before" }, 4);
  await logged.settled();
  await logged.close();
  const text = JSON.stringify(lines, (_, value) =>
    value instanceof Error ? { ...value, ...asPlain(value) } : value,
  );
  expect(text).toContain("could not be handled");
  expect(text).not.toContain(logged.double.token);
  expect(text).not.toContain("alloy");
});

function asPlain({ name: kind, message, stack }: Error) {
  return { kind, message, stack };
}

test("a webhook left over from another time is removed", async () => {
  const { people, world } = club.double;
  world.webhook = { url: "https://elsewhere.example/hook", secret: "" };
  people.say(anna, anna, mirrors);
  await club.settled();
  expect(world.webhook.url).toBe("");
  expect(newest(anna).text).toContain(read);
});

test("what had to be given up is told to whoever spoke to the bot, and to nobody else", async () => {
  let isFull = false;
  const store = memoryStore();
  const failing: Store = {
    ...store,
    advance: (change, advance) =>
      isFull && change.kind === "conversation"
        ? Promise.reject(new UnavailableError("store: the disk is full"))
        : store.advance(change, advance),
  };
  const waiting = await openClub({ store: failing, wait: async () => undefined });
  const { people } = waiting.double;
  people.say(group, anna, `${name} ${mirrors}`);
  await waiting.settled();
  const shown = waiting.written(group).at(-1);
  isFull = true;
  people.say(group, anna, `${name} no week mark`);
  people.say(group, karl, "does anybody come on Sunday?");
  people.press(group, shown?.id ?? 0, anna, "cannot tell");
  await waiting.settled();
  people.say(karl, karl, mirrors);
  await waiting.settled();
  const alone = waiting.written(karl).map(({ text }) => text);
  const told = waiting
    .written(group)
    .map(({ text }) => text ?? "")
    .slice(1);
  await waiting.close();
  const wasLost = expect.stringMatching(/^That message was lost.*still stands\.$/u);
  expect(told).toEqual([wasLost, expect.stringContaining("can be pressed again")]);
  expect(alone).toEqual([wasLost]);
});
