// A date mark as written or told becomes a finding about the date feature that it is of: which feature, which of its readings,
// and what is no mark but made of one.
import { type Interval, intersect } from "../calendar/interval.ts";
import type { Span } from "./blank-noise.ts";
import type { ToldMark } from "./clock-marks.ts";
import { chooseDateFeature, shapeForm } from "./date-features.ts";
import type { DatePhrase } from "./date-phrases.ts";
import { markReadings } from "./date-roles.ts";
import { tokenAt } from "./measurements.ts";
import type { FeatureFinding } from "./message-reading.ts";
import type { MessageView } from "./message-view.ts";
import { productionSpan } from "./serials.ts";

/** A mark as written or told; `own` is the date it reads as by itself. */
export interface WrittenMark {
  readonly start: number;
  readonly end: number;
  readonly written: string;
  readonly own?: Interval;
  readonly form?: string;
  /** The month that its speaker takes it for. */
  readonly meant?: Interval | undefined;
}

const farthestMeant = 40;

/** "A 9 with five dots, which I take for May 1979": the date said right behind a told mark. */
export function meantBy(mark: ToldMark, phrases: readonly DatePhrase[]): Interval | undefined {
  const isMonth = ({ shape }: DatePhrase): boolean => shape === "month" || shape === "day";
  return phrases.find(
    (phrase) => isMonth(phrase) && phrase.start >= mark.end && phrase.start - mark.end <= farthestMeant,
  )?.interval;
}

/** What a mark tells; "several" where it may be of more than one feature, undefined where it tells nothing. */
export function markFinding(view: MessageView, mark: WrittenMark): FeatureFinding | "several" | undefined {
  const { written, own, form } = mark;
  const at = tokenAt(view, mark.start);
  const clause = view.clauseOf[at] ?? 0;
  if (view.stances[clause]?.aside !== undefined && !isConcluded(view, mark, clause)) return undefined;
  const chosen = chooseDateFeature(
    view,
    clause,
    at,
    form ?? (own === undefined ? undefined : shapeForm(written)),
  );
  if (chosen === undefined || chosen === "several") return chosen;
  const { part, feature } = chosen;
  const production = productionSpan(view.lexicon.handbook.cars);
  const all = markReadings(written, own, feature, production, view.context.today);
  const meant = all.filter(({ interval }) => mark.meant !== undefined && intersect(interval, mark.meant));
  const readings = meant.length > 0 ? meant : all;
  if (readings.length === 0) return undefined;
  const certainty = view.stances[clause]?.certainty ?? 1;
  const words = view.shown.slice(mark.start, mark.end).trim();
  return { part, feature: feature.id, value: { kind: "date", readings }, certainty, words };
}

/** "The clock says 3 with 83 in the middle so March 83?": only what is made of the mark is asked. */
function isConcluded(view: MessageView, { end }: WrittenMark, clause: number): boolean {
  const stretch = view.clauses[clause];
  const last = stretch?.isAsked === true ? view.tokens[stretch.to]?.end : undefined;
  return last !== undefined && /^ ?,? so\b/.test(view.shown.slice(end, last).replace(placeOfMark, ""));
}

const placeOfMark = /^ (?:in|on|at) the \w+/;

/** "31 81, so summer of 1981": what is made of a mark is not another one. */
export function isConclusion(text: string, phrase: DatePhrase, marks: readonly Span[]): boolean {
  return marks.some(({ end }) => {
    const between = text.slice(end, phrase.start);
    return between.length <= farthestMeant && concluding.test(between);
  });
}
const concluding =
  /^[^.;\d]*(?:\b(?:so|take|taken|meaning|means|ie|i\.e|that is|that's|which|making|must be)\b|=)[^.;\d]*$/;

/** The mark of a date phrase, words of doubt left out. */
export function writtenMark(phrase: DatePhrase): string {
  return phrase.text
    .replace(/^(?:about|around|circa) /, "")
    .replace(/'/g, "")
    .trim();
}
