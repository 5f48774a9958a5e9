// Lists of more than two variants: all their changes at once, as text, as data and drawn.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readCommaSeparated } from "../../../knowledge/index.ts";
import { elementsOf } from "../../support/well-formed.ts";
import { commandLine, newFolder, root, run, shrike } from "../program.ts";

const caps = join(root, "test/support/sightings-of-caps.csv");
const production = ["--from", "1976-09", "--to", "1985-06"] as const;
const ofCaps = ["--from", "1977-03", "--to", "1985-12"] as const;

function listOf(text: string): string {
  const file = join(newFolder(), "list.csv");
  writeFileSync(file, text);
  return file;
}

async function answered(list: string, ...words: readonly string[]): Promise<string> {
  const { status, out, err } = await run(commandLine, ["changeover", "--sightings", list, ...words]);
  expect({ status, err }).toEqual({ status: 0, err: "" });
  return out;
}

/** Three kinds that followed each other in March 1979 and in September 1981, a car every second month. */
function threeInARow(names: readonly [string, string, string]): string {
  const rows = Array.from({ length: 36 }, (_, at) => {
    const month = 12 * 1977 + 2 * at;
    const kind = month < 12 * 1979 + 2 ? names[0] : month < 12 * 1981 + 8 ? names[1] : names[2];
    return `${kind},${Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, "0")},one-owner`;
  });
  return listOf(`variant,built,grade\n${rows.join("\n")}\n`);
}

test("more than two variants are a chain: every change at once, in the order of their cars", async () => {
  const list = threeInARow(["plain", "bright", "black"]);
  const answer = JSON.parse(await answered(list, ...production, "--json"));
  expect(answer.kind).toBe("chain");
  expect(answer.variants.map(({ id }: { id: string }) => id)).toEqual(["plain", "bright", "black"]);
  expect(answer.changes).toHaveLength(2);
  for (const [at, truth] of ["1979-03-01", "1981-09-01"].entries()) {
    const { interval, median } = answer.changes[at];
    expect(interval.from < truth && truth < interval.to).toBe(true);
    expect(Math.abs(Date.parse(median) - Date.parse(truth))).toBeLessThan(120 * 86_400_000);
  }
  const text = await answered(list, ...production);
  expect(text.replaceAll(/\s+/gu, " ")).toContain("plain to bright about");
  for (const line of text.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
});

test("a handbook puts the chain in its own order, names it, and leaves out what the works never fitted", async () => {
  const fitted = threeInARow(["first-alloy", "first-alloy-nylon", "second-moulded"]);
  const list = listOf(`${readFileSync(fitted, "utf8")}trade-copy,1980-05,known-replaced\n`);
  const handbook = ["--handbook", shrike, "--part", "door-mirror"];
  const answer = JSON.parse(await answered(list, ...handbook, "--json"));
  expect(answer.variants.map(({ id }: { id: string }) => id)).toEqual([
    "first-alloy",
    "first-alloy-nylon",
    "second-moulded",
  ]);
  expect(answer.otherVariants).toEqual({ "trade-copy": 1 });
  expect(answer.assumptions.join("\n")).toMatch(
    /by the months of sale in the handbook: .*Second-type mirror \d+ %/u,
  );
});

// Forty invented caps: flat until spring 1979, four months longer on American cars; ribbed until January 1982; domed. Two are swapped.
// After a change of words: npx vitest run -u test/adapters/command-line/changeover-chain.test.ts, and read the file.
test("forty caps as a historian reads them, with the picture as a table", async () => {
  const picture = join(newFolder(), "caps.svg");
  const out = await answered(caps, ...ofCaps, "--picture", picture);
  await expect(out).toMatchFileSnapshot("changeover-of-caps.txt");
  const [prose = ""] = out.split("The picture as a table");
  for (const line of prose.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
  const svg = readFileSync(picture, "utf8");
  const named = (name: string) => elementsOf(svg).filter(({ attributes }) => attributes.class === name);
  expect(named("sighting")).toHaveLength(40);
  expect(named("name")).toHaveLength(3);
  expect(svg.match(/<g class="sighting"><title>[^<]*<\/title><circle class="ink open"/gu)).toHaveLength(2);
  expect(svg).toMatch(
    /<desc>The changes, all at once; flat to ribbed, 90 %: [^<]*; looks swapped: car-10, car-32<\/desc>/u,
  );
});

test("as one object every change has its month, ends, wanted cars and groups, and every car its verdict", async () => {
  const answer = JSON.parse(await answered(caps, ...ofCaps, "--json"));
  expect(answer.sightings).toHaveLength(40);
  const suspects = answer.sightings.filter(({ suspect }: { suspect: boolean }) => suspect);
  expect(suspects.map(({ id }: { id: string }) => id)).toEqual(["car-10", "car-32"]);
  for (const { notAsBuilt } of suspects) expect(notAsBuilt).toBeGreaterThan(0.9);
  const [first, second] = answer.changes;
  expect(first.lastOld.id).toBe("car-32");
  expect(first.lastOldUnsuspected.id).toBe("car-09");
  expect(second.firstNewUnsuspected.id).toBe("car-24");
  for (const { carsWanted, interval } of answer.changes) {
    expect(carsWanted).toHaveLength(3);
    for (const { month } of carsWanted) {
      expect(month >= interval.from.slice(0, 7) && month <= interval.to.slice(0, 7)).toBe(true);
    }
  }
  const by = new Set(first.groups.map((group: { by: string }) => group.by));
  expect([...by]).toEqual(["market", "trim", "trim-and-market"]);
});

test("as rows for a spreadsheet the same, each row by what it tells", async () => {
  const { rows, faults } = readCommaSeparated(await answered(caps, ...ofCaps, "--csv"));
  expect(faults).toEqual([]);
  const [head, ...body] = rows.map(({ cells }) => cells.map(({ text }) => text));
  expect(head?.slice(0, 5)).toEqual(["row", "old", "new", "variant", "name"]);
  const count = (row: string) => body.filter(([first]) => first === row).length;
  expect(["change", "month", "wanted", "sighting", "market", "trim"].map(count)).toEqual([2, 2, 6, 40, 4, 4]);
  const suspects = body.filter((cells) => cells.at(-1) === "yes").map((cells) => cells[4]);
  expect(suspects).toEqual(["car-10", "car-32"]);
  for (const cells of body) expect(cells).toHaveLength(head?.length ?? 0);
});

test("one change, and one variant alone, have their rows too; both forms at once are refused", async () => {
  const change = await answered(caps, ...ofCaps, "--csv", "--old", "flat", "--new", "ribbed");
  expect(change).toMatch(/^change,flat,ribbed,,,1978-12-\d\d,1979-08-\d\d,/mu);
  expect(change).toMatch(/^trim-and-market,flat,ribbed,,standard home,/mu);
  const alone = listOf(
    "variant,built,grade\nflat,1978-01,one-owner\nflat,1978-05,one-owner\nflat,1979-02,one-owner\n",
  );
  const use = await answered(alone, ...ofCaps, "--csv");
  expect(use).toMatch(/^end,flat,,,Strauss & Sadler 1989,,\d{4}-\d\d-\d\d,/mu);
  expect(use).toMatch(/^beginning,flat,,,Strauss & Sadler 1989,\d{4}-\d\d-\d\d,,/mu);
  const both = await run(commandLine, ["changeover", "--sightings", caps, ...ofCaps, "--csv", "--json"]);
  expect(both.status).toBe(2);
  expect(both.err).toContain("--json and --csv: one of the two");
});

test("a picture that is asked for as PNG is one", async () => {
  const picture = join(newFolder(), "caps.png");
  await answered(caps, ...ofCaps, "--json", "--picture", picture);
  expect([...readFileSync(picture).subarray(1, 4)]).toEqual([0x50, 0x4e, 0x47]);
});
