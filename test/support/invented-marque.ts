// Random handbooks as a club's historians might leave them: one part kind in nine variants and fourteen features, so
// that calibration is measured on many handbooks and not on the one we wrote by hand.

import type { Handbook } from "../../knowledge/handbook/schema.ts";
import { normal, pick } from "./draws.ts";
import type { Chance } from "./random-tables.ts";
import {
  dateFeature,
  measurementFeature,
  smallHandbook,
  stateFeature,
  variant,
  type WrittenFeature,
  type WrittenVariant,
} from "./small-handbook.ts";

/** How often these parts were replaced, as the handbook says. */
export const REPLACED_AS_WRITTEN = 0.25;
/** Months from the date mark to the build of the car, as the handbook says. */
export const LEAD_AS_WRITTEN = { median: 2, sigma: 0.7 };
/** Share of cars of the trim "s". */
export const SHARE_OF_S = 0.3;

const OLD_WORDS = ["always", "always", "nearly always", "nearly always", "usually", "usually", "often"];
const STATES = ["p", "q", "r", "t"];

/** Which states are usual on a variant, by feature, and its sizes. */
interface Look {
  readonly usual: Readonly<Record<string, string>>;
  readonly width: number;
  readonly depth: number;
}

/**
 * Cars of 1977 to 1984 in two trims. Five production variants (four that follow one another with overlaps, one fitted to one
 * trim), two service parts, a reproduction, another maker's; ten state features, one that some variants lack, two sizes, a
 * date mark.
 */
export function inventedMarque(chance: Chance): Handbook {
  const states = stateFeatures(chance);
  const features = [
    ...states,
    measurementFeature("width"),
    measurementFeature("depth"),
    dateFeature("cast", { lead: LEAD_AS_WRITTEN }),
  ];
  const years = { from: "1977-01", to: "1984-12" };
  return smallHandbook({
    features,
    variants: variantsOf(chance, states),
    rest: { replaced: REPLACED_AS_WRITTEN, lead: LEAD_AS_WRITTEN },
    cars: {
      models: [{ id: "shrike", name: "Wexcombe Shrike", also: [], ...years }],
      trims: ["plain", "s"].map((id) => ({ id, name: id, also: [], models: [], ...years })),
    },
  });
}

function stateFeatures(chance: Chance): readonly WrittenFeature[] {
  const plain = Array.from({ length: 9 }, (_, index) =>
    stateFeature(`f${index}`, STATES.slice(0, 2 + Math.floor(chance() * 3)), {
      misread: 0.02 + 0.06 * chance(),
    }),
  );
  // A faint mark is overlooked more often than it is invented.
  const mark = stateFeature("mark", ["p", "q"], {
    misread: [
      { is: "p", said: "q", rate: 0.12 },
      { is: "q", said: "p", rate: 0.02 },
    ],
  });
  return [...plain, mark, stateFeature("badge", STATES.slice(0, 3), { none: "no badge" })];
}

function variantsOf(chance: Chance, features: readonly WrittenFeature[]): readonly WrittenVariant[] {
  const cuts = [1979, 1981, 1983].map((year) => year * 12 + Math.floor(18 * chance()) - 9);
  const overlap = () => 2 + Math.floor(8 * chance());
  const starts = [1977 * 12, ...cuts.map((cut) => cut - overlap())];
  const ends = [...cuts.map((cut) => cut + overlap()), 1984 * 12 + 11];
  let look = firstLook(chance, features);
  const production = starts.map((from, index) => {
    if (index > 0) look = changedLook(chance, features, look, 0.5);
    const fitted = [{ from: month(from), to: month(ends[index] ?? from), start: sureness(chance) }];
    const sold = index % 2 === 1 ? [{ from: month(from), to: "1990-12" }] : [];
    return { look, written: written(`p${index}`, "production", chance, features, look, { fitted, sold }) };
  });
  const looks = production.map((one) => one.look);
  const like = (share: number) => changedLook(chance, features, pick(chance, looks), share);
  const bound = { from: "1980-06", to: "1984-12", trims: ["s"], share: 0.6 };
  return [
    ...production.map((one) => one.written),
    written("p4", "production", chance, features, like(0.5), { fitted: [bound] }),
    written("s0", "service", chance, features, like(0.45), { sold: [{ from: "1982-03", to: "1993-12" }] }),
    written("s1", "service", chance, features, like(0.45), { sold: [{ from: "1986-01", to: "2001-12" }] }),
    written("r0", "reproduction", chance, features, like(0.6), {
      sold: [{ from: "1996-01", to: "2020-12" }],
    }),
    written("o0", "other-maker", chance, features, like(0.6), {
      sold: [{ from: "1979-01", to: "1995-12" }],
    }),
  ];
}

function written(
  id: string,
  origin: WrittenVariant["origin"],
  chance: Chance,
  features: readonly WrittenFeature[],
  look: Look,
  rest: Partial<WrittenVariant>,
): WrittenVariant {
  const tells: Record<string, Record<string, string>> = {};
  for (const feature of features) {
    const claim = claimOf(chance, feature, look);
    if (claim !== undefined) tells[feature.id] = claim;
  }
  const size = (mean: number) => ({ mean: Math.round(mean * 10) / 10, spread: 1.5 + 1.5 * chance() });
  return variant(id, {
    origin,
    ...rest,
    tells: { ...tells, width: size(look.width), depth: size(look.depth) },
  });
}

/** The usual state with a word or a count, sometimes a second state; one claim in twenty was never written down. */
function claimOf(chance: Chance, feature: WrittenFeature, look: Look): Record<string, string> | undefined {
  const usual = look.usual[feature.id] ?? "p";
  if (usual === "not-there") return { "not-there": "always" };
  if (feature.id !== "badge" && chance() < 0.05) return undefined;
  if (chance() < 0.15) {
    const of = 5 + Math.floor(16 * chance());
    return { [usual]: `${of - Math.floor(0.3 * of * chance())} of ${of}` };
  }
  const word = pick(chance, OLD_WORDS);
  const other = pick(chance, statesOf(feature));
  const isTwofold = other !== usual && (word === "usually" || word === "often") && chance() < 0.5;
  return { [usual]: word, ...(isTwofold ? { [other]: "sometimes" } : {}) };
}

function firstLook(chance: Chance, features: readonly WrittenFeature[]): Look {
  const usual = Object.fromEntries(features.map((feature) => [feature.id, pick(chance, statesOf(feature))]));
  return { usual, width: 400 + 20 * normal(chance), depth: 120 + 10 * normal(chance) };
}

function changedLook(chance: Chance, features: readonly WrittenFeature[], look: Look, share: number): Look {
  const usual = Object.fromEntries(
    features.map((feature) => {
      const isChanged = chance() < share;
      const states = feature.id === "badge" ? [...statesOf(feature), "not-there"] : statesOf(feature);
      return [feature.id, isChanged ? pick(chance, states) : (look.usual[feature.id] ?? "p")];
    }),
  );
  const moved = (size: number, by: number) => (chance() < share ? size + by * normal(chance) : size);
  return { usual, width: moved(look.width, 8), depth: moved(look.depth, 5) };
}

function statesOf(feature: WrittenFeature): readonly string[] {
  return feature.kind === "states" ? feature.states.map(({ id }) => id) : [];
}

function sureness(chance: Chance): "exact" | "about" | "rough" {
  return pick(chance, ["exact", "about", "about", "rough"] as const);
}

function month(months: number): string {
  return `${Math.floor(months / 12)}-${String((months % 12) + 1).padStart(2, "0")}`;
}
