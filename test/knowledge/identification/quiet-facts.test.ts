// Facts that hardly move the ranking, by themselves or beside another.

import { expect, test } from "vitest";
import { quietFacts } from "../../../knowledge/index.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";

const mirror = demoKnowledge().compiled("door-mirror");
const sees = (feature: string, state: string) =>
  ({ feature, by: "owner", certainty: 1, words: state, value: { kind: "state", state } }) as const;
const screws = sees("screws", "three");
const plastic = sees("housing", "moulded-plastic");
const quiet = (reports: readonly ReturnType<typeof sees>[]) =>
  mirror === undefined
    ? []
    : quietFacts(
        mirror,
        { car: {}, reports },
        reports.map(({ feature }) => feature),
      );

test("either of two signs of one change speaks by itself", () => {
  expect(quiet([screws])).toEqual([]);
  expect(quiet([plastic])).toEqual([]);
});

test("of the two together one is quiet, beside the other", () => {
  const [only, ...others] = quiet([screws, plastic]);
  expect(others).toEqual([]);
  expect(only?.beside).toBe(only?.feature === screws.feature ? plastic.feature : screws.feature);
});

test("what was never told is not called quiet", () => {
  expect(mirror && quietFacts(mirror, { car: {}, reports: [screws] }, ["housing", "no-such"])).toEqual([]);
});
