/**
 * What changed between two editions of a handbook, thing by thing and not line by line: a historian who turns a list round or
 * writes a comment has changed nothing. Things are known by their ids; what has a new id is new.
 */
import { atOnce, type InPieces } from "../handbook/in-pieces.ts";
import type { Feature, Handbook, PartKind } from "../handbook/schema.ts";
import type { HandbookChange, Name, NamedThing } from "./handbook-change.ts";
import { variantChanges } from "./variant-changes.ts";

/** All changes, in the order of the newer edition, what was removed last of its kind. Cost: linear in the handbooks. */
export function changesBetween(older: Handbook, newer: Handbook): readonly HandbookChange[] {
  return atOnce(findingChanges(older, newer));
}

/** The same, giving way after each part kind. */
export function* findingChanges(older: Handbook, newer: Handbook): InPieces<readonly HandbookChange[]> {
  const ofParts: HandbookChange[] = [];
  for (const [one, other] of both(older.parts, newer.parts)) {
    ofParts.push(...partChanges(one, other));
    yield;
  }
  const { cars: before } = older;
  const { cars: after } = newer;
  return [
    ...thingChanges("part kind", older.parts, newer.parts, {}, partRest),
    ...ofParts,
    ...thingChanges("model", before.models, after.models, {}, rest),
    ...thingChanges("trim", before.trims, after.trims, {}, rest),
    ...thingChanges("market", before.markets, after.markets, {}, rest),
    ...otherwise(before.production, after.production, "the yearly production"),
    ...otherwise(before.serials, after.serials, "the serial scheme"),
    ...thingChanges("source", named(older.sources), named(newer.sources), {}, restBut("short")),
    ...otherwise(coverOf(older), coverOf(newer), "the cover"),
    ...otherwise([...older.drawings], [...newer.drawings], "the drawings"),
    ...learntAnew(older, newer),
  ];
}

interface Where {
  readonly part?: Name;
  readonly variant?: Name;
}

interface Thing {
  readonly id: string;
  readonly name: string;
}

function partChanges(older: PartKind, newer: PartKind): readonly HandbookChange[] {
  const part = nameOf(newer);
  const states = (feature: Feature) => (feature.kind === "states" ? feature.states : []);
  return [
    ...thingChanges("variant", older.variants, newer.variants, { part }),
    ...both(older.variants, newer.variants).flatMap(([one, other]) => variantChanges(newer, one, other)),
    ...thingChanges("feature", older.features, newer.features, { part }, featureRest),
    ...both(older.features, newer.features).flatMap(([one, other]) =>
      thingChanges("state", states(one), states(other), { part }, rest),
    ),
    ...thingChanges("misbelief", claimed(older), claimed(newer), { part }, restBut("claim")),
    ...thingChanges("mounting", older.mountings, newer.mountings, { part }, rest),
    ...otherwise(older.fits, newer.fits, "what fits what", part),
    ...otherwise(older.causes, newer.causes, "the hidden causes", part),
    ...otherwise(older.groups, newer.groups, "the groups of features", part),
  ];
}

/** What counts of a thing beside its id and name, by the word it is called by. */
type Rest<T> = (thing: T) => Readonly<Record<string, unknown>>;

function thingChanges<T extends Thing>(
  what: NamedThing,
  older: readonly T[],
  newer: readonly T[],
  { part, variant }: Where,
  restOf: Rest<T> = () => ({}),
): readonly HandbookChange[] {
  const where = { part, variant };
  const before = new Map(older.map((thing) => [thing.id, thing]));
  const after = new Set(newer.map(({ id }) => id));
  const kept = newer.flatMap((thing): readonly HandbookChange[] => {
    const was = before.get(thing.id);
    const base = { what, thing: nameOf(thing), ...where };
    if (was === undefined) return [{ about: "added", ...base, detail: "" }];
    const renamed = was.name === thing.name ? [] : [{ about: "renamed", ...base, detail: was.name } as const];
    const [one, other] = [restOf(was), restOf(thing)];
    const words = Object.keys(other).filter((key) => !isSame(one[key], other[key]));
    return [
      ...renamed,
      ...(words.length === 0 ? [] : [{ about: "reworded", ...base, detail: words.join(", ") } as const]),
    ];
  });
  const gone = older
    .filter(({ id }) => !after.has(id))
    .map((thing) => ({ about: "removed", what, thing: nameOf(thing), ...where, detail: "" }) as const);
  return [...kept, ...gone];
}

const rest: Rest<Thing> = ({ id: _, name: __, ...others }) => ({ description: others });

/** The same without what it is called by: a new name is told as one. */
const restBut =
  (called: string): Rest<Thing> =>
  (thing) => {
    const others = Object.entries(thing).filter(([key]) => key !== "id" && key !== "name" && key !== called);
    return { description: Object.fromEntries(others) };
  };

const featureRest: Rest<Feature> = (feature) => {
  const {
    id: _,
    name: __,
    also,
    question,
    why,
    check,
    effort,
    unsure,
    when,
    drawing,
    sources,
    ...others
  } = feature;
  const { states: ___, ...kind } = { states: undefined, ...others };
  return {
    question,
    why,
    check,
    effort,
    "share of owners who cannot tell": unsure,
    condition: when,
    "other words": also,
    drawing,
    sources,
    details: kind,
  };
};

const partRest: Rest<PartKind> = ({ also, summary, replaced, lead, drawing }) => ({
  "other words": also,
  summary,
  "share replaced": replaced,
  "lead time": lead,
  drawing,
});

/** Misbeliefs and sources have no name; what they are called by is their claim or their short form. */
function claimed(part: PartKind): readonly Thing[] {
  return part.misbeliefs.map((misbelief) => ({ ...misbelief, name: misbelief.claim }));
}

function named(sources: Handbook["sources"]): readonly Thing[] {
  return sources.map((source) => ({ ...source, name: source.short }));
}

/** The month of the edition changes with every edition and is no change of what is said. */
function coverOf({ cover }: Handbook): object {
  const { edited: _, ...said } = cover;
  return said;
}

function otherwise(before: unknown, after: unknown, detail: string, part?: Name): readonly HandbookChange[] {
  return isSame(before, after) ? [] : [{ about: "other", part, variant: undefined, detail }];
}

/** Weights mean nothing to a reader, so that they are others is all that is told. */
function learntAnew(older: Handbook, newer: Handbook): readonly HandbookChange[] {
  if (isSame(older.learntWords, newer.learntWords)) return [];
  const messages = newer.learntWords?.messages;
  return [{ about: "learnt words", part: undefined, variant: undefined, messages }];
}

/** Things that both editions have, in the newer one's order. */
function both<T extends { readonly id: string }>(
  older: readonly T[],
  newer: readonly T[],
): readonly (readonly [T, T])[] {
  const before = new Map(older.map((thing) => [thing.id, thing]));
  return newer.flatMap((thing): readonly (readonly [T, T])[] => {
    const was = before.get(thing.id);
    return was === undefined ? [] : [[was, thing]];
  });
}

function nameOf({ id, name }: Thing): Name {
  return { id, name };
}

function isSame(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
