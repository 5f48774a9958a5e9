// What a platform's tests must be able to do for the contract: let somebody speak and press where all can read along, and tell what
// was seen. One place, one conversation, as many people as are named.
import type { Bot } from "../../bot/index.ts";

/** What can be read after a turn has been shown: only what this turn wrote or changed. */
export interface Seen {
  /** As a member reads it, without the platform's marks. */
  readonly texts: readonly string[];
  /** The labels of everything that can be pressed, chosen or opened. */
  readonly controls: readonly string[];
}

export interface Harness {
  /** Says it so that the platform takes it as spoken to the bot. Resolves when the answer can be read. */
  say(person: string, text: string): Promise<Seen>;
  /** Presses or chooses what was seen last by its label. */
  press(person: string, label: string): Promise<Seen>;
  close(): Promise<void>;
}

/** Opens a platform's door on this bot, with a place in which nothing has been said. */
export type OpenHarness = (bot: Bot) => Promise<Harness>;
