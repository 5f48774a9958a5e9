// What could be had as a replacement, as a handbook's sale periods say it.
import { expect, test } from "vitest";
import { replacementsSold } from "../../../knowledge/dating/replacements-sold.ts";
import { partById } from "../../../knowledge/handbook/look-up.ts";
import { demoHandbook } from "../../support/demo-handbook.ts";

const mirror = partById(demoHandbook(), "door-mirror");
if (mirror === undefined) throw new Error("the handbook has door mirrors");

/** The same mirrors with other sales, in months of 1990, of the variants named. */
function soldAs(sales: Readonly<Record<string, readonly [string, string]>>) {
  const variants = (mirror?.variants ?? []).map((one) => {
    const [from, to] = sales[one.id] ?? [];
    return { ...one, sold: from === undefined || to === undefined ? [] : [{ from, to, sources: [] }] };
  });
  return mirror === undefined ? undefined : { ...mirror, variants };
}

function weights(sales: Parameters<typeof soldAs>[0], variants: readonly string[]) {
  const part = soldAs(sales);
  return part && replacementsSold(part, variants);
}

const pair = ["first-alloy-nylon", "second-moulded"] as const;

test("a handbook that names no sale says nothing of replacements", () => {
  expect(weights({}, pair)).toBeUndefined();
});

test("a variant counts its own months over the counter, and each a year of used ones", () => {
  expect(weights({ "second-moulded": ["1990-01", "1990-06"] }, pair)).toEqual([12, 18]);
});

test("a service part counts for the variant that it resembles", () => {
  expect(weights({ "counter-mirror": ["1990-01", "1990-12"] }, pair)).toEqual([12, 24]);
});

test("a reproduction that resembles two counts half for each", () => {
  const all = ["first-alloy", ...pair];
  expect(weights({ "trade-copy": ["1990-01", "1990-12"] }, all)).toEqual([18, 18, 12]);
});

test("another maker's part replaces no variant", () => {
  expect(weights({ "corvane-bullet": ["1990-01", "1990-12"] }, pair)).toBeUndefined();
});
