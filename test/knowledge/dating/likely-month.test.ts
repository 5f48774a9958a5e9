import { expect, test } from "vitest";
import { changeover } from "../../../knowledge/dating/changeover.ts";
import { likelyMonth } from "../../../knowledge/dating/likely-month.ts";
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

test("without a sighting no month has more than its share, and the first is named", () => {
  const { likely, change } = monthOf([]);
  expect(likely?.chance).toBeLessThan(1.1 / 24);
  expect(likely?.chance).toBeGreaterThan(0.9 / 24);
  expect(change.reported).toBe("none");
});

test("where all that was seen is of one kind, the month is of the window still, and takes nothing from there having been no change", () => {
  const allNew = Array.from({ length: 30 }, (_, index) => inCell(3 * index, true));
  const allOld = Array.from({ length: 30 }, (_, index) => inCell(3 * index + 5, false));
  const likely = [allNew, allOld].map((sightings) => monthOf(sightings).likely);
  expect(likely.map((one) => one?.month.from)).toEqual([0, 23]);
  for (const one of likely) expect(one?.chance).toBeLessThan(0.5);
});
