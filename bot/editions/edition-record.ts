/** Which edition of a handbook serves, what changed when it came, and what was refused since: one record a handbook, with its history. */
import { z } from "zod";

export const EditionRecord = z
  .strictObject({
    edition: z.string(),
    name: z.string(),
    /** What changed from the edition before, in words; empty for the first. */
    changes: z.array(z.string()).readonly(),
    /** What is wrong with the files that were not taken since, a line each; empty when they are what serves. */
    refused: z.array(z.string()).readonly(),
  })
  .readonly();
export type EditionRecord = z.output<typeof EditionRecord>;

export const editionKind = "edition";

/** The files of an edition, under its hash: what any two editions are compared by. */
export const EditionFiles = z
  .strictObject({
    files: z.array(z.strictObject({ path: z.string(), text: z.string() }).readonly()).readonly(),
  })
  .readonly();
export const editionFilesKind = "edition-files";

/** Of more changes only so many are kept in words; the files know the rest. */
export const mostChangesKept = 500;

/** Who is named as having changed it: nobody in the community did. */
export const editionKeeper = "handbook";
