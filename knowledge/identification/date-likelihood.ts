/** What the date marks say of each hypothesis: build date and as-built mix are averaged together, never apart. */
import type { Interval } from "../calendar/interval.ts";
import { averageOverBuild, type BuildMix } from "./build-mix.ts";
import type { CarGround } from "./car-ground.ts";
import type { CompiledPart } from "./compiled-part.ts";
import { chainOf } from "./date-chain.ts";
import { evenShare, foldedReading, leadInto, type MarkReading, markReading } from "./date-marks.ts";
import type { Fact } from "./facts.ts";
import type { LeadTime } from "./lead-time.ts";

const LEAST_CHANCE = 1e-12;

/**
 * P(marks | h) for every hypothesis (identification method, section 5); undefined when no mark was read.
 * Works and used: by the lead before the build date of this car, or of any car. Service, reproduction, other maker:
 * even over the sale. Not in the handbook: even over the era.
 */
export function dateLikelihood(
  compiled: CompiledPart,
  ground: CarGround,
  facts: readonly Fact[],
): Float64Array | undefined {
  const readings = new Map<string, MarkReading>();
  for (const fact of facts) {
    const reading = markReading(fact.reports, compiled.markEra);
    if (reading) readings.set(fact.feature, reading);
  }
  return chainLikelihood(compiled, ground, readings);
}

/** The same from readings already made, such as one reading more than was told. */
export function chainLikelihood(
  compiled: CompiledPart,
  ground: CarGround,
  readings: ReadonlyMap<string, MarkReading>,
): Float64Array | undefined {
  const last = chainOf(compiled.dates, readings);
  if (!last) return undefined;
  const { pieces, misread } = foldedReading(last);
  const likelihood = new Float64Array(compiled.space.size).fill(misread);
  for (const { interval, weight } of pieces) {
    const chances = chancesOfInterval(compiled, ground, last.lead, interval);
    chances.forEach((chance, h) => {
      likelihood[h] = (likelihood[h] as number) + weight * chance;
    });
  }
  return likelihood.map((chance) => Math.max(LEAST_CHANCE, chance));
}

/** P(mark in the interval | h), one per hypothesis. */
function chancesOfInterval(
  compiled: CompiledPart,
  ground: CarGround,
  lead: LeadTime,
  interval: Interval,
): Float64Array {
  const { space } = compiled;
  const works = chanceBeforeBuild(ground.mix, lead, interval);
  const used = chanceBeforeBuild(compiled.allCars, lead, interval);
  const even = evenShare(interval, compiled.markEra);
  return Float64Array.from(space.ways, (way, h) => {
    const variant = space.variants[h] as number;
    switch (way) {
      case "works":
        return works[variant] as number;
      case "used":
        return used[variant] as number;
      case "service":
        return evenOver(ground.serviceMarks[variant] ?? [], interval);
      case "reproduction":
      case "other-maker":
        return evenOver(compiled.sales[variant] ?? [], interval);
      case "kin":
      case "kin-of-nothing":
        return even;
    }
  });
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
