import fc from "fast-check";
import { expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { type Candidate, candidate } from "../../../adapters/telegram/election.ts";

const times = { lookEvery: 2000, patience: 10_000, callEvery: 60_000 };

/** A clock that only the test moves, and candidates that look every two seconds of it, unless they have died. */
function contest(count: number) {
  const store = memoryStore();
  let milliseconds = 0;
  const now = () => milliseconds;
  const all = Array.from({ length: count }, () => candidate({ store, what: "bot", now, ...times }));
  const dead = new Set<Candidate>();
  return {
    store,
    all,
    dead,
    elected: () => all.filter((one) => !dead.has(one) && one.isElected()),
    async pass(seconds: number) {
      for (let left = seconds; left > 0; left -= 2) {
        milliseconds += times.lookEvery;
        for (const one of all) if (!dead.has(one)) await one.look();
      }
    },
  };
}

test("of three that stand, one is elected, and stays", async () => {
  const { all, elected, pass } = contest(3);
  await pass(2);
  expect(elected()).toEqual([all[0]]);
  await pass(600);
  expect(elected()).toEqual([all[0]]);
});

test("alone, it writes once and never again", async () => {
  const { store, pass } = contest(1);
  await pass(3600);
  expect(await store.version("telegram-poller", "bot")).toBe(1);
});

test("one that dies is followed within a minute and a quarter", async () => {
  const { all, dead, elected, pass } = contest(2);
  await pass(10);
  const [first] = all;
  if (first !== undefined) dead.add(first);
  await pass(75);
  expect(elected()).toEqual([all[1]]);
});

test("one that closes is followed at once", async () => {
  const { all, dead, elected, pass } = contest(2);
  await pass(10);
  await all[0]?.close();
  if (all[0] !== undefined) dead.add(all[0]);
  await pass(2);
  expect(elected()).toEqual([all[1]]);
});

test("one that could not look for long no longer counts itself elected", async () => {
  const store = memoryStore();
  let milliseconds = 0;
  const only = candidate({ store, what: "bot", now: () => milliseconds, ...times });
  await only.look();
  expect(only.isElected()).toBe(true);
  milliseconds += times.patience;
  expect(only.isElected()).toBe(false);
});

test("however they come, die and look, never are two elected who both keep looking", async () => {
  const steps = fc.array(fc.record({ who: fc.nat(3), wait: fc.nat(4000) }), { maxLength: 200 });
  await fc.assert(
    fc.asyncProperty(steps, async (moves) => {
      const store = memoryStore();
      let milliseconds = 0;
      const now = () => milliseconds;
      const all = Array.from({ length: 4 }, () => candidate({ store, what: "bot", now, ...times }));
      for (const { who, wait } of moves) {
        milliseconds += wait;
        await all[who]?.look();
        // All look at the same moment: whoever was replaced finds out.
        for (const one of all) await one.look();
        expect(all.filter((one) => one.isElected()).length).toBeLessThanOrEqual(1);
      }
    }),
    { seed: 1978, numRuns: 60 },
  );
});
