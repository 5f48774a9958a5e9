/** The report as plain text of 80 columns. */
import type { YearCoverage } from "../../../knowledge/index.ts";
import { padded, textWidth, wrapped } from "../../terminal/wrap.ts";
import type { PartReport } from "./part-report.ts";
import { figures, headings, nextSteps, noConfusion, pairWords, percent, yearWords } from "./words.ts";

const WIDTH = 80;
const BAR = 20;

export function reportAsText(report: PartReport): readonly string[] {
  const { part, asked, confusions, coverage } = report;
  const steps = nextSteps(report);
  return [
    part.name,
    "=".repeat(textWidth(part.name)),
    "",
    headings.figures,
    ...rows(figures(report)),
    "",
    headings.asked,
    ...rows(asked.slice(0, 6).map(({ name, share }) => [name, `${bar(share)} ${percent(share)}`])),
    "",
    headings.confusions,
    ...(confusions.length === 0
      ? [`  ${noConfusion}`]
      : rows(confusions.map((one) => [pairWords(one), percent(one.share)]))),
    "",
    headings.next,
    ...steps.flatMap((step) =>
      wrapped(step, WIDTH - 4).map((line, index) => `${index === 0 ? "  - " : "    "}${line}`),
    ),
    "",
    headings.coverage,
    ...rows(stretches(coverage)),
  ];
}

/** Years that are alike in a line: "1931 to 1936". */
function stretches(coverage: readonly YearCoverage[]): readonly (readonly [string, string])[] {
  const lines: { from: number; to: number; value: string }[] = [];
  for (const { year, covered, variants } of coverage) {
    const value = `${bar(covered)} ${yearWords({ year, covered, variants, made: undefined })}`;
    const last = lines.at(-1);
    if (last?.value === value) last.to = year;
    else lines.push({ from: year, to: year, value });
  }
  return lines.map(({ from, to, value }) => [from === to ? `${from}` : `${from} to ${to}`, value]);
}

function rows(pairs: readonly (readonly [string, string])[]): readonly string[] {
  const width = Math.max(0, ...pairs.map(([label]) => textWidth(label)));
  return pairs.map(([label, value]) => `  ${padded(label, width)}  ${value}`);
}

/** Length by share, so that a hole shows in black and white. */
function bar(share: number): string {
  return padded("━".repeat(Math.round(share * BAR)), BAR);
}
