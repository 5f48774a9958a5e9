// What every store promises of changes that are made together: all of them or none, each once.
import { afterAll, describe, expect, test } from "vitest";
import type { Alongside, Change, Store } from "../../../bot/index.ts";
import { closeStores, newStores } from "../../support/new-stores.ts";

afterAll(closeStores);

function change(id: string, message?: string): Change {
  const made = { kind: "conversation", id, by: "maud", at: 1_000, why: "said" };
  return message === undefined ? made : { ...made, message };
}

/** One more in a tally beside the conversation. */
function tallied(id: string): Alongside {
  return {
    change: { kind: "tally", id, by: "maud", at: 1_000, why: "counted" },
    advance: (state) => ((state ?? 0) as number) + 1,
  };
}

const refusing = (id: string): Alongside => ({
  ...tallied(id),
  advance: () => {
    throw new Error("a fault of the tally");
  },
});

const withTallies =
  (...alongside: readonly Alongside[]) =>
  (state: unknown) => {
    const next = ((state ?? 0) as number) + 1;
    return { state: next, outcome: next, alongside };
  };

async function listed(store: Store, kind: string, prefix: string) {
  const found = [];
  for await (const each of store.currents(kind, prefix)) found.push(each);
  return found;
}

describe.each(Object.entries(newStores))("a store in %s", (_name, open) => {
  test("keeps what is changed alongside, with who, when and why of its own", async () => {
    const store = await open();
    expect(await store.advance(change("garage", "m1"), withTallies(tallied("a"), tallied("b")))).toBe(1);
    expect(await store.advance(change("garage", "m2"), withTallies(tallied("a")))).toBe(2);
    expect(await store.current("conversation", "garage")).toBe(2);
    expect(await store.current("tally", "b")).toBe(1);
    expect(await store.history("tally", "a")).toEqual([
      { version: 1, by: "maud", at: 1_000, why: "counted", state: 1 },
      { version: 2, by: "maud", at: 1_000, why: "counted", state: 2 },
    ]);
  });

  test("the same message again changes nothing alongside either", async () => {
    const store = await open();
    const outcomes = [];
    for (let times = 0; times < 3; times++) {
      outcomes.push(await store.advance(change("garage", "m"), withTallies(tallied("a"))));
    }
    outcomes.push(
      ...(await Promise.all(
        [1, 2].map(() => store.advance(change("garage", "m"), withTallies(refusing("a")))),
      )),
    );
    expect(outcomes).toEqual([1, 1, 1, 1, 1]);
    expect(await store.current("tally", "a")).toBe(1);
  });

  test("a change alongside that throws rejects the whole, and its neighbours go on", async () => {
    const store = await open();
    const changes = [
      store.advance(change("garage"), withTallies(tallied("a"), refusing("b"), tallied("c"))),
      store.advance(change("clubhouse"), withTallies(tallied("d"))),
    ];
    const outcomes = await Promise.allSettled(changes);
    expect(outcomes.map(({ status }) => status)).toEqual(["rejected", "fulfilled"]);
    await expect(changes[0]).rejects.toThrow("a fault of the tally");
    expect(await store.ids("tally")).toEqual(["d"]);
    expect(await store.ids("conversation")).toEqual(["clubhouse"]);
  });

  test.each([
    ["the record itself", [{ ...tallied("x"), change: change("garage") }]],
    ["one record twice", [tallied("a"), tallied("a")]],
  ])("two changes of %s in one are refused, and nothing is kept", async (_what, alongside) => {
    const store = await open();
    await expect(store.advance(change("garage"), withTallies(...alongside))).rejects.toThrow(
      "two changes of one record in one of conversation",
    );
    expect(await store.version("conversation", "garage")).toBe(0);
    expect(await store.version("tally", "a")).toBe(0);
  });

  test("a name alongside that no database keeps is refused", async () => {
    const store = await open();
    await expect(store.advance(change("garage"), withTallies(tallied("a\0")))).rejects.toThrow(
      "cannot be kept",
    );
    expect(await store.version("conversation", "garage")).toBe(0);
  });

  test("changes that meet at one record are made one after another, whether it is their own or beside it", async () => {
    const store = await open();
    await Promise.all(
      Array.from({ length: 60 }, (_, number) => {
        if (number % 3 === 0) return store.advance({ ...change("shared"), kind: "tally" }, withTallies());
        return store.advance(
          change(`place ${number % 7}`),
          withTallies(tallied("shared"), tallied(`own ${number % 4}`)),
        );
      }),
    );
    expect(await store.current("tally", "shared")).toBe(60);
    const own = await listed(store, "tally", "own ");
    expect(own.reduce((sum, { state }) => sum + (state as number), 0)).toBe(40);
    const places = await listed(store, "conversation", "place ");
    expect(places.reduce((sum, { state }) => sum + (state as number), 0)).toBe(40);
  });

  test("changes of one record keep their order also when they wait for one beside it", async () => {
    const store = await open();
    const added =
      (word: string, ...alongside: readonly Alongside[]) =>
      (state: unknown) => {
        const words = [...((state ?? []) as readonly string[]), word];
        return { state: words, outcome: words.length, alongside };
      };
    await Promise.all([
      store.advance(change("one"), added("a", tallied("shared"))),
      store.advance(change("two"), added("b", tallied("shared"))),
      store.advance(change("two"), added("c")),
      store.advance(change("one"), added("d", tallied("shared"))),
      store.advance(change("two"), added("e", tallied("shared"))),
    ]);
    expect(await store.current("conversation", "one")).toEqual(["a", "d"]);
    expect(await store.current("conversation", "two")).toEqual(["b", "c", "e"]);
  });

  test("many records change together", async () => {
    const store = await open();
    const tallies = Array.from({ length: 400 }, (_, number) => tallied(`t${number}`));
    await Promise.all(
      ["one", "two", "three"].map((id) => store.advance(change(id), withTallies(...tallies))),
    );
    expect((await listed(store, "tally", "t")).every(({ state }) => state === 3)).toBe(true);
  });
});
