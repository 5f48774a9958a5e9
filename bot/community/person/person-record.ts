/** Where somebody has spoken: so that what is theirs can be shown, put together and erased. One record a person and community. */
import { z } from "zod";
import { textDigest } from "../../../knowledge/index.ts";

export const Person = z
  .strictObject({
    /** Ids of conversations. */
    conversations: z.array(z.string()).readonly(),
  })
  .readonly();
export type Person = z.output<typeof Person>;

/** Stands where the id of somebody stood who is erased. */
export const nobody = "erased";

/** The record's id within the community: what stays of an erased record must not name anybody. */
export function personRecordId(person: string): string {
  return textDigest(person).slice(0, 32);
}

export const personKind = { kind: "person", shape: Person } as const;
