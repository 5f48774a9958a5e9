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

/** What somebody may do, the least first: ask; record observations; pin, review and answer; decide who does. */
export const standings = ["asker", "contributor", "keeper", "owner"] as const;
export type Standing = (typeof standings)[number];

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
  /** Whose memory it is said in: "home" when left out. Every community's pins, observations and people are apart. */
  community: z.string().min(1).max(120).optional(),
  /** Nobody else reads this conversation: a direct message, a reply only the asker sees, one's own terminal. */
  isPrivate: z.boolean().optional(),
  /** What the platform vouches for; roles given by invitation count beside it. */
  standing: z.enum(standings).optional(),
  /** The name the platform shows for the person. */
  name: z.string().max(80).optional(),
  /** A post of another member that is asked about: its author's case, its author's facts. */
  quoted: z
    .strictObject({
      from: z.string().min(1).max(200),
      name: z.string().max(80).optional(),
      text: z.string(),
    })
    .optional(),
  /** Photographs that came along, by the ids under which they were taken in, their metadata already gone. */
  photographs: z.array(z.string().max(80)).max(20).optional(),
});
export type IncomingMessage = z.output<typeof IncomingMessage>;
