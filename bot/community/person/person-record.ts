/** Where somebody has spoken: so that what is theirs can be shown, put together and erased. One record a person and community. */
import { z } from "zod";

export const Person = z
  .strictObject({
    /** Ids of conversations. */
    conversations: z.array(z.string()).readonly(),
  })
  .readonly();
export type Person = z.output<typeof Person>;

export const personKind = { kind: "person", shape: Person } as const;
