// Two stores on one database whose changes meet in records beside their own: each change is made once, wholly, by what is kept.
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { checkStore } from "../../../adapters/store/check-store.ts";
import { type DatabaseStore, databaseStore } from "../../../adapters/store/database-store.ts";
import { openEngine, type StorePlace } from "../../../adapters/store/open-engine.ts";
import type { Alongside, Change } from "../../../bot/index.ts";
import { silentLog } from "../../support/logs.ts";
import { newPostgresDatabase } from "../../support/postgres-database.ts";
import { newPlaces } from "../../support/store-places.ts";

beforeAll(async () => {
  await newPostgresDatabase();
});

const closing: { close(): Promise<void> }[] = [];
afterAll(async () => {
  for (const each of closing) await each.close();
});

async function two(place: StorePlace): Promise<readonly [DatabaseStore, DatabaseStore]> {
  const opened = async () => databaseStore(await openEngine(place), { log: silentLog });
  const both = [await opened(), await opened()] as const;
  closing.push(...both);
  return both;
}

function change(id: string, message?: string): Change {
  const made = { kind: "conversation", id, by: "maud", at: 1_000, why: "said" };
  return message === undefined ? made : { ...made, message };
}

const more = (state: unknown) => ((state ?? 0) as number) + 1;

function tallied(id: string, advance: (state: unknown) => unknown = more): Alongside {
  return { change: { kind: "tally", id, by: "maud", at: 1_000, why: "counted" }, advance };
}

function say(store: DatabaseStore, id: string, alongside: readonly Alongside[], message?: string) {
  return store.advance(change(id, message), (state) => ({
    state: more(state),
    outcome: more(state),
    alongside,
  }));
}

/** Refuses every state but this. */
const from = (expected: number) => (state: unknown) => {
  if (state !== expected) throw new Error(`is ${String(state)} and not ${expected}`);
  return expected + 1;
};

describe.each(Object.entries(newPlaces))("two stores on %s", (_name, newPlace) => {
  test("a change that refuses a state refuses only what is kept, not what was kept once", async () => {
    const [here, there] = await two(await newPlace());
    await say(here, "garage", [tallied("a")]);
    await say(there, "garage", [tallied("a")]);
    expect(await say(here, "garage", [tallied("a", from(2))])).toBe(3);
    await say(there, "garage", []);
    const own = (state: unknown) => ({ state: from(4)(state), outcome: "made" });
    expect(await here.advance(change("garage"), own)).toBe("made");
    await expect(say(here, "garage", [tallied("a", from(2))])).rejects.toThrow("is 3 and not 2");
    expect(await there.current("conversation", "garage")).toBe(5);
  });

  test("one that is beaten is made again from what is there, and its neighbours do not wait for it", async () => {
    const [here, there] = await two(await newPlace());
    await say(here, "seen", [tallied("shared")]);
    await say(there, "unseen", [tallied("shared")]);
    const runs = new Map<string, number>();
    const counted = (id: string) => {
      runs.set(id, (runs.get(id) ?? 0) + 1);
      return more;
    };
    const together = ["a", "b", "c", "d"].map((id) => {
      const beside = id === "b" ? "shared" : `own ${id}`;
      return say(here, id, [tallied(beside, (state) => counted(id)(state))]);
    });
    expect(await Promise.all(together)).toEqual([1, 1, 1, 1]);
    expect(Object.fromEntries(runs)).toEqual({ a: 1, b: 2, c: 1, d: 1 });
    expect(await here.current("tally", "shared")).toBe(3);
  });

  test("that race for what is beside their records lose nothing, and make a message sent to both once", async () => {
    const place = await newPlace();
    const stores = await two(place);
    const outcomes = await Promise.all(
      Array.from({ length: 60 }, (_, number) =>
        Promise.all(
          stores.map((store) =>
            say(
              store,
              `place ${number % 7}`,
              [tallied("shared"), tallied(`tally ${number % 3}`)],
              `m${number}`,
            ),
          ),
        ),
      ),
    );
    for (const [here, there] of outcomes) expect(here).toBe(there);
    expect(await stores[0].current("tally", "shared")).toBe(60);
    for (const id of [0, 1, 2]) expect(await stores[1].current("tally", `tally ${id}`)).toBe(20);
    const engine = await openEngine(place);
    closing.push(engine);
    expect((await checkStore(engine)).problems).toEqual([]);
  });
});
