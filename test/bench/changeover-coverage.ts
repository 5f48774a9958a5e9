// How often the intervals of a changeover hold the truth, over simulated histories that no choice has seen; and how
// well sightings that are not as built are told. The suite runs a few hundred of them, the bench thousands.
import { changeover } from "../../knowledge/dating/changeover.ts";
import { type Chance, chanceFrom } from "../support/random-tables.ts";
import {
  type DatePrecision,
  fittedShare,
  type SimulatedSighting,
  type SimulatedWorks,
  simulatedNewShare,
  simulatedProduction,
  simulatedWindow,
  simulateSightings,
} from "../support/simulated-works.ts";

/** What the works or the members do against the assumptions, or what the estimate is told wrongly. */
const wrongAssumptions = {
  none: (works: SimulatedWorks) => works,
  "twice the graded swaps": (works: SimulatedWorks) => ({ ...works, toldGrades: "half" as const }),
  "one grade table for all rates": (works: SimulatedWorks) => ({ ...works, toldGrades: "fixed" as const }),
  "logistic mixing": (works: SimulatedWorks) => ({ ...works, mixing: "logistic" as const }),
  "half and half": (works: SimulatedWorks) => ({ ...works, mixing: "half and half" as const }),
  "replacements .95 new": (works: SimulatedWorks) => ({ ...works, newShare: 0.95 }),
  "replacements .20 new": (works: SimulatedWorks) => ({ ...works, newShare: 0.2 }),
  "build dates a month wrong": (works: SimulatedWorks) => ({ ...works, dateError: 1 }),
  "misread rate .01 assumed": (works: SimulatedWorks) => ({ ...works, toldMisread: 0.01 }),
  "five bursts": (works: SimulatedWorks) => ({ ...works, bursts: 5 }),
  "new variant reported a third as often": (works: SimulatedWorks) => ({ ...works, newReported: 1 / 3 }),
} as const;
export type WrongAssumption = keyof typeof wrongAssumptions;

export interface Coverage {
  readonly sets: number;
  readonly held: number;
}

export interface ChangeoverCoverage {
  readonly overall: Coverage;
  /** By "n=…", "rate=…", "overlap=…", "dates=…", "misread=…". */
  readonly margins: Readonly<Record<string, Coverage>>;
  /** By number of sightings × swap rate × overlap. */
  readonly cells: Readonly<Record<string, Coverage>>;
  readonly worstCell: { readonly name: string; readonly share: number };
  /** Median width of the intervals in months: all, and by "n=… rate=…". */
  readonly medianWidth: number;
  readonly widths: Readonly<Record<string, number>>;
  readonly medianBias: number;
  /** Not as built, probability above one half: by number of sightings. */
  readonly precision: Readonly<Record<string, number>>;
  /** The same over all sets of 20 sightings or more. */
  readonly pooledPrecision: number;
  readonly recall: Readonly<Record<string, number>>;
  /** Promised against true as-built share over ten bins of the promise, a car of any build date: mean gap and worst. */
  readonly asBuiltError: number;
  readonly worstAsBuiltBin: number;
}

const COUNTS = [5, 10, 20, 60, 200] as const;
const RATES = [0, 0.05, 0.1, 0.3] as const;
const OVERLAPS = [0, 2, 6, 12] as const;
const MISREADS = [0, 0.02, 0.05] as const;
const PRECISIONS: readonly DatePrecision[] = ["day", "month", "year", "mixed"];

/** 960 kinds of history in a fixed order that mixes well when only a part is run. */
function plans(): readonly Omit<SimulatedWorks, "changed">[] {
  const all = COUNTS.flatMap((sightings) =>
    RATES.flatMap((swapRate) =>
      OVERLAPS.flatMap((overlap) =>
        MISREADS.flatMap((misread) =>
          PRECISIONS.map((dates) => ({ sightings, swapRate, overlap, misread, dates })),
        ),
      ),
    ),
  );
  return all.map((_, index) => all[(index * 577) % all.length] as (typeof all)[number]);
}

interface Tally {
  readonly coverage: Map<string, { sets: number; held: number }>;
  readonly widths: Map<string, number[]>;
  readonly biases: number[];
  readonly flags: Map<string, { right: number; flagged: number; wrongCars: number }>;
  readonly bins: { promised: number; seen: number; cars: number }[];
}

/**
 * Coverage and the rest over `sets` data sets drawn from `start`; whole multiples of 960 visit every kind of history
 * equally often. `only` keeps some kinds.
 */
export function changeoverCoverage(
  sets: number,
  start: number,
  wrong: WrongAssumption = "none",
  only: (works: Omit<SimulatedWorks, "changed">) => boolean = () => true,
): ChangeoverCoverage {
  const chance = chanceFrom(start);
  const kinds = plans().filter(only);
  const tally: Tally = {
    coverage: new Map(),
    widths: new Map(),
    biases: [],
    flags: new Map(),
    bins: Array.from({ length: 10 }, () => ({ promised: 0, seen: 0, cars: 0 })),
  };
  for (let set = 0; set < sets; set += 1) {
    const kind = kinds[set % kinds.length];
    if (!kind) break;
    playOne(wrongAssumptions[wrong]({ ...kind, changed: 6 + 48 * chance() }), chance, tally);
  }
  return summary(tally);
}

function playOne(works: SimulatedWorks, chance: Chance, tally: Tally): void {
  const sightings = simulateSightings(works, chance);
  const setting = {
    window: simulatedWindow,
    production: simulatedProduction,
    replacements: { old: 1 - simulatedNewShare, new: simulatedNewShare },
  };
  const estimate = changeover(setting, sightings);
  if (!estimate.ok) throw new Error(estimate.problem.message);
  const { interval, median, asBuilt } = estimate.value;
  const isHeld = interval.from <= works.changed && works.changed <= interval.to;
  const names = [
    "all",
    `n=${works.sightings}`,
    `rate=${works.swapRate}`,
    `overlap=${works.overlap}`,
    `dates=${works.dates}`,
    `misread=${works.misread}`,
    `cell n=${works.sightings} rate=${works.swapRate} overlap=${works.overlap}`,
  ];
  for (const name of names) {
    const entry = tally.coverage.get(name) ?? { sets: 0, held: 0 };
    tally.coverage.set(name, { sets: entry.sets + 1, held: entry.held + Number(isHeld) });
  }
  for (const name of ["all", `n=${works.sightings} rate=${works.swapRate}`]) {
    tally.widths.set(name, [...(tally.widths.get(name) ?? []), interval.to - interval.from]);
  }
  tally.biases.push(median - works.changed);
  countFlags(
    sightings,
    new Map(estimate.value.sightings.map((one) => [one.id, one.notAsBuilt])),
    works,
    tally,
  );
  asBuilt.new.forEach((share, cell) => {
    const at = asBuilt.from + (cell + 0.5) * asBuilt.cell;
    const bin = tally.bins[Math.min(9, Math.floor(share * 10))];
    if (!bin) return;
    const cars = simulatedProduction.get(Math.floor(at / 12)) ?? 1;
    bin.promised += cars * share;
    bin.seen += cars * fittedShare(works, at);
    bin.cars += cars;
  });
}

function countFlags(
  sightings: readonly SimulatedSighting[],
  notAsBuilt: ReadonlyMap<string, number>,
  works: SimulatedWorks,
  tally: Tally,
): void {
  const name = `n=${works.sightings}`;
  const entry = tally.flags.get(name) ?? { right: 0, flagged: 0, wrongCars: 0 };
  for (const sighting of sightings) {
    const isWrong = sighting.isNew !== sighting.truth.fittedNew;
    const isFlagged = (notAsBuilt.get(sighting.id) ?? 0) > 0.5;
    entry.right += Number(isWrong && isFlagged);
    entry.flagged += Number(isFlagged);
    entry.wrongCars += Number(isWrong);
  }
  tally.flags.set(name, entry);
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

function pooled({ flags }: Tally): number {
  const many = [20, 60, 200].flatMap((count) => flags.get(`n=${count}`) ?? []);
  const sum = (of: "right" | "flagged"): number => many.reduce((all, entry) => all + entry[of], 0);
  return sum("right") / sum("flagged");
}

function summary(tally: Tally): ChangeoverCoverage {
  const named = (isWanted: (name: string) => boolean): Record<string, Coverage> =>
    Object.fromEntries([...tally.coverage].filter(([name]) => isWanted(name)));
  const cells = named((name) => name.startsWith("cell "));
  const shares = Object.entries(cells).map(([name, { sets, held }]) => ({ name, share: held / sets }));
  const worst = shares.reduce((least, cell) => (cell.share < least.share ? cell : least), {
    name: "",
    share: 1,
  });
  const cars = tally.bins.reduce((sum, bin) => sum + bin.cars, 0);
  const gaps = tally.bins.map((bin) => Math.abs(bin.promised - bin.seen));
  const ratio = (of: "flagged" | "wrongCars"): Record<string, number> =>
    Object.fromEntries([...tally.flags].map(([name, entry]) => [name, entry.right / entry[of]]));
  return {
    overall: tally.coverage.get("all") ?? { sets: 0, held: 0 },
    margins: named((name) => name.includes("=") && !name.startsWith("cell ")),
    cells,
    worstCell: worst,
    medianWidth: median(tally.widths.get("all") ?? []),
    widths: Object.fromEntries([...tally.widths].map(([name, values]) => [name, median(values)])),
    medianBias: tally.biases.reduce((sum, bias) => sum + bias, 0) / tally.biases.length,
    precision: ratio("flagged"),
    pooledPrecision: pooled(tally),
    recall: ratio("wrongCars"),
    asBuiltError: gaps.reduce((sum, gap) => sum + gap, 0) / cars,
    worstAsBuiltBin: Math.max(
      ...tally.bins.map((bin, index) => (gaps[index] as number) / Math.max(1, bin.cars)),
    ),
  };
}
