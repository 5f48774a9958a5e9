/** One variant's claim about one feature out of its row: what the cells say, over what the handbook says where there is no column. */
import type { Claim, Feature, Source } from "../handbook/schema.ts";
import { type Column, featureOf, headOf } from "./columns.ts";
import { type ReadCell, readFigure, readFrequency, readSources, readWhole, type Said } from "./read-cell.ts";
import type { RowPlace } from "./row-place.ts";

/** A claim as it is to stand; undefined takes it away. */
export type NewClaim = { readonly said: Said; readonly sources: readonly string[] } | undefined;

export interface ClaimOfRow {
  readonly claim: NewClaim;
  readonly isChanged: boolean;
}

interface Draft {
  readonly said: Map<string, string | number>;
  sources: readonly string[];
}

/** `before`: the handbook's claim; undefined for a new variant, or where it says nothing. */
export function claimOfRow(
  feature: Feature,
  before: Claim | undefined,
  sources: readonly Source[],
  place: RowPlace,
): ClaimOfRow {
  const draft: Draft = { said: saidOf(before), sources: before?.sources ?? [] };
  let isTouched = false;
  for (const [index, column] of place.columns.entries()) {
    if (featureOf(column) !== feature || column === undefined) continue;
    isTouched = takeCell(draft, column, sources, place, index) || isTouched;
  }
  if (!isTouched) return { claim: undefined, isChanged: false };
  complain(feature, draft, saidOf(before), place);
  const after: NewClaim =
    draft.said.size === 0 ? undefined : { said: Object.fromEntries(draft.said), sources: draft.sources };
  return { claim: after, isChanged: !isSame(before, after) };
}

function saidOf(claim: Claim | undefined): Map<string, string | number> {
  return new Map(
    Object.entries(claim ?? {}).flatMap(([key, said]) =>
      key !== "sources" && (typeof said === "string" || typeof said === "number") ? [[key, said]] : [],
    ),
  );
}

/** Whether the cell was read; one that was not leaves the draft as it is and is named. */
function takeCell(
  draft: Draft,
  column: Column,
  sources: readonly Source[],
  { row, number, refuse }: RowPlace,
  index: number,
): boolean {
  const cell = row[index];
  const take = <T>(read: ReadCell<T>, use: (value: T) => void): boolean => {
    if (read.ok) use(read.value);
    else refuse(number, index, read.message, read.mend);
    return read.ok;
  };
  switch (column.kind) {
    case "state":
      return take(readFrequency(cell), (value) => put(draft, column.state, value));
    case "mean":
    case "spread":
      return take(readFigure(cell), (value) => put(draft, column.kind, value));
    case "sources":
      return take(readSources(cell, sources), (ids) => {
        draft.sources = ids;
      });
    case "whole":
      return take(readWhole(column.feature, cell), (said: Said | undefined) => {
        draft.said.clear();
        for (const [key, value] of Object.entries(said ?? {})) draft.said.set(key, value);
      });
    default:
      return false;
  }
}

function put(draft: Draft, key: string, value: string | number | undefined): void {
  if (value === undefined) draft.said.delete(key);
  else draft.said.set(key, value);
}

/** A mean needs its spread, and a measure leaves no room for "not there". What is amiss stays as it was before. */
function complain(
  feature: Feature,
  draft: Draft,
  before: ReadonlyMap<string, string | number>,
  { columns, number, refuse }: RowPlace,
): void {
  const { said, sources } = draft;
  const at = (key: string): number => {
    const index = columns.findIndex(
      (column) => column !== undefined && headOf(column) === `${feature.id}: ${key}`,
    );
    return Math.max(0, index);
  };
  const [mean, spread] = [said.has("mean"), said.has("spread")];
  if (mean !== spread) {
    const missing = mean ? "spread" : "mean";
    refuse(
      number,
      at(missing),
      `${feature.id} has a ${mean ? "mean" : "spread"} but no ${missing}`,
      "fill both, or neither",
    );
    put(draft, "mean", before.get("mean"));
    put(draft, "spread", before.get("spread"));
  }
  if (mean && spread && said.size > 2) {
    const other = [...said.keys()].find((key) => key !== "mean" && key !== "spread") ?? "";
    refuse(
      number,
      at(other),
      "a variant that is measured has the feature",
      "empty this cell, or mean and spread",
    );
    put(draft, other, undefined);
  }
  if (said.size === 0 && sources.length > 0) draft.sources = [];
}

function isSame(before: Claim | undefined, after: NewClaim): boolean {
  if (before === undefined || after === undefined) return before === undefined && after === undefined;
  const [one, other] = [saidOf(before), new Map(Object.entries(after.said))];
  const isSaid = one.size === other.size && [...one].every(([key, said]) => other.get(key) === said);
  return isSaid && before.sources.join() === after.sources.join();
}
