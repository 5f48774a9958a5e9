/** Claims as historians may write them, for property tests: every word, every count, every figure, with and without sources. */
import fc from "fast-check";
import { notThere } from "../../knowledge/evidence/report.ts";
import { frequencyWords } from "../../knowledge/handbook/frequency.ts";
import type { Claim, Feature, PartKind } from "../../knowledge/handbook/schema.ts";

const word = fc.constantFrom(...Object.keys(frequencyWords), "Usually", "NEVER");
const count = fc
  .tuple(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 1, max: 99_999 }))
  .map(([one, other]) => `${Math.min(one, other)} of ${Math.max(one, other)}`);
const frequency = fc.oneof(
  word,
  count,
  fc.tuple(word, count).map((pair) => pair.join(", ")),
);
const figure = fc.double({ min: 1e-9, max: 1e12, noNaN: true });

/** A claim about a feature that a sound handbook may hold, or none. */
function claimAbout(feature: Feature, sources: readonly string[]): fc.Arbitrary<Claim | undefined> {
  const named = fc.uniqueArray(fc.constantFrom(...sources), { maxLength: 3 });
  const states = feature.kind === "states" ? [...feature.states.map(({ id }) => id), notThere] : [notThere];
  const rows = fc
    .uniqueArray(fc.tuple(fc.constantFrom(...states), frequency), {
      minLength: 1,
      selector: ([state]) => state,
    })
    .map((row): Readonly<Record<string, string>> => Object.fromEntries(row));
  const stated = fc.tuple(rows, named).map(([row, ids]): Claim => Object.assign({ sources: ids }, row));
  const measured = fc
    .tuple(figure, figure, named)
    .map(([mean, spread, ids]): Claim => ({ mean, spread, sources: ids }));
  const claim = feature.kind === "measurement" ? fc.oneof(stated, measured) : stated;
  return fc.option(claim, { nil: undefined });
}

export type Tells = Readonly<Record<string, Claim>>;

/** Tells for every variant of a part kind, in order. */
export function arbitraryTells(part: PartKind, sources: readonly string[]): fc.Arbitrary<readonly Tells[]> {
  const ofOne = fc.tuple(...part.features.map((feature) => claimAbout(feature, sources))).map(
    (claims): Tells =>
      Object.fromEntries(
        part.features.flatMap(({ id }, index) => {
          const claim = claims[index];
          return claim === undefined ? [] : [[id, claim]];
        }),
      ),
  );
  return fc.tuple(...part.variants.map(() => ofOne));
}
