/**
 * The second reading: what one place of a handbook says of another. It runs over the files whose shape is sound;
 * a name that points into a broken file is not held against the file that names it.
 */
import { CAUTIONS } from "../trade/tables/cautions.ts";
import { checkCars, productionYears } from "./cars-check.ts";
import {
  type CheckSheet,
  checkAllKnown,
  checkSheet,
  checkUnique,
  fault,
  isFull,
  type KnownIds,
} from "./check-sheet.ts";
import { drawingFaults } from "./drawing-safety.ts";
import { fileProblem, type HandbookFile } from "./handbook-file.ts";
import type { InPieces } from "./in-pieces.ts";
import { visitNamed } from "./named-places.ts";
import { didYouMean } from "./nearest-name.ts";
import { checkPart } from "./part-check.ts";
import { placesIn } from "./place-in-text.ts";
import { mostProblems, type Problem } from "./problem.ts";
import type { Cars, PartKind, Sources } from "./schema.ts";
import type { Surroundings } from "./variant-check.ts";
import type { YamlReading } from "./yaml-reading.ts";

const CAUTION_IDS = new Set(CAUTIONS.map(({ id }) => id));

/** A file whose shape is sound. */
export interface SoundFile<T> {
  readonly reading: YamlReading;
  readonly value: T;
}

/** What is sound so far; undefined where a file is missing or broken. */
export interface Draft {
  readonly cars: SoundFile<Cars> | undefined;
  readonly sources: SoundFile<Sources> | undefined;
  readonly parts: readonly SoundFile<PartKind>[];
  readonly drawings: readonly HandbookFile[];
  /** The paths of all drawings, also of those that could not be read. */
  readonly drawingPaths: ReadonlySet<string>;
}

export interface Findings {
  readonly problems: readonly Problem[];
  readonly warnings: readonly Problem[];
}

/** All problems and warnings between the files of a draft and inside each of them. Gives way after each part kind. */
export function* findingCrossReferences(draft: Draft): InPieces<Findings> {
  const sources = draft.sources?.value.sources;
  const around: Surroundings = {
    sources: idsOf(sources),
    models: idsOf(draft.cars?.value.models),
    trims: idsOf(draft.cars?.value.trims),
    markets: idsOf(draft.cars?.value.markets),
    production: draft.cars && productionYears(draft.cars.value),
  };
  const used = new Set<string>();
  const sheets: CheckSheet[] = [];
  const open = (file: SoundFile<unknown>): CheckSheet => {
    const sheet = checkSheet(file.reading);
    sheets.push(sheet);
    checkNamed(sheet, file.value, around.sources, draft.drawingPaths, used);
    return sheet;
  };
  if (draft.cars) checkCars(open(draft.cars), draft.cars.value);
  if (draft.sources) checkUnique(checkSheetOf(sheets, draft.sources), "source", sources ?? [], ["sources"]);
  const parts: { readonly sheet: CheckSheet; readonly part: PartKind }[] = [];
  for (const file of draft.parts) {
    const sheet = open(file);
    checkPart(sheet, file.value, around);
    parts.push({ sheet, part: file.value });
    yield;
  }
  checkPartIds(parts);
  return {
    problems: [...sheets.flatMap(({ problems }) => problems), ...draft.drawings.flatMap(unsafeDrawing)],
    warnings: [
      ...sheets.flatMap(({ warnings }) => warnings),
      ...draft.drawings.filter(({ path }) => !used.has(path)).map(unusedDrawing),
    ],
  };
}

function checkSheetOf(sheets: CheckSheet[], file: SoundFile<unknown>): CheckSheet {
  const sheet = checkSheet(file.reading);
  sheets.push(sheet);
  return sheet;
}

function idsOf(items: readonly { readonly id: string }[] | undefined): KnownIds {
  return items && new Set(items.map(({ id }) => id));
}

function checkNamed(
  sheet: CheckSheet,
  value: unknown,
  sources: KnownIds,
  drawings: ReadonlySet<string>,
  used: Set<string>,
): void {
  visitNamed(value, (place) => {
    if (place.key === "sources") checkAllKnown(sheet, "source", place.ids, sources, place.path);
    if (place.key === "cautions") checkAllKnown(sheet, "caution", place.ids, CAUTION_IDS, place.path);
    if (place.key !== "drawing") return;
    used.add(place.name);
    if (drawings.has(place.name) || isFull(sheet)) return;
    const message = `there is no drawing "${place.name}"`;
    const mend = didYouMean(place.name, [...drawings]);
    fault(sheet, { code: "drawing-missing", path: place.path, message, mend });
  });
}

function checkPartIds(parts: readonly { readonly sheet: CheckSheet; readonly part: PartKind }[]): void {
  const first = new Map<string, CheckSheet>();
  for (const { sheet, part } of parts) {
    const other = first.get(part.id);
    if (other === undefined) {
      first.set(part.id, sheet);
      continue;
    }
    const message = `two part kinds have the id "${part.id}"`;
    const mend = `the first stands in ${other.file}, line ${other.placeOf(["id"]).line}: rename one of them`;
    fault(sheet, { code: "id-twice", path: ["id"], message, mend });
  }
}

function unsafeDrawing(drawing: HandbookFile): readonly Problem[] {
  const faults = drawingFaults(drawing.text);
  if (faults.length === 0) return [];
  const placeOf = placesIn(drawing.text);
  return faults.slice(0, mostProblems).map(({ offset, message, mend }) => ({
    code: "drawing-unsafe",
    file: drawing.path,
    ...placeOf(offset),
    message,
    mend,
  }));
}

function unusedDrawing({ path }: HandbookFile): Problem {
  return fileProblem("drawing-unused", path, "no part names this drawing", "name it, or delete the file");
}
