/** The findings as one object for scripts: probabilities as numbers, dates as ISO 8601; both ends of a stretch belong to it. */
import {
  civilDayAt,
  type EndSighting,
  type Interval,
  type Refusal,
  type Result,
  type UseEnd,
  type UseLimit,
} from "../../../knowledge/index.ts";
import { assumptionsOf } from "./assumptions.ts";
import {
  type ChangeFindings,
  type ChangeoverFindings,
  isSuspect,
  type OneVariantFindings,
} from "./findings.ts";
import { nameOf } from "./names.ts";
import { type ChangeoverQuestion, countsOf } from "./question.ts";
import { speedOf } from "./say-findings.ts";
import { useMethods } from "./say-use.ts";

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
    sightings: findings.judged.map((one) => {
      const { id, variant, built, grade } = one.sighting;
      const { notAsBuilt, swapped } = one;
      const split = findings.kind === "change" ? { swapped } : {};
      return { id, variant, built: stretch(built), grade, notAsBuilt, ...split, suspect: isSuspect(one) };
    }),
    outsideProduction: findings.outside.map(({ id }) => id),
    otherVariants: Object.fromEntries(others),
    assumptions: assumptionsOf(question, findings),
  };
}

function changeAsJson({ change, month, shapes, wanted, grouped }: ChangeFindings): object {
  const { interval, intervalChance, median, ends } = change;
  return {
    mostLikelyMonth:
      month === undefined ? null : { month: day(month.month.from).slice(0, 7), chance: month.chance },
    interval: { ...stretch(interval), chance: intervalChance },
    median: day(median),
    howItChanged: { weeks: "within-weeks", months: "over-months", unclear: "cannot-tell" }[speedOf(change)],
    withinWeeks: change.withinWeeks,
    overMonths: change.overMonths,
    oldThroughout: change.oldThroughout,
    newThroughout: change.newThroughout,
    shapes: shapes.shapes,
    runnerUp: shapes.runnerUp ?? null,
    lastOld: endAsJson(ends.lastOld),
    firstNew: endAsJson(ends.firstNew),
    lastOldUnsuspected: endAsJson(ends.lastOldUnsuspected),
    firstNewUnsuspected: endAsJson(ends.firstNewUnsuspected),
    moreSwapsThanGraded: change.moreSwapsThanGraded,
    statedOutside: change.statedOutside,
    carsWanted: wanted.map(({ built, informationBits, reportedNew }) => ({
      month: day(built.from).slice(0, 7),
      informationBits,
      reportedNew,
    })),
    groups: grouped.flatMap(({ by, groups }) =>
      groups.map((group) => ({
        by,
        name: group.market === "" ? null : group.market,
        interval: stretch(group.interval),
        median: day(group.median),
        onCommonDate: group.onCommonDate,
        sightings: group.sightings,
      })),
    ),
  };
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
