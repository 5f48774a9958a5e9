import { cpSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, test, vi } from "vitest";
import { demonstrationHandbook } from "../../adapters/configuration.ts";
import { givingWay } from "../../adapters/give-way.ts";
import { writeHandbookFiles } from "../../adapters/handbook-folder/index.ts";
import { openHandbook } from "../../adapters/handbooks.ts";
import { type LiveHandbooks, liveHandbooks, toldThrough } from "../../adapters/live-handbooks.ts";
import { memoryStore } from "../../adapters/store/memory.ts";
import { EditionRecord, editionKind, editionWatch, keptHandbook } from "../../bot/index.ts";
import { carefulFiles, carefulHandbook } from "../support/careful-handbook.ts";
import { newFolder } from "./program.ts";

const handle = "parts/door-handle.yaml";
const yaml = carefulHandbook[handle] ?? "";
const shorter = yaml.replace("mean: 120", "mean: 121");
const broken = yaml.replace("lever: { round: always }", "lever: { ruond: always }");

let live: LiveHandbooks | undefined;
afterEach(() => live?.close());

async function served(look = 60_000) {
  const folder = join(newFolder(), "tarn");
  await writeHandbookFiles(folder, carefulFiles());
  const open = await openHandbook(folder);
  const told: string[] = [];
  live = liveHandbooks(
    [open],
    {
      onTaken: async ({ edition }) => void told.push(`taken ${edition}`),
      onBroken: async ({ edition }, problems) => void told.push(`kept ${edition}: ${problems.join()}`),
    },
    { quiet: 30, look },
  );
  const edition = () => live?.known()[0]?.handbook.edition;
  const put = (text: string) => writeFileSync(join(folder, handle), text);
  return { folder, told, edition, put, first: open.handbook.edition };
}

const until = (claim: () => void) => vi.waitFor(claim, { timeout: 20_000, interval: 20 });

describe("a running bot", () => {
  test("takes a changed handbook that is sound, at once and once", async () => {
    const { told, edition, put, first } = await served();
    put(shorter);
    await until(() => expect(edition()).not.toBe(first));
    await until(() => expect(told).toEqual([`taken ${edition()}`]));
    await live?.look();
    expect(told).toHaveLength(1);
  });

  test("keeps the edition before when the changed one is not sound, and says why once", async () => {
    const { told, edition, put, first } = await served();
    put(broken);
    await until(() => expect(told).toHaveLength(1));
    expect(edition()).toBe(first);
    expect(told[0]).toMatch(
      new RegExp(
        `^kept ${first}: parts/door-handle\\.yaml:\\d+:16 {2}unknown state of lever "ruond" … did you mean "round"\\?$`,
        "u",
      ),
    );
    await live?.look();
    expect(told).toHaveLength(1);
  });

  test("takes the mended one, and says so even when it is the old one again", async () => {
    const { told, put, first } = await served();
    put(broken);
    await until(() => expect(told).toHaveLength(1));
    put(yaml);
    await until(() => expect(told.at(-1)).toBe(`taken ${first}`));
    expect(told).toHaveLength(2);
  });

  test("goes on when the folder is gone, and takes it when it is back", async () => {
    const { folder, told, edition, first } = await served(50);
    renameSync(folder, `${folder}-away`);
    await until(() => expect(told[0]).toContain("does not exist"));
    expect(edition()).toBe(first);
    renameSync(`${folder}-away`, folder);
    await until(() => expect(told.at(-1)).toBe(`taken ${first}`));
  });

  test("notices a part kind in a folder that was replaced whole", async () => {
    const { folder, edition, first } = await served(50);
    rmSync(join(folder, "parts"), { recursive: true });
    mkdirSync(join(folder, "parts"));
    writeFileSync(join(folder, handle), shorter);
    await until(() => expect(edition()).not.toBe(first));
  });

  test("does not let a handbook change its id under its cases", async () => {
    const { folder, told, edition, first } = await served();
    writeFileSync(
      join(folder, "handbook.yaml"),
      (carefulHandbook["handbook.yaml"] ?? "").replace("id: tarn", "id: torn"),
    );
    await until(() => expect(told).toHaveLength(1));
    expect(told[0]).toContain("the id was tarn and is now torn");
    expect(edition()).toBe(first);
  });

  test("ends without taking what it is in the middle of", async () => {
    const { told, edition, put, first } = await served();
    put(shorter);
    const looking = live?.look();
    await live?.close();
    await looking;
    expect(edition()).toBe(first);
    expect(told).toEqual([]);
  });

  test("goes by an edition whose telling the store refuses, and the log says so", async () => {
    const folder = join(newFolder(), "tarn");
    await writeHandbookFiles(folder, carefulFiles());
    const open = await openHandbook(folder);
    const lines: string[] = [];
    const say = (_: object, message: string) => void lines.push(message);
    const log = { info: say, warn: say, error: say };
    const store = { ...memoryStore(), current: () => Promise.reject(new Error("gone")) };
    const clock = { today: () => ({ from: 0, to: 1 }), milliseconds: () => 5 };
    live = liveHandbooks([open], toldThrough(editionWatch({ store, clock, log }), log), {
      quiet: 20,
      look: 60_000,
    });
    writeFileSync(join(folder, handle), shorter);
    await until(() => expect(live?.known()[0]?.handbook.edition).not.toBe(open.handbook.edition));
    await until(() => expect(lines).toContain("an edition was not written down"));
  });
});

/** Ten of each part kind of the demonstration: 5 MB. */
function largeFolder(): string {
  const folder = join(newFolder(), "large");
  cpSync(demonstrationHandbook, folder, { recursive: true });
  const parts = join(folder, "parts");
  for (const name of readdirSync(parts)) {
    const text = readFileSync(join(parts, name), "utf8");
    for (let copy = 1; copy < 10; copy += 1) {
      const id = name.replace(".yaml", `-${copy}`);
      writeFileSync(join(parts, `${id}.yaml`), text.replace(/^id: .*$/mu, `id: ${id}`));
    }
  }
  return folder;
}

/** Milliseconds of the processor that this thread has used. */
function used(): number {
  const { user, system } = process.threadCpuUsage();
  return (user + system) / 1000;
}

/** A timer that asks for every turn it can have: what passes between two of them keeps everybody else waiting as well. */
function heartbeat() {
  let last = used();
  let longest = 0;
  const timer = setInterval(() => {
    const now = used();
    longest = Math.max(longest, now - last);
    last = now;
  }, 1);
  return {
    stop() {
      clearInterval(timer);
      return longest;
    },
  };
}

test("a large handbook that is saved keeps nobody waiting, and one that is not is not read again", async () => {
  const folder = largeFolder();
  const open = await openHandbook(folder);
  const store = memoryStore();
  const silent = () => undefined;
  const log = { info: silent, warn: silent, error: silent };
  const clock = { today: () => ({ from: 0, to: 1 }), milliseconds: () => 5 };
  const watch = editionWatch({ store, clock, log, inPieces: givingWay });
  await watch.taken(open.handbook, open.files);
  live = liveHandbooks([open], toldThrough(watch, log), { quiet: 20, look: 600_000 });
  const wheel = join(folder, "parts/road-wheel.yaml");
  writeFileSync(wheel, readFileSync(wheel, "utf8").replace(/mean: \d+/u, "mean: 77"));
  const start = used();
  const beating = heartbeat();
  await live.look();
  const longest = beating.stop();
  const taking = used() - start;
  expect(live.known()[0]?.handbook.edition).not.toBe(open.handbook.edition);
  expect(await store.history(editionKind, open.handbook.cover.id)).toHaveLength(2);
  // A stretch is some 40 ms, the whole some 1,000; the bounds leave room for a slower machine and a collection of garbage.
  expect(longest).toBeLessThan(400);
  expect(longest).toBeLessThan(taking / 3);
  const again = used();
  await live.look();
  expect(used() - again).toBeLessThan(taking / 5);
}, 120_000);

describe("the history of editions", () => {
  test("has what changed in words, also what changed while nothing ran, and the editions themselves", async () => {
    const folder = join(newFolder(), "tarn");
    await writeHandbookFiles(folder, carefulFiles());
    const store = memoryStore();
    const silent = () => undefined;
    const log = { info: silent, warn: silent, error: silent };
    const clock = { today: () => ({ from: 0, to: 1 }), milliseconds: () => 5 };
    const watch = editionWatch({ store, clock, log });
    const first = await openHandbook(folder);
    await watch.taken(first.handbook, first.files);
    await watch.taken(first.handbook, first.files);
    writeFileSync(join(folder, handle), shorter);
    const second = await openHandbook(folder);
    await watch.taken(second.handbook, second.files);
    await watch.refused(second.handbook, ["cars.yaml:1:1  broken"]);
    await watch.refused(second.handbook, ["cars.yaml:1:1  broken"]);
    const versions = (await store.history(editionKind, "tarn")).map(({ why, state }) => {
      const { edition, changes, refused } = EditionRecord.parse(state);
      return { why, edition, changes, refused };
    });
    const words = ["The Length of the Round handle is now 121 ± 0.5 mm; until now 120 ± 0.5 mm."];
    expect(versions.slice(0, 3)).toEqual([
      { why: "taken", edition: first.handbook.edition, changes: [], refused: [] },
      { why: "taken", edition: second.handbook.edition, changes: words, refused: [] },
      {
        why: "refused",
        edition: second.handbook.edition,
        changes: words,
        refused: ["cars.yaml:1:1  broken"],
      },
    ]);
    expect((await keptHandbook(store, first.handbook.edition))?.edition).toBe(first.handbook.edition);
    expect(await keptHandbook(store, "unknown")).toBeUndefined();
  });

  test("finds what changed by the edition that served, where it is at hand, without reading the kept one", async () => {
    const folder = join(newFolder(), "tarn");
    await writeHandbookFiles(folder, carefulFiles());
    const store = memoryStore();
    const silent = () => undefined;
    const log = { info: silent, warn: silent, error: silent };
    const clock = { today: () => ({ from: 0, to: 1 }), milliseconds: () => 5 };
    const first = await openHandbook(folder);
    await editionWatch({ store, clock, log }).taken(first.handbook, first.files);
    const current: typeof store.current = (kind, id) =>
      kind === editionKind ? store.current(kind, id) : Promise.reject(new Error(`${kind} was read`));
    writeFileSync(join(folder, handle), shorter);
    const second = await openHandbook(folder);
    const watch = editionWatch({ store: { ...store, current }, clock, log });
    await watch.taken(second.handbook, second.files, first.handbook);
    const [, newest] = await store.history(editionKind, "tarn");
    expect(EditionRecord.parse(newest?.state).changes).toEqual([
      "The Length of the Round handle is now 121 ± 0.5 mm; until now 120 ± 0.5 mm.",
    ]);
  });
});
