// Several processes at one bot: on one store, fetching from one platform; by webhook; and one that falls while it speaks.
import { expect, test } from "vitest";
import { databaseStore } from "../../../adapters/store/database-store.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { openEngine } from "../../../adapters/store/open-engine.ts";
import { newestMessages } from "../../../adapters/telegram/newest-messages.ts";
import { silentLog } from "../../support/logs.ts";
import { newPlaces, newStoreFolder } from "../../support/store-places.ts";
import { mainProgram, start } from "../program.ts";
import { anna, botOn, karl, newDouble, openClub } from "./club.ts";

const mirrors = "got a pair of mirrors for my Shrike, alloy housing, two screws, no casting mark. legit?";

test("two at one Postgres: one fetches, each message is answered once, and the other goes on when the first is gone", async () => {
  const double = await newDouble();
  const place = await newPlaces.Postgres();
  const stores = [];
  for (const _ of [1, 2]) stores.push(databaseStore(await openEngine(place), { log: silentLog }));
  const clubs = [];
  for (const store of stores) clubs.push(await openClub({ double, store }));
  const [first, second] = clubs;
  if (first === undefined || second === undefined) throw new Error("two are needed");
  for (const person of [anna, karl]) double.people.say(person, person, mirrors);
  await first.settled();
  double.people.say(anna, anna, "no week mark");
  await first.settled();
  expect(first.written(anna)).toHaveLength(1);
  expect(first.written(karl)).toHaveLength(1);
  const conflicts = double.calls.filter(
    ({ answer }) => answer !== "cut" && !answer.ok && answer.error_code === 409,
  );
  expect(conflicts).toEqual([]);
  await first.close();
  double.people.say(karl, karl, "no week mark");
  await second.settled();
  expect(second.written(karl)[0]?.text).toContain("week mark on the glass: no week mark");
  await second.close();
  for (const store of stores) await store.close();
  await double.close();
  expect(double.violations).toEqual([]);
});

test("one that falls after it sent and before it knew leaves no second message behind", async () => {
  const double = await newDouble();
  const inner = memoryStore();
  let isFallen = false;
  const never = () => new Promise<never>(() => undefined);
  // The store as a process sees it that dies when it would note that the message has gone out.
  const dying: typeof inner = {
    ...inner,
    advance(change, advance) {
      isFallen ||= change.why === "shown";
      return isFallen ? never() : inner.advance(change, advance);
    },
    current: (kind, id) => (isFallen ? never() : inner.current(kind, id)),
  };
  const first = await openClub({ double, store: dying, bot: botOn(inner) });
  double.people.say(anna, anna, mirrors);
  await expect.poll(() => first.written(anna).length, { timeout: 60_000 }).toBe(1);
  // It hangs with the update unconfirmed; another takes over, and is given the update again.
  const second = await openClub({
    double,
    store: inner,
    election: { lookEvery: 20, patience: 100, callEvery: 50 },
  });
  await second.settled();
  expect(second.written(anna)).toHaveLength(1);
  const [shown] = second.written(anna);
  double.people.press(anna, shown?.id ?? 0, anna, "cannot tell");
  await second.settled();
  expect(second.written(anna)).toHaveLength(1);
  await second.close();
  await double.close();
});

test("the program itself: killed without warning, started again, it answers what came meanwhile and goes on with the case", async () => {
  const double = await newDouble();
  const folder = newStoreFolder();
  const environment = {
    PORT: "0",
    TELEGRAM_BOT_TOKEN: double.token,
    TELEGRAM_API_ROOT: `${double.root}/`,
  };
  const first = start(mainProgram, [], { folder, environment });
  expect(await first.lines(3)).toContain("  Telegram as @witness_mark_bot, by long polling");
  double.people.say(anna, anna, mirrors);
  const written = () => double.world.rooms.get(anna)?.messages.filter(({ from }) => from !== anna) ?? [];
  await expect.poll(() => written().length, { timeout: 60_000 }).toBe(1);
  first.process.kill("SIGKILL");
  await first.ended;
  double.people.say(anna, anna, "no week mark");
  const second = start(mainProgram, [], { folder, environment });
  await expect
    .poll(() => written()[0]?.text, { timeout: 90_000 })
    .toContain("week mark on the glass: no week mark");
  expect(written()).toHaveLength(1);
  second.process.kill("SIGTERM");
  const { status, err } = await second.ended;
  expect(status).toBe(0);
  expect(err).not.toContain(double.token);
  await double.close();
  expect(double.violations).toEqual([]);
}, 180_000);

test("by webhook: only what carries the secret is heard, and an update that comes twice is heard once", async () => {
  const double = await newDouble();
  const { world, people } = double;
  const secret = "a-secret-of-the-webhook";
  const club = await openClub({
    double,
    webhook: { url: "https://bot.example/telegram", secret, host: "127.0.0.1", port: 0 },
  });
  expect(world.webhook).toEqual({ url: "https://bot.example/telegram", secret });
  const address = /http:\S+/u.exec(club.door.way)?.[0] ?? "";
  const deliver = (given: string) => {
    const [update] = world.updates;
    return fetch(address, {
      method: "POST",
      headers: { "content-type": "application/json", "x-telegram-bot-api-secret-token": given },
      body: JSON.stringify(update),
    });
  };
  people.say(anna, anna, mirrors);
  expect((await deliver("wrong")).status).toBe(401);
  expect((await fetch(address)).status).toBe(404);
  expect((await fetch(`${address}x`, { method: "POST" })).status).toBe(404);
  expect(club.written(anna)).toEqual([]);
  const answers = await Promise.all([deliver(secret), deliver(secret)]);
  expect(answers.map(({ status }) => status)).toEqual([200, 200]);
  expect(club.written(anna)).toHaveLength(1);
  await club.close();
  await double.close();
  expect(double.calls.some(({ method }) => method === "getUpdates")).toBe(false);
  expect(double.violations).toEqual([]);
});

test("a wrong token is said to be one", async () => {
  const double = await newDouble();
  await expect(openClub({ double, token: "1:wrong" })).rejects.toThrow("TELEGRAM_BOT_TOKEN");
  await double.close();
});

test("messages of one chat are answered in their order, while a slow chat holds up no other", async () => {
  const club = await openClub();
  const { people } = club.double;
  club.double.fail("sendMessage", { kind: "too many", seconds: 2 });
  people.say(anna, anna, mirrors);
  await expect.poll(() => club.double.calls.some(({ method }) => method === "sendMessage")).toBe(true);
  const begun = performance.now();
  people.say(anna, anna, "no week mark");
  people.say(karl, karl, mirrors);
  await expect.poll(() => club.written(karl).length, { interval: 10 }).toBe(1);
  expect(performance.now() - begun).toBeLessThan(1500);
  expect(club.written(anna)).toEqual([]);
  await club.settled();
  expect(club.heard.filter(({ from }) => from === `telegram:${anna}`).map(({ text }) => text)).toEqual([
    mirrors,
    "no week mark",
  ]);
  await club.close();
});

test("the newest message of few chats is remembered, the longest unseen first forgotten", () => {
  const newest = newestMessages();
  for (let chat = 1; chat <= 5001; chat += 1) newest.saw(chat, 7);
  newest.saw(2, 5);
  expect([newest.in(1), newest.in(2), newest.in(5001)]).toEqual([0, 7, 7]);
});
