/**
 * The observations as answers are given from them: all of them by id, and of the accepted ones running sums for each part kind. Sums are
 * whole numbers, so that it makes no difference in which order observations came, were changed and went.
 */
import {
  type CountedChanges,
  type Sighting as DatedSighting,
  midpoint,
  type ObservedState,
  type PartKind,
  textDigest,
} from "../../../knowledge/index.ts";
import type { RecordKind } from "../record-kind.ts";
import { type DatedMark, datedMarks } from "./dated-marks.ts";
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
  /** The same, those that cannot be told apart as one with their number, by what they say. */
  readonly alike: Map<string, DatedSighting & { readonly count: number }>;
  /** What stands on a date mark of a car whose build date and history are known, by observation. */
  readonly marks: Map<string, readonly DatedMark[]>;
  /** What was worked out of `alike`, by part kind of an edition: a cache, which a copy of the tally shares. */
  readonly counted: WeakMap<PartKind, CountedChanges>;
}

export interface ObservationsView {
  readonly byId: Map<string, Observation>;
  /** By handbook and part kind, "HANDBOOK PART". */
  readonly parts: Map<string, PartTally>;
  /** How many are accepted. */
  accepted: number;
  /** Of all accepted ones together, whatever their order. */
  mark: number;
  /** By who recorded them. */
  readonly byPerson: Map<string, Set<string>>;
  /** Observations of one car, by the digest of its serial number. */
  readonly bySerial: Map<string, Set<string>>;
}

export const observationKind: RecordKind<Observation, ObservationsView> = {
  kind: "observation",
  shape: Observation,
  emptyView: () => ({
    byId: new Map(),
    parts: new Map(),
    accepted: 0,
    mark: 0,
    byPerson: new Map(),
    bySerial: new Map(),
  }),
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
  view.byPerson.set(observation.by, (view.byPerson.get(observation.by) ?? new Set()).add(id));
  if (serialDigest !== undefined) {
    view.bySerial.set(serialDigest, (view.bySerial.get(serialDigest) ?? new Set()).add(id));
  }
  if (observation.stands !== "accepted") return;
  view.accepted += 1;
  // Exclusive or has no order and takes away what it has added.
  view.mark ^= markOf(id, observation);
  addTo(tallyOf(view, observation), id, observation, 1);
}

function withdraw(view: ObservationsView, id: string, observation: Observation): void {
  const { serialDigest } = observation.saw.car;
  view.byPerson.get(observation.by)?.delete(id);
  if (serialDigest !== undefined) view.bySerial.get(serialDigest)?.delete(id);
  if (observation.stands !== "accepted") return;
  view.accepted -= 1;
  view.mark ^= markOf(id, observation);
  addTo(tallyOf(view, observation), id, observation, -1);
}

/** What the tally would be with the observation accepted as it stands; the tally itself stays. */
export function tallyWith(tally: PartTally, id: string, observation: Observation): PartTally {
  const copy: PartTally = {
    version: tally.version + 1,
    states: new Map([...tally.states].map(([key, entry]) => [key, { ...entry }])),
    sightings: new Map(tally.sightings),
    alike: new Map(tally.alike),
    marks: new Map(tally.marks),
    counted: tally.counted,
  };
  addTo(copy, id, observation, 1);
  return copy;
}

function addTo(tally: PartTally, id: string, observation: Observation, sign: 1 | -1): void {
  tally.version += 1;
  addStates(tally, observation, sign);
  const marks = sign === 1 ? datedMarks(observation) : [];
  if (marks.length > 0) tally.marks.set(id, marks);
  else tally.marks.delete(id);
  const sighting = datedSighting(id, observation);
  if (sighting === undefined) return;
  if (sign === 1) tally.sightings.set(id, sighting);
  else tally.sightings.delete(id);
  const { id: _, ...said } = sighting;
  const key = JSON.stringify(said);
  const count = (tally.alike.get(key)?.count ?? 0) + sign;
  if (count === 0) tally.alike.delete(key);
  else tally.alike.set(key, { ...said, id: key, count });
}

function markOf(id: string, { saw, kinds, isRuledAsBuilt }: Observation): number {
  return Number.parseInt(textDigest(JSON.stringify([id, saw, kinds, isRuledAsBuilt])).slice(0, 8), 16);
}

/** The snapshot as an answer cites it: eight hexadecimal figures. */
export function snapshotMark({ mark }: ObservationsView): string {
  return (mark >>> 0).toString(16).padStart(8, "0");
}

export function tallyKey({ handbook, part }: { readonly handbook: string; readonly part: string }): string {
  return `${handbook} ${part}`;
}

function tallyOf(view: ObservationsView, { saw }: Observation): PartTally {
  const key = tallyKey(saw);
  const known = view.parts.get(key) ?? emptyTally();
  view.parts.set(key, known);
  return known;
}

/** A kind that is less sure than this teaches nothing of how such parts look. */
export const leastTaught = 0.8;

function addStates(tally: PartTally, observation: Observation, sign: 1 | -1): void {
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
    // To the hundredth, so that sightings which say the same are counted as the same.
    misread: Math.round(100 * (1 - first.chance)) / 100,
    isSought: false,
    isRuledAsBuilt,
    ...(model === undefined ? {} : { model }),
    ...(trim === undefined ? {} : { trim }),
    ...(market === undefined ? {} : { market }),
  };
}

/** A tally of nothing. */
export function emptyTally(): PartTally {
  return {
    version: 0,
    states: new Map(),
    sightings: new Map(),
    alike: new Map(),
    marks: new Map(),
    counted: new WeakMap(),
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

/** The same as numbers of those alike, in a fixed order: as many as there are months and grades, however many cars. */
export function sightingsAlike({ alike }: PartTally): readonly DatedSighting[] {
  return [...alike].sort(([one], [other]) => (one < other ? -1 : 1)).map(([, sighting]) => sighting);
}
