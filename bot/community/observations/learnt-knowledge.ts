/**
 * A handbook sharpened by what members saw: how often each kind shows what, when one gave way to the next, how long parts lay. Worked out part by part when
 * first asked for, and again only after something of that part was accepted, changed or withdrawn.
 */
import { type CompiledPart, compilePart, type PartKind } from "../../../knowledge/index.ts";
import { findPart, type Knowledge } from "../../conversation/knowledge.ts";
import { learntChanges } from "./learnt-changes.ts";
import { learntLeads } from "./learnt-leads.ts";
import {
  type ObservationsView,
  observedStates,
  type PartTally,
  snapshotMark,
  tallyKey,
} from "./observations-view.ts";

/** By plain knowledge and view, both of which live as long as what is made of them. */
const learnt = new WeakMap<Knowledge, WeakMap<ObservationsView, Knowledge>>();

/** The knowledge with the accepted observations of this view in it; the plain one when there are none. */
export function learntKnowledge(plain: Knowledge, view: ObservationsView): Knowledge {
  if (view.accepted === 0) return plain;
  const byView = learnt.get(plain) ?? new WeakMap<ObservationsView, Knowledge>();
  learnt.set(plain, byView);
  const known = byView.get(view) ?? sharpened(plain, view);
  byView.set(view, known);
  return known;
}

function sharpened(plain: Knowledge, view: ObservationsView): Knowledge {
  const kept = new Map<string, { readonly version: number; readonly compiled: CompiledPart | undefined }>();
  const { handbook } = plain;
  return {
    ...plain,
    snapshot: () => ({ count: view.accepted, mark: snapshotMark(view) }),
    compiled(part) {
      const tally = view.parts.get(tallyKey({ handbook: handbook.cover.id, part }));
      const kind = findPart(plain, part);
      if (tally === undefined || kind === undefined || tally.version === 0) return plain.compiled(part);
      const known = kept.get(part);
      if (known?.version === tally.version) return known.compiled;
      const compiled = sharpenedPart(plain, kind, tally);
      kept.set(part, { version: tally.version, compiled });
      return compiled;
    },
  };
}

/** The part kind with what this tally holds. */
export function sharpenedPart(
  { handbook }: Knowledge,
  part: PartKind,
  tally: PartTally,
): CompiledPart | undefined {
  return compilePart(
    handbook,
    part.id,
    observedStates(part.id, tally),
    learntChanges(handbook, part, tally),
    learntLeads(part, tally),
  );
}
