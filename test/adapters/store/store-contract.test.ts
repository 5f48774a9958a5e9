import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { openJsonFileStore } from "../../../adapters/store/json-file.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";

function newFile(): string {
  return join(mkdtempSync(join(tmpdir(), "wm-")), "conversations.jsonl");
}

const stores = {
  memory: async () => memoryStore(),
  "JSON-lines file": () => openJsonFileStore(newFile()),
};

describe.each(Object.entries(stores))("a store in %s", (_name, open) => {
  test("gives back what was written last, by conversation", async () => {
    const store = await open();
    await store.write("garage", { version: 1 });
    await store.write("clubhouse", { version: 7 });
    await store.write("garage", { version: 2 });
    expect(await store.read("garage")).toEqual({ version: 2 });
    expect(await store.read("clubhouse")).toEqual({ version: 7 });
  });

  test("knows nothing of a conversation that never was", async () => {
    const store = await open();
    expect(await store.read("nowhere")).toBeUndefined();
    expect(await store.read("__proto__")).toBeUndefined();
  });

  test("keeps a copy: changing what was read or written changes nothing kept", async () => {
    const store = await open();
    const state = { facts: ["rough inside"] };
    await store.write("garage", state);
    state.facts.push("smooth inside");
    const read = (await store.read("garage")) as { facts: string[] };
    read.facts.push("painted");
    expect(await store.read("garage")).toEqual({ facts: ["rough inside"] });
  });

  test("keeps line ends, quotes and any alphabet", async () => {
    const store = await open();
    const state = { text: 'two\nlines, "quoted", Žluť, 鏡, \u2028' };
    await store.write('a "place"\n', state);
    expect(await store.read('a "place"\n')).toEqual(state);
  });

  test("takes many writes at once and loses none", async () => {
    const store = await open();
    await Promise.all(Array.from({ length: 200 }, (_, n) => store.write(`place-${n % 20}`, { n })));
    for (let place = 0; place < 20; place++) {
      expect(await store.read(`place-${place}`)).toEqual({ n: 180 + place });
    }
  });
});

test("a file store is read again by the next process", async () => {
  const file = newFile();
  const first = await openJsonFileStore(file);
  await first.write("garage", { version: 3 });
  await first.close();
  const second = await openJsonFileStore(file);
  expect(await second.read("garage")).toEqual({ version: 3 });
});

test("an acknowledged write is on the disk as whole lines, with nothing half-written beside it", async () => {
  const file = newFile();
  const store = await openJsonFileStore(file);
  await store.write("garage", { version: 1 });
  await store.write("clubhouse", { version: 2 });
  const lines = readFileSync(file, "utf8").trimEnd().split("\n");
  expect(lines.map((line) => JSON.parse(line).conversation)).toEqual(["garage", "clubhouse"]);
  await store.close();
  expect(readdirSync(join(file, ".."))).toEqual(["conversations.jsonl"]);
});

test("a damaged line is named by file and line, and nothing is opened", async () => {
  const file = newFile();
  writeFileSync(file, '{"conversation":"garage","state":{}}\n{"conversation":"club\n');
  await expect(openJsonFileStore(file)).rejects.toThrow(`${file}:2 is not a kept conversation`);
});

test("a lock left behind by a process that is gone is taken over; a living one is respected", async () => {
  const file = newFile();
  writeFileSync(`${file}.lock`, "999999999");
  const store = await openJsonFileStore(file);
  await store.close();
  writeFileSync(`${file}.lock`, `${process.ppid}`);
  await expect(openJsonFileStore(file)).rejects.toThrow(`process ${process.ppid} is using this store`);
});
