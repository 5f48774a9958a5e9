/**
 * The file of learnt words: the one file of a handbook that no person writes. So it is JSON, only the first thing that is wrong
 * with it is told, and the mending is always to learn the words again.
 */
import type { z } from "zod";
import { type HandbookFile, learntWordsPath, printable } from "./handbook-file.ts";
import { LearntWords } from "./learnt-words-schema.ts";
import { placesIn } from "./place-in-text.ts";
import { fileStart, type Place, type Problem, type ProblemCode } from "./problem.ts";

export type ReadLearntWords =
  | { readonly ok: true; readonly value: LearntWords }
  | { readonly ok: false; readonly problem: Problem };

/** How to come by a sound file. */
export const learnAgain = "learn the words again with witness-mark learn, or delete the file";

/** The words of a file, or what is wrong with it; the place is known where the JSON breaks, else it is the file's start. */
export function readLearntWords(file: HandbookFile): ReadLearntWords {
  const parsed = parsedJson(file.text.replace(/^\uFEFF/, ""));
  if (!parsed.ok) return refusal("json-syntax", parsed.message, parsed.place);
  const shaped = LearntWords.safeParse(parsed.value);
  if (shaped.success) return { ok: true, value: shaped.data };
  return refusal("learnt-words-shape", shapeMessage(shaped.error), fileStart);
}

function parsedJson(
  text: string,
):
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly message: string; readonly place: Place } {
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch (failure) {
    const said = failure instanceof SyntaxError ? failure.message : "";
    const told = / at position (\d+)/.exec(said)?.[1];
    const end = said.startsWith("Unexpected end") ? text.length : 0;
    const offset = told === undefined ? end : Number(told);
    const isCut = offset > 0 && offset >= text.trimEnd().length;
    const message = isCut ? "the JSON breaks off" : "this is no JSON";
    return { ok: false, message, place: placesIn(text)(offset) };
  }
}

function shapeMessage({ issues: [issue] }: z.ZodError): string {
  const where = (issue?.path ?? []).map(String).join(".");
  const what =
    issue?.code === "invalid_format" ? "weights in pairs of whole numbers are needed" : issue?.message;
  const words = `${where === "" ? "" : `${where}: `}${what ?? ""}`;
  return `these are no learnt words (${printable(words)})`;
}

function refusal(code: ProblemCode, message: string, place: Place): ReadLearntWords {
  return { ok: false, problem: { code, file: learntWordsPath, ...place, message, mend: learnAgain } };
}
