// What a community knows follows from its history alone: played again up to any number of its ledger it is what it was then, and the
// same observations on the same edition give the same bytes, whatever keeps them and in whatever order they came.
import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { type CommunityMemory, communityMemories } from "../../../bot/community/community-memory.ts";
import { ledgerStep } from "../../../bot/community/ledger.ts";
import type { Observation } from "../../../bot/community/observations/observation.ts";
import {
  datedSightings,
  observedStates,
  sightingsAlike,
  snapshotMark,
} from "../../../bot/community/observations/observations-view.ts";
import type { Bot, Store } from "../../../bot/index.ts";
import { clockFrom, communityTalk } from "../../support/community-talk.ts";
import { closeStores, newStores } from "../../support/new-stores.ts";
import { pastStore } from "../../support/past-store.ts";
import { seenCar, seenId } from "../../support/seen-cars.ts";

afterAll(closeStores);

interface Happening {
  readonly kind: string;
  readonly id: string;
  readonly state: unknown;
}

const drawnObservation = fc
  .record({
    variant: fc.constantFrom("first-drained", "second", "moulded"),
    year: fc.constantFrom(1979, 1980, 1981),
    month: fc.integer({ min: 1, max: 12 }),
    grade: fc.constantFrom("documented-from-new", "one-owner", "history-unknown"),
    stands: fc.constantFrom("waiting", "accepted", "accepted", "declined", "withdrawn"),
    by: fc.constantFrom("ann", "bert"),
    inside: fc.constantFrom("rough", "smooth"),
    serial: fc.option(fc.constantFrom("a", "b"), { nil: undefined }),
  })
  .map(({ inside, serial, ...seen }): Observation => {
    const observation = seenCar(7, {
      ...seen,
      car: serial === undefined ? {} : { serialDigest: serial },
    });
    const report = {
      feature: "inside-finish",
      by: seen.by,
      certainty: 0.9,
      words: inside,
      value: { kind: "state" as const, state: inside },
    };
    return { ...observation, saw: { ...observation.saw, reports: [report] } };
  });

/** Few ids, so that records are changed, taken away and begun anew. */
const drawnHappening: fc.Arbitrary<Happening> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc
      .tuple(fc.nat({ max: 5 }), fc.option(drawnObservation, { freq: 6 }))
      .map(([number, state]) => ({ kind: "observation", id: seenId(number), state })),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom("metric", "imperial").map((units) => ({
      kind: "settings",
      id: "settings",
      state: { handbooks: null, units, retentionMonths: null, platforms: {} },
    })),
  },
);

async function happen(store: Store, happenings: readonly Happening[]): Promise<void> {
  for (const { kind, id, state } of happenings) {
    const change = { kind, id: `home/${id}`, by: "kim", at: 5, why: "done" };
    const alongside = [ledgerStep("home", [{ kind, id }], "kim", 5, "done")];
    await store.advance(change, () => ({ state, outcome: null, alongside }));
  }
}

/** All that answers and pages are given from, without how it was come by: in a fixed order, and nothing that is empty. */
function whatIsKnown({ observations, settings, version, audit }: CommunityMemory): string {
  const inOrder = <Value>(map: ReadonlyMap<string, Value>) =>
    [...map].sort(([one], [other]) => (one < other ? -1 : 1));
  const sets = (map: ReadonlyMap<string, ReadonlySet<string>>) =>
    inOrder(map).flatMap(([key, ids]) => (ids.size === 0 ? [] : [[key, [...ids].sort()]]));
  const tallies = inOrder(observations.parts).flatMap(([key, tally]) =>
    tally.states.size + tally.sightings.size === 0
      ? []
      : [[key, observedStates(key, tally), datedSightings(tally), sightingsAlike(tally)]],
  );
  return JSON.stringify([
    version,
    audit,
    inOrder(settings),
    inOrder(observations.byId),
    tallies,
    observations.accepted,
    snapshotMark(observations),
    sets(observations.byPerson),
    sets(observations.bySerial),
  ]);
}

const questions = [
  "rear spoiler, rough inside, my car was built june 1980",
  "changeovers of the rear spoiler",
  "observations",
];

async function answersFrom(store: Store): Promise<string> {
  return answersOf(communityTalk(store, clockFrom()).bot);
}

async function answersOf(bot: Bot): Promise<string> {
  const replies = [];
  for (const [number, text] of questions.entries())
    replies.push(await bot.receive({ conversation: `club:asked ${number}`, from: "ann", name: "ann", text }));
  return JSON.stringify(replies);
}

/** What is asked is kept elsewhere, and thrown away. */
async function answersAt(store: Store, number: number): Promise<string> {
  return answersFrom({ ...(await pastStore(store, "home", number)), advance: memoryStore().advance });
}

describe("the history of a community", () => {
  test("played again up to a number of the ledger gives what a process knew at that number, and its answers", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.array(drawnHappening, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 5 }),
        async (spells) => {
          const store = memoryStore();
          const process = communityMemories(store);
          const then: { readonly number: number; readonly known: string }[] = [];
          for (const spell of spells) {
            await happen(store, spell);
            const memory = await process.upToDate("home");
            then.push({ number: memory.version, known: whatIsKnown(memory) });
          }
          for (const { number, known } of then) {
            const again = communityMemories(await pastStore(store, "home", number));
            expect(whatIsKnown(await again.upToDate("home"))).toBe(known);
          }
        },
      ),
      { seed: 1733, numRuns: 25 },
    );
  });

  test("answers asked of a past number are those that were given then", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(drawnHappening, { minLength: 2, maxLength: 12 }),
        fc.array(drawnHappening, { minLength: 1, maxLength: 8 }),
        async (before, after) => {
          const store = memoryStore();
          // One that was there from the start hears of everything as it happens.
          const { bot } = communityTalk(store, clockFrom());
          await bot.settings("home");
          for (const happening of before) {
            await happen(store, [happening]);
            await bot.settings("home");
          }
          const given = await answersOf(bot);
          await happen(store, after);
          expect(await answersAt(store, before.length)).toBe(given);
        },
      ),
      { seed: 1734, numRuns: 8 },
    );
  });
});

describe.each(Object.entries(newStores))("observations kept in %s", (name, open) => {
  test("give the same answers byte for byte as in memory, in whatever order they came", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(drawnObservation, { minLength: 3, maxLength: 10 }).chain((observations) => {
          const rows = observations.map((state, number) => ({
            kind: "observation",
            id: seenId(number),
            state,
          }));
          return fc.tuple(
            fc.constant(rows),
            fc.shuffledSubarray(rows, { minLength: rows.length, maxLength: rows.length }),
          );
        }),
        async ([rows, shuffled]) => {
          const [one, other] = [memoryStore(), await open()];
          await happen(one, rows);
          await happen(other, shuffled);
          expect(await answersFrom(other)).toBe(await answersFrom(one));
        },
      ),
      { seed: 1735, numRuns: name === "Postgres" ? 1 : 6 },
    );
  });
});
