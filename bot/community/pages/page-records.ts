/** What the pages keep beside the conversations: it is somebody's own too, and goes when they go. */
import { z } from "zod";

/** What was said and answered, as the page shows it; under the conversation's id. */
export const transcriptKind = "web-transcript";

/** An answer that its asker made a page of. */
export const sharedAnswerKind = "shared-answer";

const Owned = z.looseObject({ by: z.string() });

export function isSharedBy(person: string, state: unknown): boolean {
  return Owned.safeParse(state).data?.by === person;
}
