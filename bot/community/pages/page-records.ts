/** What the pages keep beside the conversations: it is somebody's own too, and goes when they go. */
import { z } from "zod";

/** What was said and answered, as the page shows it; under the conversation's id. */
export const transcriptKind = "web-transcript";

/** An answer that its asker made a page of. */
export const sharedAnswerKind = "shared-answer";

const Owned = z.looseObject({ by: z.string(), isWithdrawn: z.boolean() });

export function isSharedBy(person: string, state: unknown): boolean {
  return Owned.safeParse(state).data?.by === person;
}

export function isTakenBack(state: unknown): boolean {
  return Owned.safeParse(state).data?.isWithdrawn === true;
}

/** What is left of one that was taken back: who had shared it, and that it is gone. */
export function withdrawnShare(state: unknown): unknown {
  const parsed = Owned.safeParse(state);
  return parsed.success ? { ...parsed.data, isWithdrawn: true, card: null } : state;
}

/** Where the page of an answer that was shared in a chat is. */
export function sharedAnswerPath(community: string, id: string): string {
  return `/answers/${encodeURIComponent(community)}/${id}`;
}
