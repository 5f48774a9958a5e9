/**
 * What the date marks say of each hypothesis: build date and as-built mix are averaged together, never apart. What a mark
 * says of a used part or a reproduction does not depend on the car, so it is worked out once and held against many build dates.
 */
import type { Interval } from "../calendar/interval.ts";
import { averageOverBuild, type BuildMix } from "./build-mix.ts";
import type { CarGround } from "./car-ground.ts";
import type { CompiledPart } from "./compiled-part.ts";
import { chainOf } from "./date-chain.ts";
import { evenShare, foldedReading, leadInto, type MarkReading, markReading } from "./date-marks.ts";
import type { Fact } from "./facts.ts";
import type { LeadTime } from "./lead-time.ts";

const LEAST_CHANCE = 1e-12;

/** The date marks of one part as one reading, with what it says where the car at hand does not matter. */
export interface MarksRead {
  readonly lead: LeadTime;
  readonly pieces: readonly MarkPiece[];
  readonly misread: number;
}

interface MarkPiece {
  readonly interval: Interval;
  readonly weight: number;
  /** P(mark in the interval | h), one per hypothesis; 0 for the ways that the build date of the car decides: works, service. */
  readonly onAnyCar: Float64Array;
}

/** The marks among the facts, read once for whatever cars they are weighed against; undefined when none was read. */
export function marksAmong(compiled: CompiledPart, facts: readonly Fact[]): MarksRead | undefined {
  const readings = new Map<string, MarkReading>();
  for (const fact of facts) {
    const reading = markReading(fact.reports, compiled.markEra);
    if (reading) readings.set(fact.feature, reading);
  }
  return marksRead(compiled, readings);
}

/** The same from readings already made, such as one reading more than was told. */
export function marksRead(
  compiled: CompiledPart,
  readings: ReadonlyMap<string, MarkReading>,
): MarksRead | undefined {
  const last = chainOf(compiled.dates, readings);
  if (!last) return undefined;
  const { lead } = last;
  const { pieces, misread } = foldedReading(last);
  return {
    lead,
    misread,
    pieces: pieces.map(({ interval, weight }) => ({
      interval,
      weight,
      onAnyCar: chancesOnAnyCar(compiled, lead, interval),
    })),
  };
}

/**
 * P(marks | h) for every hypothesis (identification method, section 5).
 * Works and used: by the lead before the build date of this car, or of any car. Service, reproduction, other maker:
 * even over the sale. Not in the handbook: even over the era.
 */
export function dateLikelihood(
  { space }: CompiledPart,
  ground: CarGround,
  { lead, pieces, misread }: MarksRead,
): Float64Array {
  const likelihood = new Float64Array(space.size).fill(misread);
  for (const { interval, weight, onAnyCar } of pieces) {
    const works = chanceBeforeBuild(ground.mix, lead, interval);
    for (let h = 0; h < space.size; h += 1) {
      const way = space.ways[h];
      const variant = space.variants[h] as number;
      let chance = onAnyCar[h] as number;
      if (way === "works") chance = works[variant] as number;
      else if (way === "service") chance = evenOver(ground.serviceMarks[variant] ?? [], interval);
      likelihood[h] = (likelihood[h] as number) + weight * chance;
    }
  }
  for (let h = 0; h < space.size; h += 1) likelihood[h] = Math.max(LEAST_CHANCE, likelihood[h] as number);
  return likelihood;
}

function chancesOnAnyCar(compiled: CompiledPart, lead: LeadTime, interval: Interval): Float64Array {
  const { space } = compiled;
  const used = chanceBeforeBuild(compiled.allCars, lead, interval);
  const even = evenShare(interval, compiled.markEra);
  const chances = new Float64Array(space.size);
  space.ways.forEach((way, h) => {
    const variant = space.variants[h] as number;
    if (way === "works" || way === "service") return;
    if (way === "used") chances[h] = used[variant] as number;
    else if (way === "kin" || way === "kin-of-nothing") chances[h] = even;
    else chances[h] = evenOver(compiled.sales[variant] ?? [], interval);
  });
  return chances;
}

function chanceBeforeBuild(mix: BuildMix, lead: LeadTime, interval: Interval): Float64Array {
  return averageOverBuild(
    mix,
    mix.times.map((time) => leadInto(lead, interval, time)),
  );
}

function evenOver(spans: readonly Interval[], interval: Interval): number {
  let months = 0;
  let shared = 0;
  for (const span of spans) {
    const length = span.to - span.from;
    months += length;
    shared += length * evenShare(interval, span);
  }
  return months > 0 ? shared / months : 0;
}
