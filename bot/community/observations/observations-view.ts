/**
 * The observations as answers are given from them: all of them by id, and of the accepted ones running sums for each part kind. Sums are
 * whole numbers, so that it makes no difference in which order observations came, were changed and went.
 */
import {
  type Sighting as DatedSighting,
  midpoint,
  type ObservedState,
  textDigest,
} from "../../../knowledge/index.ts";
import type { RecordKind } from "../record-kind.ts";
import { Observation } from "./observation.ts";

export interface PartTally {
  /** Advances with every change of what was accepted. */
  version: number;
  /** Thousandths of a sighting, by variant, feature and state. */
  readonly states: Map<
    string,
    { readonly variant: string; readonly feature: string; readonly state: string; sum: number }
  >;
  /** Cars with a build date, by observation. */
  readonly sightings: Map<string, DatedSighting>;
}

export interface ObservationsView {
  readonly byId: Map<string, Observation>;
  /** By handbook and part kind, "HANDBOOK PART". */
  readonly parts: Map<string, PartTally>;
  /** How many are accepted. */
  accepted: number;
  /** Of all accepted ones together, whatever their order. */
  mark: number;
  /** Observations of one car, by the digest of its serial number. */
  readonly bySerial: Map<string, Set<string>>;
}

export const observationKind: RecordKind<Observation, ObservationsView> = {
  kind: "observation",
  shape: Observation,
  emptyView: () => ({ byId: new Map(), parts: new Map(), accepted: 0, mark: 0, bySerial: new Map() }),
  take(view, id, before, after) {
    if (before !== undefined) withdraw(view, id, before);
    if (after === undefined) view.byId.delete(id);
    else {
      view.byId.set(id, after);
      enter(view, id, after);
    }
  },
};

function enter(view: ObservationsView, id: string, observation: Observation): void {
  const { serialDigest } = observation.saw.car;
  if (serialDigest !== undefined) {
    view.bySerial.set(serialDigest, (view.bySerial.get(serialDigest) ?? new Set()).add(id));
  }
  if (observation.stands !== "accepted") return;
  view.accepted += 1;
  // Exclusive or has no order and takes away what it has added.
  view.mark ^= markOf(id, observation);
  addStates(view, observation, 1);
  const sighting = datedSighting(id, observation);
  if (sighting !== undefined) tallyOf(view, observation).sightings.set(id, sighting);
}

function withdraw(view: ObservationsView, id: string, observation: Observation): void {
  const { serialDigest } = observation.saw.car;
  if (serialDigest !== undefined) view.bySerial.get(serialDigest)?.delete(id);
  if (observation.stands !== "accepted") return;
  view.accepted -= 1;
  view.mark ^= markOf(id, observation);
  addStates(view, observation, -1);
  tallyOf(view, observation).sightings.delete(id);
}

function markOf(id: string, { saw, kinds, isRuledAsBuilt }: Observation): number {
  return Number.parseInt(textDigest(JSON.stringify([id, saw, kinds, isRuledAsBuilt])).slice(0, 8), 16);
}

/** The snapshot as an answer cites it: eight hexadecimal figures. */
export function snapshotMark({ mark }: ObservationsView): string {
  return (mark >>> 0).toString(16).padStart(8, "0");
}

function tallyOf(view: ObservationsView, { saw }: Observation): PartTally {
  const key = `${saw.handbook} ${saw.part}`;
  const known = view.parts.get(key) ?? { version: 0, states: new Map(), sightings: new Map() };
  view.parts.set(key, known);
  return known;
}

/** A kind that is less sure than this teaches nothing of how such parts look. */
const leastTaught = 0.8;

function addStates(view: ObservationsView, observation: Observation, sign: 1 | -1): void {
  const tally = tallyOf(view, observation);
  tally.version += 1;
  const [first] = observation.kinds;
  if (first === undefined || first.chance < leastTaught) return;
  for (const { feature, value, certainty } of observation.saw.reports) {
    if (value.kind !== "state") continue;
    const key = `${first.variant} ${feature} ${value.state}`;
    const entry = tally.states.get(key) ?? { variant: first.variant, feature, state: value.state, sum: 0 };
    entry.sum += sign * Math.round(1000 * first.chance * certainty);
    if (entry.sum === 0) tally.states.delete(key);
    else tally.states.set(key, entry);
  }
}

/** The car as a sighting of its likeliest kind; undefined without a build date or with no likely kind. */
function datedSighting(id: string, { saw, kinds, isRuledAsBuilt }: Observation): DatedSighting | undefined {
  const [first] = kinds;
  const { built, model, trim, market } = saw.car;
  if (first === undefined || first.chance < 0.5 || built === undefined || !Number.isFinite(midpoint(built)))
    return undefined;
  return {
    id,
    variant: first.variant,
    built,
    grade: saw.grade,
    misread: 1 - first.chance,
    isSought: false,
    isRuledAsBuilt,
    ...(model === undefined ? {} : { model }),
    ...(trim === undefined ? {} : { trim }),
    ...(market === undefined ? {} : { market }),
  };
}

/** What was seen of a part kind, in a fixed order. */
export function observedStates(part: string, { states }: PartTally): readonly ObservedState[] {
  return [...states]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([, { variant, feature, state, sum }]) => ({ part, variant, feature, state, weight: sum / 1000 }));
}

/** The dated sightings of a part kind, by id. */
export function datedSightings({ sightings }: PartTally): readonly DatedSighting[] {
  return [...sightings].sort(([one], [other]) => (one < other ? -1 : 1)).map(([, sighting]) => sighting);
}
