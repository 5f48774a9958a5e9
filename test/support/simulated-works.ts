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
  readonly swapRate: number;
  readonly misread: number;
  readonly dates: DatePrecision;
  /** Swap chance and misread rate that the estimate is told; the true ones (at least .005) when left out. */
  readonly toldSwap?: number;
  readonly toldMisread?: number;
  /** How much more readily the new variant is reported; 1 when left out. */
  readonly newReported?: number;
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

function drawOne(works: SimulatedWorks, index: number, chance: Chance): SimulatedSighting {
  const built = drawBuilt(chance);
  const { changed, overlap } = works;
  const share = overlap === 0 ? Number(built >= changed) : (built - changed) / overlap + 0.5;
  const fittedNew = chance() < share;
  const isSwapped = chance() < works.swapRate;
  const carriesNew = isSwapped ? chance() < simulatedNewShare : fittedNew;
  const isNew = carriesNew !== chance() < works.misread;
  return {
    id: `car-${String(index).padStart(4, "0")}`,
    isNew,
    built: blurred(built, works.dates, chance),
    swap: works.toldSwap ?? Math.max(0.005, works.swapRate),
    misread: works.toldMisread ?? Math.max(0.005, works.misread),
    isSought: false,
    truth: { fittedNew, isSwapped, built },
  };
}

/** The sightings of one history; the more readily reported variant is kept, of the other only its share. */
export function simulateSightings(works: SimulatedWorks, chance: Chance): readonly SimulatedSighting[] {
  const drawn: SimulatedSighting[] = [];
  const lean = works.newReported ?? 1;
  const kept = { new: Math.min(1, lean), old: Math.min(1, 1 / lean) };
  while (drawn.length < works.sightings) {
    const sighting = drawOne(works, drawn.length, chance);
    const isKept = lean === 1 || chance() < (sighting.isNew ? kept.new : kept.old);
    if (isKept) drawn.push(sighting);
  }
  return drawn;
}
