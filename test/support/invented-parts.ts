// Which part an invented car carries today, drawn forwards through its life: built at the works, kept or replaced, and by
// what. It shares the as-built mix with the model, and none of the model's arithmetic of hypotheses.

import type { Interval } from "../../knowledge/calendar/interval.ts";
import { midpoint } from "../../knowledge/calendar/interval.ts";
import type { CarDescription, ProvenanceGrade } from "../../knowledge/evidence/car-description.ts";
import { asBuiltMix, spansFor } from "../../knowledge/identification/as-built-mix.ts";
import type { CompiledPart } from "../../knowledge/identification/compiled-part.ts";
import { markSpans, saleLeft, serviceMonths } from "../../knowledge/identification/sale-spans.ts";
import { even, indexAt, normal, some } from "./draws.ts";
import { LEAD_AS_WRITTEN, SHARE_OF_S } from "./invented-marque.ts";
import type { World } from "./invented-world.ts";
import type { Chance } from "./random-tables.ts";

type KnownWay = "works" | "service" | "used" | "reproduction" | "other-maker";

export interface TruePart {
  readonly way: KnownWay | "unknown";
  /** Index of the variant it is, or resembles; −1 for a part that resembles none. */
  readonly variant: number;
  /** Instant at which it was marked, in months. */
  readonly marked: number;
  /** Features in which a part that is not in the handbook differs from the variant it resembles. */
  readonly changed: ReadonlySet<string>;
}

export interface OwnedPart {
  /** The car as its owner describes it. */
  readonly car: CarDescription;
  readonly part: TruePart;
}

const GRADES: readonly ProvenanceGrade[] = [
  "history-unknown",
  "one-owner",
  "documented-from-new",
  "known-replaced",
];
const GRADE_SHARES = [0.6, 0.2, 0.15, 0.05];
const REPLACED_ODDS = { "history-unknown": 1, "one-owner": 0.35, "documented-from-new": 0.1 };
const WAYS: readonly KnownWay[] = ["service", "used", "reproduction", "other-maker"];
const WAY_SHARES = [0.35, 0.3, 0.25, 0.1];

/** A car of the marque and the part on it. Half the owners know the month of build, three in ten the year, the rest neither. */
export function drawOwnedPart(compiled: CompiledPart, world: World, chance: Chance): OwnedPart {
  const { productionSpan } = compiled;
  const time = even(chance, productionSpan.from, productionSpan.to);
  const grade = GRADES[indexAt(GRADE_SHARES, chance())] ?? "history-unknown";
  const built = toldBuild(time, chance());
  const car: CarDescription = {
    trim: chance() < SHARE_OF_S ? "s" : "plain",
    grade,
    ...(built === undefined ? {} : { built }),
  };
  const known = drawKnownPart(compiled, world, { car, time, chance });
  return { car, part: chance() < world.unknown ? unknownPart(compiled, world, known, chance) : known };
}

function toldBuild(time: number, luck: number): Interval | undefined {
  if (luck < 0.2) return undefined;
  const step = luck < 0.7 ? 1 : 12;
  const from = Math.floor(time / step) * step;
  return { from, to: from + step };
}

interface Life {
  readonly car: CarDescription;
  readonly time: number;
  readonly chance: Chance;
}

function drawKnownPart(compiled: CompiledPart, world: World, life: Life): TruePart {
  const { car, time, chance } = life;
  const { productionSpan } = compiled;
  const isReplaced = chance() < replacedShare(car.grade ?? "history-unknown", world.replaced);
  const way = isReplaced ? (WAYS[indexAt(WAY_SHARES, chance())] ?? "used") : "works";
  const known = { way, changed: new Set<string>() };
  if (way === "works" || way === "used") {
    const at = way === "works" ? time : even(chance, productionSpan.from, productionSpan.to);
    const { fleet } = compiled;
    const spans = way === "works" ? spansFor(fleet.spans, car) : fleet.spans;
    const mix = asBuiltMix({ ...fleet, spans }, at);
    return { ...known, variant: indexAt(mix, chance()), marked: at - drawLead(world, chance) };
  }
  const earliest = car.built === undefined ? productionSpan.from : midpoint(car.built);
  const variant = indexAt(candidates(compiled, way, earliest), chance());
  const sales = compiled.sales[variant] ?? [];
  const left = saleLeft(sales, earliest);
  const spans = way === "service" ? markSpans(left.length > 0 ? left : sales) : sales;
  return { ...known, variant, marked: within(spans, chance) };
}

function replacedShare(grade: ProvenanceGrade, replaced: number): number {
  if (grade === "known-replaced") return 0.98;
  const odds = (REPLACED_ODDS[grade] * replaced) / (1 - replaced);
  return odds / (1 + odds);
}

function candidates(compiled: CompiledPart, way: KnownWay, earliest: number): readonly number[] {
  return compiled.part.variants.map((variant, index) => {
    if (way !== "service") return Number(variant.origin === way);
    const isSold =
      variant.origin === "service" || (variant.origin === "production" && variant.sold.length > 0);
    return isSold ? serviceMonths(variant, saleLeft(compiled.sales[index] ?? [], earliest)) : 0;
  });
}

function within(spans: readonly Interval[], chance: Chance): number {
  const lengths = spans.map(({ from, to }) => to - from);
  const span = spans[indexAt(lengths, chance())] ?? { from: 0, to: 1 };
  return even(chance, span.from, span.to);
}

/** Mostly a lognormal; one part in twenty lay on the shelf, and one build date in a hundred is wrong. */
function drawLead(world: World, chance: Chance): number {
  const luck = chance();
  if (luck < 0.01) return even(chance, -6, 0);
  if (luck < 0.06) return even(chance, 0, 36);
  const { median, sigma } = LEAD_AS_WRITTEN;
  return median * world.lead * Math.exp(sigma * normal(chance));
}

function unknownPart(compiled: CompiledPart, world: World, like: TruePart, chance: Chance): TruePart {
  const era = compiled.markEra;
  const anywhere = even(chance, era.from, era.to);
  const features = compiled.part.features.map(({ id }) => id);
  if (world.unknownIsCopy) {
    const changed = new Set(some(chance, features, 5));
    return { ...like, way: "unknown", changed, marked: changed.has("cast") ? anywhere : like.marked };
  }
  if (chance() < 0.1) return { way: "unknown", variant: -1, marked: anywhere, changed: new Set() };
  const changed = new Set(features.filter(() => chance() < 0.4));
  return { way: "unknown", variant: like.variant, marked: anywhere, changed };
}
