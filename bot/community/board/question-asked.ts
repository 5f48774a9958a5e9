/**
 * What was asked and what became of it, one record a case and nobody's name in it: from these, historians see what to research next. Kept
 * when something worth counting happens and not with every message.
 */
import { z } from "zod";
import { goals } from "../../../knowledge/index.ts";

export const QuestionAsked = z
  .strictObject({
    handbook: z.string(),
    part: z.string(),
    goal: z.enum(goals),
    /** Milliseconds since 1970, universal time: when it was last worth a note. */
    at: z.number(),
    stands: z.enum(["open", "answered", "left-open"]),
    /** What could not be told, and what would still tell the likeliest kinds apart. */
    cannotTell: z.array(z.string()).readonly(),
    wouldTell: z.array(z.string()).readonly(),
    misbeliefs: z.array(z.strictObject({ part: z.string(), misbelief: z.string() })).readonly(),
    /** How the answer turned out, when somebody said. */
    received: z.enum(["right", "wrong"]).nullable(),
  })
  .readonly();
export type QuestionAsked = z.output<typeof QuestionAsked>;

export const askedKind = { kind: "asked", shape: QuestionAsked } as const;
