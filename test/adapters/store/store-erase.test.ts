// What every store promises of erasing: what was said is gone from every version, and what it was said in stays sound.
import { afterAll, describe, expect, test } from "vitest";
import type { Change, Current, Store } from "../../../bot/index.ts";
import { closeStores, newStores } from "../../support/new-stores.ts";

afterAll(closeStores);

const erasing = { kind: "person", id: "maud", by: "keeper", at: 9_000, why: "asked for it" };

async function say(store: Store, words: string, message?: string, id = "maud"): Promise<unknown> {
  const change: Change = { kind: "person", id, by: "maud", at: 1_000, why: `because of ${words}` };
  return store.advance(message === undefined ? change : { ...change, message }, (state) => {
    const said = [...((state ?? []) as readonly string[]), words];
    return { state: said, outcome: `heard ${words}` };
  });
}

async function listed(store: Store): Promise<readonly Current[]> {
  const found: Current[] = [];
  for await (const each of store.currents("person", "")) found.push(each);
  return found;
}

const censored = (state: unknown) => (state as readonly string[]).map((words) => words.replace("phone", "…"));

describe.each(Object.entries(newStores))("erasing in %s", (_name, open) => {
  test("rewrites every version, and says in one more who did so, when and why", async () => {
    const store = await open();
    await say(store, "my phone is 555", "m1");
    await say(store, "rough inside");
    await store.erase(erasing, censored);
    expect(await store.history("person", "maud")).toEqual([
      {
        version: 1,
        by: "maud",
        at: 1_000,
        why: "because of my phone is 555",
        message: "m1",
        state: ["my … is 555"],
      },
      {
        version: 2,
        by: "maud",
        at: 1_000,
        why: "because of rough inside",
        state: ["my … is 555", "rough inside"],
      },
      { version: 3, by: "keeper", at: 9_000, why: "asked for it", state: ["my … is 555", "rough inside"] },
    ]);
    await say(store, "phone again");
    expect(await store.current("person", "maud")).toEqual(["my … is 555", "rough inside", "phone again"]);
  });

  test("leaves nothing of a record whose states are gone, and it begins anew with the next change", async () => {
    const store = await open();
    await say(store, "my phone is 555", "m1");
    await say(store, "rough inside", "m2");
    await say(store, "square tips", "m3", "otis");
    await store.erase(erasing, () => undefined, { by: () => "somebody", why: () => "" });
    expect(await store.current("person", "maud")).toBeUndefined();
    expect(await store.ids("person")).toEqual(["otis"]);
    expect((await listed(store)).map(({ id }) => id)).toEqual(["otis"]);
    expect(await store.version("person", "maud")).toBe(3);
    expect(await store.history("person", "maud")).toEqual([
      { version: 1, by: "somebody", at: 1_000, why: "", message: "m1", state: undefined },
      { version: 2, by: "somebody", at: 1_000, why: "", message: "m2", state: undefined },
      { version: 3, by: "keeper", at: 9_000, why: "asked for it", state: undefined },
    ]);
    await say(store, "back again");
    expect(await store.current("person", "maud")).toEqual(["back again"]);
    expect(await store.ids("person")).toEqual(["maud", "otis"]);
    expect((await store.history("person", "maud", 3)).map(({ version }) => version)).toEqual([4]);
  });

  test("takes some versions and leaves others", async () => {
    const store = await open();
    for (const words of ["rough inside", "my phone", "square tips"]) await say(store, words);
    await store.erase(erasing, (state) =>
      (state as readonly string[]).length === 2 ? undefined : censored(state),
    );
    const states = (await store.history("person", "maud")).map(({ state }) => state);
    const last = ["rough inside", "my …", "square tips"];
    expect(states).toEqual([["rough inside"], undefined, last, last]);
    expect(await store.current("person", "maud")).toEqual(last);
  });

  test("a message whose answer was erased changes nothing, and is told so; a rewritten answer is given", async () => {
    const store = await open();
    await say(store, "my phone", "m1");
    await say(store, "rough", "m1", "otis");
    await store.erase(erasing, () => undefined);
    await store.erase({ ...erasing, id: "otis" }, () => undefined, { outcome: () => "erased" });
    await expect(say(store, "my phone", "m1")).rejects.toThrow("the answer to this message was erased");
    expect(await say(store, "my phone", "m1", "otis")).toBe("erased");
    expect(await store.current("person", "maud")).toBeUndefined();
    expect(await say(store, "new", "m2")).toBe("heard new");
  });

  test("a second time works on what the first has left", async () => {
    const store = await open();
    await say(store, "my phone");
    const seen: unknown[] = [];
    const noted = (state: unknown) => {
      seen.push(state);
      return undefined;
    };
    await store.erase(erasing, noted);
    await store.erase(erasing, noted);
    expect(seen).toEqual([["my phone"]]);
    expect(await store.version("person", "maud")).toBe(3);
  });

  test("does nothing where there is nothing, and what it throws leaves all as it was", async () => {
    const store = await open();
    await store.erase(erasing, () => undefined);
    expect(await store.version("person", "maud")).toBe(0);
    await say(store, "my phone");
    const failing = () => {
      throw new Error("a fault of the rewriting");
    };
    await expect(store.erase(erasing, failing)).rejects.toThrow("a fault of the rewriting");
    expect(await store.current("person", "maud")).toEqual(["my phone"]);
    expect(await store.version("person", "maud")).toBe(1);
  });

  test("beside changes of the same record loses none of them", async () => {
    const store = await open();
    await say(store, "first");
    const writing = Array.from({ length: 40 }, (_, number) => say(store, `word ${number}`, `m${number}`));
    await Promise.all([
      ...writing,
      ...[1, 2, 3].map(() => store.erase(erasing, (state) => state, { outcome: (each) => each })),
    ]);
    const words = (await store.current("person", "maud")) as readonly string[];
    expect(words).toEqual(["first", ...Array.from({ length: 40 }, (_, number) => `word ${number}`)]);
    expect(await store.version("person", "maud")).toBe(44);
  });
});
