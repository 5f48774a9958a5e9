/**
 * A handbook sharpened by what members saw: how often each kind shows what, and when one gave way to the next. Worked out part by part when
 * first asked for, and again only after something of that part was accepted, changed or withdrawn.
 */
import {
  type Changeover,
  type CompiledPart,
  changeover,
  compilePart,
  type LearntChange,
  type PartKind,
  type Succession,
  sightingsOfChange,
  successionsOf,
} from "../../../knowledge/index.ts";
import { findPart, type Knowledge } from "../../conversation/knowledge.ts";
import {
  datedSightings,
  type ObservationsView,
  observedStates,
  type PartTally,
  snapshotMark,
} from "./observations-view.ts";

/** Fewer sightings than these leave the handbook's own periods as they are. */
const leastSightings = 5;

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
      const tally = view.parts.get(`${handbook.cover.id} ${part}`);
      const kind = findPart(plain, part);
      if (tally === undefined || kind === undefined || tally.version === 0) return plain.compiled(part);
      const known = kept.get(part);
      if (known?.version === tally.version) return known.compiled;
      const changes = learntChanges(plain, kind, tally);
      const compiled = compilePart(handbook, part, observedStates(part, tally), changes);
      kept.set(part, { version: tally.version, compiled });
      return compiled;
    },
  };
}

function learntChanges(plain: Knowledge, part: PartKind, tally: PartTally): readonly LearntChange[] {
  return changesSeen(plain, part, tally).map(({ succession, change }) => ({
    part: part.id,
    old: succession.old,
    new: succession.new,
    shares: change.asBuilt,
  }));
}

export interface ChangeSeen {
  readonly succession: Succession;
  readonly change: Changeover;
}

/** Every succession of the part kind of which enough was seen, with what the sightings say of it. */
export function changesSeen(
  { handbook }: Knowledge,
  part: PartKind,
  tally: PartTally,
): readonly ChangeSeen[] {
  const sightings = datedSightings(tally);
  return successionsOf(handbook, part).flatMap((succession): readonly ChangeSeen[] => {
    const seen = sightingsOfChange(sightings, [succession.old], [succession.new]);
    if (seen.length < leastSightings) return [];
    const found = changeover(succession.setting, seen);
    return found.ok ? [{ succession, change: found.value }] : [];
  });
}
