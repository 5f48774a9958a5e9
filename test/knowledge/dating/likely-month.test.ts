import { expect, test } from "vitest";
import { changeover } from "../../../knowledge/dating/changeover.ts";
import { likeliestMonth, likelyMonth } from "../../../knowledge/dating/likely-month.ts";
import { inCell } from "../../support/plain-sightings.ts";

const setting = { window: { from: 0, to: 24 } };

function monthOf(sightings: Parameters<typeof changeover>[1]) {
  const found = changeover(setting, sightings);
  if (!found.ok) throw new Error(found.problem.message);
  return { change: found.value, likely: likelyMonth(found.value.posterior) };
}

test("a change pinned down from both sides lies in the month between, almost surely", () => {
  const old = Array.from({ length: 41 }, (_, cell) => inCell(cell, false));
  const fresh = Array.from({ length: 53 }, (_, cell) => inCell(cell + 43, true));
  const { likely } = monthOf([...old, ...fresh]);
  expect(likely?.month).toEqual({ from: 10, to: 11 });
  expect(likely?.chance).toBeGreaterThan(0.9);
  expect(likely?.chance).toBeLessThanOrEqual(1);
});

test("seen from the other end of production it is the mirrored month, with the same chance", () => {
  const cells = [0, 5, 9, 17, 22, 30, 34, 39, 44, 52, 60, 71, 83] as const;
  const { likely } = monthOf(cells.map((cell) => inCell(cell, cell > 35)));
  const mirrored = monthOf(cells.map((cell) => inCell(95 - cell, cell <= 35))).likely;
  expect(mirrored?.month.from).toBe(23 - (likely?.month.from ?? Number.NaN));
  expect(mirrored?.chance).toBeCloseTo(likely?.chance ?? Number.NaN, 12);
});

test("without a sighting every month has its share, and none stands out", () => {
  const { likely, change } = monthOf([]);
  expect(likely).toBeUndefined();
  expect(change.reported).toBe("none");
});

test("the month stands out from one chance in twenty on", () => {
  // Twenty months between the two ends, one of which takes the rest.
  const weights = (share: number) =>
    Float64Array.from({ length: 22 }, (_, place) => (place === 5 ? share : (1 - share) / 21));
  const monthAmong = (share: number) => likeliestMonth(weights(share), (place) => place + 0.5, 1);
  expect(monthAmong(0.0499)).toBeUndefined();
  expect(monthAmong(0.0501)).toEqual({ month: { from: 5, to: 6 }, chance: expect.closeTo(0.0501, 9) });
});

test("dates of a change lie within the window, however likely it is that nothing changed", () => {
  const old = Array.from({ length: 60 }, (_, cell) => inCell(cell + 36, false));
  const { change } = monthOf(old);
  expect(change.oldThroughout).toBeGreaterThan(0.05);
  expect(change.interval.to).toBe(24);
  const { change: mirrored } = monthOf(Array.from({ length: 60 }, (_, cell) => inCell(cell, true)));
  expect(mirrored.interval.from).toBe(0);
  expect(mirrored.median).toBeGreaterThanOrEqual(0);
});

test("where all that was seen is of one kind, the month is of the window still, and takes nothing from there having been no change", () => {
  const allNew = Array.from({ length: 30 }, (_, index) => inCell(3 * index, true));
  const allOld = Array.from({ length: 30 }, (_, index) => inCell(3 * index + 5, false));
  const likely = [allNew, allOld].map((sightings) => monthOf(sightings).likely);
  expect(likely.map((one) => one?.month.from)).toEqual([0, 23]);
  for (const one of likely) expect(one?.chance).toBeLessThan(0.5);
});
