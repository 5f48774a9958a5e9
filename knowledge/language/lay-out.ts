// The first half of reading: serials masked, noise blanked, figures and dates found, and the message laid out for the
// finders. The order matters: nothing looks at the text before its serials are gone, and figures are read before words.
import { blankNoise, type Span } from "./blank-noise.ts";
import { cleanText } from "./clean-text.ts";
import type { Lexicon } from "./lexicon.ts";
import type { ReadingContext } from "./message-reading.ts";
import { type MessageView, viewMessage } from "./message-view.ts";
import { findQuantities, type Quantity } from "./quantities.ts";
import { type DatesFound, datesIn } from "./read-dates.ts";
import { maskSerials } from "./serials.ts";

export interface LaidOut {
  readonly view: MessageView;
  /** The readable text in small letters. */
  readonly lower: string;
  readonly dates: DatesFound;
  /** All figures of the message. */
  readonly figures: readonly Quantity[];
  /** Those that are no part of a date. */
  readonly quantities: readonly Quantity[];
  readonly serials: ReturnType<typeof maskSerials>["serials"];
  /** Whether the message was longer than is read. */
  readonly isCut: boolean;
}

/** One message laid out; never throws, bounded in time by the length read. */
export function layOut(text: string, lexicon: Lexicon, context: ReadingContext): LaidOut {
  const { cars } = lexicon.handbook;
  const clean = cleanText(text);
  const masked = maskSerials(clean.text, cars, context.serialDigest);
  const shown = masked.text;
  const { text: readable, quoted } = blankNoise(shown);
  const lower = readable.replace(/[A-Z]/g, (letter) => letter.toLowerCase());
  const dates = datesIn(lower, cars, context.today);
  const firmDates: readonly Span[] = [...dates.phrases.filter(isFirmDate), ...dates.told];
  const figures = findQuantities(lower);
  const quantities = figures.filter((each) => !touchesAny(each, firmDates));
  const taken = [
    ...firmDates,
    ...quantities.filter((each) => each.unit !== null && /\d/.test(lower.slice(each.start, each.start + 1))),
  ];
  const view = viewMessage({ shown, readable, quoted, taken }, lexicon, context);
  return {
    view,
    lower,
    dates,
    figures,
    quantities,
    serials: masked.serials,
    isCut: clean.isCut,
  };
}

/** Whether a figure stands within one of the spans. */
export function touchesAny(quantity: Quantity, spans: readonly Span[]): boolean {
  return spans.some((span) => span.start < quantity.end && quantity.start < span.end);
}

/** A bare "81" may be a number after all; every other date phrase is a date. */
function isFirmDate(phrase: DatesFound["phrases"][number]): boolean {
  return phrase.shape !== "short-year";
}
