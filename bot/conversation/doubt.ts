/** A doubt about what was told: a size that fits only another unit, a reading far from all, two facts that pull apart. */
import { type Doubts, featureById } from "../../knowledge/index.ts";
import type { Assessed, NextQuestion } from "./assessed.ts";
import { doubtedReading } from "./doubted-reading.ts";

/** What was told, and which of it does not go with the rest; no question is worked out yet. */
export type Identified = Pick<Assessed, "part" | "facts"> & { readonly identification: Doubts };

/** The question that a doubt makes necessary, the unit first; undefined when nothing is in doubt that was not looked at twice. */
export function questionOfDoubt(identified: Identified): NextQuestion | undefined {
  return unitInDoubt(identified) ?? needsSecondLook(identified);
}

function unitInDoubt({ identification, part, facts }: Identified): NextQuestion | undefined {
  for (const { feature: id, reason, meantUnit } of identification.doubtful) {
    const feature = featureById(part, id);
    if (feature === undefined || reason !== "unit" || meantUnit === undefined) continue;
    const doubted = doubtedReading(facts.reports, id, meantUnit);
    if (doubted !== undefined) return { about: "unit", feature, unit: meantUnit, said: doubted.value };
  }
  return undefined;
}

function needsSecondLook({ identification, part, facts }: Identified): NextQuestion | undefined {
  const outliers = identification.doubtful
    .filter((doubt) => doubt.reason === "outlier")
    .map((doubt) => ({ feature: doubt.feature, because: { kind: "outlier" } as const }));
  const contradictions = identification.contradictions.map(({ feature }) => ({
    feature,
    because: { kind: "contradiction" } as const,
  }));
  for (const { feature: id, because } of [...outliers, ...contradictions]) {
    const feature = featureById(part, id);
    if (feature !== undefined && !facts.rechecked.includes(id)) return { about: "feature", feature, because };
  }
  return undefined;
}
