// Marks on bolt heads: radial lines on inch bolts (SAE J429: lines + 2 = grade), figures on metric ones (ISO 898-1:
// 8.8 = 800 MPa × 0.8 = 640 yield), letters and circles of older British and German practice.
import { sayNumber } from "./plain-numbers.ts";
import { BOLT_GRADES, type BoltGrade } from "./tables/bolt-grades.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

/** "tensile over yield 120/92 ksi to 1 in; 105/81 ksi above"; what is no pair of figures is said as the table has it. */
function strengthOf({ tensileOverYield, unit }: BoltGrade): string {
  if (/^\d+\/\d+/.test(tensileOverYield)) {
    const figures = tensileOverYield.replace(/\b\d{2,4}\/\d{2,4}\b/g, (pair) => `${pair} ${unit}`);
    return `tensile over yield ${figures}`;
  }
  return tensileOverYield.endsWith("tons per sq in") ? `tensile ${tensileOverYield}` : tensileOverYield;
}

function gradeReading(row: BoltGrade, why: string): TradeReading {
  return {
    reading: `${row.standard} grade ${row.grade}: ${strengthOf(row)}`,
    why,
    basis: basisOf(row),
  };
}

/** Grades an inch head with so many radial lines can be; 0 means the weakest unless a maker's mark says more. */
export function readHeadLines(lines: number): readonly TradeReading[] {
  const grades: Readonly<Record<number, readonly string[]>> = {
    0: ["1", "2"],
    3: ["5", "5.2"],
    5: ["7"],
    6: ["8", "8.2"],
  };
  const wanted = grades[lines] ?? [];
  const rows = BOLT_GRADES.filter((row) => row.standard === "SAE J429" && wanted.includes(row.grade));
  const why =
    lines === 0
      ? "no line and no maker's mark: treat it as the weakest"
      : `${lines} radial lines; lines + 2 = grade for 3 and 6`;
  return rows.map((row) => gradeReading(row, `${why} (${row.headMark})`));
}

/** An inch grade by name ("grade 8"): strength, and the mark its head carries. */
export function readInchGrade(grade: string): readonly TradeReading[] {
  return BOLT_GRADES.filter((row) => row.standard === "SAE J429" && row.grade === grade).map((row) =>
    gradeReading(row, `head mark: ${row.headMark}`),
  );
}

/** A figure mark on the head: "8.8", "10.9", "08.8", "A2-70"; empty for marks the table does not hold. */
export function readHeadFigures(mark: string): readonly TradeReading[] {
  const wanted = mark.toUpperCase().replace(",", ".");
  const rows = BOLT_GRADES.filter((row) => row.grade === wanted && row.standard.startsWith("ISO"));
  const match = /^(\d{1,2})\.(\d)$/.exec(wanted);
  if (match === null) return rows.map((row) => gradeReading(row, row.headMark));
  const tensile = Number(match[1]) * 100;
  const isReduced = wanted.startsWith("0");
  const sum = `${tensile} MPa tensile × 0.${match[2]} = ${sayNumber((tensile * Number(match[2])) / 10, 0)} MPa yield, nominal`;
  const why = isReduced ? "a leading 0 means reduced by the shape of head or shank" : sum;
  return rows.map((row) => gradeReading(row, why));
}

/** Marks of older practice: a letter, three touching circles, 8G and its kin. */
export function readOldHeadMark(mark: string): readonly TradeReading[] {
  const wanted = mark.toUpperCase();
  return BOLT_GRADES.filter((row) => /Unified|BSW|German|JIS/.test(row.standard))
    .filter(
      (row) =>
        row.grade.split(/[ ,]{1,2}/).includes(wanted) ||
        (wanted === "THREE CIRCLES" && row.standard.includes("Unified")),
    )
    .map((row) => gradeReading(row, row.headMark));
}
