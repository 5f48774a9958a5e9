// A moulded material mark (">ABS<") or a density speaks of the states whose material carries that symbol or that
// density: certain where one state fits, weighed where several do. Marks and weighings are read by the trade room;
// only a density that somebody states outright is read here.
import type { ReportValue } from "../evidence/report.ts";
import type { PartKind, StateFeature } from "../handbook/schema.ts";
import { readTradeEvidence } from "../trade/read-trade-evidence.ts";
import type { TradeEvidence } from "../trade/trade-reading.ts";
import type { FeatureFinding } from "./message-reading.ts";
import type { MessageView } from "./message-view.ts";

type Material = Extract<TradeEvidence, { kind: "material" }>;

/** Only a sentence that may hold a mark or a weighing is given to the trade room. */
const mayTell =
  /[<>]|\b(?:densit\w+|gravity|s\.?g|water|sink\w*|float\w*)\b|(?:g|grams?) ?(?:\/|per) ?(?:c|ml)/i;
/** Most sentences looked at in one message. */
const mostSentences = 12;
/** A mark names a material and its family; a weighing lists everything that has such a density. */
const mostSymbolsOfMark = 3;

/** Findings from material marks and densities for the part each sentence speaks of, in the speaker's own sentences. */
export function readMaterials(view: MessageView): readonly FeatureFinding[] {
  const found = new Map<string, FeatureFinding>();
  const starts = view.clauses.flatMap((clause, at) =>
    view.clauses[at - 1]?.sentence === clause.sentence ? [] : [at],
  );
  const sentences = starts
    .flatMap((at) => sentenceFrom(view, at) ?? [])
    .filter(({ text }) => mayTell.test(text));
  for (const sentence of sentences.slice(0, mostSentences)) {
    for (const finding of findingsIn(view, sentence))
      found.set(`${finding.part} ${finding.feature}`, finding);
  }
  return [...found.values()];
}

interface Sentence {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

function findingsIn(view: MessageView, { text, from, to }: Sentence): readonly FeatureFinding[] {
  const part = view.lexicon.handbook.parts.find(({ id }) => id === view.partOf[to]);
  if (part === undefined) return [];
  const certainty = view.stances[from]?.certainty ?? 1;
  const told = [...readTradeEvidence(text, { today: view.context.today }), ...densitiesStated(text)];
  return told.flatMap((each) =>
    each.kind === "material" ? findingsOfMaterial(part, each, text, certainty) : [],
  );
}

const density =
  /(?<value>\d[.,]\d{1,3})(?: ?(?:\+\/?-|\u00b1) ?\d?[.,]?\d{1,3})? ?(?:g ?(?:\/|per) ?(?:cm ?(?:3|\u00b3|\^3)|cc|ml|cubic cent\w+)|grams? per (?:cc|cubic cent\w+))|\b(?:density|specific gravity|s\.?g\.?)(?: \w+){0,3}? (?:(?:is|of|at|about|around|came out|comes out|works out|=|:) ?)*(?<told>\d[.,]\d{1,3})/gi;
/** What two weighings at home leave open, in g/cm³: common practice, no source. */
const workshopError = 0.03;

function densitiesStated(text: string): readonly Material[] {
  return Array.from(text.matchAll(density), (match): Material => {
    const value = Number((match.groups?.value ?? match.groups?.told ?? "").replace(",", "."));
    const band = { from: value - workshopError, to: value + workshopError };
    return {
      kind: "material",
      about: "part",
      symbols: [],
      densityGramsPerCubicCentimetre: band,
      words: match[0].trim(),
    };
  });
}

/** The shown text of a sentence that is wholly the speaker's own, up to the next; undefined otherwise. */
function sentenceFrom(view: MessageView, at: number): Sentence | undefined {
  const number = view.clauses[at]?.sentence;
  let to = at;
  while (view.clauses[to + 1]?.sentence === number) to += 1;
  if (view.stances.slice(at, to + 1).some(({ aside }) => aside !== undefined)) return undefined;
  const start = at === 0 ? 0 : (view.tokens[(view.clauses[at]?.from ?? 0) - 1]?.end ?? 0);
  const end = view.tokens[(view.clauses[to]?.to ?? 0) + 1]?.start ?? view.shown.length;
  return { text: view.shown.slice(start, end).trim(), from: at, to };
}

/** What a mark or a weighing says of a part: one finding for each feature whose states name their material. */
export function findingsOfMaterial(
  part: PartKind,
  material: Material,
  text: string,
  certainty: number,
): readonly FeatureFinding[] {
  const isMark = material.symbols.length > 0 && material.symbols.length <= mostSymbolsOfMark;
  return part.features.flatMap((feature) => {
    if (feature.kind !== "states") return [];
    const value =
      (isMark ? asMoulded(feature, material, text) : undefined) ??
      valueFor(
        feature.states.filter((state) => (isMark ? hasSymbol(state, material) : hasDensity(state, material))),
        feature,
      );
    return value === undefined
      ? []
      : [{ part: part.id, feature: feature.id, value, certainty, words: material.words }];
  });
}

type State = StateFeature["states"][number];

/** ">ABS<" may be the very name of a state. */
function asMoulded(feature: StateFeature, { symbols }: Material, text: string): ReportValue | undefined {
  const mark = `>${symbols[0] ?? ""}<`;
  const isWritten = text.toUpperCase().replace(/\s/g, "").includes(mark);
  const state = feature.states.find(({ name, also }) => [name, ...also].some((each) => each.includes(mark)));
  return isWritten && state !== undefined ? { kind: "state", state: state.id } : undefined;
}

function hasSymbol({ material }: State, { symbols }: Material): boolean {
  const bases = new Set(symbols.map(baseOf));
  return (material?.symbols ?? []).some((symbol) => bases.has(baseOf(symbol)));
}

function baseOf(symbol: string): string {
  return symbol.toUpperCase().split(/[-(]/, 1)[0]?.replace(/\d+$/, "") ?? "";
}

function hasDensity({ material }: State, { densityGramsPerCubicCentimetre: read }: Material): boolean {
  const known = material?.density;
  return known !== undefined && read !== undefined && known[0] <= read.to && read.from <= known[1];
}

/** Undefined when no state fits or all do. */
function valueFor(fitting: readonly State[], feature: StateFeature): ReportValue | undefined {
  const [only] = fitting;
  if (only === undefined || fitting.length === feature.states.length) return undefined;
  if (fitting.length === 1) return { kind: "state", state: only.id };
  return { kind: "weighed-states", weights: Object.fromEntries(fitting.map(({ id }) => [id, 1])) };
}
