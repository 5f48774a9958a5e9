// The bench as a table for the eye, one line a figure.

import { type Figure, holds, type Row } from "./row.ts";

const WIDTHS = { what: 58, value: 14, budget: 13 };

/** The lines of one row: its name and starting numbers, then its figures. */
export function linesOf(row: Row, figures: readonly Figure[], seconds: number): readonly string[] {
  const from = row.starts.length === 0 ? "" : `, from ${row.starts.join(" ")}`;
  return [`${row.name}: ${row.about} (${seconds.toFixed(0)} s${from})`, ...figures.map(lineOf), ""];
}

function lineOf(figure: Figure): string {
  const { what, value, unit, remark } = figure;
  const measured = `${written(value)} ${unit}`.trimEnd();
  const cells = [
    `  ${what.padEnd(WIDTHS.what)}`,
    measured.padStart(WIDTHS.value),
    budgetOf(figure).padStart(WIDTHS.budget),
    `  ${verdictOf(figure).padEnd(6)}`,
    remark ?? "",
  ];
  return cells.join(" ").trimEnd();
}

function budgetOf({ budget }: Figure): string {
  if (budget === undefined) return "";
  return "atMost" in budget ? `<= ${written(budget.atMost)}` : `>= ${written(budget.atLeast)}`;
}

function verdictOf(figure: Figure): string {
  const verdict = holds(figure);
  if (verdict === undefined) return "";
  return verdict ? "holds" : "MISSED";
}

function written(value: number): string {
  if (Number.isInteger(value) || Math.abs(value) >= 1000) return String(Math.round(value));
  return Math.abs(value) < 0.001 ? value.toExponential(1) : value.toPrecision(4);
}
