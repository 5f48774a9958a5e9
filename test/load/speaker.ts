// Somebody at one of the doors, who says something and waits until the answer can be read there; and what the bot may call it.

export type DoorName = "discord" | "telegram" | "web" | "forum";

export interface Speaker {
  readonly door: DoorName;
  readonly person: string;
  /** The id of the conversation in the store. */
  readonly conversation: string;
  /**
   * Says it once and waits for an answer. `id`: what the platform called the message; undefined where only the program knows it.
   * "again": the platform would give it again by itself or the page would be sent again, under the same id.
   */
  say(words: string, patience: number): Promise<Said>;
}

export interface Said {
  readonly id: string | undefined;
  /** "lost": the bot itself said that nothing was kept. "silent": no answer within the patience. */
  readonly outcome: "answered" | "lost" | "silent";
}

/** How the program says at every door that a message came to nothing. */
export const saysLost = /nothing of it (?:is |was )?kept/iu;
