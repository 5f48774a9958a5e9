// Bolt circle from the distance between two holes: s = diameter × sin(180° × k / n) for holes k apart of n. Every
// circle within the error of a tape is named: 5 × 120 and 5 × 120.65 differ by 0.38 mm between neighbours.
import { sayNumber } from "./plain-numbers.ts";
import { BOLT_CIRCLES } from "./tables/bolt-circles.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

/** Which two holes were measured, centre to centre or left edge to left edge. */
export type HoleSpan = "adjacent" | "next-but-one" | "opposite";

/** A measured bolt circle in mm. `candidates` are circles met on cars that lie inside the error band. */
export interface MeasuredBoltCircle {
  readonly bolts: number;
  readonly diameter: number;
  readonly error: number;
  readonly candidates: readonly TradeReading[];
}

const TAPE_ERROR = 0.5;

function steps(bolts: number, span: HoleSpan): number | undefined {
  if (span === "adjacent") return 1;
  if (span === "next-but-one") return bolts >= 5 ? 2 : undefined;
  return bolts % 2 === 0 ? bolts / 2 : undefined;
}

/** Distance between two holes over the circle's diameter; undefined when no such two holes exist (3 to 10 bolts). */
export function spanRatio(bolts: number, span: HoleSpan): number | undefined {
  const apart = Number.isInteger(bolts) && bolts >= 3 && bolts <= 10 ? steps(bolts, span) : undefined;
  return apart === undefined ? undefined : Math.sin((Math.PI * apart) / bolts);
}

/**
 * The circle of a distance in mm, with ± 0.5 mm of the tape carried through (± 0.85 mm for five holes and
 * neighbours). Undefined when those holes do not exist or the distance is not above 0.
 */
export function boltCircleOf(
  bolts: number,
  distance: number,
  span: HoleSpan,
): MeasuredBoltCircle | undefined {
  const ratio = spanRatio(bolts, span);
  if (ratio === undefined || !(distance > 0)) return undefined;
  const diameter = distance / ratio;
  const error = TAPE_ERROR / ratio;
  const fitting = BOLT_CIRCLES.filter(
    (row) => row.bolts === bolts && Math.abs(row.diameterMillimetres - diameter) <= error,
  );
  const candidates = fitting
    .toSorted(
      (one, other) =>
        Math.abs(one.diameterMillimetres - diameter) - Math.abs(other.diameterMillimetres - diameter),
    )
    .map((row) => ({
      reading: `${row.bolts} × ${row.diameterMillimetres}`,
      why: `its holes lie ${sayNumber(row.diameterMillimetres * ratio, 2)} mm apart; measured ${sayNumber(distance, 2)} ± ${TAPE_ERROR} mm`,
      basis: basisOf(row),
    }));
  return { bolts, diameter, error, candidates };
}

/** Traps near a measured distance (mm between neighbours): circles a tape cannot tell apart. */
export function boltCircleTrap(distance: number): string {
  if (Math.abs(distance - 70.7) > 0.8) return "Count the holes first; measure left edge to left edge.";
  return "4 × 100 (70.71), 5 × 120 (70.53) and 5 × 120.65 (70.92) look alike between neighbours: count the holes first, and do not decide 120 against 120.65 by tape.";
}
