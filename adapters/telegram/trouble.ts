/** What a refusal of the platform means for us. Its words are the only thing that tells some of them apart; they are matched here and nowhere else. */
import { GrammyError, HttpError } from "grammy";

export type Trouble =
  /** The message already says so. */
  | { readonly kind: "unchanged" }
  /** The message is too old, was deleted, or is not ours. */
  | { readonly kind: "not editable" }
  /** The group has become a supergroup with another number. */
  | { readonly kind: "moved"; readonly to: number }
  /** Blocked, kicked, never started, deleted, or a topic that is gone: nothing can be said there. */
  | { readonly kind: "gone" }
  /** The bot is there but may not write. */
  | { readonly kind: "silenced" }
  /** Another process is fetching updates with the same token. */
  | { readonly kind: "conflict" }
  /** A webhook takes all updates away. */
  | { readonly kind: "webhook" }
  /** Asked to wait, more often than a call is repeated. */
  | { readonly kind: "too many" }
  /** Nothing reached the platform. */
  | { readonly kind: "not sent" }
  /** The answer was lost: it may have been carried out. */
  | { readonly kind: "unknown fate" }
  | { readonly kind: "other" };

export function troubleOf(failure: unknown): Trouble {
  if (failure instanceof HttpError) return { kind: wasNotSent(failure) ? "not sent" : "unknown fate" };
  if (!(failure instanceof GrammyError)) return { kind: "other" };
  const { error_code: code, description, parameters } = failure;
  if (parameters.migrate_to_chat_id !== undefined)
    return { kind: "moved", to: parameters.migrate_to_chat_id };
  if (code >= 500) return { kind: "unknown fate" };
  if (code === 429) return { kind: "too many" };
  if (code === 403) return { kind: "gone" };
  if (code === 409) return { kind: description.includes("webhook is active") ? "webhook" : "conflict" };
  return code === 400 ? { kind: kindOfBadRequest(description) } : { kind: "other" };
}

function kindOfBadRequest(description: string): "unchanged" | "not editable" | "gone" | "silenced" | "other" {
  if (description.includes("not modified")) return "unchanged";
  if (
    /can't be edited|message to edit not found|no text in the message|MESSAGE_ID_INVALID/u.test(description)
  )
    return "not editable";
  if (
    /chat not found|thread not found|TOPIC_(?:CLOSED|DELETED)|PEER_ID_INVALID|deactivated/u.test(description)
  )
    return "gone";
  if (/not enough rights|CHAT_WRITE_FORBIDDEN|CHAT_RESTRICTED|have no rights/u.test(description))
    return "silenced";
  return "other";
}

/** It lies with the platform or the way to it, and comes back by itself. */
export function isPassing({ kind }: Trouble): boolean {
  return kind === "unknown fate" || kind === "not sent" || kind === "too many";
}

/** Where the platform stands in the way, what was said may well have been kept. */
export function isOfPlatform(failure: unknown): boolean {
  return failure instanceof GrammyError || failure instanceof HttpError;
}

/** The platform does not take what it was given, however often it is tried. */
export function isRefused(failure: unknown): boolean {
  return failure instanceof GrammyError && failure.error_code === 400 && troubleOf(failure).kind === "other";
}

/** Failures of the way there: no address, nobody listening. After that, nobody knows. */
function wasNotSent({ error }: HttpError): boolean {
  const code = typeof error === "object" && error !== null && "code" in error ? error.code : undefined;
  return code === "ECONNREFUSED" || code === "ENOTFOUND" || code === "EAI_AGAIN" || code === "EHOSTUNREACH";
}
