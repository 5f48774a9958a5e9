import { expect, test } from "vitest";
import { evidenceChart, evidenceTable, fittedChart, fittedTable } from "../../../bot/index.ts";
import type { PartKind } from "../../../knowledge/index.ts";
import { partById } from "../../../knowledge/index.ts";
import { demoHandbook } from "../../support/demo-handbook.ts";

function part(id: string): PartKind {
  const found = partById(demoHandbook(), id);
  if (found === undefined) throw new Error(id);
  return found;
}

const rowOf = (chart: ReturnType<typeof fittedChart>, variant: string) =>
  chart?.rows.find((row) => row.variant === variant);

const block = {
  kind: "evidence" as const,
  first: "the first-type mirror",
  rival: "the trade copy",
  items: [
    { words: "groove: square-cut", bans: 1.3, strength: "strong", sources: "owners' survey 2019" },
    { words: "casting mark: none", bans: -0.3, strength: "weak", sources: "" },
  ],
};

test("what is drawn of the evidence is said too, each fact on its side with its strength", () => {
  const { title, description } = evidenceChart(block);
  expect(title).toBe("What speaks for the first-type mirror, what for the trade copy");
  expect(description).toBe(
    "Speaks for the first-type mirror rather than the trade copy: groove: square-cut (strong). " +
      "Speaks for the trade copy rather than the first-type mirror: casting mark: none (weak).",
  );
});

test("a side for which nothing speaks is not mentioned", () => {
  const { description } = evidenceChart({ ...block, items: block.items.slice(0, 1) });
  expect(description).not.toContain("Speaks for the trade copy");
});

test("the table of the evidence has a row a fact, with the side it speaks for and its source", () => {
  expect(evidenceTable(block).rows).toEqual([
    ["groove: square-cut", "the first-type mirror", "strong", "owners' survey 2019"],
    ["casting mark: none", "the trade copy", "weak", ""],
  ]);
});

test("kinds stand by the first car they were on; those the works never fitted are only named", () => {
  const chart = fittedChart(part("door-mirror"));
  expect(chart?.rows.map(({ variant }) => variant)).toEqual([
    "first-alloy",
    "first-alloy-nylon",
    "american-long-foot",
    "second-moulded",
    "touring-heated",
  ]);
  expect(chart?.description).toContain(
    "First-type mirror with nylon ball: about June 1978 to November 1981.",
  );
  expect(chart?.description).toMatch(/Never fitted by the works: .*Trade reproduction mirror/u);
});

test("an end the historian knows exactly has no length, another as much as the identification allows for it", () => {
  const [period] = rowOf(fittedChart(part("door-mirror")), "first-alloy")?.periods ?? [];
  // Handbook: from 1976-09, exact, to the end of 1978-07, about: two months either way.
  expect(period?.begins).toEqual({ from: 12 * 1976 + 8, to: 12 * 1976 + 8 });
  expect(period?.ends).toEqual({ from: 12 * 1978 + 5, to: 12 * 1978 + 9 });
});

test("periods of one kind that meet are one bar, a carry-over years later is another", () => {
  const spoilers = fittedChart(part("rear-spoiler"));
  expect(rowOf(spoilers, "first")?.periods).toHaveLength(2);
  expect(rowOf(spoilers, "second")?.periods).toHaveLength(1);
});

test("what members' cars say of a change takes the place of the handbook's ends", () => {
  const interval = { from: 12 * 1981 + 7, to: 12 * 1981 + 10 };
  const chart = fittedChart(part("door-mirror"), {
    changes: [{ old: "first-alloy-nylon", new: "second-moulded", interval }],
  });
  expect(rowOf(chart, "first-alloy-nylon")?.periods.at(-1)?.ends).toEqual(interval);
  expect(rowOf(chart, "second-moulded")?.periods[0]?.begins).toEqual(interval);
  expect(rowOf(chart, "second-moulded")?.periods[0]?.ends).not.toEqual(interval);
});

test("a car on the chart is in its description and its legend", () => {
  const car = { from: 12 * 1981 + 10, to: 12 * 1981 + 11 };
  const chart = fittedChart(part("door-mirror"), { car });
  expect(chart?.description).toContain("Your car was built November 1981.");
  expect(chart?.legend.map(({ sign }) => sign)).toEqual(["fitted", "unsure", "car"]);
});

test("a kind that was only ever seen on cars has a row of its own, and the legend its signs", () => {
  const seen = {
    built: { from: 12 * 1983, to: 12 * 1983 + 1 },
    grade: "one-owner" as const,
    isSuspect: true,
    words: "",
  };
  const chart = fittedChart(part("door-mirror"), { sightings: [{ ...seen, variant: "trade-copy" }] });
  expect(chart?.rows.at(-1)).toMatchObject({ variant: "trade-copy", periods: [], marks: [seen] });
  expect(chart?.description).toContain("Trade reproduction mirror: reproduction; seen on one car.");
  expect(chart?.legend.map(({ sign }) => sign)).toEqual(["fitted", "unsure", "one-owner", "suspect"]);
});

test("a part without dates has no chart and an empty table", () => {
  const undated = {
    ...part("door-mirror"),
    variants: part("door-mirror").variants.map((one) => ({ ...one, fitted: [] })),
  };
  expect(fittedChart(undated)).toBeUndefined();
  expect(fittedTable(demoHandbook(), undated).rows).toEqual([]);
});

test("the table says for which trims and markets, by their names", () => {
  const rows = fittedTable(demoHandbook(), part("door-mirror")).rows;
  expect(rows).toContainEqual([
    "American long-foot mirror",
    "about September 1978 to March 1985",
    "North American market",
  ]);
});
