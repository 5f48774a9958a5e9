// Whoever has done something is called by name where a name is known.
import { expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { communityMemories } from "../../../bot/community/community-memory.ts";
import { ledgerStep } from "../../../bot/community/ledger.ts";
import { nameOf } from "../../../bot/community/person/name-of.ts";
import { keepSeen, seenCar } from "../../support/seen-cars.ts";

const carl = "club:1234";

function seenBy(name: string, at: number) {
  return { ...seenCar(at, { variant: "second", year: 1980, month: 5, by: carl }), byName: name };
}

test("a member has the name under which they recorded something last, somebody unknown keeps the id", async () => {
  const store = memoryStore();
  await keepSeen(store, [seenBy("carl", 1), seenBy("Carl of the Works", 2), seenBy("carl", 0)]);
  const memory = await communityMemories(store).upToDate("home");
  expect(nameOf(memory, carl)).toBe("Carl of the Works");
  expect(nameOf(memory, "club:5678")).toBe("club:5678");
});

test("a role's name comes before that of anything recorded", async () => {
  const store = memoryStore();
  await keepSeen(store, [seenBy("carl", 1)]);
  const role = { person: carl, name: "the registrar", standing: "keeper", since: 0, by: "set-up" };
  const change = { kind: "keepers", id: "home/keepers", by: "set-up", at: 0, why: "set up" };
  await store.advance(change, () => ({
    state: { roles: [role], invitations: [] },
    outcome: null,
    alongside: [ledgerStep("home", [{ kind: "keepers", id: "keepers" }], "set-up", 0, "set up")],
  }));
  const memory = await communityMemories(store).upToDate("home");
  expect(nameOf(memory, carl)).toBe("the registrar");
});
