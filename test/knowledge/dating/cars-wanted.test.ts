import { describe, expect, test } from "vitest";
import { carsWanted } from "../../../knowledge/dating/cars-wanted.ts";
import { changeover } from "../../../knowledge/dating/changeover.ts";
import { granted } from "../../support/granted.ts";
import { inCell } from "../../support/plain-sightings.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { simulatedProduction, simulatedWindow, simulateSightings } from "../../support/simulated-works.ts";

const replacements = { old: 0.4, new: 0.6 };
const setting = { window: simulatedWindow, production: simulatedProduction, replacements };
const works = { sightings: 20, changed: 30, overlap: 0, swapRate: 0.1, misread: 0.01, dates: "day" } as const;
const seen = simulateSightings(works, chanceFrom(12));

describe("which cars to look for", () => {
  const change = granted(changeover(setting, seen));
  const wanted = carsWanted(change.posterior, replacements);
  test("the first month lies within the interval, and its share is near one half", () => {
    const [first] = wanted;
    expect(first?.built.from).toBeGreaterThanOrEqual(change.interval.from - 1);
    expect(first?.built.to).toBeLessThanOrEqual(change.interval.to + 1);
    expect(Math.abs((first?.reportedNew ?? 0) - 0.5)).toBeLessThan(0.15);
  });
  test("every month of the window is listed once, and none tells more than one bit or less than none", () => {
    expect(wanted).toHaveLength(60);
    for (const { informationBits } of wanted) {
      expect(informationBits).toBeGreaterThanOrEqual(0);
      expect(informationBits).toBeLessThan(1);
    }
  });
  test("five wanted cars narrow the interval to less than two thirds", () => {
    let known = [...seen];
    for (let index = 0; index < 5; index += 1) {
      const { posterior } = granted(changeover(setting, known));
      const built = carsWanted(posterior, replacements)[0]?.built ?? { from: 0, to: 1 };
      const isNew = built.from >= 30;
      known = [
        ...known,
        {
          id: `wanted-${index}`,
          isNew,
          built,
          swap: 0.05,
          misread: 0.005,
          isSought: true,
          truth: { fittedNew: isNew, isSwapped: false, built: built.from },
        },
      ];
    }
    const narrowed = granted(changeover(setting, known)).interval;
    const before = change.interval.to - change.interval.from;
    expect(narrowed.to - narrowed.from).toBeLessThan(0.67 * before);
  });
});

test("by hand: a step equally likely on two borders, one car between them", () => {
  // Old seen in cell 7, new in cell 12: the step lies on 8 … 12. The month of cells 8 … 11 tells all that a car can.
  const change = granted(
    changeover({ window: { from: 0, to: 5 }, overlaps: [0] }, [inCell(7, false), inCell(12, true)]),
  );
  const [first] = carsWanted(change.posterior, { old: 1, new: 1 });
  expect(first?.built).toEqual({ from: 2, to: 3 });
  // P(new) without swaps or misreading is the mean of 1, ¾, ½, ¼, 0.
  expect(first?.reportedNew).toBeCloseTo(0.5, 9);
});

test("no car is wanted from a year in which none was built", () => {
  const idle = new Map([...simulatedProduction, [2, 0]]);
  const change = granted(changeover({ ...setting, production: idle }, seen));
  const years = new Set(
    carsWanted(change.posterior, replacements).map(({ built }) => Math.floor(built.from / 12)),
  );
  expect([...years].sort()).toEqual([0, 1, 3, 4]);
});
