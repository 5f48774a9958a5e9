// Sightings of an invented works whose changeover is known: cars drawn by the yearly production, parts swapped and
// misread at known rates, dates blurred. What the estimates are held against.
import type { Interval } from "../../knowledge/calendar/interval.ts";
import type { ChangeoverSighting } from "../../knowledge/dating/report-groups.ts";
import type { Chance } from "./random-tables.ts";

export type DatePrecision = "day" | "month" | "year" | "mixed";

export interface SimulatedWorks {
  readonly sightings: number;
  /** Half-way point of the change in months from the beginning of the window. */
  readonly changed: number;
  readonly overlap: number;
  /** Mean share of swapped parts; every car has one of three grades, below, about and above it. */
  readonly swapRate: number;
  readonly misread: number;
  readonly dates: DatePrecision;
  /** What the estimate is told of a grade: its true swap chance, half of it, or a fixed table for all rates. */
  readonly toldGrades?: "true" | "half" | "fixed";
  /** The misread rate that the estimate is told; the true one (at least .005) when left out. */
  readonly toldMisread?: number;
  /** How much more readily the new variant is reported; 1 when left out. */
  readonly newReported?: number;
  /** How the overlap was mixed: evenly rising when left out. */
  readonly mixing?: "rising" | "logistic" | "half and half";
  /** Share of the new type among the replacements; .60 when left out. */
  readonly newShare?: number;
  /** Largest error of a build date, in months. */
  readonly dateError?: number;
  /** Cars come from so many meetings, each of cars built within two months. */
  readonly bursts?: number;
}

/** A car as reported, and what really happened to it. */
export interface SimulatedSighting extends ChangeoverSighting {
  readonly truth: { readonly fittedNew: boolean; readonly isSwapped: boolean; readonly built: number };
}

/** Five years of an invented works: slow, then full, then fading. Cars by year, years counted from 0. */
export const simulatedProduction: ReadonlyMap<number, number> = new Map([
  [0, 0.5],
  [1, 1],
  [2, 1.5],
  [3, 1.2],
  [4, 0.8],
]);
export const simulatedWindow: Interval = { from: 0, to: 60 };
/** Share of the new type among the replacements. */
export const simulatedNewShare = 0.6;

/** Swap chances of the three grades, equally frequent; scaled to the mean rate of the history. */
const GRADES = [0.02, 0.08, 0.25] as const;
const MEAN_GRADE = 0.35 / 3;
const MOST_SWAPPED = 0.95;
const LEAST_TOLD = 0.005;

const DAY = 1 / 32;

function drawBuilt(chance: Chance): number {
  const total = [...simulatedProduction.values()].reduce((sum, cars) => sum + cars, 0);
  let left = chance() * total;
  for (const [year, cars] of simulatedProduction) {
    if (left < cars) return 12 * (year + left / cars);
    left -= cars;
  }
  return 59.9;
}

function blurred(built: number, precision: DatePrecision, chance: Chance): Interval {
  if (precision === "mixed") {
    const drawn = chance();
    if (drawn < 1 / 3) return blurred(built, "day", chance);
    return blurred(built, drawn < 2 / 3 ? "month" : "year", chance);
  }
  const unit = { day: DAY, month: 1, year: 12 }[precision];
  const from = Math.floor(built / unit) * unit;
  return { from, to: from + unit };
}

/** What share of the new variant the works fitted at an instant. */
export function fittedShare({ changed, overlap, mixing }: SimulatedWorks, at: number): number {
  if (overlap === 0) return Number(at >= changed);
  const along = (at - changed) / overlap;
  // The logistic curve with the same standard deviation as the even ramp.
  if (mixing === "logistic") return 1 / (1 + Math.exp(-along * 2 * Math.PI));
  if (mixing === "half and half") return along < -0.5 ? 0 : along > 0.5 ? 1 : 0.5;
  return Math.min(1, Math.max(0, along + 0.5));
}

function reportedDate(works: SimulatedWorks, built: number, chance: Chance): Interval {
  const off = works.dateError === undefined ? 0 : works.dateError * (2 * chance() - 1);
  return blurred(Math.min(59.9, Math.max(0, built + off)), works.dates, chance);
}

function drawOne(
  works: SimulatedWorks,
  index: number,
  chance: Chance,
  meetings: readonly number[],
): SimulatedSighting {
  const meeting = meetings[index % Math.max(1, meetings.length)];
  const built =
    meeting === undefined ? drawBuilt(chance) : Math.min(59.9, Math.max(0, meeting + 2 * chance() - 1));
  const fittedNew = chance() < fittedShare(works, built);
  const grade = GRADES[Math.floor(GRADES.length * chance())] ?? 0;
  const swap = Math.min(MOST_SWAPPED, (works.swapRate * grade) / MEAN_GRADE);
  const isSwapped = chance() < swap;
  const carriesNew = isSwapped ? chance() < (works.newShare ?? simulatedNewShare) : fittedNew;
  const isNew = carriesNew !== chance() < works.misread;
  return {
    id: `car-${String(index).padStart(4, "0")}`,
    isNew,
    built: reportedDate(works, built, chance),
    swap: Math.max(LEAST_TOLD, { true: swap, half: swap / 2, fixed: grade }[works.toldGrades ?? "true"]),
    misread: works.toldMisread ?? Math.max(LEAST_TOLD, works.misread),
    isSought: false,
    truth: { fittedNew, isSwapped, built },
  };
}

/** The sightings of one history; the more readily reported variant is kept, of the other only its share. */
export function simulateSightings(works: SimulatedWorks, chance: Chance): readonly SimulatedSighting[] {
  const drawn: SimulatedSighting[] = [];
  const lean = works.newReported ?? 1;
  const kept = { new: Math.min(1, lean), old: Math.min(1, 1 / lean) };
  const meetings = Array.from({ length: works.bursts ?? 0 }, () => drawBuilt(chance));
  while (drawn.length < works.sightings) {
    const sighting = drawOne(works, drawn.length, chance, meetings);
    const isKept = lean === 1 || chance() < (sighting.isNew ? kept.new : kept.old);
    if (isKept) drawn.push(sighting);
  }
  return drawn;
}
