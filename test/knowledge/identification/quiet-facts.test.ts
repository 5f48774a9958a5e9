// Facts that hardly move the ranking, by themselves or beside another.

import { expect, test } from "vitest";
import type { Report } from "../../../knowledge/evidence/report.ts";
import { beliefOf } from "../../../knowledge/identification/belief.ts";
import { quietFacts } from "../../../knowledge/identification/quiet-facts.ts";
import { overVariantsOf } from "../../../knowledge/identification/ranking.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";
import { smallHandbook, stateFeature, variant } from "../../support/small-handbook.ts";
import { compiledFrom } from "../../support/worked-examples.ts";

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

test("of many signs, quiet are those that move the ranking by less than a twentieth; each beside the one without which it speaks loudest, and of a pair that quiet each other the lesser", () => {
  const signs = ["lip", "rib", "boss", "paint", "slot", "hole"];
  const words = ["always", "nearly always", "usually", "often", "sometimes"];
  const handbook = smallHandbook({
    features: signs.map((sign) => stateFeature(sign, ["sharp", "soft"], { misread: 0.05 })),
    variants: ["early", "middle", "late"].map((id, index) =>
      variant(id, {
        origin: "production",
        fitted: [{ from: "1977-01", to: "1981-12" }],
        tells: {
          ...Object.fromEntries(
            signs.map((sign, at) => [
              sign,
              { [(at + index) % 3 === 0 ? "sharp" : "soft"]: words[(2 * at + index) % words.length] ?? "" },
            ]),
          ),
          // Two that say the same: only the late one is cut, and it has the hole.
          slot: { [index === 2 ? "sharp" : "soft"]: "always" },
          hole: { [index === 2 ? "sharp" : "soft"]: "nearly always" },
        },
      }),
    ),
    rest: {
      groups: [{ id: "mould", coupling: "close", features: ["lip", "rib", "boss"], reason: "one mould" }],
    },
  });
  const compiled = compiledFrom(handbook);
  const shiftBy = (reports: readonly Report[], feature: string): number => {
    const sums = (of: readonly Report[]) =>
      overVariantsOf(compiled.space, compiled.part, beliefOf(compiled, {}, of).probabilities);
    const [told, untold] = [sums(reports), sums(reports.filter((one) => one.feature !== feature))];
    return told.reduce((sum, chance, index) => sum + Math.abs(chance - (untold[index] ?? 0)), 0) / 2;
  };
  const seen = { quiet: 0, beside: 0, left: 0 };
  for (let code = 0; code < 64; code += 1) {
    const reports = signs.map((sign, at) => sees(sign, (code >> at) % 2 === 0 ? "sharp" : "soft"));
    const quiet = signs
      .filter((feature) => shiftBy(reports, feature) < 0.05)
      .map((feature) => {
        const others = signs
          .filter((other) => other !== feature)
          .map((other) => ({
            other,
            shift: shiftBy(
              reports.filter((one) => one.feature !== other),
              feature,
            ),
          }));
        const most = others.reduce((best, one) => (one.shift > best.shift ? one : best));
        return { feature, shift: shiftBy(reports, feature), beside: most.shift > 0.05 ? most.other : null };
      });
    const expected = quiet.filter(
      ({ feature, shift, beside }) =>
        !quiet.some((one) => one.feature === beside && one.beside === feature && one.shift < shift),
    );
    const found = quietFacts(compiled, { car: {}, reports }, signs);
    expect(found).toEqual(expected.map(({ feature, beside }) => ({ feature, beside })));
    seen.quiet += found.length;
    seen.beside += found.filter(({ beside }) => beside !== null).length;
    seen.left += quiet.length - expected.length;
  }
  expect(seen.quiet).toBeGreaterThan(10);
  expect(seen.beside).toBeGreaterThan(3);
  expect(seen.left).toBeGreaterThan(0);
});
