// A moulded material mark (">ABS<", "marked PP-GF30") or a weighed density speaks of the states whose material
// carries that symbol or that density: certain where one state fits, weighed where several do.
import type { ReportValue } from "../evidence/report.ts";
import type { PartKind, StateFeature } from "../handbook/schema.ts";
import { tokenAt } from "./measurements.ts";
import type { FeatureFinding } from "./message-reading.ts";
import type { MessageView } from "./message-view.ts";

const bracketed = /[>\u203a\u00bb] ?([a-z][a-z0-9()+ -]{0,24}?) ?[<\u2039\u00ab]/gi;
const density =
  /(?<value>\d(?:[.,]\d{1,3}))(?: ?(?:\+\/?-|\u00b1) ?\d?[.,]?\d{1,3})? ?(?:g ?(?:\/|per) ?(?:cm ?(?:3|\u00b3|\^3)|cc|ml|cubic cent\w+)|grams? per (?:cc|cubic cent\w+))/gi;
const densityWord =
  /\b(?:density|specific gravity|s\.?g\.?|relative density)(?: \w+){0,3}? (?:(?:is|of|at|about|around|came out|comes out|works out|=|:) ?)*(?<value>\d[.,]\d{1,3})/gi;

/** Most marks looked at in one message. */
const mostMarks = 20;

/** Findings from material marks and densities for the part each clause speaks of. `shown`: the text as shown. */
export function readMaterials(view: MessageView): readonly FeatureFinding[] {
  const found = new Map<string, FeatureFinding>();
  const marks = Array.from(view.shown.matchAll(bracketed)).slice(0, mostMarks);
  for (const match of marks) add(view, found, match, (feature) => bySymbol(feature, match[1] ?? ""));
  for (const pattern of [density, densityWord]) {
    for (const match of view.shown.matchAll(pattern)) {
      const value = Number((match.groups?.value ?? "").replace(",", "."));
      add(view, found, match, (feature) => byDensity(feature, value));
    }
  }
  return [...found.values()];
}

function add(
  view: MessageView,
  found: Map<string, FeatureFinding>,
  match: RegExpMatchArray,
  weigh: (feature: StateFeature) => ReportValue | undefined,
): void {
  const clause = view.clauseOf[tokenAt(view, match.index ?? 0)] ?? 0;
  const stance = view.stances[clause];
  const part = partIn(view, clause);
  if (stance?.aside !== undefined || part === undefined) return;
  for (const feature of part.features) {
    if (feature.kind !== "states") continue;
    const value = weigh(feature);
    if (value === undefined) continue;
    const finding = {
      part: part.id,
      feature: feature.id,
      value,
      certainty: stance?.certainty ?? 1,
      words: match[0].trim(),
    };
    found.set(`${part.id} ${feature.id}`, finding);
  }
}

function partIn(view: MessageView, clause: number): PartKind | undefined {
  const id = view.partOf[clause];
  return view.lexicon.handbook.parts.find((part) => part.id === id);
}

function valueFor(states: readonly string[], of: number): ReportValue | undefined {
  const [only] = states;
  if (only === undefined || states.length === of) return undefined;
  if (states.length === 1) return { kind: "state", state: only };
  return { kind: "weighed-states", weights: Object.fromEntries(states.map((state) => [state, 1])) };
}

/** States whose symbols share the mark's base ("PP-GF30" and "PP"); undefined when none or all do. */
function bySymbol(feature: StateFeature, written: string): ReportValue | undefined {
  const mark = written.toUpperCase().replace(/\s/g, "");
  const asMoulded = feature.states.find((state) =>
    [state.name, ...state.also].some((name) => name.includes(`>${mark}<`)),
  );
  if (asMoulded !== undefined) return { kind: "state", state: asMoulded.id };
  const fits = feature.states.filter((state) =>
    (state.material?.symbols ?? []).some((symbol) => baseOf(symbol) === baseOf(mark)),
  );
  return valueFor(
    fits.map((state) => state.id),
    feature.states.length,
  );
}

function baseOf(symbol: string): string {
  return symbol.toUpperCase().split(/[-(]/, 1)[0]?.replace(/\d+$/, "") ?? "";
}

/** States whose density range, widened by the 0.03 g/cm3 of two weighings at home, holds the value. */
function byDensity(feature: StateFeature, value: number): ReportValue | undefined {
  const slack = 0.03;
  const known = feature.states.filter((state) => state.material?.density !== undefined);
  const fits = known.filter((state) => {
    const [least, most] = state.material?.density ?? [0, 0];
    return value >= least - slack && value <= most + slack;
  });
  return valueFor(
    fits.map((state) => state.id),
    feature.states.length,
  );
}
