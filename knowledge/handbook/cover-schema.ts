/** The handbook's cover (handbook.yaml) and its sources (sources.yaml). */
import { z } from "zod";
import { DateText, Id, Name, Text } from "./written-forms.ts";

/** handbook.yaml */
export const Cover = z.strictObject({
  format: z.literal(1),
  id: Id,
  name: Name,
  /** What is restored, in one word and in many: "machine", "machines"; a car when not given. */
  thing: Name.optional(),
  things: Name.optional(),
  summary: Text,
  /** How much of what exists this handbook covers. */
  completeness: z.enum(["complete", "good", "fair", "poor"]),
  /** The month this edition was closed. */
  edited: DateText,
});
export type Cover = z.output<typeof Cover>;

export const Source = z.strictObject({
  id: Id,
  kind: z.enum([
    "works-record",
    "parts-list",
    "service-bulletin",
    "period-photograph",
    "brochure",
    "measured",
    "survey",
    "register",
    "witness",
    "club-paper",
    "restorer",
    "hearsay",
  ]),
  /** Who, what, where: the citation as it stands in brackets behind a claim. */
  citation: Text,
  /** The short form shown in a reply. */
  short: Name,
  date: DateText.optional(),
  /** A record of the time; B seen and measured; C told by somebody who was there; D repeated. */
  grade: z.enum(["A", "B", "C", "D"]),
});
export type Source = z.output<typeof Source>;

/** sources.yaml */
export const Sources = z.strictObject({ sources: z.array(Source).max(2000) });
export type Sources = z.output<typeof Sources>;
