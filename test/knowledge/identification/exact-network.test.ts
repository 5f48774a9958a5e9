// The whole identification of state features against an exact inference library: bayesjs 0.6.5, junction tree.
// Every hypothesis, kins included, is a state of one node; states, causes and shared traps are nodes below it.
import { createRequire } from "node:module";
import type { ICptWithParentsItem, INetwork } from "bayesjs";
import { expect, test } from "vitest";
import { notThere, type Report } from "../../../knowledge/evidence/report.ts";
import { beliefOf } from "../../../knowledge/identification/belief.ts";
import type { CompiledPart } from "../../../knowledge/identification/compiled-part.ts";
import { type RandomHandbook, randomHandbook, randomReports } from "../../support/random-handbooks.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { compiledFrom } from "../../support/worked-examples.ts";

// CommonJS whose names Node does not find by itself.
const { inferences }: typeof import("bayesjs") = createRequire(import.meta.url)("bayesjs");

type Row = Readonly<Record<string, number>>;

function addNode(
  network: INetwork,
  id: string,
  states: readonly string[],
  cpt: Row | ICptWithParentsItem[],
): void {
  const parents = Array.isArray(cpt) ? Object.keys(cpt[0]?.when ?? {}) : [];
  network[id] = { id, states: [...states], parents, cpt };
}

function rowOf(states: readonly string[], chances: ArrayLike<number>): Record<string, number> {
  return Object.fromEntries(states.map((state, index) => [state, chances[index] ?? 0]));
}

/** A row of a conditional table in the library's form. */
function tableRow(
  when: Readonly<Record<string, string>>,
  chances: Record<string, number>,
): ICptWithParentsItem {
  const row = new Map<string, unknown>([
    ["when", when],
    ["then", chances],
  ]);
  return Object.fromEntries(row) as unknown as ICptWithParentsItem;
}

/** P(state | hypothesis) of a feature without a cause: a kin is .6 its variant and .4 flat. */
function addFeature(network: INetwork, compiled: CompiledPart, feature: string): void {
  const table = compiled.states.get(feature);
  if (!table) return;
  const { states } = table.channel;
  const cpt = compiled.space.ids.map((id, h) => {
    const variant = compiled.space.variants[h] ?? -1;
    const isKin = h >= compiled.space.inHandbook;
    const likeness = variant < 0 ? 0 : isKin ? 0.6 : 1;
    const start = (table.rowOf[variant] ?? 0) * states.length;
    const mixed = states.map(
      (_, s) => likeness * (table.rows[start + s] ?? 0) + (1 - likeness) * (table.flat[s] ?? 0),
    );
    return tableRow({ part: id }, rowOf(states, mixed));
  });
  addNode(network, feature, states, cpt);
}

/** The cause below the hypothesis; "flat" is the state in which nothing is known of the part. */
function addCause(network: INetwork, compiled: CompiledPart, features: readonly string[]): void {
  const cause = [...compiled.causes.values()][0];
  if (!cause) return;
  const causeStates = [...Array.from({ length: cause.stateCount }, (_, z) => `z${z}`), "flat"];
  const cpt = compiled.space.ids.map((id, h) => {
    const variant = compiled.space.variants[h] ?? -1;
    const likeness = variant < 0 ? 0 : h >= compiled.space.inHandbook ? 0.6 : 1;
    const shares = causeStates.map((_, z) =>
      z === cause.stateCount
        ? 1 - likeness
        : variant < 0
          ? 0
          : likeness * (cause.shares[variant * cause.stateCount + z] ?? 0),
    );
    return tableRow({ part: id }, rowOf(causeStates, shares));
  });
  addNode(network, "cause", causeStates, cpt);
  for (const feature of features) {
    const table = compiled.states.get(feature);
    const rows = cause.features.get(feature);
    if (!table || !rows) continue;
    const { states } = table.channel;
    const byCause = causeStates.map((state, z) => {
      const isFlat = z === cause.stateCount;
      const row = isFlat ? table.flat : rows.subarray(z * states.length, (z + 1) * states.length);
      return tableRow({ cause: state }, rowOf(states, row));
    });
    addNode(network, feature, states, byCause);
  }
}

/** Reports of one feature: what each says, given the true state, or given what misled all of them. */
function addReports(
  network: INetwork,
  compiled: CompiledPart,
  feature: string,
  reports: readonly Report[],
): string[] {
  const channel = compiled.states.get(feature)?.channel;
  if (!channel) return [];
  const { states, chances } = channel;
  const channelRow = (is: number) => chances.subarray(is * states.length, (is + 1) * states.length);
  const says = (certainty: number, looked: (said: number) => number): Record<string, number> =>
    rowOf(
      states,
      states.map((_, said) => certainty * looked(said) + (1 - certainty) / states.length),
    );
  const [only] = reports;
  if (reports.length === 1 && only) {
    const id = `${feature} said`;
    const cpt = states.map((state, is) =>
      tableRow(
        { [feature]: state },
        says(only.certainty, (said) => channelRow(is)[said] ?? 0),
      ),
    );
    addNode(network, id, states, cpt);
    return [id];
  }
  addNode(network, `${feature} trap`, ["yes", "no"], { yes: 0.5, no: 0.5 });
  addNode(
    network,
    `${feature} seen`,
    states,
    states.map((state, is) => tableRow({ [feature]: state }, rowOf(states, channelRow(is)))),
  );
  return reports.map(({ certainty }, person) => {
    const id = `${feature} said ${person}`;
    const cpt = ["yes", "no"].flatMap((trap) =>
      states.flatMap((seen, misled) =>
        states.map((state, is) =>
          tableRow(
            { [`${feature} trap`]: trap, [`${feature} seen`]: seen, [feature]: state },
            says(certainty, (said) =>
              trap === "yes" ? Number(said === misled) : (channelRow(is)[said] ?? 0),
            ),
          ),
        ),
      ),
    );
    addNode(network, id, states, cpt);
    return id;
  });
}

function networkOf(
  compiled: CompiledPart,
  book: RandomHandbook,
  reports: readonly Report[],
  prior: Float64Array,
) {
  const network: INetwork = {};
  addNode(network, "part", compiled.space.ids, rowOf(compiled.space.ids, prior));
  const caused = book.features.filter((feature) => compiled.causes.has(feature));
  addCause(network, compiled, caused);
  const given: Record<string, string> = {};
  for (const feature of book.features) {
    const own = reports.filter((report) => report.feature === feature);
    if (own.length === 0) continue;
    if (!caused.includes(feature)) addFeature(network, compiled, feature);
    addReports(network, compiled, feature, own).forEach((id, person) => {
      const value = own[person]?.value;
      if (value?.kind === "state") given[id] = value.state;
    });
  }
  return { network, given };
}

const seeds = Array.from({ length: 64 }, (_, index) => index + 1);

test.each(seeds)("random handbook %i: every hypothesis has the posterior of exact inference", (start) => {
  const chance = chanceFrom(start);
  const book = randomHandbook(chance, start % 3 === 0);
  const compiled = compiledFrom(book.handbook);
  const reports = randomReports(chance, book, start % 2 === 0 ? 1 : 2);
  const { probabilities, ground } = beliefOf(compiled, {}, reports);
  const { network, given } = networkOf(compiled, book, reports, ground.prior);
  compiled.space.ids.forEach((id, h) => {
    const exact = inferences.junctionTree.infer(network, { part: id }, given);
    expect(Math.abs(exact - (probabilities[h] ?? Number.NaN))).toBeLessThan(1e-9);
  });
});

test("the random handbooks hold features that some variants lack", () => {
  const lacking = seeds.filter((start) => {
    const compiled = compiledFrom(randomHandbook(chanceFrom(start), false).handbook);
    return [...compiled.states.values()].some(({ channel }) => channel.states.includes(notThere));
  });
  expect(lacking.length).toBeGreaterThan(10);
});
