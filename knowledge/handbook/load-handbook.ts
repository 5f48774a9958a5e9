/**
 * From the files of a folder to a sound handbook, or to everything that is wrong with it at once: files, writing,
 * shape, and what one place says of another. Pure: whoever reads the disk hands the texts in.
 */

import type { z } from "zod";
import { crossReferences, type Draft, type SoundFile } from "./cross-references.ts";
import { editionOf } from "./edition.ts";
import { checkFiles } from "./file-check.ts";
import { fileRole, type HandbookFile, type HandbookLimits, handbookLimits } from "./handbook-file.ts";
import { byCodeUnit, type Problem, sortedProblems } from "./problem.ts";
import { Cars, Cover, type Handbook, PartKind, Sources } from "./schema.ts";
import { shaped } from "./shape-problems.ts";
import { readYaml } from "./yaml-reading.ts";

export type LoadedHandbook =
  | { readonly ok: true; readonly handbook: Handbook; readonly warnings: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Loads a handbook. Files may come in any order; parts are kept in the order of their paths. Problems are sorted by
 * file and line. Nothing is thrown, whatever the texts hold. Cost: linear in the texts.
 */
export function loadHandbook(
  files: readonly HandbookFile[],
  limits: HandbookLimits = handbookLimits,
): LoadedHandbook {
  const fileProblems = checkFiles(files, limits);
  const isTooMuch = fileProblems.some(({ code }) => code === "too-many-files" || code === "folder-too-large");
  if (isTooMuch) return { ok: false, problems: sortedProblems(fileProblems) };
  const refused = new Set(fileProblems.map(({ file }) => file));
  const readable = files
    .filter(({ path }) => !refused.has(path))
    .toSorted((one, other) => byCodeUnit(one.path, other.path));

  const problems: Problem[] = [...fileProblems];
  const cover = soundFiles(readable, "cover", Cover, problems)[0];
  const draft: Draft = {
    cars: soundFiles(readable, "cars", Cars, problems)[0],
    sources: soundFiles(readable, "sources", Sources, problems)[0],
    parts: soundFiles(readable, "part", PartKind, problems),
    drawings: readable.filter(({ path }) => fileRole(path) === "drawing"),
    drawingPaths: new Set(files.flatMap(({ path }) => (fileRole(path) === "drawing" ? [path] : []))),
  };
  const cross = crossReferences(draft);
  problems.push(...cross.problems);
  const { cars, sources } = draft;
  if (problems.length > 0 || cover === undefined || cars === undefined || sources === undefined) {
    return { ok: false, problems: sortedProblems(problems) };
  }
  const handbook: Handbook = {
    cover: cover.value,
    edition: editionOf(files),
    cars: cars.value,
    sources: sources.value.sources,
    parts: draft.parts.map(({ value }) => value),
    drawings: new Map(draft.drawings.map(({ path, text }) => [path, text])),
  };
  return { ok: true, handbook, warnings: sortedProblems(cross.warnings) };
}

function soundFiles<T>(
  files: readonly HandbookFile[],
  role: ReturnType<typeof fileRole>,
  schema: z.ZodType<T>,
  problems: Problem[],
): readonly SoundFile<T>[] {
  return files
    .filter(({ path }) => fileRole(path) === role)
    .flatMap((file) => {
      const reading = readYaml(file);
      const result = shaped(schema, reading);
      if (result.ok) return [{ reading, value: result.value }];
      problems.push(...result.problems);
      return [];
    });
}
