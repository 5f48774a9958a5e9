// Sums kept from one acceptance to the next are those of a fresh count: after more, after fewer, beyond what is summed exactly.
import { describe, expect, test } from "vitest";
import { borderLikelihoods } from "../../../knowledge/dating/border-likelihood.ts";
import { type CellGrid, cellGrid } from "../../../knowledge/dating/cells.ts";
import { circumstances } from "../../../knowledge/dating/change-priors.ts";
import { countReport, keptLikelihoods, noReports } from "../../../knowledge/dating/kept-reports.ts";
import { type ChangeoverSighting, groupReports } from "../../../knowledge/dating/report-groups.ts";

const grid = cellGrid({ from: 0, to: 24 }, new Map([[1, 30]]), 1) as CellGrid;
const plain = { grid, widths: [0, 2, 6], circumstances, replacements: { old: 1, new: 2 } };

function car(id: string, from: number, to: number, rest: Partial<ChangeoverSighting> = {}) {
  return { id, isNew: from > 11, built: { from, to }, swap: 0.1, misread: 0.01, isSought: false, ...rest };
}

const cars: readonly ChangeoverSighting[] = [
  car("a", 3, 4),
  car("b", 3, 4),
  car("c", 0, 12),
  car("d", 0, 12, { isNew: true }),
  car("e", 14, 15, { count: 3 }),
  car("f", 12, 24, { isSought: true }),
  car("g", 40, 41),
];

/** After each step the sums as they are kept, and those of the cars counted by then. */
function kept(steps: readonly (readonly [ChangeoverSighting, 1 | -1])[]) {
  const reports = noReports();
  const ground = { ...plain, memory: new Map() };
  let now: readonly ChangeoverSighting[] = [];
  return steps.map(([one, sign]) => {
    countReport(reports, ground, one, sign * (one.count ?? 1));
    now = sign === 1 ? [...now, one] : now.filter(({ id }) => id !== one.id);
    const fresh = borderLikelihoods(plain, groupReports(grid, now).groups);
    return { sums: Float64Array.from(keptLikelihoods(reports, ground)), fresh, reports: { ...reports }, now };
  });
}

describe("kept sums", () => {
  const more = cars.map((one) => [one, 1] as const);
  const fewer = cars.map((one) => [one, -1] as const);
  test("are those of a fresh count after every car more and every car fewer", () => {
    const found = kept([...more, ...fewer, ...more.toReversed()]);
    for (const { sums, fresh } of found) expect(sums).toEqual(fresh);
    expect(found.map(({ reports }) => reports.revision)).toEqual(found.map((_, at) => at + 1));
    expect(found.at(6)?.reports.seen).toBe(9);
  });
  test("keep no group of which no car is left", () => {
    const { reports, sums } = kept([...more, ...fewer]).at(-1) ?? kept(more)[0] ?? { reports: noReports() };
    expect([reports.seen, reports.groups.size, reports.intervals.size, reports.behind.size]).toEqual([
      0, 0, 0, 0,
    ]);
    expect(sums?.every((sum) => sum === 0)).toBe(true);
  });
  test("are worked out afresh while they would be too large to be exact, and kept again afterwards", () => {
    const crowd = car("crowd", 5, 6, { count: 50_000_000 });
    const found = kept([...more, [crowd, 1], [car("h", 7, 8), 1], [crowd, -1], [car("i", 9, 10), 1]]);
    for (const { sums, fresh } of found) expect(sums).toEqual(fresh);
    expect(found.slice(6).map(({ reports }) => reports.sums !== undefined)).toEqual([
      true,
      false,
      false,
      true,
      true,
    ]);
  });
  test("of cars of one year weigh less the more there are, those counted before too", () => {
    const year = Array.from(
      { length: 12 },
      (_, at) => [car(`y${at}`, 0, 12, { isNew: at % 3 === 0 }), 1] as const,
    );
    for (const { sums, fresh } of kept(year)) expect(sums).toEqual(fresh);
  });
  test("asked for only at the end are the same", () => {
    const reports = noReports();
    const ground = { ...plain, memory: new Map() };
    for (const one of cars) countReport(reports, ground, one, one.count ?? 1);
    expect(keptLikelihoods(reports, ground)).toEqual(kept(more).at(-1)?.fresh);
    expect(keptLikelihoods(reports, ground)).toEqual(kept(more).at(-1)?.fresh);
  });
});
