/**
 * What an adapter hands to the conversation: words, or an answer pressed or filled in. Platform-neutral;
 * an adapter knows who speaks where, and nothing of what is meant.
 */
import { z } from "zod";
import { goals } from "../knowledge/index.ts";

/** An answer given by a control instead of words; `feature` may also be "car.built", "car.trim", "car.market". */
export const PressedAnswer = z.union([
  z.strictObject({ feature: z.string().max(80), state: z.string().max(80) }),
  z.strictObject({ feature: z.string().max(80), reading: z.string().max(200) }),
  z.strictObject({ feature: z.string().max(80), cannotTell: z.literal(true) }),
]);
export type PressedAnswer = z.output<typeof PressedAnswer>;

export const IncomingMessage = z.strictObject({
  /** Where it was said: a channel, a private chat, a terminal. Cases live in a conversation. */
  conversation: z.string().min(1).max(200),
  /** The platform's id of the message, where it has one: a message that is delivered twice counts once. */
  id: z.string().min(1).max(200).optional(),
  /** Who said it, an id of the platform. */
  from: z.string().min(1).max(200),
  text: z.string().optional(),
  answer: PressedAnswer.optional(),
  /** The case meant, when the platform knows (a reply, a button); else the current one of the conversation. */
  case: z.string().max(80).optional(),
  goal: z.enum(goals).optional(),
});
export type IncomingMessage = z.output<typeof IncomingMessage>;
