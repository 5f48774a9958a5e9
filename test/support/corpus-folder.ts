/** The annotated messages of one half of the corpus; other people wrote them than those who wrote the reader. */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { AnnotatedMessage } from "./score-corpus.ts";

export type CorpusHalf = "development" | "held-out";

export function annotatedMessages(half: CorpusHalf): readonly AnnotatedMessage[] {
  const folder = fileURLToPath(new URL(`../corpus/${half}`, import.meta.url));
  return readdirSync(folder)
    .filter((name) => name.endsWith(".jsonl"))
    .toSorted()
    .flatMap((name) => readFileSync(`${folder}/${name}`, "utf8").split("\n"))
    .filter((line) => line.trim() !== "")
    .map((line) => JSON.parse(line) as AnnotatedMessage);
}
