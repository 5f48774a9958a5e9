// What a verdict is explained with, and what an answer is worth, each against its definition.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { monthStart, yearInterval } from "../../../knowledge/calendar/interval.ts";
import { type Belief, beliefOf, factAlone } from "../../../knowledge/identification/belief.ts";
import { dateLinks, nextRead } from "../../../knowledge/identification/date-chain.ts";
import { buildInterval, markEra, productionSpan } from "../../../knowledge/identification/eras.ts";
import { identify } from "../../../knowledge/identification/identify.ts";
import { leadOverBoth } from "../../../knowledge/identification/lead-time.ts";
import { misfitsOf } from "../../../knowledge/identification/misfits.ts";
import { planQuestions } from "../../../knowledge/identification/plan-questions.ts";
import { mixedRow, type VariantRows } from "../../../knowledge/identification/question-rows.ts";
import { expectedPurity, purityNow, rowClasses } from "../../../knowledge/identification/question-worth.ts";
import { quietFacts } from "../../../knowledge/identification/quiet-facts.ts";
import { sampleOfRows, type WorthTable } from "../../../knowledge/identification/row-sample.ts";
import { shareOfState } from "../../../knowledge/identification/share-of-state.ts";
import { MIXED, NOTHING, type TableRows } from "../../../knowledge/identification/table-rows.ts";
import { beliefUntold } from "../../../knowledge/identification/without-fact.ts";
import { type Chance, chanceFrom } from "../../support/random-tables.ts";
import { dateFeature, smallHandbook, stateFeature, variant } from "../../support/small-handbook.ts";
import { compiledExample, compiledFrom, measures, sees } from "../../support/worked-examples.ts";

const compiled = compiledExample();

describe("the spans that a handbook speaks of", () => {
  const model = (id: string, from: string, to: string) => ({ id, name: id, also: [], from, to });
  const handbook = (...models: readonly ReturnType<typeof model>[]) =>
    smallHandbook({
      features: [stateFeature("edge", ["square", "round"])],
      variants: ["a", "b"].map((id) => variant(id, { origin: "reproduction" })),
      cars: {
        models: [...models],
        trims: [
          { ...model("s", "1980-01", "1980-12"), models: [] },
          { ...model("gt", "1999", "1999"), models: [] },
        ],
      } as never,
    });
  const both = handbook(model("drake", "1979-03", "1983-05"), model("shrike", "1977-02", "1981-12"));
  const whole = { from: monthStart(1977, 2), to: monthStart(1983, 6) };
  test("are production from the first car to the last, and marks from two years before it to the edition", () => {
    expect(productionSpan(both)).toEqual(whole);
    expect(markEra(both)).toEqual({ from: monthStart(1975, 2), to: monthStart(2021, 1) });
    expect(productionSpan(handbook())).toEqual({ from: monthStart(2020, 1), to: monthStart(2021, 1) });
    expect(productionSpan(handbook(model("odd", "1983", "1977")))).toEqual(productionSpan(handbook()));
    const late = handbook(model("now", "2019", "2030"));
    expect(markEra(late).to).toBe(monthStart(2031, 1));
  });
  test("are of a car its date, else its model's and its trim's years, as far as these go together", () => {
    expect(buildInterval(both, {})).toEqual(whole);
    expect(buildInterval(both, { model: "shrike" })).toEqual({
      from: monthStart(1977, 2),
      to: monthStart(1982, 1),
    });
    expect(buildInterval(both, { model: "drake", trim: "s" })).toEqual(yearInterval(1980));
    expect(buildInterval(both, { trim: "gt" })).toEqual(whole);
    expect(buildInterval(both, { model: "elsewhere" })).toEqual(whole);
    expect(buildInterval(both, { built: yearInterval(1990), model: "shrike" })).toEqual(yearInterval(1990));
    expect(buildInterval(both, { built: yearInterval(1990), isLoosePart: true })).toEqual(whole);
  });
  test("close a date that is open: at production, or a month on where that is over; of no date at all nothing is said", () => {
    const built = (from: number, to: number) => buildInterval(both, { built: { from, to } });
    expect(built(monthStart(1980, 1), Infinity)).toEqual({ from: monthStart(1980, 1), to: whole.to });
    expect(built(monthStart(1990, 1), Infinity)).toEqual({
      from: monthStart(1990, 1),
      to: monthStart(1990, 2),
    });
    expect(built(-Infinity, monthStart(1980, 1))).toEqual({ from: whole.from, to: monthStart(1980, 1) });
    expect(built(-Infinity, monthStart(1970, 1))).toEqual({
      from: monthStart(1969, 12),
      to: monthStart(1970, 1),
    });
    expect(built(-Infinity, Infinity)).toEqual(whole);
  });
});

describe("the share of a state on a kind", () => {
  test("is what the handbook's word gives, and nothing where there is no such feature, kind or state", () => {
    // "usually": .77 of the worth, kept away from 0 and 1 by a hundredth.
    expect(shareOfState(compiled, "mark", "b", "present")).toBeCloseTo(0.99 * 0.77 + 0.005, 10);
    expect(shareOfState(compiled, "mark", "b", "absent")).toBeCloseTo(0.99 * 0.23 + 0.005, 10);
    expect(shareOfState(compiled, "fixing", "a", "two")).toBeGreaterThan(0.95);
    expect(shareOfState(compiled, "fixing", "b", "two")).toBeLessThan(0.1);
    expect(shareOfState(compiled, "elsewhere", "a", "two")).toBeUndefined();
    expect(shareOfState(compiled, "fixing", "z", "two")).toBeUndefined();
    expect(shareOfState(compiled, "fixing", "a", "four")).toBeUndefined();
  });
});

describe("answers that are offered", () => {
  const named = compiledFrom(
    smallHandbook({
      features: [
        stateFeature("lip", ["sharp", "blunt"], {
          none: "no lip",
          states: [
            { id: "sharp", name: "a sharp lip" },
            { id: "blunt", name: "a blunt lip" },
          ],
        }),
      ],
      variants: [
        variant("a", {
          origin: "production",
          fitted: [{ from: "1977-01", to: "1981-12" }],
          tells: { lip: { sharp: "always" } },
        }),
        variant("b", { origin: "reproduction", tells: { lip: { "not-there": "always" } } }),
      ],
    }),
  );
  test("are called what the handbook calls them", () => {
    const plan = planQuestions(named, { car: {}, goal: "which-variant", reports: [] }).plans.get("lip");
    expect(plan?.kind === "car" ? [] : plan?.answers.map(({ id, label }) => [id, label])).toEqual([
      ["sharp", "a sharp lip"],
      ["blunt", "a blunt lip"],
      ["not-there", "no lip"],
    ]);
  });
});

describe("the classes of a part's place on its car", () => {
  const book = compiledFrom(
    smallHandbook({
      features: [stateFeature("edge", ["square", "round"])],
      variants: [
        variant("first", { origin: "production", fitted: [{ from: "1977-01", to: "1978-12" }] }),
        variant("last", { origin: "production", fitted: [{ from: "1979-01", to: "1981-12" }] }),
        variant("counter", { origin: "service", sold: [{ from: "1977", to: "1990" }] }),
        variant("copy", { origin: "reproduction" }),
        variant("strange", { origin: "other-maker" }),
      ],
      rest: { replaced: 0.5 },
    }),
  );
  test("tell the service part, the right kind, another year's, the copy and the stranger apart", () => {
    const { classes } = identify(book, {
      car: { built: yearInterval(1980) },
      reports: [],
      goal: "right-for-car",
    });
    expect(classes.map((one) => one.class).toSorted()).toEqual([
      "as-built",
      "not-in-the-handbook",
      "other-maker",
      "other-year-or-model",
      "reproduction",
      "right-kind-replaced",
      "service-part",
    ]);
    const of = (name: string) => classes.find((one) => one.class === name)?.probability ?? Number.NaN;
    expect(of("service-part")).toBeCloseTo((0.97 * 0.5 * 0.35) / 1, 10);
    expect(of("reproduction")).toBeCloseTo(0.97 * 0.5 * 0.25, 10);
    expect(of("other-maker")).toBeCloseTo(0.97 * 0.5 * 0.1, 10);
  });
});

describe("facts that fit the best variant worst", () => {
  const facts = [
    sees("fixing", "three"),
    sees("mark", "absent"),
    sees("edge", "round"),
    sees("inside", "painted"),
    measures("width", 418),
  ];
  const belief = beliefOf(compiled, { built: yearInterval(1978) }, facts);
  test("are three at most, the worst first, by how much less likely they are on it than on a kin of it", () => {
    const { ids } = compiled.space;
    const bansOf = (fact: Belief["facts"][number]) => {
      const alone = factAlone(belief, fact);
      return ((alone[ids.indexOf("a:works")] ?? 0) - (alone[ids.indexOf("kin-of:a")] ?? 0)) / Math.LN10;
    };
    const against = belief.facts
      .filter(({ feature }) => feature !== "cast")
      .map((fact) => ({ feature: fact.feature, bans: bansOf(fact) }))
      .filter(({ bans }) => bans < -0.1)
      .toSorted((one, other) => one.bans - other.bans)
      .map(({ feature }) => feature);
    expect(against.length).toBeGreaterThan(3);
    expect(misfitsOf(belief, 0)).toEqual(against.slice(0, 3));
    expect(misfitsOf(belief, compiled.part.variants.length)).toEqual([]);
  });
  test("are told from one fifth on for what is in no handbook", () => {
    const strange = identify(compiled, {
      car: {},
      goal: "which-variant",
      reports: [...facts.slice(0, 4), measures("width", 395)],
    });
    const plain = identify(compiled, {
      car: {},
      goal: "which-variant",
      reports: [sees("fixing", "two"), sees("mark", "absent")],
    });
    expect(strange.misfits.length).toBeGreaterThan(0);
    expect(plain.misfits).toEqual([]);
  });
});

describe("a fact as if it had never been told", () => {
  test("leaves the belief that the other facts alone give, in a group and out of it", () => {
    const told = [
      sees("fixing", "two"),
      sees("inside", "smooth"),
      sees("edge", "round"),
      measures("width", 415),
    ];
    const belief = beliefOf(compiled, {}, told);
    for (const fact of belief.facts) {
      const others = told.filter(({ feature }) => feature !== fact.feature);
      const [untold, fresh] = [beliefUntold(belief, fact), beliefOf(compiled, {}, others)];
      expect(untold.facts.map(({ feature }) => feature)).toEqual(others.map(({ feature }) => feature));
      untold.probabilities.forEach((probability, h) => {
        expect(probability).toBeCloseTo(fresh.probabilities[h] ?? Number.NaN, 10);
      });
    }
  });
  test("names of those asked about the ones that hardly move the ranking, and no others", () => {
    const told = [
      sees("fixing", "two"),
      sees("inside", "rough"),
      measures("width", 412),
      sees("mark", "present"),
    ];
    const asked = (...features: readonly string[]) =>
      quietFacts(compiled, { car: { built: yearInterval(1978) }, reports: told }, features).map(
        ({ feature }) => feature,
      );
    for (const { feature } of told) expect([[], [feature]]).toContainEqual(asked(feature));
    expect(asked("mark")).toEqual(["mark"]);
    expect(asked("elsewhere")).toEqual([]);
  });
});

describe("leads between marks", () => {
  const { part } = compiledFrom(
    smallHandbook({
      features: [
        dateFeature("cast", { before: "machined", lead: { median: 1, sigma: 0.5 } }),
        dateFeature("machined", { before: "painted", lead: { median: 3, sigma: 0.4 } }),
        dateFeature("painted"),
        stateFeature("edge", ["square", "round"]),
      ],
      variants: ["a", "b"].map((id) => variant(id, { origin: "reproduction" })),
    }),
  );
  const learnt = { part: "foot", feature: "painted", lead: { median: 7, sigma: 0.3 }, cars: 12 };
  test("are the handbook's, or what documented cars taught of the same mark of the same part", () => {
    const links = dateLinks(part, [
      { ...learnt, part: "sill", cars: 99 },
      { ...learnt, part: "sill", feature: "cast", cars: 98 },
      learnt,
      { ...learnt, cars: 97 },
    ]);
    expect([...links].map(([id, { next, cars, lead }]) => [id, next, cars, lead.median])).toEqual([
      ["cast", "machined", 0, 1],
      ["machined", "painted", 0, 3],
      ["painted", undefined, 12, 7],
    ]);
    expect(dateLinks(part).get("painted")).toMatchObject({ cars: 0, lead: part.lead });
  });
  test("go to the build date from a mark before something that is no mark, or before nothing known", () => {
    const { parts } = smallHandbook({
      features: [
        dateFeature("cast", { before: "edge" }),
        dateFeature("stamp", { before: "elsewhere" }),
        dateFeature("label", { before: "cast" }),
        stateFeature("edge", ["square", "round"]),
      ],
      variants: ["a", "b"].map((id) => variant(id, { origin: "production" })),
    });
    const ways = parts.flatMap((part) => [...dateLinks(part)].map(([id, { next }]) => [id, next]));
    expect(ways).toEqual([
      ["cast", undefined],
      ["stamp", undefined],
      ["label", "cast"],
    ]);
  });
  test("add up over marks that were not read, and stop at one that was", () => {
    const links = dateLinks(part);
    const from = (feature: string, ...read: readonly string[]) =>
      nextRead(links, feature, (one) => read.includes(one));
    expect(from("cast", "machined")).toEqual({ next: "machined", lead: { median: 1, sigma: 0.5 } });
    const two = leadOverBoth({ median: 1, sigma: 0.5 }, { median: 3, sigma: 0.4 });
    expect(from("cast", "painted")).toEqual({ next: "painted", lead: two });
    expect(from("cast")).toEqual({ next: undefined, lead: leadOverBoth(two, part.lead) });
    expect(from("edge")).toBeUndefined();
  });
});

describe("what an answer is worth", () => {
  /** A table of rows over variants, kins and a mixed row, with rows of answers that some variants share. */
  function drawn(chance: Chance, classes: number, size: number, shared: number) {
    const width = 2 + Math.floor(3 * chance());
    const normal = (length: number): Float64Array => {
      const rows = Float64Array.from({ length }, () => 0.05 + chance());
      for (let start = 0; start < length; start += width) {
        const total = rows.slice(start, start + width).reduce((sum, one) => sum + one, 0);
        for (let at = start; at < start + width; at += 1) rows[at] = (rows[at] ?? 0) / total;
      }
      return rows;
    };
    const kinShares = Float64Array.from({ length: size }, () => chance());
    const kins = kinShares.reduce((sum, share) => sum + share, 0) / 0.9;
    const variants = [...Array.from({ length: 2 * size }, (_, row) => row % size), MIXED, NOTHING];
    const beliefs = variants.map(() => 0.01 + chance());
    const total = beliefs.reduce((sum, belief) => sum + belief, 0);
    const table: WorthTable = {
      classes: variants.map((_, row) => (classes > 16 ? `row ${row}` : `class ${row % classes}`)),
      variants: Int32Array.from(variants),
      probabilities: Float64Array.from(beliefs, (belief) => belief / total),
      areKin: Uint8Array.from(variants, (one, row) => (row >= size || one < 0 ? 1 : 0)),
      kinShares: kinShares.map((share) => share / kins),
      nothingShare: 0.1,
    };
    const source: VariantRows = {
      width,
      rows: normal(shared * width),
      kinRows: normal(shared * width),
      rowOf: Int32Array.from({ length: size }, (_, index) => index % shared),
      flat: normal(width),
    };
    return { table, source };
  }
  function rowOfAnswers({ table, source }: ReturnType<typeof drawn>, row: number): Float64Array {
    const one = table.variants[row] ?? NOTHING;
    if (one === MIXED) return mixedRow(table, source);
    if (one === NOTHING) return source.flat;
    const start = (source.rowOf[one] ?? 0) * source.width;
    return (table.areKin[row] === 1 ? source.kinRows : source.rows).slice(start, start + source.width);
  }
  /** Σ_a Σ_c P(c, a)² ÷ P(a), cell by cell. */
  function byDefinition(book: ReturnType<typeof drawn>): number {
    const joint = new Map<string, number>();
    const chances = new Float64Array(book.source.width);
    book.table.probabilities.forEach((belief, row) => {
      rowOfAnswers(book, row).forEach((own, answer) => {
        const cell = `${book.table.classes[row]} ${answer}`;
        joint.set(cell, (joint.get(cell) ?? 0) + belief * own);
        chances[answer] = (chances[answer] ?? 0) + belief * own;
      });
    });
    return [...joint].reduce(
      (sum, [cell, both]) => sum + both ** 2 / (chances[Number(cell.split(" ").at(-1))] ?? 0),
      0,
    );
  }
  test("is the purity it leads to: for few classes and many, for rows that variants share and rows of their own", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        fc.constantFrom([3, 5, 5], [3, 40, 2], [20, 12, 3], [1, 3, 1]),
        (start, [classes = 1, size = 1, shared = 1]) => {
          const book = drawn(chanceFrom(start), classes, size, shared);
          const worth = expectedPurity(book.table, rowClasses(book.table), book.source);
          expect(worth).toBeCloseTo(byDefinition(book), 12);
        },
      ),
      { seed: 61, numRuns: 80 },
    );
  });
  test("is nothing when every answer is as likely on every row: the purity stays what it was", () => {
    const { table, source } = drawn(chanceFrom(7), 3, 5, 5);
    const even = new Float64Array(source.rows.length).fill(1 / source.width);
    const blank = { ...source, rows: even, kinRows: even, flat: even.slice(0, source.width) };
    const classes = rowClasses(table);
    expect(classes.count).toBe(3);
    expect(expectedPurity(table, classes, blank)).toBeCloseTo(purityNow(table, classes), 12);
  });
});

describe("a sample of a table's rows", () => {
  const tableOf = (beliefs: readonly number[]): TableRows =>
    ({
      ids: beliefs.map((_, row) => `h${row}`),
      classes: beliefs.map((_, row) => `class ${row}`),
      variants: Int32Array.from(beliefs, (_, row) => row),
      probabilities: Float64Array.from(beliefs),
      areKin: Uint8Array.from(beliefs, (_, row) => row % 2),
      kinShares: new Float64Array(beliefs.length),
      nothingShare: 0,
    }) as unknown as TableRows;
  test("of up to five hundred is the table itself", () => {
    const [small, large] = [500, 501].map((size) => tableOf(Array.from({ length: size }, () => 1 / size)));
    expect(small && sampleOfRows(small)).toBe(small);
    expect(large && sampleOfRows(large)).not.toBe(large);
  });
  test("of more keeps the whole belief and every row that has its five hundredth of it, with what belongs to it", () => {
    const chance = chanceFrom(5);
    const raw = Array.from({ length: 3000 }, (_, row) => (row % 100 === 7 ? 50 : chance()));
    const total = raw.reduce((sum, one) => sum + one, 0);
    const table = tableOf(raw.map((one) => one / total));
    const sample = sampleOfRows(table);
    expect(sample.variants.length).toBeLessThanOrEqual(500);
    expect(sample.probabilities.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
    const kept = new Set(sample.variants);
    table.probabilities.forEach((belief, row) => {
      if (belief >= 1 / 500) expect(kept.has(row)).toBe(true);
    });
    sample.variants.forEach((row, at) => {
      expect([sample.classes[at], sample.areKin[at]]).toEqual([`class ${row}`, row % 2]);
      expect(Math.abs((sample.probabilities[at] ?? 0) - (table.probabilities[row] ?? 0))).toBeLessThanOrEqual(
        1 / 500 + 1e-9,
      );
    });
  });
});
