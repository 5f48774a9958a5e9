/**
 * What a door needs of the bot beside saying something: settings, names to complete while typing, and what is to be told in
 * places where nobody has just spoken. A door holds this and its platform's library, and knows nothing else.
 */
import { z } from "zod";
import { unitsChoices } from "./conversation/saying/said-size.ts";
import type { Receive } from "./receive.ts";
import type { Reply } from "./reply.ts";

/** A community's own choices; what a platform needs to know of its places stands under the platform's name. */
export const Settings = z
  .strictObject({
    /** Ids of the handbooks that answer here; null: every one that is served. */
    handbooks: z.array(z.string()).readonly().nullable(),
    /** In which units sizes are said. */
    units: z.enum(unitsChoices),
    /** Cases untouched for so long are forgotten; null: kept. */
    retentionMonths: z.number().int().min(1).max(1200).nullable(),
    /** By platform; each door has its own schema for its part. */
    platforms: z.record(z.string(), z.json()).readonly(),
  })
  .readonly();
export type Settings = z.output<typeof Settings>;

/** What shall be told where nobody has just spoken: a keeper's answer to its asker, a case to the keepers. */
export interface Notice {
  readonly id: string;
  readonly community: string;
  /** The keepers of the community, wherever they meet on this platform; or one person, in the conversation they spoke in. */
  readonly to:
    | { readonly audience: "keepers" }
    | { readonly audience: "person"; readonly conversation: string; readonly person: string };
  readonly reply: Reply;
}

/** What became of a notice: told; or never to be told, because the place or the person is gone. */
export type NoticeOutcome = "told" | "gone";

/** A name to complete while somebody types, and what typing it whole would say. */
export interface Suggestion {
  readonly name: string;
  readonly say: string;
}

export interface Bot {
  readonly receive: Receive;
  settings(community: string): Promise<Settings>;
  /** Keeps new settings; who may change them has been asked before (`by` is a person's id). */
  changeSettings(community: string, by: string, settings: Settings): Promise<void>;
  /** At most 25 names of part kinds, variants and pinned answers near to what was typed, the nearest first; misspelling is forgiven. */
  suggest(community: string, typed: string): Promise<readonly Suggestion[]>;
  /**
   * Notices not told yet on this door's platform, at most `limit`, the oldest of each community first; where more wait, those that were
   * given out before come last. Asked every second or two.
   */
  notices(limit: number): Promise<readonly Notice[]>;
  /** Says what became of a notice. Saying it twice changes nothing. */
  noticeSettled(id: string, outcome: NoticeOutcome): Promise<void>;
}
