// A backup that is put back under a running program: what it knows of its communities is what the backup holds, not what was so before.
import { expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import type { Store } from "../../../bot/index.ts";
import { clockFrom, communityTalk } from "../../support/community-talk.ts";

/** A store in whose place another can be put while programs hold it. */
function replaceable(first: Store): { readonly store: Store; put(other: Store): void } {
  let kept = first;
  const store: Store = {
    advance: (change, advance) => kept.advance(change, advance),
    current: (kind, id) => kept.current(kind, id),
    version: (kind, id) => kept.version(kind, id),
    history: (kind, id, after) => kept.history(kind, id, after),
    ids: (kind) => kept.ids(kind),
    currents: (kind, prefix) => kept.currents(kind, prefix),
    erase: (change, rewrite, also) => kept.erase(change, rewrite, also),
  };
  return {
    store,
    put(other) {
      kept = other;
    },
  };
}

const pin = async (store: Store, hour: number, ...questions: readonly string[]) => {
  const { say } = communityTalk(store, clockFrom(Date.UTC(2026, 10, 1, hour)));
  for (const question of questions) {
    await say(`(kim, keeper) pin for the question ${question}: As it says.`);
    await say("(kim, keeper) keep it");
  }
};

test.each([
  ["is shorter", ["where is the label"], []],
  ["has gone on since", ["where is the label"], ["how heavy is it", "who made it"]],
])("what was pinned after a backup that %s is not pinned any more", async (_, before, since) => {
  const backup = memoryStore();
  await pin(backup, 9, ...before);
  await pin(backup, 11, ...since);
  const served = memoryStore();
  const { store, put } = replaceable(served);
  await pin(served, 9, ...before, "which glass is right");
  const { say } = communityTalk(store);
  expect(await say("(ann) pins")).toContain("which glass is right");
  put(backup);
  const pins = await say("(ann) pins");
  expect(pins).not.toContain("which glass is right");
  for (const question of [...before, ...since]) expect(pins).toContain(question);
});
