/**
 * What was read off the date marks of one part, as one item of evidence. All marks form one chain that ends at the
 * car's build date; each link has its own lead. Two marks of one part are never two items.
 */
import type { Interval } from "../calendar/interval.ts";
import { intersect } from "../calendar/interval.ts";
import type { Report } from "../evidence/report.ts";
import { type LeadTime, leadAtMost, spreadOf } from "./lead-time.ts";
import { timeGrid } from "./time-grid.ts";

const LEAST_SHARE = 1e-9;
/** Share of careful looks at a mark that are read rightly (judgement, not fitted). */
const SOUND_LOOK = 0.96;

/** Chance that everybody who looks is misled by the same appearance (judgement, not fitted). */
const SHARED_TRAP = 0.5;

/** One reading that the true date may lie in; `weight` includes the chance that nobody misread it. */
interface WeighedInterval {
  readonly interval: Interval;
  readonly weight: number;
}
/** A mark as evidence: Σ weight · [date in interval] + `misread`, a constant in which the date is even over the era. */
export interface MarkReading {
  readonly pieces: readonly WeighedInterval[];
  readonly misread: number;
  /** E: Σ weight of the reading · even share of the era in it. */
  readonly evenShare: number;
}
export interface ChainMark {
  readonly feature: string;
  readonly reading: MarkReading;
  /** Lead to the next mark that was read, or to the build date. */
  readonly lead: LeadTime;
  /** Marks read that come just before this one. */
  readonly before: readonly ChainMark[];
  /** Lead of the mark beside which this one stands: both were made before the car, in no known order. */
  readonly beside?: LeadTime;
}

/** Share of `whole` that lies in `interval`, at least 1e-9; open ends of `interval` are cut at `whole`. */
export function evenShare(interval: Interval, whole: Interval): number {
  const shared = intersect(interval, whole);
  return shared ? Math.max(LEAST_SHARE, (shared.to - shared.from) / (whole.to - whole.from)) : LEAST_SHARE;
}

/**
 * One mark read by one or more people. A person is (1 − o)·Σ w_j [date in I_j] + o·E with o = 1 − .96·certainty.
 * Several are multiplied out for one and the same date, so two who agree are not two dates; as with states, half the
 * chance is that one appearance, right or misleading, was seen by all of them (identification method, section 3).
 */
export function markReading(reports: readonly Report[], era: Interval): MarkReading | undefined {
  const read = (sound: number): readonly MarkReading[] =>
    reports.map((report) => readingOf(report, era, sound)).filter((reading) => reading !== undefined);
  const people = read(SOUND_LOOK);
  if (people.length < 2) return people[0];
  const apart = people.reduce(bothRead);
  const seenAlike = read(1).reduce(bothRead);
  const even = seenAlike.pieces.reduce(
    (sum, { interval, weight }) => sum + weight * evenShare(interval, era),
    seenAlike.misread,
  );
  const scaled = ({ pieces }: MarkReading, share: number): readonly WeighedInterval[] =>
    pieces.map(({ interval, weight }) => ({ interval, weight: share * weight }));
  const together = SHARED_TRAP * SOUND_LOOK;
  return {
    pieces: [...scaled(apart, 1 - SHARED_TRAP), ...scaled(seenAlike, together)],
    misread:
      (1 - SHARED_TRAP) * apart.misread +
      together * seenAlike.misread +
      SHARED_TRAP * (1 - SOUND_LOOK) * even,
    evenShare: even,
  };
}

function readingOf(report: Report, era: Interval, soundLook: number): MarkReading | undefined {
  if (report.value.kind !== "date") return undefined;
  const usable = report.value.readings.filter(
    ({ interval, weight }) => weight > 0 && interval.to > interval.from,
  );
  const total = usable.reduce((sum, reading) => sum + reading.weight, 0);
  if (total <= 0) return undefined;
  const sound = soundLook * report.certainty;
  const even = usable.reduce(
    (sum, { interval, weight }) => sum + (weight / total) * evenShare(interval, era),
    0,
  );
  const pieces = usable.map(({ interval, weight }) => ({
    interval: closed(interval, era),
    weight: (sound * weight) / total,
  }));
  return { pieces, misread: (1 - sound) * even, evenShare: even };
}

/** Open ends are closed at the era, so that grids stay finite. */
function closed(interval: Interval, era: Interval): Interval {
  const from = Number.isFinite(interval.from) ? interval.from : Math.min(era.from, interval.to - 1);
  const to = Number.isFinite(interval.to) ? interval.to : Math.max(era.to, from + 1);
  return { from, to };
}

function bothRead(one: MarkReading, other: MarkReading): MarkReading {
  const pieces: WeighedInterval[] = [];
  for (const first of one.pieces) {
    pieces.push({ interval: first.interval, weight: first.weight * other.misread });
    for (const second of other.pieces) {
      const interval = intersect(first.interval, second.interval);
      if (interval) pieces.push({ interval, weight: first.weight * second.weight });
    }
  }
  for (const second of other.pieces) {
    pieces.push({ interval: second.interval, weight: second.weight * one.misread });
  }
  return { pieces, misread: one.misread * other.misread, evenShare: one.evenShare * other.evenShare };
}

/** The chance that a lead before `time` falls into the interval: G(time − from) − G(time − to). */
export function leadInto(lead: LeadTime, interval: Interval, time: number): number {
  return leadAtMost(lead, time - interval.from) - leadAtMost(lead, time - interval.to);
}

function evenProduct(mark: ChainMark): number {
  return mark.before.reduce((product, earlier) => product * evenProduct(earlier), mark.reading.evenShare);
}

/**
 * C(I) = P(all marks before | the next mark even over I) = (1 − o)·mean over t in grid(I) of
 * Σ_j w_j [G(t − a_j) − G(t − b_j)]·C(I_j) + o·Π E; 1 when there is none before.
 */
export function chanceOfEarlier(earlier: readonly ChainMark[], interval: Interval): number {
  return earlier.reduce((product, mark) => product * chanceOfMark(mark, interval), 1);
}

function chanceOfMark(mark: ChainMark, next: Interval): number {
  const { times, weights } = timeGrid(next);
  const later = mark.beside ? spreadOf(mark.beside) : [{ months: 0, share: 1 }];
  let sum = 0;
  for (const { interval, weight } of mark.reading.pieces) {
    const before = weight * chanceOfEarlier(mark.before, interval);
    times.forEach((time, k) => {
      for (const { months, share } of later) {
        sum += (weights[k] as number) * share * leadInto(mark.lead, interval, time + months) * before;
      }
    });
  }
  const evenBefore = mark.before.reduce((product, earlier) => product * evenProduct(earlier), 1);
  return sum + mark.reading.misread * evenBefore;
}

/** The last mark's readings with everything before folded in: L(h) = Σ weight · P(interval | h) + misread. */
export function foldedReading(mark: ChainMark): MarkReading {
  const pieces = mark.reading.pieces.map(({ interval, weight }) => ({
    interval,
    weight: weight * chanceOfEarlier(mark.before, interval),
  }));
  const sound = mark.reading.pieces.reduce((sum, piece) => sum + piece.weight, 0);
  const folded = pieces.reduce((sum, piece) => sum + piece.weight, 0);
  const misread =
    sound > 0 ? (mark.reading.misread * folded) / sound : mark.reading.misread * evenProduct(mark);
  return { pieces, misread, evenShare: mark.reading.evenShare };
}
