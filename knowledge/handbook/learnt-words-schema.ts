/**
 * What was learnt of how owners speak of each state of a handbook: for each state a bias, nats, and the weights of words. Kept
 * beside the handbook, because its words are the handbook's; a handbook without it is read by its names alone.
 */
import { z } from "zod";

/**
 * Weights in pairs of whole numbers: how far on from the last word the word stands in `words`, and its weight in hundredths
 * of a nat. One text for each ear, so that a handbook is loaded before a message needs them.
 */
const Ear = z.strictObject({
  bias: z.number(),
  weights: z.string().regex(/^(?:\d{1,7} -?\d{1,7}(?: \d{1,7} -?\d{1,7})*)?$/),
});
export type Ear = z.output<typeof Ear>;

export const LearntWords = z.strictObject({
  /** How many annotated messages it was learnt from. */
  messages: z.number().int().positive(),
  words: z.array(z.string()),
  /** Whether a sentence tells any state at all. */
  telling: Ear,
  /** Whether a whole message tells any state at all. */
  tellingAtAll: Ear,
  /** Whether a sentence that tells a state speaks of a part, by part. */
  spokenOf: z.record(z.string(), Ear),
  /** By part, feature and state. */
  parts: z.record(z.string(), z.record(z.string(), z.record(z.string(), Ear))),
});
export type LearntWords = z.output<typeof LearntWords>;
