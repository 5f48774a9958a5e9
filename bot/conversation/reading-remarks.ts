/** What was left aside, and why; near misses; names that are no evidence. Nothing is dropped in silence. */
import type { MessageReading } from "../../knowledge/index.ts";
import type { Change } from "./change.ts";
import type { Heard } from "./hear.ts";
import { findPart, type Knowledge } from "./knowledge.ts";
import {
  anotherCarLeftAside,
  didYouMean,
  hearsayLeftAside,
  namedVariantLeftAside,
  questionLeftAside,
  severalReadingsLeftAside,
} from "./phrases/understood.ts";

/** More than this many near misses are noise, not help. */
const mostNearMisses = 2;

export function readingRemarks(
  knowledge: Knowledge,
  change: Change,
  { reading, trade }: Heard,
): readonly string[] {
  const isComparing = reading.intents.some((intent) => intent.kind === "compare");
  const isUnderstood =
    trade !== undefined || reading.findings.length + reading.car.length + reading.intents.length > 0;
  const names = reading.variants.flatMap((mention) => {
    const part = findPart(knowledge, mention.part);
    if (part === undefined || mention.as === "question" || isComparing) return [];
    return [namedVariantLeftAside(mention.words, mention.as === "hearsay" ? "another" : "you")];
  });
  const isClaimed = reading.variants.some((mention) => mention.as === "hearsay");
  const aside = reading.leftAside.flatMap(({ words, because }) => {
    if (because === "question") return isUnderstood ? [] : [questionLeftAside];
    return asideRemark(words, because, isClaimed) ?? [];
  });
  const near = reading.nearMisses
    .slice(0, isUnderstood ? 0 : mostNearMisses)
    .map(({ words, meant }) => didYouMean(words, meant));
  return [...new Set([...names, ...aside, ...near])].filter((remark) => !change.remarks.includes(remark));
}

type Because = MessageReading["leftAside"][number]["because"];

function asideRemark(
  words: string,
  because: Exclude<Because, "question">,
  isClaimed: boolean,
): string | undefined {
  switch (because) {
    case "hearsay":
      return isClaimed ? undefined : hearsayLeftAside(words);
    case "another-car":
      return anotherCarLeftAside(words);
    case "several-readings":
      return severalReadingsLeftAside(words);
  }
}
