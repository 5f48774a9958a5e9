// What every store promises of its reads beyond the newest state: histories from a number on, versions, records by prefix.
import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import type { Current, Store } from "../../../bot/index.ts";
import { closeStores, newStores } from "../../support/new-stores.ts";

afterAll(closeStores);

function said(store: Store, id: string, state: unknown, kind = "pin"): Promise<unknown> {
  return store.advance({ kind, id, by: "maud", at: 0, why: "said" }, () => ({ state, outcome: null }));
}

async function listed(store: Store, kind: string, prefix: string): Promise<readonly Current[]> {
  const found: Current[] = [];
  for await (const each of store.currents(kind, prefix)) found.push(each);
  return found;
}

describe.each(Object.entries(newStores))("a store in %s", (_name, open) => {
  test("gives the versions after a number as the whole history has them", async () => {
    const store = await open();
    let words: readonly string[] = ["a long beginning, kept once and not again with each word after it"];
    for (let number = 0; number < 150; number++) {
      words = [...words, `word ${number}`];
      await said(store, "one", words);
    }
    const whole = await store.history("pin", "one");
    for (const after of [0, 1, 63, 64, 65, 100, 149, 150, 151, -1]) {
      expect(await store.history("pin", "one", after)).toEqual(whole.slice(Math.max(0, after)));
    }
  });

  test("tells the number of the newest version, 0 of none", async () => {
    const store = await open();
    await said(store, "one", 1);
    await said(store, "one", 2);
    expect(await store.version("pin", "one")).toBe(2);
    expect(await store.version("pin", "on")).toBe(0);
    expect(await store.version("tally", "one")).toBe(0);
  });

  test("lists the records of a kind by prefix, by code point, with version and newest state", async () => {
    const store = await open();
    const ids = [
      "home/10",
      "home/9",
      "home/",
      "home",
      "home0",
      "hom",
      "home/🜨",
      "home/ｱ",
      "home/\u{10ffff}x",
      "%",
      "home_9",
    ];
    for (const id of ids) {
      await said(store, id, [id, 1]);
      await said(store, id, [id, 2]);
    }
    await said(store, "home/other", 1, "tally");
    const under = ["home/", "home/10", "home/9", "home/ｱ", "home/🜨", "home/\u{10ffff}x"];
    expect(await listed(store, "pin", "home/")).toEqual(
      under.map((id) => ({ id, version: 2, state: [id, 2] })),
    );
    expect((await listed(store, "pin", "")).map(({ id }) => id)).toEqual(await store.ids("pin"));
    expect(await listed(store, "pin", "nothing")).toEqual([]);
    expect(await listed(store, "nothing", "")).toEqual([]);
  });

  test("lists more records than one page holds, and may be left early", async () => {
    const store = await open();
    const ids = Array.from({ length: 1234 }, (_, number) => `p${String(number).padStart(5, "0")}`);
    await Promise.all(ids.map((id) => said(store, id, id)));
    expect((await listed(store, "pin", "p")).map(({ state }) => state)).toEqual(ids);
    expect((await listed(store, "pin", "p01")).map(({ id }) => id)).toEqual(ids.slice(1000));
    for await (const { id } of store.currents("pin", "p0000")) if (id === "p00003") break;
    await said(store, "p", "after all");
    expect(await store.current("pin", "p")).toBe("after all");
  });

  test("lists exactly the ids that begin so, whatever they are", async () => {
    const store = await open();
    const text = fc.string({ unit: "grapheme", maxLength: 4 }).filter((id) => !id.includes("\0"));
    let number = 0;
    await fc.assert(
      fc.asyncProperty(fc.uniqueArray(text, { maxLength: 12 }), text, async (ids, prefix) => {
        number += 1;
        const kind = `kind ${number}`;
        await Promise.all(ids.map((id) => said(store, id, id, kind)));
        const found = (await listed(store, kind, prefix)).map(({ id }) => id);
        expect(found).toEqual((await store.ids(kind)).filter((id) => id.startsWith(prefix)));
      }),
      { seed: 23, numRuns: 25 },
    );
  });
});
