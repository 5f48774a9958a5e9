import { Api } from "grammy";
import { afterAll, beforeAll, expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { recordsIn } from "../../../adapters/telegram/records.ts";
import { telegramPart } from "../../../adapters/telegram/settings.ts";
import { standingsBy } from "../../../adapters/telegram/standings.ts";
import { noSettings } from "../../../bot/index.ts";
import type { TelegramDouble } from "../../doubles/telegram/index.ts";
import { anna, group, hans, karl, newDouble } from "./club.ts";

let double: TelegramDouble;
const usual = telegramPart(noSettings);

beforeAll(async () => {
  double = await newDouble();
});

afterAll(() => double.close());

function standings(now: () => number) {
  return standingsBy(new Api(double.token, { apiRoot: double.root }), recordsIn(memoryStore()), now);
}

test("keepers are the administrators, or only those who are named; who made the group owns either way", async () => {
  const { of } = standings(() => 0);
  const community = `telegram-${group}`;
  const named = { ...usual, keepers: "named" as const, keeperIds: [anna] };
  expect(await Promise.all([anna, hans, karl].map((person) => of(community, person, usual)))).toEqual([
    undefined,
    "keeper",
    "owner",
  ]);
  expect(await Promise.all([anna, hans, karl].map((person) => of(community, person, named)))).toEqual([
    "keeper",
    undefined,
    "owner",
  ]);
});

test("administrators are asked for once a minute, and a change counts after it", async () => {
  let milliseconds = 0;
  const { of } = standings(() => milliseconds);
  const asked = () => double.calls.filter(({ method }) => method === "getChatAdministrators").length;
  const before = asked();
  for (let times = 0; times < 5; times += 1) await of(`telegram-${group}`, hans, usual);
  expect(asked()).toBe(before + 1);
  double.people.join(group, hans, "member");
  milliseconds = 60_000;
  expect(await of(`telegram-${group}`, hans, usual)).toBeUndefined();
});

test("a chat that cannot be asked vouches for nobody, nor does a community of another platform", async () => {
  const { of } = standings(() => 0);
  expect(await of("telegram--404", karl, usual)).toBeUndefined();
  expect(await of("home", karl, usual)).toBeUndefined();
});

test("what passes is not remembered: an administrator is one again at the next try", async () => {
  const { of } = standings(() => 0);
  const community = `telegram-${group}`;
  double.fail("getChatAdministrators", { kind: "too many", seconds: 600 });
  await expect(of(community, karl, usual)).rejects.toThrow("Too Many Requests");
  expect(await of(community, karl, usual)).toBe("owner");
});
