/** What was left aside, and why; near misses; names that are no evidence. Nothing is dropped in silence. */
import {
  type Feature,
  featureById,
  type MessageReading,
  type PartKind,
  stateName,
} from "../../knowledge/index.ts";
import type { Change } from "./change.ts";
import type { Heard } from "./hear.ts";
import { findPart, type Knowledge } from "./knowledge.ts";
import {
  anotherCarLeftAside,
  didYouMean,
  hearsayLeftAside,
  meantThis,
  namedVariantLeftAside,
  notYetLeftAside,
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
  const isAnswered =
    trade !== undefined || reading.findings.length + reading.car.length + reading.intents.length > 0;
  const isUnderstood = isAnswered || reading.parts.length > 0;
  const names = reading.variants.flatMap((mention) => {
    const part = findPart(knowledge, mention.part);
    if (part === undefined || mention.as === "question" || isComparing) return [];
    return [namedVariantLeftAside(mention.words, mention.as === "hearsay" ? "another" : "you")];
  });
  const isClaimed = reading.variants.some((mention) => mention.as === "hearsay");
  const part = findPart(knowledge, change.facts.part);
  const aside = asideRemarks(part, reading, isClaimed, isAnswered);
  // Beside words that were understood a near miss is more often chatter than a slip.
  const figure = reading.isOpaque ? bareFigure(part, reading) : [];
  const near = reading.nearMisses
    .slice(0, isUnderstood ? 0 : mostNearMisses)
    .map(({ words, meant }) => didYouMean(words, meant));
  const doubt = askedBack(part, reading);
  return [...new Set([...names, ...aside, ...doubt, ...figure, ...near])].filter(
    (remark) => !change.remarks.includes(remark),
  );
}

/** The first state of this part that was too doubtful to take; one a turn is enough. Who names two kinds to be compared tells none. */
export function firstDoubt(part: PartKind | undefined, { inDoubt, intents }: MessageReading) {
  if (intents.some(({ kind }) => kind === "compare")) return undefined;
  return part && inDoubt.find((each) => each.part === part.id);
}

/** "Did you mean …?" */
function askedBack(part: PartKind | undefined, reading: MessageReading): readonly string[] {
  const doubt = firstDoubt(part, reading);
  const feature = part && doubt && featureById(part, doubt.feature);
  if (part === undefined || doubt === undefined || feature === undefined) return [];
  return [meantThis(doubt.words, part.name, `${feature.name}: ${stateName(feature, doubt.state)}`)];
}

/** One remark for each cause, with the words it concerns. */
function asideRemarks(
  part: PartKind | undefined,
  reading: MessageReading,
  isClaimed: boolean,
  isAnswered: boolean,
): readonly string[] {
  const wordsFor = (because: MessageReading["leftAside"][number]["because"]) =>
    reading.leftAside.filter((one) => one.because === because).map((one) => one.words);
  const hearsay = isClaimed ? [] : wordsFor("hearsay");
  const others = wordsFor("another-car");
  const notYet = wordsFor("not-yet");
  return [
    hearsay.length === 0 ? undefined : hearsayLeftAside(hearsay),
    others.length === 0 ? undefined : anotherCarLeftAside(others),
    notYet.length === 0 ? undefined : notYetLeftAside(notYet),
    ...(part === undefined ? [] : unclearRemark(part, reading)),
    isAnswered || !wordsFor("question").some((words) => asksMore(reading, words))
      ? undefined
      : questionLeftAside,
  ].filter((remark) => remark !== undefined);
}

/** Fewer words than this beside the part only name it. */
const fewWords = 4;

// "Rear spoiler?" names a part; "is a rear spoiler with four studs possible?" asks what is not answered.
function asksMore({ parts }: MessageReading, words: string): boolean {
  return parts.length === 0 || words.split(/\s+/).length > fewWords;
}

/** What could be more than one thing of this part; while the part is not known it is kept, not left aside. */
export function unclearRemark(part: PartKind, { leftAside }: MessageReading): readonly string[] {
  const words = leftAside.filter(({ because }) => because === "several-readings").map((one) => one.words);
  return words.length === 0 ? [] : [severalReadingsLeftAside(words, sizesOf(part, words))];
}

/** A figure alone, that no question asked for: what it could be is named. */
function bareFigure(part: PartKind | undefined, { shownText }: MessageReading): readonly string[] {
  if (part === undefined || !/^\W*\d+([.,]\d+)?\W*$/.test(shownText)) return [];
  const sizes = part.features.filter(({ kind }) => kind === "measurement").map(({ name }) => name);
  return [severalReadingsLeftAside([shownText], sizes)];
}

const ofMass = /\d\s*(g|kg|lbs?|oz|grams?|kilos?|pounds?|ounces?)\b/i;
const ofLength = /\d\s*(mm|cm|in|inch(es)?|"|″)/i;
const massUnits: ReadonlySet<string> = new Set(["g", "kg", "lb", "oz"]);

/** The sizes of the part that have such a unit; undefined when the words hold no figure with a unit. */
function sizesOf(part: PartKind, words: readonly string[]): readonly string[] | undefined {
  const text = words.join("; ");
  const isMass = ofMass.test(text);
  if (!(isMass || ofLength.test(text))) return undefined;
  const isMeant = (feature: Feature) =>
    feature.kind === "measurement" && massUnits.has(feature.unit) === isMass;
  return part.features.filter(isMeant).map((feature) => feature.name);
}
