import { afterEach, beforeEach, expect, test } from "vitest";
import { anna, type Club, openClub, seen } from "./club.ts";

let club: Club;

beforeEach(async () => {
  club = await openClub();
});

afterEach(async () => {
  await club.close();
  expect(club.double.violations).toEqual([]);
});

test("in a private chat a post is answered with what was read and one question as buttons", async () => {
  const { people } = club.double;
  people.say(
    anna,
    anna,
    "got a pair of mirrors for my Shrike, alloy housing, two screws, no casting mark. legit?",
  );
  await club.settled();
  for (const kept of club.written(anna)) console.log(seen(kept), "\n---");
  people.say(anna, anna, "no week mark that i can see");
  await club.settled();
  for (const kept of club.written(anna)) console.log(seen(kept), "\n---");
});
