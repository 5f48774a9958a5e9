/**
 * A kind of record that a community keeps (pins, observations, keepers …): its shape, and the view that answers are given from. A view
 * is kept up to date record by record, because a hundred thousand observations cannot be counted anew for every message.
 */
import type { z } from "zod";

export interface RecordKind<Shape, View> {
  /** The kind in the store; the record's id there is "COMMUNITY/ID". */
  readonly kind: string;
  readonly shape: z.ZodType<Shape>;
  readonly emptyView: () => View;
  /** Takes one record's change into the view, in place; `before` is undefined of a new record, `after` of an erased one. */
  readonly take: (view: View, id: string, before: Shape | undefined, after: Shape | undefined) => void;
}

/** The records of one kind in one community as this process knows them; only the community's memory puts anything there. */
export interface Shelf<View> {
  readonly kind: string;
  readonly view: View;
  /** A state as the store gave it; null or undefined: the record is gone. Throws of a state that is damaged. */
  readonly put: (id: string, state: unknown) => void;
}

export function shelf<Shape, View>({ kind, shape, emptyView, take }: RecordKind<Shape, View>): Shelf<View> {
  const records = new Map<string, Shape>();
  const view = emptyView();
  return {
    kind,
    view,
    put(id, state) {
      const after = state === undefined || state === null ? undefined : shape.parse(state);
      take(view, id, records.get(id), after);
      if (after === undefined) records.delete(id);
      else records.set(id, after);
    },
  };
}

/** The view that is simply the records by id. */
export function byId<Shape>(): Pick<RecordKind<Shape, Map<string, Shape>>, "emptyView" | "take"> {
  return {
    emptyView: () => new Map(),
    take(view, id, _before, after) {
      if (after === undefined) view.delete(id);
      else view.set(id, after);
    },
  };
}
