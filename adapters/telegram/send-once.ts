/**
 * Sending, when the answer may be lost on the way. The platform has no name by which a message could be sent twice and kept once, but
 * it counts messages in each chat: what was sent stands among the next few numbers, and an edit to the very same content finds it,
 * because it is refused as no change, or does nothing worse than say the same again.
 */
import { setTimeout as pause } from "node:timers/promises";
import { troubleOf } from "./trouble.ts";

export interface Sending {
  /** Sends, and gives the number of the message. */
  readonly send: () => Promise<number>;
  /** Edits the message of this number to the same content. */
  readonly sameAgain: (message: number) => Promise<unknown>;
  /** The newest message known in the chat; 0 when none is, and nothing can be looked for. */
  readonly after: number;
  /** Numbers of ours that are something else. */
  readonly known: ReadonlySet<number>;
  /** An earlier try may have got through: look before sending. */
  readonly isSuspect: boolean;
}

/** Others may have written meanwhile; a message of ours is not looked for further than this. */
const furthest = 8;
const waits = [500, 2000, 5000];

/** The number of the message, sent once as far as can be known. Rejects with what the platform refused, or when the network stays away. */
export async function sendOnce(sending: Sending): Promise<number> {
  let isSuspect = sending.isSuspect;
  for (const wait of [...waits, undefined]) {
    try {
      const found = isSuspect ? await lookFor(sending) : undefined;
      return found ?? (await sending.send());
    } catch (failure) {
      const { kind } = troubleOf(failure);
      if (wait === undefined || (kind !== "unknown fate" && kind !== "not sent")) throw failure;
      isSuspect ||= kind === "unknown fate";
      await pause(wait);
    }
  }
  throw new RangeError("sendOnce: the last try returns or throws");
}

async function lookFor({ sameAgain, after, known }: Sending): Promise<number | undefined> {
  if (after === 0) return undefined;
  for (let message = after + 1; message <= after + furthest; message += 1) {
    if (!known.has(message) && (await isThisOne(sameAgain, message))) return message;
  }
  return undefined;
}

async function isThisOne(sameAgain: Sending["sameAgain"], message: number): Promise<boolean> {
  try {
    await sameAgain(message);
    return true;
  } catch (failure) {
    const { kind } = troubleOf(failure);
    if (kind === "unchanged") return true;
    if (kind === "not editable") return false;
    throw failure;
  }
}
