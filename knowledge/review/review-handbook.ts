/**
 * A handbook read by somebody who knows the trade: what the loader refuses, and then what does not hold together, rests
 * on nothing, or could be told by less effort. Pure, and never run while serving: it costs more than loading.
 */
import type { HandbookFile } from "../handbook/handbook-file.ts";
import { type LoadedHandbook, readHandbook } from "../handbook/load-handbook.ts";
import { byCodeUnit } from "../handbook/problem.ts";
import { compilePart } from "../identification/compiled-part.ts";
import { remarkAlikeVariants } from "./alike-variants.ts";
import { remarkCars } from "./cars-remarks.ts";
import { remarkCheckTexts } from "./check-texts.ts";
import { remarkClaims } from "./claim-remarks.ts";
import { remarkDearFeatures } from "./dear-features.ts";
import { remarkFeatures } from "./feature-remarks.ts";
import { remarkMountings } from "./mounting-remarks.ts";
import { remarkPeriods } from "./period-remarks.ts";
import { asRemark, type Margin, marginOf, type Remark, severities } from "./remark.ts";
import { remarkSources } from "./source-remarks.ts";
import { remarkWords } from "./word-remarks.ts";

export interface Review {
  readonly loaded: LoadedHandbook;
  /** By file and place; faults only, when there are any. */
  readonly remarks: readonly Remark[];
}

/** All remarks on the files of a folder. Cost: pairs of variants × features, until a pair is told apart. */
export function reviewHandbook(files: readonly HandbookFile[]): Review {
  const read = readHandbook(files);
  const { loaded, draft } = read;
  if (!loaded.ok) return { loaded, remarks: loaded.problems.map((problem) => asRemark(problem, "fault")) };
  const { handbook } = loaded;
  const margins: Margin[] = [];
  const open = (file: { readonly reading: Parameters<typeof marginOf>[0] }): Margin => {
    const margin = marginOf(file.reading);
    margins.push(margin);
    return margin;
  };
  const cars = draft.cars && open(draft.cars);
  if (cars !== undefined) remarkCars(cars, handbook);
  const parts = draft.parts.map((file) => ({ margin: open(file), part: file.value }));
  for (const { margin, part } of parts) {
    remarkClaims(margin, part);
    remarkPeriods(margin, handbook, part);
    remarkFeatures(margin, part);
    remarkCheckTexts(margin, part);
    remarkMountings(margin, part);
    const compiled = compilePart(handbook, part.id);
    if (compiled === undefined) continue;
    remarkAlikeVariants(margin, compiled);
    remarkDearFeatures(margin, compiled);
  }
  const sources = draft.sources && open(draft.sources);
  if (sources !== undefined) remarkSources(sources, parts, handbook, cars);
  remarkWords(parts, cars, handbook.cars);
  const remarks = [
    ...loaded.warnings.map((warning) =>
      // A state that messages do not tell is nobody's error.
      asRemark(warning, warning.code === "learnt-words-missing" ? "wish" : "doubt"),
    ),
    ...margins.flatMap((margin) => margin.remarks),
  ];
  return { loaded, remarks: remarks.toSorted(byPlace) };
}

function byPlace(one: Remark, other: Remark): number {
  return (
    byCodeUnit(one.file, other.file) ||
    one.line - other.line ||
    one.column - other.column ||
    severities.indexOf(one.severity) - severities.indexOf(other.severity) ||
    byCodeUnit(one.code, other.code) ||
    byCodeUnit(one.message, other.message)
  );
}
