/** An observation: what a member saw on a real car, how well that car's history is known, and what the keepers made of it. */
import { z } from "zod";
import { provenanceGrades } from "../../../knowledge/index.ts";
import { KeptCar, KeptReport, Span } from "../../conversation/case.ts";

const Saying = z.strictObject({ by: z.string(), name: z.string(), at: z.number(), words: z.string() });

/** What was seen, in the form in which the errand gathers it and the record keeps it. */
export const Sighting = z
  .strictObject({
    handbook: z.string(),
    part: z.string(),
    /** The kind the member says it is; null: what they told decides. */
    variant: z.string().nullable(),
    reports: z.array(KeptReport).readonly(),
    car: KeptCar,
    grade: z.enum(provenanceGrades),
    /** When it was seen; null: not told. */
    seen: Span.nullable(),
    photographs: z.array(z.string()).readonly(),
    links: z.array(z.string()).readonly(),
    /** May the member be named with it? */
    credit: z.boolean(),
  })
  .readonly();
export type Sighting = z.output<typeof Sighting>;

export const Observation = z
  .strictObject({
    by: z.string(),
    byName: z.string(),
    /** Milliseconds since 1970, universal time: when it was recorded or last edited. */
    at: z.number(),
    /** Where it was recorded, so that its author hears what becomes of it. */
    conversation: z.string(),
    /** Edition of the handbook it was recorded against. */
    edition: z.string(),
    saw: Sighting,
    stands: z.enum(["waiting", "accepted", "declined", "withdrawn"]),
    /**
     * Which kind it was, the likeliest first, as worked out when it was accepted: with the edition of that day, so that it says the same
     * whenever it is read again. Empty before.
     */
    kinds: z
      .array(z.strictObject({ variant: z.string(), chance: z.number().min(0).max(1) }).readonly())
      .readonly(),
    /** Why it was declined or withdrawn. */
    reason: z.string().nullable(),
    /** A keeper has ruled that the part is the one the car was built with. */
    isRuledAsBuilt: z.boolean(),
    sayings: z.array(Saying).readonly(),
  })
  .readonly();
export type Observation = z.output<typeof Observation>;
