import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { elementsOf } from "../../support/well-formed.ts";
import { commandLine, type Ended, newFolder, root, run, shrike } from "../program.ts";

const mirrors = join(root, "test/support/sightings-of-mirrors.csv");
const production = ["--from", "1976-09", "--to", "1985-06"] as const;

function changeover(list: string, ...words: readonly string[]): Promise<Ended> {
  return run(commandLine, ["changeover", "--sightings", list, ...words]);
}

/** A list in a file of its own. */
function listOf(text: string | Uint8Array): string {
  const file = join(newFolder(), "list.csv");
  writeFileSync(file, text);
  return file;
}

async function answered(list: string, ...words: readonly string[]): Promise<string> {
  const { status, out, err } = await changeover(list, ...words);
  expect({ status, err }).toEqual({ status: 0, err: "" });
  return out;
}

// After a change of words: npx vitest run -u test/adapters/command-line/changeover.test.ts, and read the file.
test("the mirrors' change as a historian reads it, with the picture as a table", async () => {
  const picture = join(newFolder(), "mirrors.svg");
  const out = await answered(mirrors, ...production, "--picture", picture);
  await expect(out).toMatchFileSnapshot("changeover-of-mirrors.txt");
  const [prose = ""] = out.split("The picture as a table");
  for (const line of prose.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
});

test("the picture is well-formed, marks every sighting, rings the suspects and hatches the interval", async () => {
  const picture = join(newFolder(), "mirrors.svg");
  await answered(mirrors, ...production, "--picture", picture);
  const svg = readFileSync(picture, "utf8");
  const marks = elementsOf(svg).filter(({ attributes }) => attributes.class === "sighting");
  expect(marks).toHaveLength(34);
  expect(svg.match(/<g class="sighting"><title>[^<]*<\/title><circle class="ink open"/gu)).toHaveLength(2);
  expect(svg).toMatch(/<title>M29, first-alloy-nylon, built March 1983, history not known,/u);
  expect(svg).toMatch(
    /<desc>The change; most likely October 1981; 90 %: [^<]*; looks swapped: M04, M29<\/desc>/u,
  );
});

test("the same list gives the same picture and the same object to the byte", async () => {
  const [first, second] = [join(newFolder(), "a.svg"), join(newFolder(), "b.svg")];
  const once = await answered(mirrors, ...production, "--json", "--picture", first);
  const again = await answered(mirrors, ...production, "--json", "--picture", second);
  expect(again).toBe(once);
  expect(readFileSync(second)).toEqual(readFileSync(first));
});

test("--json gives one object: dates in ISO 8601, chances as numbers, every sighting judged", async () => {
  const out = await answered(mirrors, ...production, "--json");
  expect(out.trimEnd()).not.toContain("\n");
  const answer = JSON.parse(out);
  expect(answer).toMatchObject({
    kind: "change",
    part: null,
    old: [{ id: "first-alloy-nylon", name: "first-alloy-nylon" }],
    new: [{ id: "second-moulded", name: "second-moulded" }],
    production: { from: "1976-09-01", to: "1985-06-30" },
    mostLikelyMonth: { month: "1981-10" },
    howItChanged: "cannot-tell",
    shapes: [{ shape: "change" }, {}, {}, {}, {}],
    runnerUp: null,
    lastOld: { id: "M29" },
    lastOldUnsuspected: { id: "M19" },
    firstNew: { id: "M04" },
    firstNewUnsuspected: { id: "M18" },
    groups: [
      { by: "market", name: "continent", sightings: 10 },
      { by: "market", name: "home", sightings: 24 },
    ],
    outsideProduction: [],
    otherVariants: {},
  });
  expect(answer.interval.from < "1981-10-06" && "1981-10-06" < answer.interval.to).toBe(true);
  expect(answer.interval.chance).toBeGreaterThanOrEqual(0.9);
  expect(answer.carsWanted).toHaveLength(3);
  expect(answer.sightings).toHaveLength(34);
  const suspects = answer.sightings.filter(({ suspect }: { suspect: boolean }) => suspect);
  expect(suspects.map(({ id }: { id: string }) => id)).toEqual(["M04", "M29"]);
});

test("a handbook gives the production, the stated periods and the names", async () => {
  const handbook = ["--handbook", shrike, "--part", "door-mirror"];
  const answer = JSON.parse(await answered(mirrors, ...handbook, "--json"));
  expect(answer.part).toBe("door-mirror");
  expect(answer.new).toEqual([{ id: "second-moulded", name: "Second-type mirror" }]);
  expect(answer.production).toEqual({ from: "1976-09-01", to: "1985-06-30" });
  expect(answer.assumptions.join("\n")).toMatch(/handbook's periods are a hint/u);
  const plain = JSON.parse(await answered(mirrors, ...production, "--json"));
  expect(answer.interval).not.toEqual(plain.interval);
});

test("one variant alone gets no interval but how long it was in use at least, with what each method takes for granted", async () => {
  const old = readFileSync(mirrors, "utf8")
    .split("\n")
    .filter((line) => !line.includes("second-moulded"));
  const list = listOf(old.join("\n"));
  const out = await answered(list, ...production, "--old", "first-alloy-nylon");
  expect(out).not.toContain("90 % interval");
  expect(out).not.toContain("In use at least from");
  expect(out).toContain("In use at least until October 1981");
  expect(out.replaceAll(/\s+/gu, " ")).toMatch(
    /Solow 1993: about [A-Z][a-z]+ \d{4}, by [A-Z][a-z]+ \d{4} \(19 in 20\), if use was constant to its end/u,
  );
  const answer = JSON.parse(await answered(list, ...production, "--json"));
  expect(answer).toMatchObject({ kind: "one-variant", endOfUse: { atLeast: "1981-10-01" } });
  expect(answer.beginningOfUse.atLeast).toBe("1979-01-31");
  expect(answer).not.toHaveProperty("interval");
});

test("another history than one change is said before anybody relies on the month", async () => {
  const rows = Array.from(
    { length: 40 },
    (_, index) =>
      `${index % 2 === 0 ? "round" : "square"},${1978 + (index % 5)}-0${1 + (index % 9)},one-owner`,
  );
  const out = await answered(listOf(["variant,built,grade", ...rows].join("\n")), ...production);
  expect(out).toContain("both fitted side by side throughout");
  expect(out.replaceAll(/\s+/gu, " ")).toContain("hold only if there was one change");
});

test("below .9 the runner-up stands beside the shape of the change, and in the object", async () => {
  const list = listOf("variant,built\nround,1979-03\nsquare,1982-07\n");
  const { shapes, runnerUp } = JSON.parse(await answered(list, ...production, "--json"));
  expect(shapes[0].chance).toBeLessThan(0.9);
  expect(runnerUp).toBe(shapes[1].shape);
  const out = await answered(list, ...production);
  expect(out.replaceAll(/\s+/gu, " ")).toMatch(
    /Shape of the change one change, within a year: [^;]*; else [^.]*%\)/u,
  );
});

test("cells like formulas, quotes, tags and terminal codes come out as the text they are", async () => {
  const cells = ['"=HYPERLINK(""x"")"', '"<script>&</svg>"', '"\u001b[31mred\nline"', "@SUM(1)", "__proto__"];
  const rows = cells.flatMap((cell, index) => [`${cell},old,198${index},one-owner,${cell}`]);
  const text = ["id,variant,built,grade,trim", ...rows, "n,=new,1983,one-owner,x"].join("\r\n");
  const picture = join(newFolder(), "hostile.svg");
  const out = await answered(listOf(text), "--from", "1976", "--to", "1985", "--picture", picture);
  expect(out).toContain('=HYPERLINK("x")');
  expect(out).toMatch(/^ {2}red line /mu);
  expect(out).not.toMatch(/[^\P{Cc}\n]/u);
  const svg = readFileSync(picture, "utf8");
  const elements = elementsOf(svg);
  expect(elements.filter(({ attributes }) => attributes.class === "sighting")).toHaveLength(6);
  expect(elements.map(({ name }) => name)).not.toContain("script");
});

const long = "a".repeat(1_000_000);
const refusals: readonly [string, string | Uint8Array, readonly RegExp[]][] = [
  ["a date that is none", "variant,built\nold,1980-13\n", [/: row 2, column 2: a build date is written/u]],
  [
    "two faults",
    "variant,built,grade\nold,1980,mint\n,1981,one-owner\n",
    [/: row 2, column 3: a grade is one of/u, /: row 3, column 1: a sighting names the variant/u],
  ],
  ["an unknown column", "variant,built,colour\n", [/: row 1, column 3: there is no column "colour"/u]],
  ["a missing column", "variant\nold\n", [/: row 1: the column built is missing/u]],
  ["an open quote", 'variant,built\n"old,1980\n', [/: row 2, column 1: the quote .* never closed/u]],
  [
    "an id given twice",
    "id,variant,built\n=A1,old,1980\n=A1,old,1980\n",
    [/: row 3, column 1: the id "=A1"/u],
  ],
  [
    "a line of a megabyte",
    `variant,built\n${long},1980\n`,
    [/: row 2, column 1: no more than 120 characters/u],
  ],
  [
    "half a million cells",
    `variant,built\n${"a,".repeat(500_000)}\n`,
    [/: row 2, column 3: this row has 500001/u],
  ],
  ["no text", Uint8Array.of(0xff, 0xfe, 0x41), [/: is not text in UTF-8/u]],
  ["no rows", "variant,built\n", [/: has no sightings/u]],
  ["nothing", "", [/: row 1: the text is empty/u]],
  [
    "a production without a sighting",
    "variant,built\nold,1960\n",
    [/^no sighting was built within production/u],
  ],
];

test.each(refusals)("%s is refused with status 2, a line for each reason", async (_, text, reasons) => {
  const { status, out, err } = await changeover(listOf(text), ...production);
  expect({ status, out }).toEqual({ status: 2, out: "" });
  const lines = err.trimEnd().split("\n");
  expect(lines).toHaveLength(reasons.length);
  for (const [index, reason] of reasons.entries()) expect(lines[index]).toMatch(reason);
  expect(err.length).toBeLessThan(1000);
});

test("of very many faults the first twenty are shown, and how many are left", async () => {
  const { err } = await changeover(listOf(`variant,built\n${"old,soon\n".repeat(60)}`), ...production);
  const lines = err.trimEnd().split("\n");
  expect(lines).toHaveLength(21);
  expect(lines.at(-1)).toMatch(/: and 40 more/u);
});

const slips: readonly [readonly string[], string][] = [
  [[], "--from and --to are needed, or --handbook:"],
  [["--from", "1976"], "--from and --to: both are needed"],
  [["--from", "1985", "--to", "1976"], "--to: lies before --from"],
  [["--from", "1800-01", "--to", "1976"], "--from: a date is needed"],
  [["--from", "1850", "--to", "2000"], "--from and --to: no more than a century"],
  [["--part", "door-mirror", ...production], "--part: --handbook is needed with it"],
  [
    ["--picture", "sightings.csv", ...production],
    "--picture: a file name that ends in .svg or .png is needed",
  ],
  [
    ["--old", "second-moulded", "--new", "second-moulded", ...production],
    '--old and --new: "second-moulded" cannot be both',
  ],
  [
    ["--old", "frist-alloy-nylon", "--new", "second-moulded", ...production],
    '--old "frist-alloy-nylon": not known; did you mean first-alloy-nylon',
  ],
  [
    ["--handbook", shrike, "--part", "door-miror"],
    '--part "door-miror": not known; did you mean door-mirror',
  ],
  [["--picture", "no-such-folder/x.svg", ...production], "--picture no-such-folder/x.svg: cannot be written"],
];

test.each(slips)("%j is refused with status 2 and the reason first", async (words, reason) => {
  const { status, out, err } = await changeover(mirrors, ...words);
  expect({ status, out }).toEqual({ status: 2, out: "" });
  expect(err.split("\n")[0]).toContain(reason);
});

test("a list that is not there, or is a folder, is refused", async () => {
  expect((await changeover("no-list.csv", ...production)).err).toBe("no-list.csv: does not exist\n");
  expect((await changeover(newFolder(), ...production)).err).toMatch(/: is no ordinary file[^\n]*\n$/u);
});

test("replacements of the two kinds are taken from what the handbook says was sold", async () => {
  const handbook = ["--handbook", shrike, "--part", "door-mirror"];
  const answer = JSON.parse(await answered(mirrors, ...handbook, "--json"));
  expect(answer.assumptions.at(-1)).toMatch(
    /months of sale in the handbook: First-type mirror with nylon ball \d+ %/u,
  );
  const plain = JSON.parse(await answered(mirrors, ...production, "--json"));
  expect(plain.assumptions.at(-1)).toContain("equally easy to have");
});

test("of two kinds whose cars are equally old nothing tells which gave way, unless the handbook does", async () => {
  const list = listOf("variant,built\nsecond-moulded,1981-10\nfirst-alloy-nylon,1981-10\n");
  const { status, out, err } = await changeover(list, ...production);
  expect({ status, out }).toEqual({ status: 2, out: "" });
  expect(err).toContain("--old and --new are needed: the cars of both are equally old on average");
  const told = await answered(list, "--handbook", shrike, "--part", "door-mirror");
  expect(told).toMatch(/old {2}.*First-type mirror with nylon ball/u);
  expect(told.replaceAll(/\s+/gu, " ")).toContain("the handbook has them begin so");
  const asked = await answered(list, ...production, "--old", "second-moulded", "--new", "first-alloy-nylon");
  expect(asked).toMatch(/old {2}.*second-moulded/iu);
});
