/**
 * From the files of a folder to a sound handbook, or to everything that is wrong with it at once: files, writing,
 * shape, and what one place says of another. Pure: whoever reads the disk hands the texts in.
 */

import type { z } from "zod";
import { type Draft, findingCrossReferences, type SoundFile } from "./cross-references.ts";
import { workingOutEdition } from "./edition.ts";
import { checkingFiles } from "./file-check.ts";
import { fileRole, type HandbookFile, type HandbookLimits, handbookLimits } from "./handbook-file.ts";
import { atOnce, type InPieces } from "./in-pieces.ts";
import { checkLearntWords } from "./learnt-words-check.ts";
import { readLearntWords } from "./learnt-words-file.ts";
import { byCodeUnit, type Problem, sortedProblems } from "./problem.ts";
import { Cars, Cover, type Handbook, type LearntWords, PartKind, Sources } from "./schema.ts";
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
  return readHandbook(files, limits).loaded;
}

/** The same, giving way after each file. */
export function* loadingHandbook(
  files: readonly HandbookFile[],
  limits: HandbookLimits = handbookLimits,
): InPieces<LoadedHandbook> {
  return (yield* readingHandbook(files, limits)).loaded;
}

/** A handbook as loaded, beside its files as read: these know where everything stands. */
export interface ReadHandbook {
  readonly loaded: LoadedHandbook;
  readonly cover: SoundFile<Cover> | undefined;
  readonly draft: Draft;
}

/** The same with the files as read, for whoever has something to say about a place in them. */
export function readHandbook(
  files: readonly HandbookFile[],
  limits: HandbookLimits = handbookLimits,
): ReadHandbook {
  return atOnce(readingHandbook(files, limits));
}

function* readingHandbook(files: readonly HandbookFile[], limits: HandbookLimits): InPieces<ReadHandbook> {
  const problems: Problem[] = [...(yield* checkingFiles(files, limits))];
  const isTooMuch = problems.some(({ code }) => code === "too-many-files" || code === "folder-too-large");
  const refused = new Set(problems.map(({ file }) => file));
  const readable = files
    .filter(({ path }) => !isTooMuch && !refused.has(path))
    .toSorted((one, other) => byCodeUnit(one.path, other.path));
  const cover = (yield* soundFiles(readable, "cover", Cover, problems))[0];
  const draft: Draft = {
    cars: (yield* soundFiles(readable, "cars", Cars, problems))[0],
    sources: (yield* soundFiles(readable, "sources", Sources, problems))[0],
    parts: yield* soundFiles(readable, "part", PartKind, problems),
    drawings: readable.filter(({ path }) => fileRole(path) === "drawing"),
    drawingPaths: new Set(files.flatMap(({ path }) => (fileRole(path) === "drawing" ? [path] : []))),
  };
  const learntWords = soundLearntWords(readable, problems);
  yield;
  const cross = yield* findingCrossReferences(draft);
  problems.push(...cross.problems);
  const { cars, sources } = draft;
  if (problems.length > 0 || cover === undefined || cars === undefined || sources === undefined) {
    return { loaded: { ok: false, problems: sortedProblems(problems) }, cover, draft };
  }
  const handbook: Handbook = {
    cover: cover.value,
    edition: yield* workingOutEdition(files),
    cars: cars.value,
    sources: sources.value.sources,
    parts: draft.parts.map(({ value }) => value),
    drawings: new Map(draft.drawings.map(({ path, text }) => [path, text])),
    ...(learntWords === undefined ? {} : { learntWords }),
  };
  const ofWords = learntWords === undefined ? [] : checkLearntWords(learntWords, handbook.parts);
  const warnings = sortedProblems([...cross.warnings, ...ofWords]);
  return { loaded: { ok: true, handbook, warnings }, cover, draft };
}

function soundLearntWords(files: readonly HandbookFile[], problems: Problem[]): LearntWords | undefined {
  const file = files.find(({ path }) => fileRole(path) === "learnt words");
  if (file === undefined) return undefined;
  const read = readLearntWords(file);
  if (read.ok) return read.value;
  problems.push(read.problem);
  return undefined;
}

function* soundFiles<T>(
  files: readonly HandbookFile[],
  role: ReturnType<typeof fileRole>,
  schema: z.ZodType<T>,
  problems: Problem[],
): InPieces<readonly SoundFile<T>[]> {
  const sound: SoundFile<T>[] = [];
  for (const file of files.filter(({ path }) => fileRole(path) === role)) {
    const reading = readYaml(file);
    const result = shaped(schema, reading);
    if (result.ok) sound.push({ reading, value: result.value });
    else problems.push(...result.problems);
    yield;
  }
  return sound;
}
