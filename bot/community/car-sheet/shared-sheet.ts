/** A car sheet that its owner shares: whoever has the link sees it as it stands, until the owner takes it back. */
import { z } from "zod";

export const SharedSheet = z
  .strictObject({
    person: z.string(),
    /** Which of the person's cars: the cases it was shared for. */
    cases: z.array(z.strictObject({ conversation: z.string(), case: z.string() })).readonly(),
    at: z.number(),
    stands: z.enum(["shared", "revoked"]),
  })
  .readonly();
export type SharedSheet = z.output<typeof SharedSheet>;

export const sharedSheetKind = { kind: "shared-sheet", shape: SharedSheet } as const;

/** Where its page is. */
export function sharedSheetPath(community: string, id: string): string {
  return `/sheet/${encodeURIComponent(community)}/${id}`;
}
