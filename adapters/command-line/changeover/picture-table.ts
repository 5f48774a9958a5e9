/** The picture as a table of text, for whoever cannot see it. */
import { formatInterval, sayProbability } from "../../../knowledge/index.ts";
import { padded, textWidth } from "../../terminal/wrap.ts";
import type { ChainFindings } from "./chain-findings.ts";
import type { ChangeoverFindings, Judged } from "./findings.ts";
import { nameOf } from "./names.ts";
import { oneLine } from "./one-line.ts";
import { gradeWords, headings, labels, tableColumns } from "./phrases.ts";
import type { ChangeoverQuestion } from "./question.ts";

/** Every mark as a row, in the order of build dates. */
export function pictureTable(
  question: ChangeoverQuestion,
  { kind, judged }: ChangeoverFindings | ChainFindings,
): readonly string[] {
  const typeOf = ({ sighting, isNew }: Judged): string => {
    if (kind === "chain" || question.chosen === "alone") return nameOf(question, sighting.variant);
    return isNew ? labels.new : labels.old;
  };
  const body = judged.map((one) => [
    oneLine(one.sighting.id),
    formatInterval(one.sighting.built),
    typeOf(one),
    gradeWords[one.sighting.grade],
    sayProbability(one.notAsBuilt),
  ]);
  const widths = tableColumns.map((column, index) =>
    body.reduce((most, row) => Math.max(most, textWidth(row[index] ?? "")), textWidth(column)),
  );
  const laid = (row: readonly string[]): string =>
    `  ${row.map((cell, index) => padded(cell, widths[index] ?? 0)).join("  ")}`.trimEnd();
  return [headings.table, laid(tableColumns), ...body.map(laid)];
}
