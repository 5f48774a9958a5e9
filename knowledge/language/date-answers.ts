// A question about a date mark, and what answers it: nothing but the mark, or a mark among other words.
import type { DateFeature } from "../handbook/schema.ts";
import { shapeForm } from "./date-features.ts";
import type { DatePhrase } from "./date-phrases.ts";
import { isOfErrand, markReadings } from "./date-roles.ts";
import { tokenAt } from "./measurements.ts";
import type { FeatureFinding } from "./message-reading.ts";
import type { MessageView } from "./message-view.ts";
import { productionSpan } from "./serials.ts";

/** The date feature that was just asked for, if one was. */
export function askedDate(view: MessageView): DateFeature | undefined {
  const { part, askedFeature } = view.context;
  if (part === undefined || askedFeature === undefined) return undefined;
  const feature = view.lexicon.parts.get(part)?.features.get(askedFeature)?.feature;
  return feature?.kind === "date" ? feature : undefined;
}

/** Words that stand round a mark in an answer and belong to nothing. */
const besideMark =
  /\b(?:its?|it's|is|was|says?|reads?|shows?|stamped|dated|the|stamp|glass|dial|clock|hub|pencil|date|mark|a|an|i|think|see|there|think|on|it|sorry|please)\b|[.,!?;:]+(?=\s|$)/g;
const longestAnswer = 40;
/** "22 80, so spring of 1980?": what is made of the mark, not the mark. */
const conclusion = /(?<=\d),? so\b.{0,40}\?\s*$/;

/** "31 81", "2280", "3 dots and an 8": an answer to a question about a date mark that is nothing but the mark. */
export function wholeAnswer(view: MessageView, text: string): FeatureFinding | undefined {
  const feature = askedDate(view);
  const { part } = view.context;
  const told = text.replace(conclusion, "");
  if (feature === undefined || part === undefined || told.length > longestAnswer) return undefined;
  const isWhole = told === text;
  const isOwn =
    view.stances.every(({ aside }) => aside === undefined || (!isWhole && aside === "question")) &&
    !(isWhole && view.clauses.some((each) => each.isAsked));
  const written = told.replace(besideMark, " ").replace(/\s+/g, " ").trim();
  if (!isOwn || !/\d/.test(written)) return undefined;
  const production = productionSpan(view.lexicon.handbook.cars);
  const readings = markReadings(written, undefined, feature, production, view.context.today);
  if (readings.length === 0) return undefined;
  const certainty = Math.min(...view.stances.map((stance) => stance.certainty));
  return { part, feature: feature.id, value: { kind: "date", readings }, certainty, words: view.shown };
}

/** Years before and after production in which a bare pair of figures may still be a part's month. */
const monthsAround = 60;

/** "7/80 primer", "2/80 by weight": a grade or a share. */
const noMark =
  /^ ?(?:primer|paint|grit|paper|by (?:weight|volume)|mix|ratio|scale|drill|road|lb\b|psi\b|tyres?|tires?)/;

/**
 * Whether a date without a word for what it is of is a mark: any month or week when one was just asked for ("4/80 beside
 * the cable nut"), figures with a stroke where the part spoken of has a mark of that form ("IH 5/80").
 */
export function standsAsMark(view: MessageView, phrase: DatePhrase, text: string): boolean {
  const isPair = phrase.shape === "pair" || phrase.shape === "week";
  const isDated = isPair || phrase.shape === "month" || phrase.shape === "day";
  if (!isDated || isOfErrand(phrase, text) || noMark.test(text.slice(phrase.end))) return false;
  const production = productionSpan(view.lexicon.handbook.cars);
  const isNear =
    phrase.interval.to > production.from - monthsAround &&
    phrase.interval.from < production.to + monthsAround;
  if (!isNear) return false;
  return askedDate(view) !== undefined || (isPair && hasMarkOf(view, phrase));
}

function hasMarkOf(view: MessageView, phrase: DatePhrase): boolean {
  const partId = view.partOf[view.clauseOf[tokenAt(view, phrase.start)] ?? 0];
  const form = shapeForm(phrase.text);
  const part = view.lexicon.handbook.parts.find(({ id }) => id === partId);
  return (
    part?.features.some((each) => each.kind === "date" && each.forms.some((one) => one === form)) === true
  );
}
