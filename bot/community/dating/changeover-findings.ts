/** What the accepted sightings say of one change, whole: its date, shape, suspects, groups, and the cars that would tell more. */
import {
  type Changeover,
  changeover,
  changeoverByMarket,
  type Handbook,
  type Interval,
  type LikelyMonth,
  likelyMonth,
  type MarketChangeover,
  type ProvenanceGrade,
  type ShapesOfChange,
  type Sighting,
  type Succession,
  shapeOfChange,
  sightingsOfChange,
} from "../../../knowledge/index.ts";
import { datedSightings, type PartTally, sightingsAlike } from "../observations/observations-view.ts";

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

/** Trims or markets of which at least two were seen, each with its own date. */
export interface GroupedChange {
  readonly by: "trim" | "market";
  readonly groups: readonly MarketChangeover[];
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
  readonly grouped: readonly GroupedChange[];
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
  return { succession, seen, change: found.value, judged: judgedOf(succession, sightings, found.value) };
}

function sightingsOf(tally: PartTally): readonly Sighting[] {
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
    grouped: (["market", "trim"] as const).flatMap((by) => groupedBy(handbook, succession, sightings, by)),
  };
}

function judgedOf(
  succession: Succession,
  sightings: readonly Sighting[],
  change: Changeover,
): readonly JudgedSighting[] {
  const verdicts = new Map(change.sightings.map(({ id, notAsBuilt }) => [id, notAsBuilt]));
  return sightings
    .flatMap(({ id, variant, built, grade, count = 1 }): readonly JudgedSighting[] => {
      const notAsBuilt = verdicts.get(id);
      if (notAsBuilt === undefined) return [];
      return [{ id, variant, isNew: variant === succession.new, built, grade, count, notAsBuilt }];
    })
    .sort((one, other) => one.built.from - other.built.from || one.built.to - other.built.to);
}

/** Cars of which the group is not known stand in none. */
function groupedBy(
  { cars }: Handbook,
  succession: Succession,
  sightings: readonly Sighting[],
  by: "trim" | "market",
): readonly GroupedChange[] {
  const groupOf = new Map(sightings.map((sighting) => [sighting.id, sighting[by]]));
  const reports = sightingsOfChange(sightings, [succession.old], [succession.new]).flatMap((report) => {
    const market = groupOf.get(report.id);
    return market === undefined ? [] : [{ ...report, market }];
  });
  if (new Set(reports.map(({ market }) => market)).size < 2) return [];
  const found = changeoverByMarket(succession.setting, reports);
  if (!found.ok) return [];
  const names = new Map((by === "trim" ? cars.trims : cars.markets).map(({ id, name }) => [id, name]));
  return [
    {
      by,
      groups: found.value.map((group) => ({ ...group, market: names.get(group.market) ?? group.market })),
    },
  ];
}
