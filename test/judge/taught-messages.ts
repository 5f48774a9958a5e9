/** The development messages as the reader is taught them, parted by writers into folds, so that nobody is read by what they taught. */
import type { TaughtMessage } from "../../knowledge/language/hearing/learn-words.ts";
import { annotatedMessages } from "../support/corpus-folder.ts";
import type { AnnotatedMessage } from "../support/score-corpus.ts";

export const folds = [0, 1, 2, 3] as const;

export function writerOf({ id }: AnnotatedMessage): string {
  return id.split("-")[0] ?? "";
}

/** Writers in the order of their names, dealt round. */
export function foldsOf(messages: readonly AnnotatedMessage[]): ReadonlyMap<string, number> {
  const writers = [...new Set(messages.map(writerOf))].sort();
  return new Map(writers.map((writer, at) => [writer, at % folds.length]));
}

export function developmentMessages(): readonly AnnotatedMessage[] {
  return annotatedMessages("development");
}

export function taught({ text, context, facts }: AnnotatedMessage): TaughtMessage {
  return {
    text,
    ...(context === undefined ? {} : { context }),
    told: facts.flatMap(({ part, feature, state }) =>
      part === null || typeof state !== "string" ? [] : [{ part, feature, state }],
    ),
  };
}
