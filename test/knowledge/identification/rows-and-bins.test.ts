// What a handbook's words, sizes and learnt changes become: shares of states, stretches of sizes, mixes of two variants.
import { describe, expect, test } from "vitest";
import { monthStart } from "../../../knowledge/calendar/interval.ts";
import { sizeBins, valueOfBin } from "../../../knowledge/identification/answer-bins.ts";
import type { AnswerRows } from "../../../knowledge/identification/answer-rows.ts";
import { beliefOf } from "../../../knowledge/identification/belief.ts";
import { brokenLinks } from "../../../knowledge/identification/broken-links.ts";
import { factsOf } from "../../../knowledge/identification/facts.ts";
import { hypothesisSpace } from "../../../knowledge/identification/hypothesis-space.ts";
import {
  applyChanges,
  type ChangeOfMix,
  changesFor,
  changesOf,
} from "../../../knowledge/identification/learnt-change.ts";
import { mistakeChannel } from "../../../knowledge/identification/mistake-channel.ts";
import { neverTogether } from "../../../knowledge/identification/never-together.ts";
import {
  markSpans,
  saleLeft,
  saleSpans,
  serviceMonths,
} from "../../../knowledge/identification/sale-spans.ts";
import { reportsByState } from "../../../knowledge/identification/state-reports.ts";
import { toldApartBy } from "../../../knowledge/identification/told-apart.ts";
import {
  dateFeature,
  measurementFeature,
  smallHandbook,
  stateFeature,
  variant,
} from "../../support/small-handbook.ts";
import { compiledExample, compiledFrom, reads, report, sees } from "../../support/worked-examples.ts";

const always = { origin: "production" as const, fitted: [{ from: "1977-01", to: "1981-12" }] };

describe("what may be true of a part", () => {
  const { parts } = smallHandbook({
    features: [stateFeature("edge", ["square", "round"])],
    variants: [
      variant("made", { ...always, sold: [{ from: "1979", to: "1980" }] }),
      variant("unsold", always),
      variant("counter", { origin: "service" }),
      variant("copy", { origin: "reproduction" }),
      variant("strange", { origin: "other-maker" }),
    ],
  });
  test("is every variant by every way open to it, its kin, and a kin of nothing", () => {
    const [part] = parts;
    const space = part && hypothesisSpace(part);
    expect(space?.ids).toEqual([
      "made:works",
      "unsold:works",
      "made:service",
      "counter:service",
      "made:used",
      "unsold:used",
      "copy:reproduction",
      "strange:other-maker",
      "kin-of:made",
      "kin-of:unsold",
      "kin-of:counter",
      "kin-of:copy",
      "kin-of:strange",
      "kin-of-nothing",
    ]);
    expect([space?.inHandbook, space?.size, space?.variants.at(-1), space?.variants[3]]).toEqual([
      8, 14, -1, 2,
    ]);
  });
});

describe("how a state is misread", () => {
  const channel = (
    misread: Parameters<typeof mistakeChannel>[0]["misread"],
    states: readonly string[],
    mayLack = false,
  ) => mistakeChannel({ misread, states: states.map((id) => ({ id })) }, mayLack);
  const rounded = (chances: Float64Array) => [...chances].map((chance) => Number(chance.toFixed(10)));
  test("by one rate, spread over the other states", () => {
    expect(rounded(channel(0.06, ["p", "q", "r"]).chances)).toEqual([
      0.94, 0.03, 0.03, 0.03, 0.94, 0.03, 0.03, 0.03, 0.94,
    ]);
  });
  test("by the confusions that are named, and by .04 where none is named of a state", () => {
    const named = channel([{ is: "p", said: "q", rate: 0.2 }], ["p", "q", "r"]);
    expect(rounded(named.chances)).toEqual([0.8, 0.2, 0, 0.02, 0.96, 0.02, 0.02, 0.02, 0.96]);
  });
  test("the truth is said one time in five at least, however many confusions are named", () => {
    const many = channel(
      [
        { is: "p", said: "q", rate: 0.6 },
        { is: "p", said: "r", rate: 0.6 },
      ],
      ["p", "q", "r"],
    );
    expect(rounded(many.chances).slice(0, 3)).toEqual([0.2, 0.4, 0.4]);
    const just = channel([{ is: "p", said: "q", rate: 0.8 }], ["p", "q", "r"]);
    expect(rounded(just.chances).slice(0, 3)).toEqual([0.2, 0.8, 0]);
  });
  test("a feature that is not there is seen three times in a hundred, and one that is there missed as often", () => {
    const { states, chances } = channel(0.06, ["p", "q", "r"], true);
    expect(states).toEqual(["p", "q", "r", "not-there"]);
    expect(rounded(chances).slice(0, 4)).toEqual([0.91, 0.03, 0.03, 0.03]);
    expect(rounded(chances).slice(12)).toEqual([0.01, 0.01, 0.01, 0.97]);
  });
});

describe("what people say of a state", () => {
  const two = mistakeChannel({ misread: 0.1, states: [{ id: "p" }, { id: "q" }] }, false);
  test("one is right as often as the feature is read rightly, less what was guessed", () => {
    expect([...reportsByState(two, [sees("x", "p")])]).toEqual([
      expect.closeTo(0.9, 12),
      expect.closeTo(0.1, 12),
    ]);
    const half = reportsByState(two, [sees("x", "p", { certainty: 0.5 })]);
    expect([...half]).toEqual([expect.closeTo(0.7, 12), expect.closeTo(0.3, 12)]);
  });
  test("two who agree are worth more than one and less than two strangers: half the time one appearance held both", () => {
    const both = reportsByState(two, [sees("x", "p"), sees("x", "p", { by: "friend" })]);
    expect([...both]).toEqual([
      expect.closeTo(0.5 * 0.81 + 0.5 * 0.9, 12),
      expect.closeTo(0.5 * 0.01 + 0.5 * 0.1, 12),
    ]);
  });
  test("nothing said leaves all as likely, and what was weighed counts by its weights", () => {
    expect([...reportsByState(two, [])]).toEqual([1, 1]);
    const soft = report("x", { kind: "weighed-states", weights: { p: 0.9, q: 0.3 } }, { certainty: 0.5 });
    expect([...reportsByState(two, [soft])]).toEqual([expect.closeTo(0.75, 12), expect.closeTo(0.45, 12)]);
    const nothing = report("x", { kind: "weighed-states", weights: { elsewhere: 1 } });
    expect([...reportsByState(two, [nothing])]).toEqual([1, 1]);
  });
  test("what was weighed at nothing is nothing, but for what may not be there at all", () => {
    const three = mistakeChannel({ misread: 0.1, states: [{ id: "p" }, { id: "q" }] }, true);
    const soft = report("x", { kind: "weighed-states", weights: { p: 0.8 } });
    expect([...reportsByState(three, [soft])]).toEqual([0.8, 0, expect.closeTo(0.03 * 0.4, 12)]);
    const lacking = report("x", { kind: "weighed-states", weights: { p: 0.2, q: 0.2, "not-there": 0.9 } });
    expect([...reportsByState(three, [lacking])]).toEqual([0.2, 0.2, 0.9]);
  });
  test("what was weighed leaves a little to its not being there at all", () => {
    const three = mistakeChannel({ misread: 0.1, states: [{ id: "p" }, { id: "q" }] }, true);
    const soft = report("x", { kind: "weighed-states", weights: { p: 0.9, q: 0.3 } });
    expect([...reportsByState(three, [soft])]).toEqual([0.9, 0.3, expect.closeTo(0.03 * 0.6, 12)]);
  });
});

describe("sizes as answers", () => {
  const compiled = (means: readonly number[]) =>
    compiledFrom(
      smallHandbook({
        features: [measurementFeature("width")],
        variants: means.map((mean, index) =>
          variant(`v${index}`, { ...always, tells: { width: { mean, spread: 2 } } }),
        ),
      }),
    );
  const bins = (...means: readonly number[]) => {
    const of = compiled(means);
    const feature = of.features.get("width");
    const table = of.measurements.get("width");
    return feature?.kind === "measurement" && table ? sizeBins(feature, table) : [];
  };
  test("are cut at round numbers between the means, from the least over 1.5 to the greatest times 1.5", () => {
    expect(bins(412, 421, 417).map(({ id, label }) => [id, label])).toEqual([
      ["274.667-415", "under 415 mm"],
      ["415-419", "415 to 419 mm"],
      ["419-631.5", "419 mm or more"],
    ]);
    expect(bins(400, 500).map(({ to }) => to)).toEqual([460, 750]);
    expect(bins(1, 1.3).map(({ to }) => Number(to.toFixed(6)))).toEqual([1.15, 1.95]);
  });
  test("are none where the means do not differ, and eight at most, cut in the widest gaps", () => {
    expect(bins(400, 400)).toEqual([]);
    const unknown = compiledFrom(
      smallHandbook({
        features: [measurementFeature("width")],
        variants: [variant("v", always), variant("w", always)],
      }),
    );
    const feature = unknown.features.get("width");
    const table = unknown.measurements.get("width");
    expect(feature?.kind === "measurement" && table && sizeBins(feature, table)).toEqual([]);
    expect(unknown.answers.has("width")).toBe(false);
    expect(bins(100, 200, 400, 800, 1600, 3200, 6400, 12_800, 25_600).map(({ to }) => to)).not.toContain(
      19_000,
    );
    const many = bins(100, 110, 200, 220, 400, 440, 800, 880, 1600, 1760, 3200);
    expect(many).toHaveLength(8);
    expect(many.map(({ to }) => to)).not.toContain(105);
  });
  test("stand for the middle of their stretch, as wide as it is", () => {
    const of = compiled([400, 500]);
    const feature = of.features.get("width");
    const [, upper] = bins(400, 500);
    expect(feature?.kind === "measurement" && upper && valueOfBin(upper, feature)).toEqual({
      kind: "measurement",
      value: 605,
      halfWidth: 145,
      unit: "mm",
      unitConfirmed: true,
    });
  });
});

describe("a change that sightings taught", () => {
  const shares = { from: 120, cell: 12, new: Float64Array.from([0.1, 0.6]) };
  const { parts } = smallHandbook({
    features: [stateFeature("edge", ["square", "round"])],
    variants: [variant("old", always), variant("new", always), variant("copy", { origin: "reproduction" })],
  });
  const change = (rest: Partial<ChangeOfMix> = {}): ChangeOfMix => ({
    old: 0,
    new: 1,
    scope: {},
    shares,
    ...rest,
  });
  const mixed = (time: number, changes = [change()], isFitted: (variant: number) => boolean = () => true) => {
    const raw = Float64Array.from([0.3, 0.5, 0.2]);
    applyChanges(raw, isFitted, changes, time);
    return [...raw].map((share) => Number(share.toFixed(10)));
  };
  test("divides what two variants have together, cell by cell, and by the outer cells beyond them", () => {
    expect(mixed(125)).toEqual([0.72, 0.08, 0.2]);
    expect(mixed(132)).toEqual([0.32, 0.48, 0.2]);
    expect(mixed(131.9)).toEqual(mixed(0));
    expect(mixed(9999)).toEqual(mixed(143));
  });
  test("leaves a car alone that never had one of the two, or of which nothing was learnt", () => {
    expect(mixed(125, [change()], (index) => index !== 0)).toEqual([0.3, 0.5, 0.2]);
    expect(mixed(125, [change()], (index) => index !== 1)).toEqual([0.3, 0.5, 0.2]);
    expect(mixed(125, [change({ shares: { ...shares, new: new Float64Array(0) } })])).toEqual([
      0.3, 0.5, 0.2,
    ]);
  });
  test("is that of the narrowest scope a car lies in, the first of several", () => {
    const all = [
      change(),
      change({ scope: { trim: "s" } }),
      change({ scope: { trim: "s" }, shares: { ...shares, from: 0 } }),
      change({ scope: { trim: "s", market: "home" } }),
      change({ scope: { market: "america" } }),
    ];
    const scopeFor = (car: object) => changesFor(all, car).map((one) => all.indexOf(one));
    expect(scopeFor({})).toEqual([0]);
    expect(scopeFor({ trim: "s" })).toEqual([1]);
    expect(scopeFor({ trim: "s", market: "home" })).toEqual([3]);
    expect(scopeFor({ trim: "base", market: "america" })).toEqual([4]);
    expect(scopeFor({ trim: "base" })).toEqual([0]);
    expect(changesFor(all.slice(1, 2), {})).toEqual([]);
    expect(changesFor(all.slice(1, 2), { trim: "s", market: "home" })).toHaveLength(1);
    expect(changesFor(all.slice(4), { trim: "s", market: "america" })).toHaveLength(1);
    expect(changesFor(all.slice(3, 4), { trim: "s", market: "america" })).toEqual([]);
    expect(changesFor(all.slice(3, 4), { trim: "base", market: "home" })).toEqual([]);
    expect(changesFor([change(), change({ old: 1, new: 2 })], {})).toHaveLength(2);
  });
  test("is of two variants of this part that the works fitted", () => {
    const [part] = parts;
    if (!part) throw new Error("the small handbook has a part kind");
    const of = (old: string, fresh: string, id = "foot") =>
      changesOf(part, [{ part: id, old, new: fresh, shares }]);
    expect(of("old", "new")).toEqual([change()]);
    expect(of("new", "old")).toEqual([change({ old: 1, new: 0 })]);
    expect([of("old", "copy"), of("copy", "new"), of("old", "old"), of("old", "new", "sill")]).toEqual([
      [],
      [],
      [],
      [],
    ]);
  });
});

describe("when a part could be bought", () => {
  const throughout = { from: 100, to: 900 };
  const of = (
    origin: "production" | "service" | "reproduction",
    sold: readonly { from: string; to: string }[],
  ) =>
    smallHandbook({
      features: [stateFeature("edge", ["square", "round"])],
      variants: [variant("v", { origin, sold: [...sold] }), variant("w", always)],
    }).parts[0]?.variants[0] as Parameters<typeof saleSpans>[0];
  test("is while it was sold; a copy of which nothing is said was always sold, a part of the works never", () => {
    expect(saleSpans(of("service", [{ from: "1979", to: "1980-06" }]), throughout)).toEqual([
      { from: 12 * 1979, to: 12 * 1980 + 6 },
    ]);
    expect(saleSpans(of("reproduction", []), throughout)).toEqual([throughout]);
    expect(saleSpans(of("production", []), throughout)).toEqual([]);
  });
  test("is what is left of it after the car was built, and old stock where nothing is", () => {
    const spans = [
      { from: 100, to: 110 },
      { from: 200, to: 230 },
    ];
    expect(saleLeft(spans, 105)).toEqual([
      { from: 105, to: 110 },
      { from: 200, to: 230 },
    ]);
    expect(saleLeft(spans, 110)).toEqual([{ from: 200, to: 230 }]);
    expect(saleLeft(spans, 230)).toEqual([]);
    expect(serviceMonths(of("service", []), spans)).toBe(40);
    expect([serviceMonths(of("service", []), []), serviceMonths(of("production", []), [])]).toEqual([0.1, 0]);
    expect(markSpans(spans)[0]).toEqual({ from: 97, to: 110 });
  });
});

describe("two states that no kind shows together", () => {
  const grooved = (id: string, housing: string, groove: string, rest = "always") =>
    variant(id, {
      origin: "service",
      tells: { housing: { [housing]: rest }, groove: { [groove]: "nearly always" } },
    });
  const compiled = compiledFrom(
    smallHandbook({
      features: [
        stateFeature("housing", ["cast", "moulded", "none"]),
        stateFeature("groove", ["square", "round"]),
        stateFeature("paint", ["black", "grey"]),
      ],
      variants: [grooved("early", "cast", "square"), grooved("late", "moulded", "round")],
    }),
  );
  const pairs = (...reports: Parameters<typeof factsOf>[1]) => [
    ...neverTogether(compiled, factsOf(compiled, reports)),
  ];
  test("are named both ways", () => {
    expect(pairs(sees("housing", "moulded"), sees("groove", "square"))).toEqual([
      ["housing", "groove"],
      ["groove", "housing"],
    ]);
    expect(pairs(sees("housing", "cast"), sees("groove", "square"))).toEqual([]);
    expect(pairs(sees("housing", "moulded"), sees("paint", "black"))).toEqual([]);
  });
  test("are named the first of several in the handbook's order, whichever comes first", () => {
    const three = compiledFrom(
      smallHandbook({
        features: ["housing", "groove", "screw"].map((id) => stateFeature(id, ["old", "new"])),
        variants: ["old", "new"].map((id) =>
          variant(id, {
            origin: "service",
            tells: { housing: { [id]: "always" }, groove: { [id]: "always" }, screw: { [id]: "always" } },
          }),
        ),
      }),
    );
    const partners = (...states: readonly string[]) => [
      ...neverTogether(
        three,
        factsOf(
          three,
          ["housing", "groove", "screw"].map((id, index) => sees(id, states[index] ?? "")),
        ),
      ),
    ];
    expect(partners("old", "new", "new").sort()).toEqual([
      ["groove", "housing"],
      ["housing", "groove"],
      ["screw", "housing"],
    ]);
    expect(partners("old", "old", "new").sort()).toEqual([
      ["groove", "screw"],
      ["housing", "screw"],
      ["screw", "housing"],
    ]);
    expect(partners("old", "old", "old")).toEqual([]);
  });
  test("are at home on some kind each, seen by somebody who looked, and seen alike by all", () => {
    expect(pairs(sees("housing", "none"), sees("groove", "square"))).toEqual([]);
    expect(pairs(sees("housing", "moulded", { certainty: 0.74 }), sees("groove", "square"))).toEqual([]);
    expect(pairs(sees("housing", "moulded", { certainty: 0.75 }), sees("groove", "square"))).toHaveLength(2);
    const friend = { by: "friend" };
    expect(
      pairs(sees("housing", "moulded"), sees("housing", "cast", friend), sees("groove", "square")),
    ).toEqual([]);
    expect(
      pairs(sees("housing", "moulded"), sees("housing", "moulded", friend), sees("groove", "square")),
    ).toHaveLength(2);
  });
});

describe("what tells the variants left apart", () => {
  const compiled = compiledExample();
  const belief = beliefOf(compiled, {}, []);
  const named = (...chances: readonly number[]) =>
    toldApartBy(belief, Float64Array.from(chances)).map(({ variant: id }) => id);
  test("is said of two at least and three at most, the likeliest first, equal ones in the handbook's order", () => {
    expect(named(0.2, 0.5, 0.3)).toEqual(["b", "c", "a"]);
    expect(named(0.4, 0.4, 0.2)).toEqual(["a", "b", "c"]);
    expect(named(0.6, 0.36, 0.04)).toEqual(["a", "b"]);
    expect(named(0.6, 0.35, 0.05)).toEqual(["a", "b", "c"]);
    expect(named(0.997, 0.002, 0.001)).toEqual(["a", "b"]);
    expect(named(0.9985, 0.0015, 0)).toEqual([]);
  });
  test("is no more than three features, none of which was told", () => {
    for (const { features } of toldApartBy(belief, Float64Array.from([0.4, 0.4, 0.2]))) {
      expect(features.length).toBeLessThanOrEqual(3);
    }
    const told = beliefOf(compiled, {}, [sees("fixing", "two")]);
    const rest = toldApartBy(told, Float64Array.from([0.4, 0.4, 0.2])).flatMap(({ features }) => features);
    expect(rest).not.toContain("fixing");
  });
});

describe("what tells two versions apart best", () => {
  /** A belief in which nothing is told, over features whose answers have these rows, one a version. */
  const believed = (rows: Readonly<Record<string, readonly (readonly number[])[]>>) => {
    const compiled = compiledExample();
    const answers = Object.entries(rows).map(([feature, own]): [string, AnswerRows] => [
      feature,
      {
        answers: (own[0] ?? []).map((_, index) => ({
          id: `${index}`,
          label: `${index}`,
          value: { kind: "state", state: `${index}` },
        })),
        rows: Float64Array.from(own.flat()),
        kinRows: Float64Array.from(own.flat()),
        rowOf: Int32Array.from(own.keys()),
        rowCount: own.length,
        flat: new Float64Array(own[0]?.length ?? 0),
      },
    ]);
    return { ...beliefOf(compiled, {}, []), compiled: { ...compiled, answers: new Map(answers) } };
  };
  const named = (rows: Parameters<typeof believed>[0], ...chances: readonly number[]) =>
    toldApartBy(believed(rows), Float64Array.from(chances)).map(({ variant: id, features }) => [
      id,
      features,
    ]);
  test("is what divides them wholly, then by the bits that one answer gives (Lin 1991), answers that none gives counting nothing", () => {
    // Jensen–Shannon divergence of (1, 0) and (0, 1): 1 bit; of (1, 0) and (.5, .5): .3113; of (.6, .4) and (.3, .7): .066;
    // of (.6, .4) and (.4, .6): .029.
    const rows = {
      hardly: [
        [0.6, 0.4],
        [0.4, 0.6],
        [0.5, 0.5],
      ],
      little: [
        [0.6, 0.4],
        [0.3, 0.7],
        [0.5, 0.5],
      ],
      half: [
        [1, 0, 0],
        [0.5, 0, 0.5],
        [0.5, 0, 0.5],
      ],
      wholly: [
        [0, 1, 0],
        [1, 0, 0],
        [0.5, 0.5, 0],
      ],
      never: [
        [0.2, 0.8],
        [0.2, 0.8],
        [0.2, 0.8],
      ],
    };
    expect(named(rows, 0.6, 0.4, 0)).toEqual([
      ["a", ["wholly", "half", "little"]],
      ["b", ["wholly", "half", "little"]],
    ]);
    const { half, little, hardly, never } = rows;
    expect(named({ never, hardly, little }, 0.6, 0.4, 0)[0]?.[1]).toEqual(["little"]);
    expect(named({ hardly, never, half }, 0.4, 0.6, 0)).toEqual([
      ["b", ["half"]],
      ["a", ["half"]],
    ]);
  });
  test("is summed over all others that are left: two halves of a doubt outweigh a smaller whole", () => {
    const rows = {
      one: [
        [0.9, 0.1],
        [0.1, 0.9],
        [0.9, 0.1],
      ],
      both: [
        [0.9, 0.1],
        [0.15, 0.85],
        [0.15, 0.85],
      ],
    };
    expect(named(rows, 0.5, 0.3, 0.2)).toEqual([
      ["a", ["both", "one"]],
      ["b", ["one", "both"]],
      ["c", ["one", "both"]],
    ]);
  });
  test("is nothing where they share what they show", () => {
    const belief = believed({
      alike: [
        [0.9, 0.1],
        [0.1, 0.9],
        [0.5, 0.5],
      ],
    });
    const alike = belief.compiled.answers.get("alike");
    if (!alike) throw new Error("the feature has answers");
    const shared = new Map([["alike", { ...alike, rowOf: Int32Array.of(1, 1, 0) }]]);
    const same = { ...belief, compiled: { ...belief.compiled, answers: shared } };
    expect(toldApartBy(same, Float64Array.of(0.5, 0.5, 0))).toEqual([
      { variant: "a", features: [] },
      { variant: "b", features: [] },
    ]);
    expect(toldApartBy(same, Float64Array.of(0.5, 0, 0.5)).map(({ features }) => features)).toEqual([
      ["alike"],
      ["alike"],
    ]);
  });
});

describe("the order of marks and build date", () => {
  const compiled = compiledFrom(
    smallHandbook({
      features: [dateFeature("cast", { before: "assembled" }), dateFeature("assembled")],
      variants: [variant("a", always), variant("b", always)],
    }),
  );
  const march = monthStart(1980, 3);
  const links = (reports: Parameters<typeof factsOf>[1], built = { from: march, to: march + 1 }) =>
    brokenLinks(compiled, { built }, factsOf(compiled, reports)).map(
      ({ earlier, later, problem }) => `${earlier} ${later} ${problem}`,
    );
  test("is broken from the month after the car was built, and by years before it", () => {
    expect(links([reads("assembled", march + 0.5, march + 1.5)])).toEqual([]);
    expect(links([reads("cast", march + 3, march + 4)])).toEqual(["cast built after"]);
    expect(links([reads("cast", march - 60, march - 59)])).toEqual(["cast built too-long-before"]);
    expect(links([reads("cast", march - 6, march - 5), reads("assembled", march - 3, march - 2)])).toEqual(
      [],
    );
  });
  test("is no proof of a later part while the mark may have been made before the car, if only hardly", () => {
    // A median of two months and σ .7: no more than 1.3 % take a quarter of a month or less, .4 % of them by the usual law.
    const built = { from: march, to: march + 1 / 31 };
    expect(links([reads("cast", march - 0.2, march)], built)).toEqual(["cast built hardly-time"]);
    expect(links([reads("cast", march + 1 / 31, march + 0.2)], built)).toEqual(["cast built after"]);
  });
  test("is judged by all readings of a mark that weigh anything, at their most favourable", () => {
    const readings = [
      { interval: { from: march - 1, to: march }, weight: 0 },
      { interval: { from: march + 20, to: march + 21 }, weight: 1 },
    ];
    expect(links([report("cast", { kind: "date", readings })])).toEqual(["cast built after"]);
    const fits = readings.map((reading) => ({ ...reading, weight: 1 }));
    expect(links([report("cast", { kind: "date", readings: fits })])).toEqual([]);
  });
});
