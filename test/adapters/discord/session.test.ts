import { expect, test } from "vitest";
import { crowdOf, doubled, playSession, remoteDoor } from "../../support/discord-session.ts";

test("in a session full of trouble no rule of Discord is broken and nothing is written twice", async () => {
  const crowd = await crowdOf(12, 5);
  const door = await remoteDoor(crowd.double);
  const options = { start: 7, events: 300, troubles: true, thinkMilliseconds: 10 };
  const { acknowledged } = await playSession(crowd, options);
  const twice = doubled(crowd.double);
  await door.close();
  await crowd.double.close();
  expect(crowd.double.world.violations).toEqual([]);
  expect(twice).toBe(0);
  expect(acknowledged.length).toBeGreaterThan(100);
}, 240_000);
