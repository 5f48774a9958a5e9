/**
 * The one definition of a handbook: a club's YAML folder is checked against these shapes, and the JSON Schema
 * for editors is made from them. Keys are single plain words, because historians write them by hand.
 */
import type { Cars } from "./cars-schema.ts";
import type { Cover, Source } from "./cover-schema.ts";
import type { LearntWords } from "./learnt-words-schema.ts";
import type { PartKind } from "./part-schema.ts";

export { Cars } from "./cars-schema.ts";
export { Cover, Source, Sources } from "./cover-schema.ts";
export { DateFeature, Feature, MeasurementFeature, StateFeature } from "./feature-schema.ts";
export { type Ear, LearntWords } from "./learnt-words-schema.ts";
export { Cause, PartKind } from "./part-schema.ts";
export { Claim, FittedPeriod, Variant } from "./variant-schema.ts";

/** A sound handbook in memory. `edition` is a hash of the content: every answer cites it. */
export interface Handbook {
  readonly cover: Cover;
  readonly edition: string;
  readonly cars: Cars;
  readonly sources: readonly Source[];
  readonly parts: readonly PartKind[];
  /** SVG text by path inside the folder ("drawings/foot.svg"). */
  readonly drawings: ReadonlyMap<string, string>;
  /** How owners speak of its states, where that was learnt. */
  readonly learntWords?: LearntWords;
}
