// How long glass lay before it came into a mirror is learnt from cars of which build date and history are known.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { learntKnowledge } from "../../../bot/community/observations/learnt-knowledge.ts";
import type { Observation } from "../../../bot/community/observations/observation.ts";
import { observationKind } from "../../../bot/community/observations/observations-view.ts";
import { emptyConversation, step } from "../../../bot/index.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";
import { seenCar } from "../../support/seen-cars.ts";

const [part, mark, later] = ["door-mirror", "glass-week", "second-moulded"] as const;
const handbookMedian = 2.2;

/** Glass marked a week that lies about six months before the car. */
function seen(id: number, change: Partial<Observation["saw"]> = {}, variant: string = later): Observation {
  const built = 12 * 1982 + (id % 20);
  const interval = { from: built - 6, to: built - 5.77 };
  const car = seenCar(id, { part, variant, year: Math.floor(built / 12), month: (built % 12) + 1 });
  const value = { kind: "date", readings: [{ interval, weight: 1 }] } as const;
  const report = { feature: mark, by: car.by, certainty: 1, words: "week mark", value };
  return {
    ...car,
    saw: { ...car.saw, reports: [report], car: { built: { from: built, to: built + 1 } }, ...change },
  };
}

function knownFrom(observations: readonly Observation[]) {
  const view = observationKind.emptyView();
  for (const one of observations) observationKind.take(view, one.by, undefined, one);
  return learntKnowledge(demoKnowledge(), view);
}

function linkFrom(observations: readonly Observation[], feature: string = mark) {
  return knownFrom(observations).compiled(part)?.dates.get(feature);
}

const cars = Array.from({ length: 12 }, (_, id) => seen(id));

describe("the lead of a date mark", () => {
  test("is the handbook's where there is no documented car, or too few", () => {
    expect(linkFrom([])).toMatchObject({ lead: { median: handbookMedian, sigma: 0.5 }, cars: 0 });
    expect(linkFrom(cars.slice(0, 2))).toMatchObject({ lead: { median: handbookMedian }, cars: 0 });
  });

  test("goes towards what documented cars show, the further the more of them there are", () => {
    const [few, many] = [linkFrom(cars.slice(0, 3)), linkFrom(cars)];
    expect(few?.cars).toBe(3);
    expect(many?.cars).toBe(12);
    expect(few?.lead.median).toBeGreaterThan(handbookMedian + 0.5);
    expect(many?.lead.median).toBeGreaterThan(few?.lead.median ?? Number.NaN);
    expect(many?.lead.median).toBeLessThan(7);
  });

  test("of another mark, and of a mark before another mark, is left as it is", () => {
    expect(linkFrom(cars, "glass-dots")?.cars).toBe(0);
    expect(linkFrom(cars, "casting-date")).toMatchObject({ lead: { median: 2.2, sigma: 0.6 }, cars: 0 });
  });

  test("is not taught by cars of unknown history, without a date, by loose parts or by parts the works never made", () => {
    const { handbook } = demoKnowledge();
    const kinds = handbook.parts.find(({ id }) => id === part)?.variants ?? [];
    const reproduction = kinds.find(({ origin }) => origin === "reproduction")?.id;
    expect(reproduction).toBeDefined();
    const idle = [
      cars.map((_, id) => seen(id, { grade: "history-unknown" })),
      cars.map((_, id) => seen(id, { grade: "known-replaced" })),
      cars.map((_, id) => seen(id, { car: {} })),
      cars.map((_, id) => seen(id, { car: { ...seen(id).saw.car, isLoosePart: true } })),
      cars.map((_, id) => seen(id, {}, reproduction)),
      cars.map((car): Observation => ({ ...car, stands: "waiting" })),
    ];
    for (const observations of idle) expect(linkFrom(observations)?.cars).toBe(0);
  });

  test("is taught by a car of unknown history when a keeper has ruled the part to be as built", () => {
    const ruled = cars.map((_, id) => ({ ...seen(id, { grade: "history-unknown" }), isRuledAsBuilt: true }));
    expect(linkFrom(ruled)?.cars).toBe(12);
  });

  test("is the same whatever the order of the observations, and goes back with one that is withdrawn", () => {
    const expected = linkFrom(cars)?.lead;
    fc.assert(
      fc.property(fc.shuffledSubarray(cars, { minLength: cars.length }), (shuffled) => {
        expect(linkFrom(shuffled)?.lead).toEqual(expected);
      }),
      { seed: 11, numRuns: 5 },
    );
    const view = observationKind.emptyView();
    for (const one of cars) observationKind.take(view, one.by, undefined, one);
    const extra = seen(99);
    observationKind.take(view, extra.by, undefined, extra);
    observationKind.take(view, extra.by, extra, { ...extra, stands: "withdrawn" });
    const link = learntKnowledge(demoKnowledge(), view).compiled(part)?.dates.get(mark);
    expect(link).toMatchObject({ lead: expected, cars: 12 });
  });
});

describe("an answer about a mark", () => {
  const say = (observations: readonly Observation[]) =>
    JSON.stringify(
      step(
        knownFrom(observations),
        emptyConversation,
        {
          conversation: "club:bench",
          from: "owner",
          text: "door mirror on my Shrike built in june 1982, week mark on the glass is week 50 of 1981",
        },
        demoToday,
      ).reply,
    );
  test("says what the handbook has as usual, and with documented cars what they show and how many there are", () => {
    expect(say([])).toMatch(/to the car: long \(most take [^)]*\)\./u);
    expect(say(cars)).toMatch(/to the car: usual \(most take [^)]*, learnt from 12 documented cars\)\./u);
  });
});

/** The casting dated about nine months before its glass, on loose mirrors. */
function bothMarks(id: number): Observation {
  const glass = 12 * 1982 + (id % 20);
  const report = (feature: string, from: number) => ({
    feature,
    by: `member ${id}`,
    certainty: 1,
    words: feature,
    value: { kind: "date" as const, readings: [{ interval: { from, to: from + 0.23 }, weight: 1 }] },
  });
  const reports = [report("casting-date", glass - 9), report(mark, glass)];
  return seen(id, { reports, car: { isLoosePart: true }, grade: "history-unknown" });
}

describe("the lead from one mark to the next", () => {
  const loose = Array.from({ length: 10 }, (_, id) => bothMarks(id));

  test("is learnt from parts that carry both, on a car or loose, and teaches nothing of the way to the car", () => {
    const link = linkFrom(loose, "casting-date");
    expect(link?.cars).toBe(10);
    expect(link?.lead.median).toBeGreaterThan(5);
    expect(linkFrom(loose)?.cars).toBe(0);
  });

  test("is the handbook's where only one of the two was read", () => {
    expect(linkFrom(cars, "casting-date")?.cars).toBe(0);
  });

  test("is said with what taught it when both are read", () => {
    const said = JSON.stringify(
      step(
        knownFrom(loose),
        emptyConversation,
        {
          conversation: "club:bench",
          from: "owner",
          text: "door mirror, casting date march 1981, week mark on the glass is week 50 of 1981",
        },
        demoToday,
      ).reply,
    );
    expect(said).toMatch(
      /from the casting dial to the week mark on the glass: usual \(most take [^)]*, learnt from 10 parts with both marks\)/u,
    );
  });
});
