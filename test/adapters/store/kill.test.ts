// Writers that are killed while they write (kill -9), on one store, two at a time, each change in up to three records. `npm run kill`
// does it 200 times.
import { expect, test } from "vitest";
import { killRun } from "../../support/kill-run.ts";
import { newPlaces } from "../../support/store-places.ts";

test.each([
  ["SQLite", 20, newPlaces.SQLite],
  ["Postgres", 6, newPlaces.Postgres],
] as const)(
  "on %s, %i kills lose nothing that was acknowledged and do nothing twice",
  async (_engine, kills, newPlace) => {
    const report = await killRun(await newPlace(), kills, 1969);
    expect(report.problems).toEqual([]);
    expect(report.acknowledged).toBeGreaterThan(kills);
    expect(report.sentAgain).toBeGreaterThan(0);
  },
  180_000,
);

test.each(Object.entries(newPlaces))(
  "on %s, two processes whose changes meet in the same records lose none and leave none in part",
  async (_engine, newPlace) => {
    const report = await killRun(await newPlace(), 0, 1969, 300);
    expect(report).toEqual({ kills: 0, acknowledged: 600, sentAgain: 0, problems: [] });
  },
  60_000,
);
