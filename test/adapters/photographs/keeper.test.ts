import { afterAll, describe, expect, test } from "vitest";
import { photographKeeper } from "../../../adapters/photographs/index.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { type Clock, photographRefusals, type Store } from "../../../bot/index.ts";
import { closeStores, newStores } from "../../support/new-stores.ts";
import { scene, withEverything } from "../../support/photographs.ts";

afterAll(closeStores);

const clock: Clock = { today: () => ({ from: 24_000, to: 24_000.03 }), milliseconds: () => 1_000 };
const mirror = () => scene(640, 480).jpeg().toBuffer();

async function taken(store: Store, bytes: Uint8Array, by = "web:maud"): Promise<string> {
  const result = await photographKeeper(store, clock).take(bytes, by);
  if (!result.ok) throw new Error(result.problem.message);
  return result.id;
}

describe.each(Object.entries(newStores))("photographs kept in %s", (_, open) => {
  test("come back as JPEG, also to another process", async () => {
    const store = await open();
    const id = await taken(store, await mirror());
    expect(id).toMatch(/^[0-9a-f]{32}$/u);
    const photograph = await photographKeeper(store, clock).read(id);
    expect(photograph?.mediaType).toBe("image/jpeg");
    expect([...(photograph?.bytes.subarray(0, 3) ?? [])]).toEqual([0xff, 0xd8, 0xff]);
  });

  test("are gone once all who sent them have let go", async () => {
    const store = await open();
    const keeper = photographKeeper(store, clock);
    const id = await taken(store, await mirror(), "web:maud");
    expect(await taken(store, await mirror(), "web:otis")).toBe(id);
    const erased = (from: string) => ({ by: "erasure", why: "asked for", from });
    await keeper.forget(id, erased("web:stranger"));
    expect(await store.version("photograph", id)).toBe(2);
    await keeper.forget(id, erased("web:maud"));
    expect(await keeper.read(id)).toBeDefined();
    expect(JSON.stringify(await store.history("photograph", id))).not.toContain("web:maud");
    await keeper.forget(id, erased("web:otis"));
    expect(await keeper.read(id)).toBeUndefined();
    expect(await store.ids("photograph")).toEqual([]);
    const history = JSON.stringify(await store.history("photograph", id));
    for (const trace of ["web:otis", "base64", "image/jpeg"]) expect(history).not.toContain(trace);
  });
});

test("the same photograph twice is one record with one version, whatever its metadata say", async () => {
  const store = memoryStore();
  const id = await taken(store, await mirror());
  const [again, elsewhere] = await Promise.all([
    taken(store, await mirror()),
    taken(store, await withEverything(scene(640, 480)).withIccProfile("srgb").jpeg().toBuffer()),
  ]);
  expect([again, elsewhere]).toEqual([id, id]);
  expect(await store.ids("photograph")).toEqual([id]);
  expect(await store.history("photograph", id)).toHaveLength(1);
});

test("what is no photograph leaves no record, and the sender is told in a sentence", async () => {
  const store = memoryStore();
  const keeper = photographKeeper(store, clock);
  expect(await keeper.take(Buffer.from("<svg/>"), "web:maud")).toEqual({
    ok: false,
    problem: { code: "no-photograph", message: photographRefusals["no-photograph"] },
  });
  expect(await store.ids("photograph")).toEqual([]);
});

test("a keeper's word takes a photograph from everybody; taken in again, it is there again", async () => {
  const store = memoryStore();
  const keeper = photographKeeper(store, clock);
  const id = await taken(store, await mirror());
  await keeper.forget(id, { by: "web:keeper", why: "shows a number plate" });
  expect(await keeper.read(id)).toBeUndefined();
  expect(await taken(store, await mirror(), "web:otis")).toBe(id);
  expect(await keeper.read(id)).toBeDefined();
});

test("nobody knows a photograph that never was, and forgetting it leaves no trace", async () => {
  const store = memoryStore();
  const keeper = photographKeeper(store, clock);
  await keeper.forget("0".repeat(32), { by: "web:maud", why: "asked for" });
  expect(await keeper.read("0".repeat(32))).toBeUndefined();
  expect(await store.ids("photograph")).toEqual([]);
});
