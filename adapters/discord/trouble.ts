/** What a failed call to Discord means for us. Codes from Discord's list of JSON error codes. */
import { DiscordAPIError, HTTPError } from "discord.js";

export type Trouble =
  /** The interaction's token is no longer good, or the interaction was never known here. */
  | "token gone"
  | "acknowledged already"
  | "message gone"
  | "channel gone"
  | "person gone"
  | "lacking permission"
  | "takes no direct messages"
  /** Cut, timed out, or a fault on their side: it may or may not have happened. */
  | "unreachable"
  | "other";

const meanings: Readonly<Record<number, Trouble>> = {
  10003: "channel gone",
  10004: "channel gone",
  10007: "person gone",
  10008: "message gone",
  10013: "person gone",
  10015: "token gone",
  10062: "token gone",
  40060: "acknowledged already",
  50001: "lacking permission",
  50005: "message gone",
  50007: "takes no direct messages",
  50013: "lacking permission",
  50027: "token gone",
  50083: "lacking permission",
};

export function troubleOf(failure: unknown): Trouble {
  if (failure instanceof DiscordAPIError) return meanings[Number(failure.code)] ?? "other";
  if (failure instanceof HTTPError) return "unreachable";
  const code = failure instanceof Error && "code" in failure ? String(failure.code) : "";
  const isCut = /^(?:UND_ERR|ECONN|EPIPE|ETIMEDOUT|EAI_AGAIN|ENOTFOUND|EHOST|ENET)/u.test(code);
  const isAborted =
    failure instanceof Error && (failure.name === "AbortError" || failure.name === "SocketError");
  return isCut || isAborted ? "unreachable" : "other";
}

const PAUSES = [100, 500, 2000] as const;

/** Calls again while Discord cannot be reached. Only for calls that change nothing the second time: edits, and sends with a nonce. */
export async function insisted<Outcome>(call: () => Promise<Outcome>): Promise<Outcome> {
  for (const pause of PAUSES) {
    try {
      return await call();
    } catch (failure) {
      if (troubleOf(failure) !== "unreachable") throw failure;
      await new Promise((resolve) => setTimeout(resolve, pause));
    }
  }
  return call();
}
