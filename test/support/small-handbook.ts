/** Handbooks written in code, so that a test of the arithmetic does not hang on the reading of YAML. */

import type { z } from "zod";
import { type Handbook, PartKind, type Variant } from "../../knowledge/handbook/schema.ts";

type Written<T extends z.ZodType> = z.input<T>;
type WrittenPart = Written<typeof PartKind>;
export type WrittenFeature = WrittenPart["features"][number];
export type WrittenVariant = WrittenPart["variants"][number];

/** A state feature with its plain sentences filled in. */
export function stateFeature(
  id: string,
  states: readonly string[],
  rest: Partial<Extract<WrittenFeature, { kind: "states" }>> = {},
): WrittenFeature {
  return {
    ...sentences(id),
    kind: "states",
    states: states.map((state) => ({ id: state, name: state })),
    ...rest,
  };
}

/** A measured feature in millimetres by tape unless said otherwise. */
export function measurementFeature(
  id: string,
  rest: Partial<Extract<WrittenFeature, { kind: "measurement" }>> = {},
): WrittenFeature {
  return { ...sentences(id), kind: "measurement", unit: "mm", instrument: "tape", ...rest };
}

/** A date mark. */
export function dateFeature(
  id: string,
  rest: Partial<Extract<WrittenFeature, { kind: "date" }>> = {},
): WrittenFeature {
  return { ...sentences(id), kind: "date", forms: ["month-year"], ...rest };
}

function sentences(id: string) {
  return {
    id,
    name: id,
    question: `What does the ${id} show?`,
    check: `Look at the ${id}.`,
    effort: 1,
    photograph: true,
  };
}

/** A variant with its plain sentences filled in. */
export function variant(
  id: string,
  rest: Partial<WrittenVariant> & { origin: Variant["origin"] },
): WrittenVariant {
  return { id, name: id, summary: `The ${id} version.`, ...rest };
}

interface SmallHandbook {
  readonly features: readonly WrittenFeature[];
  readonly variants: readonly WrittenVariant[];
  readonly rest?: Partial<WrittenPart>;
  readonly completeness?: Handbook["cover"]["completeness"];
  readonly cars?: Partial<Handbook["cars"]>;
}

/** One part kind, "foot", of a car made from January 1977 to December 1981; edition of December 2020. */
export function smallHandbook(written: SmallHandbook): Handbook {
  const part = PartKind.parse({
    id: "foot",
    name: "mirror foot",
    summary: "The foot of the door mirror.",
    features: [...written.features],
    variants: [...written.variants],
    ...written.rest,
  });
  return {
    cover: {
      format: 1,
      id: "test",
      name: "Test handbook",
      summary: "Written in code.",
      completeness: written.completeness ?? "good",
      edited: "2020-12",
    },
    edition: "test",
    cars: {
      models: [{ id: "shrike", name: "Wexcombe Shrike", also: [], from: "1977-01", to: "1981-12" }],
      trims: [],
      markets: [],
      production: {},
      ...written.cars,
    },
    sources: [],
    parts: [part],
    drawings: new Map(),
  };
}
