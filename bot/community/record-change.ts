/**
 * A change of one record beside a conversation's turn. It is made with the turn in one commit or not at all; what it finds may be newer
 * than what the turn was decided on, and then the turn is decided again.
 */
import type { Alongside } from "../ports.ts";
import { keepable } from "./ledger.ts";
import type { RecordKind } from "./record-kind.ts";

/** Somebody else was quicker: what the turn went by is no longer so. */
export class BehindError extends Error {
  override readonly name = "BehindError";
}

export interface RecordChange {
  readonly kind: string;
  /** Within the community. */
  readonly id: string;
  /** What was done, for the audit: "accepted observation 7k3f-2m9q". */
  readonly why: string;
  /** From the kept state, undefined of a new record, to the next; throws BehindError when it no longer holds. */
  readonly advance: (state: unknown) => unknown;
  /** Records that answers do not go by (questions asked, notices) need not be told to the other processes. */
  readonly isAside?: boolean;
  /** It is nobody's business who did it, and nobody's name is kept with it. */
  readonly isNameless?: boolean;
}

/** Stands where a name is not kept. */
const nameless = "somebody";

/** A record that does not exist yet. */
export function newRecord<Shape>(
  { kind }: RecordKind<Shape, never> | { readonly kind: string },
  id: string,
  why: string,
  state: Shape,
): RecordChange {
  return {
    kind,
    id,
    why,
    advance(before) {
      if (before !== undefined) throw new BehindError(`${kind} ${id} exists`);
      return state;
    },
  };
}

/** A change of a record as it was seen; `change` gives undefined when the record is no longer fit for it. */
export function changedRecord<Shape>(
  { kind, shape }: Pick<RecordKind<Shape, unknown>, "kind" | "shape">,
  id: string,
  why: string,
  change: (before: Shape) => Shape | undefined,
): RecordChange {
  return {
    kind,
    id,
    why,
    advance(before) {
      const after = before === undefined || before === null ? undefined : change(shape.parse(before));
      if (after === undefined) throw new BehindError(`${kind} ${id} has changed`);
      return after;
    },
  };
}

/** A record that is begun by whoever first needs it; `change` gives undefined as in changedRecord. */
export function keptRecord<Shape>(
  { kind, shape }: Pick<RecordKind<Shape, unknown>, "kind" | "shape">,
  id: string,
  why: string,
  change: (before: Shape | undefined) => Shape | undefined,
): RecordChange {
  return {
    kind,
    id,
    why,
    advance(before) {
      const isNew = before === undefined || before === null;
      const after = change(isNew ? undefined : shape.parse(before));
      if (after === undefined) throw new BehindError(`${kind} ${id} has changed`);
      return after;
    },
  };
}

/** As the store takes it. */
export function alongside(
  community: string,
  { kind, id, why, advance, isNameless = false }: RecordChange,
  by: string,
  at: number,
): Alongside {
  const who = isNameless ? nameless : by;
  return { change: { kind, id: `${community}/${id}`, by: who, at, why: keepable(why) }, advance };
}
