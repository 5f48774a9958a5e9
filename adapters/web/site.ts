/** What the pages are made from: the bot, the handbooks, the memory, and who the site is to the outside. */
import type { Bot, Clock, Knowledge, Log, Pages, Store } from "../../bot/index.ts";
import type { Drawings } from "./drawings.ts";
import type { Limits } from "./limits.ts";
import type { LiveTurns } from "./live-turns.ts";
import type { Metrics } from "./metrics.ts";
import type { Assets } from "./render/page.ts";

/** Where photographs are kept; the adapter that keeps them takes their metadata away. */
export interface Photographs {
  /** `by`: the person who sent it. A problem's message is a sentence for them. */
  take(
    bytes: Uint8Array,
    by: string,
  ): Promise<
    | { readonly ok: true; readonly id: string }
    | { readonly ok: false; readonly problem: { readonly message: string } }
  >;
  read(id: string): Promise<{ readonly bytes: Uint8Array; readonly mediaType: string } | undefined>;
}

/** Requests are logged at debug; a line each would drown the rest. */
export interface PageLog extends Log {
  debug(fields: object, message: string): void;
}

export interface Site {
  /** The bot as this site's visitors meet it, and as forums do. */
  readonly bot: Bot;
  readonly forumBot: Bot;
  /** The community's records, for reading. */
  readonly pages: Pages;
  readonly knowledge: () => readonly Knowledge[];
  readonly store: Store;
  readonly clock: Clock;
  readonly log: PageLog;
  readonly isReady: () => boolean;
  /** Where the site is reached from outside, without a slash at the end. */
  readonly address: string;
  /** Cookies only go over https. */
  readonly isSecure: boolean;
  /** By the source's name. */
  readonly webhookSecrets: ReadonlyMap<string, string>;
  readonly photographs: Photographs | undefined;
  readonly drawings: Drawings;
  readonly assets: Assets;
  readonly metrics: Metrics;
  readonly live: LiveTurns;
  readonly limits: Limits;
}
