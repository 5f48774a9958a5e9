import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { reportAsPage } from "../../../adapters/command-line/report/as-page.ts";
import { reportAsText } from "../../../adapters/command-line/report/as-text.ts";
import { partReport } from "../../../adapters/command-line/report/part-report.ts";
import { coverageByYear, type Handbook, loadHandbook } from "../../../knowledge/index.ts";
import { carefulFiles, carefulHandbook } from "../../support/careful-handbook.ts";
import { commandLine, newFolder, root, run } from "../program.ts";

function handbookWith(...changes: readonly (readonly [string, string])[]): Handbook {
  const before = carefulHandbook["parts/door-handle.yaml"] ?? "";
  const text = changes.reduce((rest, [from, to]) => rest.replace(from, () => to), before);
  const loaded = loadHandbook(carefulFiles({ "parts/door-handle.yaml": text }));
  if (!loaded.ok) throw new Error(loaded.problems.map(({ message }) => message).join());
  return loaded.handbook;
}

function reportOn(handbook: Handbook) {
  const [part] = handbook.parts;
  if (part === undefined) throw new Error("no part");
  return partReport(handbook, part, 400, 7);
}

const careful = handbookWith();
/** Nothing but the years tells the two flat handles apart. */
const alike = handbookWith([
  "button: { brass: nearly always }\n      length: { mean: 132",
  "button: { steel: nearly always }\n      length: { mean: 140",
]);

test("two variants that are described alike are taken for each other most, and telling them apart would help most", () => {
  const report = reportOn(alike);
  expect(report.confusions[0]?.pair.map((one) => one?.id)).toEqual(["flat-early", "flat-late"]);
  expect(report.fact).toMatchObject({ pair: [{ id: "flat-early" }, { id: "flat-late" }] });
  expect(report.fact?.gain).toBeCloseTo(report.confusions[0]?.share ?? 0, 12);
  const before = reportOn(careful);
  expect(before.scores.topOneAccuracy).toBeGreaterThan(report.scores.topOneAccuracy);
  expect(
    before.confusions.some(({ pair: [one, two] }) => one.id === "flat-early" && two?.id === "flat-late"),
  ).toBe(false);
});

test("confusions, shares and errors agree: what is not confused is right", () => {
  const { confusions, scores, outside } = reportOn(careful);
  const wrong = confusions.reduce((sum, { share }) => sum + share, 0);
  expect(1 - scores.topOneAccuracy).toBeGreaterThanOrEqual(wrong - 1e-9);
  expect(outside).toBeLessThanOrEqual(1 - scores.topOneAccuracy + 1e-9);
});

test("a word is asked to become a count where it is leant on, and a count is not", () => {
  const { observation } = reportOn(careful);
  expect(observation).toBeDefined();
  const isCounted = observation?.feature === "Push button" && observation.variant === "Early flat handle";
  expect(isCounted).toBe(false);
});

test("coverage by year counts kinds of car and months, and names the hole", () => {
  const gap = handbookWith(["to: 1972-12", "to: 1972-06"]);
  const part = gap.parts[0];
  if (part === undefined) throw new Error("no part");
  const years = coverageByYear(gap, part);
  expect(years.map(({ year }) => year)).toEqual([1970, 1971, 1972, 1973, 1974, 1975, 1976, 1977, 1978, 1979]);
  expect(years[2]).toMatchObject({ made: 60, variants: 1 });
  expect(years[2]?.covered).toBeCloseTo(0.5, 12);
  expect(years[3]?.covered).toBe(1);
  const text = reportAsText(reportOn(gap)).join("\n");
  expect(text).toContain("A sighting or a paper for 1972.");
  expect(text).toMatch(/1970 to 1971 {2}━{20} 100 %, 1 version/u);
});

test("the same seed gives the same page, which loads nothing and runs nothing", () => {
  const page = reportAsPage(alike, [reportOn(alike)]);
  expect(reportAsPage(alike, [reportOn(alike)])).toBe(page);
  expect(page).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)|onload|javascript:/iu);
  expect(page).toContain("Early flat handle and Late flat handle");
});

test("names that look like markup stay text on the page", () => {
  const odd = handbookWith(["name: Trade copy", 'name: "<img src=x onerror=alert(1)>"']);
  expect(reportAsPage(odd, [reportOn(odd)])).not.toContain("<img src=x");
});

test("the command writes text and page, with the handbook's drawings in it", async () => {
  const folder = newFolder();
  const handbook = join(root, "knowledge/handbooks/ollerton-finch");
  const words = [
    "report",
    "--handbook",
    handbook,
    "--part",
    "face-plate",
    "--n",
    "200",
    "--page",
    "finch.html",
  ];
  const { status, out, err } = await run(commandLine, words, "", { folder });
  expect({ status, err }).toEqual({ status: 0, err: "" });
  for (const heading of [
    "What asking costs",
    "Taken for each other",
    "What would help most",
    "Years covered",
  ]) {
    expect(out).toContain(heading);
  }
  const page = readFileSync(join(folder, "finch.html"), "utf8");
  expect(page).toContain('<img src="data:image/svg+xml;base64,');
  expect((await run(commandLine, ["report", "--page", "x.txt"], "", { folder })).err).toContain(
    "ends in .html",
  );
  expect(
    (await run(commandLine, ["report", "--part", "face-plait", "--handbook", handbook], "", { folder })).err,
  ).toContain("did you mean face-plate");
});
