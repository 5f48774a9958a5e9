/**
 * Marks of general trade knowledge as facts of the case: a moulded material mark or a density speaks about the features
 * whose states name their material; a date mark answers the date question that is open.
 */
import type { Feature, FeatureFinding, PartKind, ReportValue, TradeEvidence } from "../../knowledge/index.ts";

type Material = Extract<TradeEvidence, { kind: "material" }>;
type StateFeature = Extract<Feature, { kind: "states" }>;
type State = StateFeature["states"][number];

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

function materialFindings(part: PartKind, material: Material): readonly FeatureFinding[] {
  return part.features.flatMap((feature) => {
    if (feature.kind !== "states" || !feature.states.some((state) => state.material !== undefined)) return [];
    const isMark = material.symbols.length <= mostSymbolsOfMark;
    const fitting = feature.states.filter((state) =>
      isMark ? hasSymbol(state, material) : hasDensity(state, material),
    );
    if (fitting.length === 0) return [];
    return [
      {
        part: part.id,
        feature: feature.id,
        value: materialValue(fitting),
        certainty: isMark ? certaintyOfMark : certaintyOfWeighing,
        words: material.words,
      },
    ];
  });
}

function hasSymbol(state: State, material: Material): boolean {
  return (state.material?.symbols ?? []).some((symbol) =>
    material.symbols.some(
      (read) => read === symbol || read.startsWith(`${symbol}-`) || read.startsWith(`${symbol}+`),
    ),
  );
}

function hasDensity(state: State, material: Material): boolean {
  const known = state.material?.density;
  const read = material.densityGramsPerCubicCentimetre;
  return known !== undefined && read !== undefined && known[0] <= read.to && read.from <= known[1];
}

function materialValue(fitting: readonly State[]): ReportValue {
  const [only] = fitting;
  if (fitting.length === 1 && only !== undefined) return { kind: "state", state: only.id };
  return { kind: "weighed-states", weights: Object.fromEntries(fitting.map((state) => [state.id, 1])) };
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
