/** Who may do what in a community, by invitation: one record, because the last owner must be seen beside the others. */
import { z } from "zod";
import { standings } from "../../message.ts";
import { byId, type RecordKind } from "../record-kind.ts";

const Role = z.strictObject({
  person: z.string(),
  name: z.string(),
  standing: z.enum(standings),
  /** Milliseconds since 1970, universal time. */
  since: z.number(),
  by: z.string(),
});
export type Role = z.output<typeof Role>;

/** An invitation is a secret told once; what is kept does not give it away. */
const Invitation = z.strictObject({
  digest: z.string(),
  standing: z.enum(standings),
  by: z.string(),
  until: z.number(),
});
export type Invitation = z.output<typeof Invitation>;

export const Keepers = z
  .strictObject({
    roles: z.array(Role).readonly(),
    invitations: z.array(Invitation).readonly(),
  })
  .readonly();
export type Keepers = z.output<typeof Keepers>;

export const keepersKind: RecordKind<Keepers, Map<string, Keepers>> = {
  kind: "keepers",
  shape: Keepers,
  ...byId<Keepers>(),
};

/** The record's id within the community: there is one. */
export const keepersId = "keepers";

export const noKeepers: Keepers = { roles: [], invitations: [] };

export function keepersIn(view: ReadonlyMap<string, Keepers>): Keepers {
  return view.get(keepersId) ?? noKeepers;
}
