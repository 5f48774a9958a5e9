import { expect, test } from "vitest";
import { type FittedPeriods, fittedPeriods } from "../../../adapters/pictures/fitted-periods.ts";
import { pngOf } from "../../../adapters/pictures/png.ts";
import { fittedChart } from "../../../bot/index.ts";
import { provenanceGrades } from "../../../knowledge/index.ts";
import { demoHandbook } from "../../support/demo-handbook.ts";
import { collisions, textBoxes } from "../../support/drawn-boxes.ts";
import { greyPixelsOf, inkOf } from "../../support/pixels.ts";
import { elementsOf } from "../../support/well-formed.ts";

const YEAR_1980 = 12 * 1980;
const instant = (month: number) => ({ from: YEAR_1980 + month, to: YEAR_1980 + month });
const around = (month: number, months: number) => ({
  from: YEAR_1980 + month - months,
  to: YEAR_1980 + month + months,
});

function row(name: string, begins = instant(0), ends = instant(30)): FittedPeriods["rows"][number] {
  return { name, times: "January 1980 to June 1982", periods: [{ begins, ends }] };
}

function drawn(rows: FittedPeriods["rows"], changes: Partial<FittedPeriods> = {}): string {
  return fittedPeriods({
    title: "When the works fitted each mirror",
    description: "described",
    rows,
    legend: [{ sign: "fitted", words: "fitted" }],
    ...changes,
  });
}

const bars = (svg: string) =>
  elementsOf(svg).filter(({ name, attributes }) => name === "rect" && attributes.height === "10");

test("each part kind of the demonstration handbook is drawn well-formed, its words within and not upon each other", () => {
  const charts = demoHandbook().parts.flatMap((part) => fittedChart(part, { car: around(22, 0.5) }) ?? []);
  expect(charts.length).toBe(6);
  for (const chart of charts) {
    const svg = fittedPeriods(chart);
    const [root, title, description] = elementsOf(svg);
    expect(root?.attributes).toMatchObject({ role: "img", viewBox: expect.stringMatching(/^0 0 320 /u) });
    expect([title?.name, description?.name]).toEqual(["title", "desc"]);
    const boxes = textBoxes(svg);
    expect(collisions(boxes)).toEqual([]);
    for (const { words, left, right } of boxes) {
      expect(left, words).toBeGreaterThanOrEqual(0);
      expect(right, words).toBeLessThanOrEqual(320);
    }
  }
});

test("a bar is as long as its time", () => {
  const [half, whole] = bars(
    drawn([row("half", instant(0), instant(12)), row("whole", instant(0), instant(24))]),
  );
  expect(half?.attributes).toMatchObject({ x: "10", width: "150" });
  expect(whole?.attributes).toMatchObject({ x: "10", width: "300" });
});

test("an end that is not sure is hatched and leaves the rest of the bar solid", () => {
  const svg = drawn([row("mirror", instant(0), around(24, 3)), row("other", instant(0), instant(36))]);
  const [sure] = bars(svg);
  // 21 of 36 months, 300 units.
  expect(Number(sure?.attributes.width)).toBeCloseTo((300 * 21) / 36, 1);
  const hatched = elementsOf(svg).filter(({ attributes }) => attributes.class === "ink doubt");
  expect(hatched.map(({ attributes }) => attributes.d?.slice(0, 5))).toEqual(["M185 "]);
});

test("a time of which neither end is sure is hatched throughout", () => {
  const svg = drawn([row("mirror", around(10, 4), around(12, 4)), row("other")]);
  expect(bars(svg)).toHaveLength(2);
  expect(elementsOf(svg).filter(({ attributes }) => attributes.class === "ink doubt")).toHaveLength(1);
});

test("in black and white a hatched time, a sure one and none are told apart", async () => {
  const inkWith = async (periods: FittedPeriods["rows"][number]["periods"]) =>
    inkOf(
      await greyPixelsOf(await pngOf(drawn([{ ...row("mirror"), periods }, row("other")], { legend: [] }))),
    );
  const [none, hatched, sure] = await Promise.all([
    inkWith([]),
    inkWith([{ begins: around(12, 12), ends: instant(24) }]),
    inkWith([{ begins: instant(0), ends: instant(24) }]),
  ]);
  expect((hatched - none) / (sure - none)).toBeGreaterThan(0.1);
  expect((hatched - none) / (sure - none)).toBeLessThan(0.7);
});

test("what was seen on cars stands below the bar of its kind, each sighting once, and makes room for itself", () => {
  const marks = provenanceGrades.map((grade) => ({
    built: around(12, 0.5),
    grade,
    isSuspect: grade === "known-replaced",
    words: `seen <${grade}>`,
  }));
  const [plain, seen] = [drawn([row("mirror")]), drawn([{ ...row("mirror"), marks }])];
  expect(elementsOf(seen).filter(({ attributes }) => attributes.class === "sighting")).toHaveLength(4);
  const height = (svg: string) => Number(elementsOf(svg)[0]?.attributes.viewBox?.split(" ")[3]);
  expect(height(seen)).toBeGreaterThan(height(plain) + 3 * 14);
});

test("an entry of the legend that has no room goes to the next line", () => {
  const words = ["fitted", "end not sure", "documented from new", "history not known", "one owner"];
  const svg = drawn([row("mirror")], { legend: words.map((each) => ({ sign: "unsure", words: each })) });
  const boxes = textBoxes(svg).filter((box) => words.includes(box.words));
  expect(boxes).toHaveLength(words.length);
  expect(Math.max(...boxes.map(({ right }) => right))).toBeLessThanOrEqual(310);
  expect(new Set(boxes.map(({ top }) => top)).size).toBeGreaterThan(1);
});
