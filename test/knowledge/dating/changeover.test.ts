import { describe, expect, test } from "vitest";
import { changeover } from "../../../knowledge/dating/changeover.ts";
import { borderWeights } from "../../../knowledge/dating/changeover-posterior.ts";
import { spreadQuantile } from "../../../knowledge/dating/credible-run.ts";
import type { ChangeoverSighting } from "../../../knowledge/dating/report-groups.ts";
import { granted } from "../../support/granted.ts";
import { inCell } from "../../support/plain-sightings.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { simulatedProduction, simulatedWindow, simulateSightings } from "../../support/simulated-works.ts";

const window = simulatedWindow;
const setting = { window, production: simulatedProduction, replacements: { old: 0.4, new: 0.6 } };

function history(sightings: number, swapRate: number): readonly ChangeoverSighting[] {
  const works = { sightings, changed: 31, overlap: 2, swapRate, misread: 0.02, dates: "month" } as const;
  return simulateSightings(works, chanceFrom(7));
}

describe("certain sightings of a sharp change, by hand", () => {
  const seen = [inCell(3, false), inCell(9, false), inCell(14, false), inCell(23, true), inCell(30, true)];
  const change = granted(changeover({ window: { from: 0, to: 10 }, overlaps: [0] }, seen));
  test("the change lies evenly between the last old and the first new car, and nowhere else", () => {
    const weights = [...borderWeights(change.posterior)];
    weights.forEach((weight, border) => {
      expect(weight > 0).toBe(border >= 15 && border <= 23);
      if (weight > 0) expect(weight).toBe(weights[15]);
    });
    expect(change.interval).toEqual({ from: 3.625, to: 5.875 });
    expect(change.median).toBeCloseTo(4.75, 12);
  });
  test("its inner nine tenths run from 3.7375 to 5.7625", () => {
    const weights = borderWeights(change.posterior);
    expect(spreadQuantile(weights, 0.05) / 4).toBeCloseTo(3.7375, 10);
    expect(spreadQuantile(weights, 0.95) / 4).toBeCloseTo(5.7625, 10);
  });
  test("the works fitted the old kind before, the new one after, and both are as likely in the middle", () => {
    const shares = change.asBuilt.new;
    expect(shares[14]).toBe(0);
    expect(shares[23]).toBe(1);
    expect(shares[18]).toBeCloseTo(4 / 9, 9); // borders 15 … 18 of 15 … 23 lie left of cell 18
    for (let cell = 1; cell < shares.length; cell += 1) {
      expect(shares[cell] as number).toBeGreaterThanOrEqual(shares[cell - 1] as number);
    }
  });
  test("every sighting is as built, and both ends are named", () => {
    for (const { notAsBuilt } of change.sightings) expect(notAsBuilt).toBeCloseTo(0, 9);
    expect(change.ends.lastOld?.id).toBe("old-014");
    expect(change.ends.firstNewUnsuspected?.id).toBe("new-023");
  });
});

describe("one car that does not fit", () => {
  const old = Array.from({ length: 20 }, (_, index) =>
    inCell(5 * index, false, { swap: 0.1, misread: 0.005, isSought: false }),
  );
  const fresh = Array.from({ length: 20 }, (_, index) =>
    inCell(130 + 5 * index, true, { swap: 0.1, misread: 0.005, isSought: false }),
  );
  const odd = inCell(10, true, { id: "odd", swap: 0.1, misread: 0.005, isSought: false });
  const change = granted(changeover(setting, [...old, ...fresh, odd]));
  test("is called not as built and most likely swapped", () => {
    const verdict = change.sightings.find(({ id }) => id === "odd");
    expect(verdict?.notAsBuilt).toBeGreaterThan(0.95);
    expect(verdict?.swapped).toBeGreaterThan(0.8);
    const others = change.sightings.filter(({ id }) => id !== "odd");
    expect(Math.max(...others.map(({ notAsBuilt }) => notAsBuilt))).toBeLessThan(0.3);
  });
  test("is the first new car when suspects count, and not when they do not", () => {
    expect(change.ends.firstNew?.id).toBe("odd");
    expect(change.ends.firstNewUnsuspected?.id).toBe("new-130");
    expect(change.ends.firstNewUnsuspected?.asBuilt).toBeGreaterThan(0.5);
  });
  test("counts for nothing once a keeper has ruled that it is as built: the change is then no longer sharp", () => {
    const ruled = { ...odd, swap: 0, misread: 0 };
    const other = granted(changeover(setting, [...old, ...fresh, ruled]));
    expect(other.sightings.find(({ id }) => id === "odd")?.notAsBuilt).toBeCloseTo(0, 9);
    expect(other.median).toBeLessThan(change.median);
  });
});

describe("what is not known is said", () => {
  test("without sightings the answer is the prior: any time, and no variant reported", () => {
    const change = granted(changeover(setting, []));
    expect(change.reported).toBe("none");
    expect(change.newThroughout).toBeCloseTo(0.02, 9);
    expect(change.oldThroughout).toBeCloseTo(0.02, 9);
    expect(change.interval.to - change.interval.from).toBeGreaterThan(50);
  });
  test("with one variant only there is no change to date", () => {
    expect(granted(changeover(setting, [inCell(4, false)])).reported).toBe("old-only");
    expect(granted(changeover(setting, [inCell(4, true)])).reported).toBe("new-only");
  });
  test("cars from outside the window are listed and not used", () => {
    const late = inCell(400, true, { id: "late" });
    const change = granted(changeover(setting, [...history(20, 0.1), late]));
    expect(change.outside).toEqual(["late"]);
    expect(change.median).toBe(granted(changeover(setting, history(20, 0.1))).median);
  });
  test("an empty or endless window is refused", () => {
    expect(changeover({ window: { from: 5, to: 5 } }, [])).toMatchObject({
      ok: false,
      problem: { code: "no-window" },
    });
    expect(changeover({ window: { from: 0, to: Number.POSITIVE_INFINITY } }, [])).toMatchObject({
      ok: false,
    });
  });
});

describe("the handbook and the cars", () => {
  const stated = { ends: [{ at: 31, deviation: 3 }] };
  test("a right handbook narrows the interval", () => {
    const alone = granted(changeover(setting, history(5, 0.1)));
    const led = granted(changeover({ ...setting, stated }, history(5, 0.1)));
    expect(led.interval.to - led.interval.from).toBeLessThan(0.8 * (alone.interval.to - alone.interval.from));
    expect(granted(changeover({ ...setting, stated }, history(20, 0.1))).statedOutside).toBe(false);
  });
  test("a handbook that is a year and a half wrong is overruled by sixty cars, and the quarrel is named", () => {
    const wrong = { ends: [{ at: 49, deviation: 3 }] };
    const change = granted(changeover({ ...setting, stated: wrong }, history(60, 0.1)));
    expect(Math.abs(change.median - 31)).toBeLessThan(4);
    expect(change.statedOutside).toBe(true);
  });
  test("a stated overlap triples the width nearest to it", () => {
    const overlap = granted(changeover({ ...setting, stated: { ...stated, overlap: 7 } }, []));
    const plain = granted(changeover({ ...setting, stated }, []));
    const odds = (chances: typeof plain.overlaps): number =>
      (chances[5]?.chance ?? 0) / (chances[2]?.chance ?? 1);
    expect(odds(overlap.overlaps) / odds(plain.overlaps)).toBeCloseTo(3, 6);
  });
});

test("twice as many swaps as graded are noticed with two hundred cars", () => {
  const swapped = history(200, 0.3).map((sighting) => ({ ...sighting, swap: 0.1 }));
  expect(granted(changeover(setting, swapped)).moreSwapsThanGraded).toBeGreaterThan(0.9);
  expect(granted(changeover(setting, history(200, 0.1))).moreSwapsThanGraded).toBeLessThan(0.5);
});

test("what is remembered from earlier calls changes no digit", () => {
  const memory = new Map();
  const first = changeover(setting, history(59, 0.1), memory);
  const again = changeover(setting, history(60, 0.1), memory);
  expect(first.ok && again.ok).toBe(true);
  expect(again).toEqual(changeover(setting, history(60, 0.1)));
});
