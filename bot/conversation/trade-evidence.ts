/**
 * Marks of general trade knowledge as facts of the case: a moulded material mark or a density speaks about the features
 * whose states name their material; a date mark answers the date question that is open.
 */
import {
  type FeatureFinding,
  findingsOfMaterial,
  type PartKind,
  type TradeEvidence,
} from "../../knowledge/index.ts";

type Material = Extract<TradeEvidence, { kind: "material" }>;

/** A mark is read off; a weighing has air, paint and metal in it. */
const certaintyOfMark = 1;
const certaintyOfWeighing = 0.75;
/** A mark names a material and its family; a weighing lists everything that has such a density. */
const mostSymbolsOfMark = 3;

/** Findings about this part; `asked`: the feature of the open question. Empty when no mark speaks about its features. */
export function findingsOfMarks(
  part: PartKind,
  evidence: readonly TradeEvidence[],
  asked: string | undefined,
): readonly FeatureFinding[] {
  return evidence.flatMap((item) => {
    if (item.kind === "material") return materialFindings(part, item);
    return item.kind === "date-mark" ? dateFindings(part, item, asked) : [];
  });
}

/** The reader's own rule: which features of the part a material speaks about. */
function materialFindings(part: PartKind, material: Material): readonly FeatureFinding[] {
  const isMark = material.symbols.length <= mostSymbolsOfMark;
  return findingsOfMaterial(part, material, material.words, isMark ? certaintyOfMark : certaintyOfWeighing);
}

function dateFindings(
  part: PartKind,
  mark: Extract<TradeEvidence, { kind: "date-mark" }>,
  asked: string | undefined,
): readonly FeatureFinding[] {
  const feature = part.features.find((one) => one.id === asked);
  if (feature?.kind !== "date") return [];
  const { readings, words } = mark;
  return [{ part: part.id, feature: feature.id, value: { kind: "date", readings }, certainty: 1, words }];
}
