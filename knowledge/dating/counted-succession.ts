// The sightings of one succession, counted: of all cars, and of each trim and market by itself. What was worked out of a count is kept
// until that count changes, so that a sighting of one trim costs nothing of the others.
import type { Handbook, PartKind } from "../handbook/schema.ts";
import type { ChangeScope } from "../identification/learnt-change.ts";
import type { LikelihoodMemory } from "./border-likelihood.ts";
import { cellGrid } from "./cells.ts";
import type { AsBuiltShares } from "./changeover.ts";
import { type DatedChange, groundOf } from "./dated-change.ts";
import { countReport, type KeptGround, type KeptReports, noReports } from "./kept-reports.ts";
import { type Sighting, sightingsOfChange } from "./sighting.ts";
import type { Succession } from "./successions.ts";

/** By what cars are told apart: the field of a sighting, and its list in the handbook. */
export const scopeFields = [
  { by: "market", list: "markets" },
  { by: "trim", list: "trims" },
] as const;
export type ScopeField = (typeof scopeFields)[number];

export interface CountedSuccession {
  readonly handbook: Handbook;
  readonly part: PartKind;
  readonly succession: Succession;
  readonly ground: KeptGround;
  readonly all: KeptReports;
  /** By the id of the trim or market; cars of which it is not known are in none. */
  readonly scopes: Readonly<Record<ScopeField["by"], Map<string, KeptReports>>>;
  /** Of cars of which both are known, by the two ids. */
  readonly pairs: Map<string, CountedPair>;
  /** What was worked out of these counts, by what it is of. */
  readonly dates: Map<string, Kept<DatedShares>>;
  readonly scoped: Map<string, Kept<readonly ScopedShares[]>>;
}

/** The cars of a trim in a market. */
export interface CountedPair {
  readonly trim: string;
  readonly market: string;
  readonly reports: KeptReports;
}

/** When a change came, and P(new) cell by cell. */
export interface DatedShares extends DatedChange {
  readonly asBuilt: AsBuiltShares;
}

export interface ScopedShares {
  readonly scope: ChangeScope;
  /** Without a cell where too little was seen of such cars: what the handbook has of them stands. */
  readonly shares: AsBuiltShares;
}

interface Kept<Value> {
  /** Revisions of the counts. */
  readonly of: string;
  readonly value: Value;
}

/** The succession with nothing counted; undefined when the window of its build dates is none. */
export function countedSuccession(
  handbook: Handbook,
  part: PartKind,
  succession: Succession,
): CountedSuccession | undefined {
  const { window, production, cell } = succession.setting;
  const grid = cellGrid(window, production, cell);
  if (grid === undefined) return undefined;
  const memory: LikelihoodMemory = new Map();
  return {
    handbook,
    part,
    succession,
    ground: { ...groundOf(grid, succession.setting), memory },
    all: noReports(),
    scopes: { market: new Map(), trim: new Map() },
    pairs: new Map(),
    dates: new Map(),
    scoped: new Map(),
  };
}

/** Counts what the sighting stands for, or takes it away again; one of another variant says nothing. */
export function countSighting(counted: CountedSuccession, sighting: Sighting, sign: 1 | -1): void {
  const { old, new: fresh } = counted.succession;
  for (const report of sightingsOfChange([sighting], [old], [fresh])) {
    const times = sign * (report.count ?? 1);
    countReport(counted.all, counted.ground, report, times);
    for (const { by } of scopeFields) {
      const id = sighting[by];
      if (id !== undefined) countReport(scopeOf(counted, by, id), counted.ground, report, times);
    }
    const pair = pairOf(counted, sighting);
    if (pair !== undefined) countReport(pair.reports, counted.ground, report, times);
  }
}

/** The cars of its trim in its market; undefined when one of the two is not known. */
function pairOf({ pairs }: CountedSuccession, { trim, market }: Sighting): CountedPair | undefined {
  if (trim === undefined || market === undefined) return undefined;
  const name = JSON.stringify([trim, market]);
  const known = pairs.get(name) ?? { trim, market, reports: noReports() };
  pairs.set(name, known);
  return known;
}

/** The cars of a trim or market, none of them perhaps. */
export function scopeOf({ scopes }: CountedSuccession, by: ScopeField["by"], id: string): KeptReports {
  const known = scopes[by].get(id) ?? noReports();
  scopes[by].set(id, known);
  return known;
}

/** `work()`, or what is kept under this name when the counts were last as they are now. */
export function keptOf<Value>(
  kept: Map<string, Kept<Value>>,
  name: string,
  counts: readonly KeptReports[],
  work: () => Value,
): Value {
  const of = counts.map(({ revision }) => revision).join(" ");
  const known = kept.get(name);
  if (known?.of === of) return known.value;
  const value = work();
  kept.set(name, { of, value });
  return value;
}
