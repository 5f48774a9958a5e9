/** What the sightings say: of a change when both variants were seen, else of the end or the beginning of use of the one. */
import {
  type CarWanted,
  type Changeover,
  carsWanted,
  changeover,
  EVEN_REPLACEMENTS,
  firstSighting,
  formatInterval,
  type GroupedChangeovers,
  type LikelyMonth,
  lastSighting,
  likelyMonth,
  type Refusal,
  type Result,
  type ShapesOfChange,
  type Sighting,
  shapeOfChange,
  sightingsOfChange,
  type UseEnd,
} from "../../../knowledge/index.ts";
import { OutsideError } from "../../errors.ts";
import { groupsOf } from "./groups-of.ts";
import { optionRefusals } from "./phrases.ts";
import type { ChangeoverQuestion } from "./question.ts";

interface Judged {
  readonly sighting: Sighting;
  readonly isNew: boolean;
  /** Chance that the works did not fit what was reported: swapped or misread. */
  readonly notAsBuilt: number;
  /** Of that, the chance of a swap; for one variant alone nothing tells the two apart but the grade. */
  readonly swapped: number;
}

interface Used {
  /** The sightings used, by build date, then as the list has them. */
  readonly judged: readonly Judged[];
  /** Sightings of the variants asked about that were built outside the window. */
  readonly outside: readonly Sighting[];
}

export interface ChangeFindings extends Used {
  readonly kind: "change";
  readonly change: Changeover;
  readonly shapes: ShapesOfChange;
  readonly month: LikelyMonth | undefined;
  readonly wanted: readonly CarWanted[];
  readonly grouped: readonly GroupedChangeovers[];
}

export interface OneVariantFindings extends Used {
  readonly kind: "one-variant";
  /** Absent when it is not asked: of a variant that came, only the beginning is looked for. */
  readonly end: UseEnd | undefined;
  readonly beginning: UseEnd | undefined;
}

export type ChangeoverFindings = ChangeFindings | OneVariantFindings;
export type { Judged };

export const MOST_WANTED = 3;
/** From here a sighting is a suspect: more likely than not the works did not fit what was reported. */
const SUSPECT = 0.5;

export function isSuspect({ notAsBuilt }: Judged): boolean {
  return notAsBuilt >= SUSPECT;
}

/** Throws OutsideError when no sighting lies within the window. */
export function changeoverFindings(question: ChangeoverQuestion): ChangeoverFindings {
  const { setting, sightings } = question;
  const reports = sightingsOfChange(sightings, question.old, question.new);
  const change = granted(changeover(setting, reports));
  if (change.reported === "none") {
    throw new OutsideError(optionRefusals.noneBuilt(formatInterval(setting.window)));
  }
  const used = usedSightings(question, change);
  if (change.reported !== "both") return oneVariant(question, used);
  return {
    kind: "change",
    ...used,
    change,
    shapes: granted(shapeOfChange(setting, reports)),
    month: likelyMonth(change.posterior),
    wanted: carsWanted(change.posterior, setting.replacements ?? EVEN_REPLACEMENTS)
      .filter(({ informationBits }) => informationBits > 0)
      .slice(0, MOST_WANTED),
    grouped: groupsOf(setting, reports, sightings),
  };
}

/** What was refused here was checked before: the window. */
function granted<Value>(result: Result<Value, Refusal>): Value {
  if (result.ok) return result.value;
  throw new OutsideError(result.problem.message);
}

function usedSightings(question: ChangeoverQuestion, change: Changeover): Used {
  const verdicts = new Map(change.sightings.map((verdict) => [verdict.id, verdict]));
  const outside = new Set(change.outside);
  const judged = question.sightings.flatMap((sighting): readonly Judged[] => {
    const verdict = verdicts.get(sighting.id);
    if (verdict === undefined) return [];
    const { notAsBuilt, swapped } = verdict;
    return [{ sighting, isNew: question.new.includes(sighting.variant), notAsBuilt, swapped }];
  });
  return {
    judged: judged.sort(
      ({ sighting: one }, { sighting: other }) =>
        one.built.from - other.built.from || one.built.to - other.built.to,
    ),
    outside: question.sightings.filter(({ id }) => outside.has(id)),
  };
}

function oneVariant(question: ChangeoverQuestion, used: Used): OneVariantFindings {
  const { setting } = question;
  const reports = sightingsOfChange(
    used.judged.map(({ sighting }) => sighting),
    question.old,
    question.new,
  );
  const chances = new Map(reports.map(({ id, swap, misread }) => [id, (1 - swap) * (1 - misread)]));
  const judged = used.judged.map((one) => {
    const asBuilt = chances.get(one.sighting.id) ?? 0;
    return { ...one, notAsBuilt: 1 - asBuilt, swapped: 1 - asBuilt };
  });
  const uses = judged.map(({ sighting, notAsBuilt }) => ({
    built: sighting.built,
    asBuilt: 1 - notAsBuilt,
  }));
  const isNew = judged.some((one) => one.isNew);
  return {
    kind: "one-variant",
    ...used,
    judged,
    end: isNew ? undefined : granted(lastSighting(setting, uses)),
    beginning: isNew || question.chosen === "alone" ? granted(firstSighting(setting, uses)) : undefined,
  };
}
