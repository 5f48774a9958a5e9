// Threads from outside diameter and pitch. A worn or plated bolt measures small: a size fits when the diameter is
// 0.25 mm under to 0.05 mm over nominal and the pitch within 2 %. All that fit are named; same pitch and diameter
// with another flank angle (BSW and UNC, 0BA and M6) only a thread gauge tells apart.
import { sayNumber } from "./plain-numbers.ts";
import { SPANNER_SIZES } from "./tables/spanner-sizes.ts";
import { THREADS, type Thread } from "./tables/threads.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

const UNDER = 0.25;
const OVER = 0.05;
const PITCH_SHARE = 0.02;
const INCH = 25.4;

/** What was measured, in mm; either may be missing, not both. */
export interface ThreadMeasure {
  readonly diameterMillimetres?: number;
  readonly pitchMillimetres?: number;
}

/** A thread that fits the measures. */
export interface ThreadCandidate extends TradeReading {
  readonly thread: Thread;
}

function fits(thread: Thread, measure: ThreadMeasure): boolean {
  const { diameterMillimetres: diameter, pitchMillimetres: pitch } = measure;
  const under = diameter === undefined ? 0 : diameter - thread.majorDiameterMillimetres;
  const isDiameter = under >= -UNDER - 1e-9 && under <= OVER + 1e-9;
  const isPitch = pitch === undefined || Math.abs(pitch / thread.pitchMillimetres - 1) <= PITCH_SHARE + 1e-9;
  return isDiameter && isPitch;
}

function misfit(thread: Thread, measure: ThreadMeasure): number {
  const diameter = measure.diameterMillimetres ?? thread.majorDiameterMillimetres;
  const pitch = measure.pitchMillimetres ?? thread.pitchMillimetres;
  return (
    Math.abs(diameter - thread.majorDiameterMillimetres) / 0.1 +
    Math.abs(pitch / thread.pitchMillimetres - 1) / 0.01
  );
}

function candidate(thread: Thread): ThreadCandidate {
  return {
    thread,
    reading: `${thread.series} ${thread.size}`,
    why: `${sayNumber(thread.majorDiameterMillimetres, 3)} mm over the threads, pitch ${sayNumber(thread.pitchMillimetres, 3)} mm (${sayNumber(thread.threadsPerInch, 1)} to the inch), flanks ${thread.flankAngleDegrees}°`,
    basis: basisOf(thread),
  };
}

/** Threads called by name: "2BA", "5/16 UNF", "1/4 BSW"; empty when none is named. */
export function threadsNamed(text: string): readonly ThreadCandidate[] {
  const lower = text.slice(0, 2000).toLowerCase();
  const ba = /\b(\d{1,2}) ?ba\b/.exec(lower)?.[1];
  const inch = /(?<![\w./])(#?\d{1,2}(?:\/\d{1,2})?)["”]? ?(unc|unf|bsw|bsf|bsp|npt)\b/.exec(lower);
  const isNamed = (thread: Thread): boolean => {
    if (ba !== undefined) return thread.series === "BA" && thread.size === `${ba}BA`;
    const series = inch?.[2]?.toUpperCase();
    return series !== undefined && thread.series.split(" ")[0] === series && thread.size === inch?.[1];
  };
  return THREADS.filter(isNamed).map(candidate);
}

/** What the series named in a text are ("unf vs bsf"): flank angle, and the threads to the inch of common sizes. */
export function seriesNamed(text: string): readonly TradeReading[] {
  const lower = text
    .slice(0, 2000)
    .toLowerCase()
    .replace(/whitworth/g, "bsw");
  const series = [...new Set(THREADS.map((thread) => thread.series))].filter((name) =>
    new RegExp(`\\b${name.split(" ")[0]?.toLowerCase()}\\b`).test(lower),
  );
  return series.flatMap((name) => {
    const rows = THREADS.filter((thread) => thread.series === name);
    const [first] = rows;
    if (first === undefined) return [];
    const sizes = rows
      .filter((row) => /^(?:1\/4|5\/16|3\/8|1\/2|[024]BA)$/.test(row.size))
      .map((row) => `${row.size} ${sayNumber(row.threadsPerInch, 1)}`);
    return [
      {
        reading: `${name}: flanks ${first.flankAngleDegrees}°; threads to the inch: ${sizes.join(", ")}`,
        why: "where the pitches agree only the flank angle tells them apart",
        basis: basisOf(first),
      },
    ];
  });
}

/** Hexagons of a thread called by name: "M8", "1/4 Whitworth", "5/16 UNF". */
export function spannersOfThread(text: string): readonly TradeReading[] {
  const lower = text
    .slice(0, 2000)
    .toLowerCase()
    .replace(/whitworth/g, "bsw");
  const metric = /\bm(\d{1,2})\b/.exec(lower)?.[1];
  const ba = /\b(\d{1,2}) ?ba\b/.exec(lower)?.[1];
  const inch = /(?<![\w./])(\d{1,2}\/\d{1,2})["”]? ?(unc|unf|bsw|bsf)\b/.exec(lower);
  return SPANNER_SIZES.filter((row) => {
    if (ba !== undefined) return row.series === "BA" && row.size.replace(/BA$/, "") === ba;
    if (metric !== undefined) return row.series === "ISO metric" && row.size === `M${metric}`;
    const isSeries = row.series
      .toLowerCase()
      .split("/")
      .includes(inch?.[2] ?? "?");
    return isSeries && row.size === inch?.[1];
  }).map((row) => ({
    reading: `${row.series} ${row.size}: across flats ${[row.acrossFlats, row.alternative, row.note].filter((words) => words !== "").join("; ")}`,
    why: "inches unless mm is said; older, later and war-time heads differ",
    basis: basisOf(row),
  }));
}

/** Every thread of the tables that fits, nearest first, ties in table order; empty when neither measure is given. */
export function threadsOfMeasure(measure: ThreadMeasure): readonly ThreadCandidate[] {
  if (measure.diameterMillimetres === undefined && measure.pitchMillimetres === undefined) return [];
  return THREADS.filter((thread) => fits(thread, measure))
    .toSorted((one, other) => misfit(one, measure) - misfit(other, measure))
    .map(candidate);
}

/** What else to measure when several threads fit: the flank angle when it differs, else the pitch or diameter. */
export function threadTrap(candidates: readonly ThreadCandidate[]): string {
  const angles = [...new Set(candidates.map((candidate) => candidate.thread.flankAngleDegrees))].toSorted(
    (one, other) => one - other,
  );
  if (candidates.length === 0)
    return "Measure over the crests with a caliper and count threads over 25.4 mm; a bolt is 0.05 to 0.25 mm under nominal.";
  if (angles.length > 1)
    return `Diameter and pitch agree; the flank angle tells: lay a thread gauge in it (${angles.map((angle) => `${angle}°`).join(" against ")}).`;
  return "Count the threads over 25.4 mm or 10 mm to settle the pitch, and read the head.";
}

/** Hexagons of a size across flats given in mm: every series and size within 0.2 mm. */
export function spannersOfWidth(acrossFlatsMillimetres: number): readonly TradeReading[] {
  return SPANNER_SIZES.flatMap((row) => {
    const widths = [row.acrossFlats, row.alternative, row.note].flatMap((text) => flatsIn(text));
    const isNear = widths.some((width) => Math.abs(width - acrossFlatsMillimetres) <= 0.2);
    if (!isNear) return [];
    const others = [row.alternative, row.note].filter((text) => text !== "").join("; ");
    return [
      {
        reading: `${row.series} ${row.size}`,
        why: `across flats ${row.acrossFlats}${others === "" ? "" : `; ${others}`}`,
        basis: basisOf(row),
      },
    ];
  });
}

function flatsIn(text: string): readonly number[] {
  const metric = /(\d{1,2}) mm$/.exec(text);
  if (metric !== null) return [Number(metric[1])];
  return /^0\.\d{3,4}$/.test(text) ? [Number(text) * INCH] : [];
}
