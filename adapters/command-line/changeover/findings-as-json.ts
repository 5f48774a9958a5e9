/** The findings as one object for scripts: probabilities as numbers, dates as ISO 8601; both ends of a stretch belong to it. */
import {
  type CarWanted,
  civilDayAt,
  type EndSighting,
  type EndsOfUse,
  type GroupedChangeovers,
  type Interval,
  type LikelyMonth,
  type Refusal,
  type Result,
  type UseEnd,
  type UseLimit,
} from "../../../knowledge/index.ts";
import { assumptionsOf } from "./assumptions.ts";
import type { ChainFindings } from "./chain-findings.ts";
import {
  type ChangeFindings,
  type ChangeoverFindings,
  isSuspect,
  type Judged,
  type OneVariantFindings,
} from "./findings.ts";
import { nameOf } from "./names.ts";
import { inMarket } from "./phrases.ts";
import { type ChangeoverQuestion, countsOf } from "./question.ts";
import { speedOf } from "./say-cars.ts";
import { chainAssumptions, othersOf } from "./say-chain.ts";
import { useMethods } from "./say-use.ts";

export function chainAsJson(question: ChangeoverQuestion, findings: ChainFindings): object {
  const { changes, judged, outside } = findings;
  const counts = countsOf(judged.map(({ sighting }) => sighting));
  return {
    kind: findings.kind,
    part: question.part?.id ?? null,
    production: stretch(question.setting.window),
    variants: question.chain.map((id) => ({
      id,
      name: nameOf(question, id),
      sightings: counts.get(id) ?? 0,
    })),
    changes: changes.map((change) => ({
      old: change.old,
      new: change.new,
      mostLikelyMonth: monthAsJson(change.month),
      median: day(change.median),
      interval: stretch(change.interval),
      ...speedAsJson(change),
      shapes: change.shapes?.shapes ?? [],
      runnerUp: change.shapes?.runnerUp ?? null,
      ...endsAsJson(change.ends),
      carsWanted: wantedAsJson(change.wanted),
      groups: groupsAsJson(change.grouped),
    })),
    sightings: judged.map((one) => judgedAsJson(one, true)),
    outsideProduction: outside.map(({ id }) => id),
    otherVariants: Object.fromEntries(othersOf(question)),
    assumptions: chainAssumptions(question, findings),
  };
}

export function findingsAsJson(question: ChangeoverQuestion, findings: ChangeoverFindings): object {
  const named = (ids: readonly string[]) => ids.map((id) => ({ id, name: nameOf(question, id) }));
  const asked = [...question.old, ...question.new];
  const others = countsOf(question.sightings.filter(({ variant }) => !asked.includes(variant)));
  return {
    kind: findings.kind,
    part: question.part?.id ?? null,
    old: named(question.old),
    new: named(question.new),
    production: stretch(question.setting.window),
    ...(findings.kind === "change" ? changeAsJson(findings) : useAsJson(findings)),
    sightings: findings.judged.map((one) => judgedAsJson(one, findings.kind === "change")),
    outsideProduction: findings.outside.map(({ id }) => id),
    otherVariants: Object.fromEntries(others),
    assumptions: assumptionsOf(question, findings),
  };
}

function changeAsJson({ change, month, shapes, wanted, grouped }: ChangeFindings): object {
  const { interval, intervalChance, median, ends } = change;
  return {
    mostLikelyMonth: monthAsJson(month),
    interval: { ...stretch(interval), chance: intervalChance },
    median: day(median),
    ...speedAsJson(change),
    oldThroughout: change.oldThroughout,
    newThroughout: change.newThroughout,
    shapes: shapes.shapes,
    runnerUp: shapes.runnerUp ?? null,
    ...endsAsJson(ends),
    moreSwapsThanGraded: change.moreSwapsThanGraded,
    statedOutside: change.statedOutside,
    carsWanted: wantedAsJson(wanted),
    groups: groupsAsJson(grouped),
  };
}

function monthAsJson(month: LikelyMonth | undefined): object | null {
  return month === undefined ? null : { month: day(month.month.from).slice(0, 7), chance: month.chance };
}

function speedAsJson(change: Pick<ChangeFindings["change"], "withinWeeks" | "overMonths">): object {
  return {
    howItChanged: { weeks: "within-weeks", months: "over-months", unclear: "cannot-tell" }[speedOf(change)],
    withinWeeks: change.withinWeeks,
    overMonths: change.overMonths,
  };
}

function endsAsJson({ lastOld, firstNew, lastOldUnsuspected, firstNewUnsuspected }: EndsOfUse): object {
  return {
    lastOld: endAsJson(lastOld),
    firstNew: endAsJson(firstNew),
    lastOldUnsuspected: endAsJson(lastOldUnsuspected),
    firstNewUnsuspected: endAsJson(firstNewUnsuspected),
  };
}

function wantedAsJson(wanted: readonly CarWanted[]): readonly object[] {
  return wanted.map(({ built, informationBits, reportedNew }) => ({
    month: day(built.from).slice(0, 7),
    informationBits,
    reportedNew,
  }));
}

function groupsAsJson(grouped: readonly GroupedChangeovers[]): readonly object[] {
  return grouped.flatMap(({ by, groups }) =>
    groups.map((group) => ({
      by,
      ...(group.trim === undefined
        ? { name: group.market === "" ? null : group.market }
        : { name: inMarket(group.trim, group.market), trim: group.trim, market: group.market }),
      interval: stretch(group.interval),
      median: day(group.median),
      onCommonDate: group.onCommonDate,
      sightings: group.sightings,
    })),
  );
}

function judgedAsJson(one: Judged, isSplit: boolean): object {
  const { id, variant, built, grade } = one.sighting;
  const { notAsBuilt, swapped } = one;
  const split = isSplit ? { swapped } : {};
  return { id, variant, built: stretch(built), grade, notAsBuilt, ...split, suspect: isSuspect(one) };
}

function endAsJson(end: EndSighting | undefined): object | null {
  return end === undefined ? null : { id: end.id, built: day(end.at), asBuilt: end.asBuilt };
}

function useAsJson({ end, beginning }: OneVariantFindings): object {
  return {
    endOfUse: end === undefined ? null : useEndAsJson(end),
    beginningOfUse: beginning === undefined ? null : useEndAsJson(beginning),
  };
}

function useEndAsJson(use: UseEnd): object {
  return {
    atLeast: use.atLeast === undefined ? null : day(use.atLeast),
    ...Object.fromEntries(useMethods.map(([method]) => [method, limitAsJson(use[method])])),
  };
}

function limitAsJson(limit: Result<UseLimit, Refusal>): object {
  if (!limit.ok) return { refused: limit.problem.message };
  const { estimate, limit: last, isOpen, assumption, sightings } = limit.value;
  return { estimate: day(estimate), limit: day(last), isOpen, assumption, sightings };
}

export function stretch({ from, to }: Interval): { readonly from: string; readonly to: string } {
  return { from: day(from), to: day(Math.max(from, to - 1e-5)) };
}

export function day(instant: number): string {
  const { year, month, day: ofMonth } = civilDayAt(instant);
  return `${year}-${String(month).padStart(2, "0")}-${String(ofMonth).padStart(2, "0")}`;
}
