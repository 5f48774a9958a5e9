// `witness-mark observations`: what a club has seen goes out of one store and into another, and what cannot be read is named.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openStoreFile } from "../../../adapters/store/open-store.ts";
import { silentLog } from "../../support/logs.ts";
import { newPostgresDatabase } from "../../support/postgres-database.ts";
import { keepSeen, seenCar } from "../../support/seen-cars.ts";
import { commandLine, type Ended, newFolder, run } from "../program.ts";

async function clubFolder(): Promise<string> {
  const folder = newFolder();
  const store = await openStoreFile(join(folder, "club.sqlite"), silentLog);
  await keepSeen(store, [
    seenCar(0, { variant: "second", year: 1980, month: 6, by: '=HYPERLINK("x")' }),
    seenCar(1, { variant: "first-drained", year: 1980, month: 2 }),
    seenCar(2, { variant: "second", year: 1981, month: 1, stands: "waiting" }),
  ]);
  await store.close();
  return folder;
}

const observationsIn =
  (folder: string) =>
  (...words: string[]): Promise<Ended> =>
    run(commandLine, ["observations", ...words], "", { folder });

test.each([
  ["as JSON", ["--json"], "a database"],
  ["as rows", [], "a file"],
] as const)("%s, what goes out of one store comes out of another the same", async (_, form, kept) => {
  const folder = await clubFolder();
  const place = kept === "a file" ? "other.sqlite" : await newPostgresDatabase();
  const observations = observationsIn(folder);
  const { status, out, err } = await observations("export", ...form, "--store", "club.sqlite");
  expect({ status, err }).toEqual({ status: 0, err: "" });
  // A name that a spreadsheet would work out is none in a cell.
  expect(out).toContain(form.length === 0 ? `"'=HYPERLINK(""x"")"` : `"=HYPERLINK(\\"x\\")"`);
  writeFileSync(join(folder, "seen"), out);
  expect(await observations("import", "seen", "--store", place)).toMatchObject({
    status: 0,
    out: "3 observations taken in, 1 of them waiting for a keeper.\n",
    err: "",
  });
  expect((await observations("export", ...form, "--store", place)).out).toBe(out);
});

test("rows that cannot be read are named by their line, the others are taken in, and the status is 2", async () => {
  const folder = newFolder();
  const observations = observationsIn(folder);
  const rows = [
    "part,kind,built from,history",
    "rear spoiler,second,1980-06,one-owner",
    "sunroof,x,,one-owner",
  ];
  writeFileSync(join(folder, "rows.csv"), rows.join("\n"));
  expect(await observations("import", "rows.csv", "--store", "new.sqlite")).toMatchObject({
    status: 2,
    out: "1 observation taken in, 1 of them waiting for a keeper.\n",
    err: "rows.csv: These were not read:\n  row 3: “sunroof” is no part of the handbook\n",
  });
  expect(await observations("import", "none.csv", "--store", "new.sqlite")).toMatchObject({
    status: 2,
    err: "none.csv: cannot be read\n",
  });
  expect((await observations("empty")).err).toContain("export or import FILE is needed");
});
