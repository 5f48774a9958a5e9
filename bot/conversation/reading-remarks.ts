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
    trade !== undefined ||
    reading.findings.length + reading.car.length + reading.intents.length + reading.parts.length > 0;
  const names = reading.variants.flatMap((mention) => {
    const part = findPart(knowledge, mention.part);
    if (part === undefined || mention.as === "question" || isComparing) return [];
    return [namedVariantLeftAside(mention.words, mention.as === "hearsay" ? "another" : "you")];
  });
  const isClaimed = reading.variants.some((mention) => mention.as === "hearsay");
  const aside = asideRemarks(reading, isClaimed, isUnderstood);
  // Beside words that were understood a near miss is more often chatter than a slip.
  const near = reading.nearMisses
    .slice(0, isUnderstood ? 0 : mostNearMisses)
    .map(({ words, meant }) => didYouMean(words, meant));
  return [...new Set([...names, ...aside, ...near])].filter((remark) => !change.remarks.includes(remark));
}

/** One remark for each cause, with the words it concerns. */
function asideRemarks(
  { leftAside }: MessageReading,
  isClaimed: boolean,
  isUnderstood: boolean,
): readonly string[] {
  const wordsFor = (because: MessageReading["leftAside"][number]["because"]) =>
    leftAside.filter((one) => one.because === because).map((one) => one.words);
  const hearsay = isClaimed ? [] : wordsFor("hearsay");
  const others = wordsFor("another-car");
  const ambiguous = wordsFor("several-readings");
  return [
    hearsay.length === 0 ? undefined : hearsayLeftAside(hearsay),
    others.length === 0 ? undefined : anotherCarLeftAside(others),
    ambiguous.length === 0 ? undefined : severalReadingsLeftAside(ambiguous),
    isUnderstood || wordsFor("question").length === 0 ? undefined : questionLeftAside,
  ].filter((remark) => remark !== undefined);
}
