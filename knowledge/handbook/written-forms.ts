/**
 * The smallest things a historian writes in a handbook: ids, names, dates, frequencies. Dates and frequencies stay
 * the words that were written; they are read where they are used.
 */
import { z } from "zod";
import { parseDateText } from "../calendar/date-text.ts";
import { parseFrequency } from "./frequency.ts";

export const Text = z.string().trim().min(1).max(2000);
export const Name = z.string().trim().min(1).max(120);

/**
 * A short handle: lower-case words joined by hyphens ("inside-finish"). "constructor" is refused because every
 * plain record seems to have one: `tells["constructor"]` must never find a function.
 */
export const Id = z
  .string()
  .regex(
    /^(?!constructor$)[a-z0-9]+(-[a-z0-9]+)*$/,
    "an id is lower-case letters and figures joined by hyphens, such as inside-finish",
  )
  .max(60);

/** Other words people use for the same thing; typing slips and plurals need not be listed. */
export const Also = z.array(Name).max(150).default([]);
export const SourceIds = z.array(Id).max(30).default([]);

/** `1980`, `1980-05`, `1980-05-17` or `1981-W31`, always in quotes or with a hyphen so that YAML keeps the text. */
export const DateText = z
  .union([z.string(), z.number().int()])
  .transform(String)
  .refine((text) => parseDateText(text) !== undefined, {
    message: "a date is written 1980, 1980-05, 1980-05-17 or 1981-W31 and must exist in the calendar",
  });

/** `always`, `usually` …, a count `17 of 20`, or both: `usually, 17 of 20`. */
export const FrequencyText = z.string().refine((text) => parseFrequency(text) !== undefined, {
  message:
    "a frequency is always, nearly always, usually, often, about half, sometimes, rarely, never, or a count such as 17 of 20",
});

export const EndSureness = z.enum(["exact", "about", "rough"]);
