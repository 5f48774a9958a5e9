/** An errand is something that takes several answers (recording a sighting, pinning an answer); each person has one at a time in a conversation. */
import { z } from "zod";

export const Errand = z
  .strictObject({
    person: z.string(),
    /** The affair that resumes it, and what it knows so far in that affair's own form. */
    affair: z.string(),
    state: z.json(),
  })
  .readonly();
export type Errand = z.output<typeof Errand>;
