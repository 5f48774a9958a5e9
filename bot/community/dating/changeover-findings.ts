/** What the accepted sightings say of one change, whole: its date, shape, suspects, groups, and the cars that would tell more. */
import {
  type Changeover,
  changeover,
  type GroupedChangeovers,
  type Handbook,
  type Interval,
  type LikelyMonth,
  likelyMonth,
  type ProvenanceGrade,
  type ShapesOfChange,
  type Sighting,
  type Succession,
  shapeOfChange,
  sightingsOfChange,
} from "../../../knowledge/index.ts";
import { datedSightings, type PartTally, sightingsAlike } from "../observations/observations-view.ts";
import { groupedChanges } from "./grouped-changes.ts";

export interface JudgedSighting {
  readonly id: string;
  readonly variant: string;
  readonly isNew: boolean;
  readonly built: Interval;
  readonly grade: ProvenanceGrade;
  /** How many cars alike it stands for, when they are too many to be told one by one. */
  readonly count: number;
  /** Chance that the works did not fit what was reported. */
  readonly notAsBuilt: number;
}

export interface JudgedChange {
  readonly succession: Succession;
  /** How many dated cars of either kind were seen. */
  readonly seen: number;
  readonly change: Changeover;
  readonly judged: readonly JudgedSighting[];
}

export interface ChangeFindings extends JudgedChange {
  readonly month: LikelyMonth | undefined;
  readonly shapes: ShapesOfChange | undefined;
  readonly grouped: readonly GroupedChangeovers[];
}

/** More than so many are told as numbers of those alike, and no longer one by one. */
const mostOneByOne = 300;
const suspect = 0.5;

export function isSuspect({ notAsBuilt }: JudgedSighting): boolean {
  return notAsBuilt >= suspect;
}

/** The change with a verdict on every sighting; undefined when the handbook's cars have no dates. */
export function judgedChange(succession: Succession, tally: PartTally): JudgedChange | undefined {
  const sightings = sightingsOf(tally);
  const reports = sightingsOfChange(sightings, [succession.old], [succession.new]);
  const found = changeover(succession.setting, reports);
  if (!found.ok) return undefined;
  const seen = reports.reduce((sum, { count = 1 }) => sum + count, 0);
  const verdicts = new Map(found.value.sightings.map(({ id, notAsBuilt }) => [id, notAsBuilt]));
  return { succession, seen, change: found.value, judged: judgedOf(sightings, verdicts, [succession.new]) };
}

/** One by one, or as numbers of those alike when they are too many. */
export function sightingsOf(tally: PartTally): readonly Sighting[] {
  return tally.sightings.size <= mostOneByOne ? datedSightings(tally) : sightingsAlike(tally);
}

/** Undefined when the handbook's cars have no dates. Works without a sighting too: then it is what the handbook says. */
export function changeFindings(
  handbook: Handbook,
  succession: Succession,
  tally: PartTally,
): ChangeFindings | undefined {
  const judged = judgedChange(succession, tally);
  if (judged === undefined) return undefined;
  const { change, seen } = judged;
  const sightings = sightingsOf(tally);
  const reports = sightingsOfChange(sightings, [succession.old], [succession.new]);
  const shapes = seen === 0 ? undefined : shapeOfChange(succession.setting, reports);
  return {
    ...judged,
    month: likelyMonth(change.posterior),
    shapes: shapes?.ok === true ? shapes.value : undefined,
    grouped: groupedChanges(handbook, succession.setting, reports, sightings),
  };
}

/** Those that have a verdict, by build date. */
export function judgedOf(
  sightings: readonly Sighting[],
  verdicts: ReadonlyMap<string, number>,
  newVariants: readonly string[],
): readonly JudgedSighting[] {
  return sightings
    .flatMap(({ id, variant, built, grade, count = 1 }): readonly JudgedSighting[] => {
      const notAsBuilt = verdicts.get(id);
      if (notAsBuilt === undefined) return [];
      return [{ id, variant, isNew: newVariants.includes(variant), built, grade, count, notAsBuilt }];
    })
    .sort((one, other) => one.built.from - other.built.from || one.built.to - other.built.to);
}
