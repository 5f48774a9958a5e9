/** What was left aside, and why; near misses; names that are no evidence. Nothing is dropped in silence. */
import type { MessageReading } from "../../knowledge/index.ts";
import type { Change } from "./change.ts";
import { findPart, type Knowledge } from "./knowledge.ts";
import {
  anotherCarLeftAside,
  didYouMean,
  hearsayLeftAside,
  namedVariantLeftAside,
  severalReadingsLeftAside,
} from "./phrases/understood.ts";
import { variantName } from "./say-variant.ts";

/** More than this many near misses are noise, not help. */
const mostNearMisses = 2;

export function readingRemarks(
  knowledge: Knowledge,
  change: Change,
  reading: MessageReading,
): readonly string[] {
  const names = reading.variants.flatMap((mention) => {
    const part = findPart(knowledge, mention.part);
    if (part === undefined || mention.as === "question") return [];
    return [namedVariantLeftAside(variantName(part, mention.variant), mention.as === "hearsay" ? "another" : "you")];
  });
  const hearsay = reading.leftAside.flatMap(({ words, because }) => {
    switch (because) {
      case "hearsay":
        return reading.variants.some((mention) => mention.as === "hearsay") ? [] : [hearsayLeftAside(words)];
      case "another-car":
        return [anotherCarLeftAside(words)];
      case "several-readings":
        return [severalReadingsLeftAside(words)];
      case "question":
        return [];
    }
  });
  const near = reading.nearMisses.slice(0, mostNearMisses).map(({ words, meant }) => didYouMean(words, meant));
  return [...new Set([...names, ...hearsay, ...near])].filter((remark) => !change.remarks.includes(remark));
}
