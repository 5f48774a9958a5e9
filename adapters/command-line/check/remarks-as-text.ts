/** Remarks for people: a line for the place and what is wrong, a line for how to mend it, and the count at the end. */
import { type Remark, type Review, type Severity, severities } from "../../../knowledge/index.ts";

const many: Readonly<Record<Severity, string>> = { fault: "faults", doubt: "doubts", wish: "wishes" };

/** The lines of a review; the last one says how the handbook stands. */
export function remarksAsText(folder: string, { loaded, remarks }: Review): readonly string[] {
  const lines = remarks.flatMap((remark) => [placed(remark), `    → ${remark.mend}`]);
  const counts = severities.map((severity) => countWords(remarks, severity)).join(", ");
  if (!loaded.ok) return [...lines, `${folder}: not sound; ${counts}`];
  const { cover, edition, parts } = loaded.handbook;
  const variants = parts.reduce((sum, part) => sum + part.variants.length, 0);
  const size = `${counted(parts.length, "part kind")}, ${variants} variants`;
  return [...lines, `${cover.name}: sound, edition ${edition}, ${size}; ${counts}`];
}

function placed({ severity, file, line, column, message }: Remark): string {
  return file === "." ? `${severity}  ${message}` : `${file}:${line}:${column}  ${severity}  ${message}`;
}

function countWords(remarks: readonly Remark[], severity: Severity): string {
  const count = countOf(remarks, severity);
  return `${count} ${count === 1 ? severity : many[severity]}`;
}

function counted(count: number, what: string): string {
  return count === 1 ? `1 ${what}` : `${count} ${what}s`;
}

export function countOf(remarks: readonly Remark[], severity: Severity): number {
  return remarks.filter((remark) => remark.severity === severity).length;
}
