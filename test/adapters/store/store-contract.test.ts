// What every store promises, whatever is under it.
import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import type { Change } from "../../../bot/index.ts";
import { closeStores, newStores } from "../../support/new-stores.ts";

afterAll(closeStores);

function change(id: string, more: Partial<Change> = {}): Change {
  return { kind: "conversation", id, by: "maud", at: 1_000, why: "said", ...more };
}

const to = (state: unknown) => () => ({ state, outcome: state });
const addedOn = (n: number) => (state: unknown) => {
  const sum = [...((state ?? []) as number[]), n];
  return { state: sum, outcome: sum.length };
};

describe.each(Object.entries(newStores))("a store in %s", (_name, open) => {
  test("gives back the newest state of each record, by kind and id", async () => {
    const store = await open();
    await store.advance(change("garage"), to({ version: 1 }));
    await store.advance(change("clubhouse"), to({ version: 7 }));
    await store.advance(change("garage", { kind: "pin" }), to({ scope: "all" }));
    await store.advance(change("garage"), to({ version: 2 }));
    expect(await store.current("conversation", "garage")).toEqual({ version: 2 });
    expect(await store.current("conversation", "clubhouse")).toEqual({ version: 7 });
    expect(await store.current("pin", "garage")).toEqual({ scope: "all" });
  });

  test("knows nothing of a record that never was", async () => {
    const store = await open();
    for (const id of ["nowhere", "__proto__", ""]) {
      expect(await store.current("conversation", id)).toBeUndefined();
      expect(await store.history("conversation", id)).toEqual([]);
    }
    expect(await store.ids("conversation")).toEqual([]);
  });

  test("a change sees the state before it, undefined at first, and its outcome comes back", async () => {
    const store = await open();
    const seen: unknown[] = [];
    const note = (next: number) => (state: unknown) => {
      seen.push(state);
      return { state: next, outcome: `outcome ${next}` };
    };
    expect(await store.advance(change("garage"), note(1))).toBe("outcome 1");
    expect(await store.advance(change("garage"), note(2))).toBe("outcome 2");
    expect(seen).toEqual([undefined, 1]);
  });

  test("keeps every version with who, when, why and the state of then", async () => {
    const store = await open();
    await store.advance(change("garage", { by: "maud", at: 5, message: "m1" }), to(["rough"]));
    await store.advance(
      change("garage", { by: "otis", at: 1_799_999_999_999, why: "answered" }),
      to(["smooth"]),
    );
    expect(await store.history("conversation", "garage")).toEqual([
      { version: 1, by: "maud", at: 5, why: "said", message: "m1", state: ["rough"] },
      { version: 2, by: "otis", at: 1_799_999_999_999, why: "answered", state: ["smooth"] },
    ]);
  });

  test("the same message again gives its first outcome and changes nothing", async () => {
    const store = await open();
    const add = (n: number, message: string, id = "garage") =>
      store.advance(change(id, { message }), addedOn(n));
    expect(await add(10, "m1")).toBe(1);
    expect(await add(20, "m2")).toBe(2);
    expect(await add(99, "m1")).toBe(1);
    expect(await store.advance(change("garage", { message: "m2" }), failing)).toBe(2);
    expect(await store.current("conversation", "garage")).toEqual([10, 20]);
    expect(await add(30, "m1", "clubhouse")).toBe(1);
    expect(await store.current("conversation", "clubhouse")).toEqual([30]);
  });

  test("the same message at the same moment counts once", async () => {
    const store = await open();
    const outcomes = await Promise.all(
      [1, 2, 3, 4].map((n) => store.advance(change("garage", { message: "m" }), addedOn(n))),
    );
    expect(outcomes).toEqual([1, 1, 1, 1]);
    expect(await store.history("conversation", "garage")).toHaveLength(1);
  });

  test("a change that throws rejects with that and takes none of its neighbours down", async () => {
    const store = await open();
    const changes = Array.from({ length: 9 }, (_, n) =>
      store.advance(change(`place-${n % 3}`), n === 4 ? failing : addedOn(n)),
    );
    const outcomes = await Promise.allSettled(changes);
    expect(outcomes.map(({ status }) => status === "fulfilled")).toEqual(outcomes.map((_, n) => n !== 4));
    await expect(changes[4]).rejects.toThrow("a fault of the change");
    expect(await store.current("conversation", "place-1")).toEqual([1, 7]);
  });

  test("changes asked for at once are made in the order asked for, and none is lost", async () => {
    const store = await open();
    await Promise.all(
      Array.from({ length: 200 }, (_, n) => store.advance(change(`place-${n % 20}`), addedOn(n))),
    );
    for (let place = 0; place < 20; place++) {
      const all = Array.from({ length: 10 }, (_, n) => 20 * n + place);
      expect(await store.current("conversation", `place-${place}`)).toEqual(all);
    }
  });

  test("keeps a copy: changing what was read, written or seen changes nothing kept", async () => {
    const store = await open();
    const state = { facts: ["rough inside"] };
    await store.advance(change("garage"), to(state));
    state.facts.push("smooth inside");
    const read = (await store.current("conversation", "garage")) as { facts: string[] };
    read.facts.push("painted");
    const spoil = (seen: unknown) => {
      (seen as { facts: string[] }).facts.push("spoilt");
      throw new Error("after spoiling");
    };
    await expect(store.advance(change("garage"), spoil)).rejects.toThrow("after spoiling");
    expect(await store.current("conversation", "garage")).toEqual({ facts: ["rough inside"] });
  });

  test("keeps line ends, quotes, zero characters and any alphabet", async () => {
    const store = await open();
    const state = { text: 'two\nlines, "quoted", Žluť, 鏡, 🜨, \u2028, \u0000, \ud800' };
    const odd = change('a "place"\n 🜨', { by: "O'Brien \\ %", message: "'; --" });
    await store.advance(odd, to(state));
    expect(await store.current("conversation", odd.id)).toEqual(state);
    expect(await store.history("conversation", odd.id)).toMatchObject([{ by: odd.by, message: odd.message }]);
  });

  test("ids are listed by code point, whatever the host's language", async () => {
    const store = await open();
    for (const id of ["zinc", "Zeta", "🜨", "ärger", "apple", "ｱ", "10", "9"])
      await store.advance(change(id), to(1));
    await store.advance(change("apple"), to(2));
    expect(await store.ids("conversation")).toEqual(["10", "9", "Zeta", "apple", "zinc", "ärger", "ｱ", "🜨"]);
  });

  test("replaying a history gives the states that were kept, whatever they are", async () => {
    const store = await open();
    const states = fc.array(fc.oneof(fc.json(), fc.string({ unit: "binary" })), {
      minLength: 1,
      maxLength: 90,
    });
    let number = 0;
    await fc.assert(
      fc.asyncProperty(states, async (texts) => {
        number += 1;
        const id = `record ${number}`;
        let log: readonly string[] = [];
        const kept: unknown[] = [];
        for (const text of texts) {
          const edit = (state: unknown) => edited((state ?? []) as readonly string[], text);
          log = edit(log.length === 0 ? undefined : log).state;
          kept.push(log);
          await store.advance(change(id), edit);
        }
        const history = await store.history("conversation", id);
        expect(history.map(({ state }) => state)).toEqual(kept);
        expect(await store.current("conversation", id)).toEqual(log);
      }),
      { seed: 20, numRuns: 12 },
    );
  });
});

function failing(): never {
  throw new Error("a fault of the change");
}

/** Grows at the end, sometimes in the middle, and shrinks now and then. */
function edited(list: readonly string[], text: string): { readonly state: string[]; readonly outcome: null } {
  if (text.length % 7 === 3) return { state: list.slice(1), outcome: null };
  const at = text.length % 5 === 1 ? Math.floor(list.length / 2) : list.length;
  return { state: [...list.slice(0, at), text, ...list.slice(at)], outcome: null };
}
