// What stands behind a size and makes it none of the part: a screw's, a rule's, a difference, an hour of the clock.
import type { Quantity } from "./quantities.ts";

/** Nouns after a size that make it the size of something else: "8 mm studs". */
export const sizeOf =
  /^ ?-?(?:stud|screw|bolt|hole|nut|thread|head|spanner|socket|drill|washer|wire|self|rivet|allen|hex|tap|wheel|tire|tyre|engine|cc|crack|chip|scratch|dent|gap|tape|rule|mark)\w*\b(?! (?:spacing|cent|apart|circle|pitch|to|in the))|^ ?(?:when )?(?:in|under) water\b|^ ?(?:\/(?! ?\d)|per )|^ (?:lower|higher|shorter|longer|closer|further)\b|^ from the end\b|^ the same\b|^ ?(?:away|back|behind|from) (?:from )?(?:me|us|him|her|the (?:car|house|road|camera))\b|^ ?away\b/i;

/** "8 mm studs" is the size of the studs; "screw count 3", small, whole and without a unit, is no size at all. */
export function isOfSomethingElse(quantity: Quantity): boolean {
  const isCount = quantity.unit === null && Number.isInteger(quantity.value) && quantity.value <= 12;
  return isCount || sizeOf.test(quantity.after);
}

/** "At 3 o'clock" is a place. */
export function isClockHour({ after }: Quantity): boolean {
  return /^ ?o'? ?clock\b/i.test(after);
}
