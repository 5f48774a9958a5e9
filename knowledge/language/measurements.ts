import type { MeasurementFeature } from "../handbook/schema.ts";
import { convertUnits } from "../trade/units.ts";
import type { FeatureFinding } from "./message-reading.ts";
import type { MessageView } from "./message-view.ts";
import { type Candidate, isPlausible } from "./plausible-size.ts";
import type { Quantity } from "./quantities.ts";

export interface Measured {
  readonly findings: readonly FeatureFinding[];
  /** Words of quantities that fit no feature or several. */
  readonly leftAside: readonly string[];
}

interface Attached {
  readonly chosen: Candidate;
  readonly quantity: Quantity;
}

/** One finding a feature; of two for the same feature the later stands. */
export function attachQuantities(view: MessageView, quantities: readonly Quantity[]): Measured {
  const findings = new Map<string, FeatureFinding>();
  const leftAside: string[] = [];
  let last: Attached | undefined;
  for (const quantity of quantities) {
    const at = tokenAt(view, quantity.start);
    // "46 and a half inches wide": the clause is that of the last word of the figure.
    const clause = view.clauseOf[Math.max(at, tokenAt(view, quantity.end) - 1)] ?? view.clauseOf[at] ?? 0;
    const isCounted = quantity.unit === null && view.phrasesAt.has(at);
    if (view.stances[clause]?.aside !== undefined || isCounted) continue;
    const chosen = chooseFeature(view, quantity, at, clause) ?? repeated(quantity, last);
    if (chosen !== undefined) {
      last = { chosen, quantity };
      findings.set(`${chosen.part.id} ${chosen.feature.id}`, findingOf(view, last, clause));
    } else if (quantity.unit !== null && /^\d/.test(view.shown.slice(quantity.start)))
      leftAside.push(view.shown.slice(quantity.start, quantity.end).trim());
  }
  return { findings: [...findings.values()], leftAside };
}

function findingOf(view: MessageView, { chosen, quantity }: Attached, clause: number): FeatureFinding {
  const { value, halfWidth, unit, instrument } = quantity;
  return {
    part: chosen.part.id,
    feature: chosen.feature.id,
    value: {
      kind: "measurement",
      value,
      halfWidth,
      unit,
      ...(instrument === undefined ? {} : { instrument }),
    },
    certainty: view.stances[clause]?.certainty ?? 1,
    words: view.shown.slice(quantity.start, quantity.end).trim(),
  };
}

/** "3.1 mm, 3.4, so say 3.2 mm": a second figure close to the first is the same size again. */
function repeated(quantity: Quantity, last: Attached | undefined): Candidate | undefined {
  if (last === undefined || quantity.unit === null || quantity.unit !== last.quantity.unit) return undefined;
  return Math.abs(quantity.value - last.quantity.value) < 0.15 * last.quantity.value
    ? last.chosen
    : undefined;
}

/** The token that begins at or after a position. */
export function tokenAt(view: MessageView, start: number): number {
  let low = 0;
  let high = view.tokens.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((view.tokens[middle]?.start ?? 0) < start) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Nouns after a size that make it the size of something else: "8 mm studs". */
const sizeOf =
  /^ ?-?(?:stud|screw|bolt|hole|nut|thread|head|spanner|socket|drill|washer|wire|self|rivet|allen|hex|tap|wheel|tire|tyre|engine|cc|crack|chip|scratch|dent|gap|tape)\w*\b(?! (?:spacing|cent|apart|circle|pitch|to|in the))|^ ?(?:when )?(?:in|under) water\b|^ ?(?:\/|per )/i;

function chooseFeature(
  view: MessageView,
  quantity: Quantity,
  at: number,
  clause: number,
): Candidate | undefined {
  const candidates = candidatesFor(view, view.partOf[clause], quantity);
  const [best, second] = candidates
    .map((candidate) => ({ candidate, support: supportFor(view, candidate, at, clause) }))
    .sort((one, other) => other.support - one.support);
  if (best === undefined) return undefined;
  if (best.support === second?.support)
    return best.support > 0 || view.partOf[clause] === undefined
      ? undefined
      : onlyFitting(candidates, quantity);
  const { candidate, support } = best;
  const isNamed = isNamedBy(view, clause, support);
  if (!isNamed && view.context.askedFeature === candidate.feature.id) return candidate;
  if (isClockHour(quantity) || (support < namedOutright && isOfSomethingElse(quantity))) return undefined;
  if (!isNamed && quantity.unit === null) return undefined;
  if (support === 0 && second !== undefined) return undefined;
  const factor = widestFactor(support, quantity, isNamed);
  return isPlausible(candidate, quantity, factor) ? candidate : onlyFitting(candidates, quantity);
}

/** A size that its name stands beside is a size, however odd: the identification weighs it. */
function widestFactor(support: number, quantity: Quantity, isNamed: boolean): number {
  if (support >= namedOutright && quantity.unit !== null) return 25;
  return isNamed ? 5 : 2;
}

/** "8 mm studs" is the size of the studs; "screw count 3", small, whole and without a unit, is no size at all. */
function isOfSomethingElse(quantity: Quantity): boolean {
  const isCount = quantity.unit === null && Number.isInteger(quantity.value) && quantity.value <= 12;
  return isCount || sizeOf.test(quantity.after);
}

/** "At 3 o'clock" is a place. */
function isClockHour({ after }: Quantity): boolean {
  return /^ ?o'? ?clock\b/i.test(after);
}

/** Support that only a feature's own name gives. */
const namedOutright = 2.4;

/** Two words of the feature's names, or one in so short a clause as "lip 57". */
function isNamedBy(view: MessageView, clause: number, support: number): boolean {
  const stretch = view.clauses[clause];
  const isBrief = stretch !== undefined && stretch.to - stretch.from <= 3;
  return support >= (isBrief ? 1 : 1.4);
}

function candidatesFor(
  view: MessageView,
  partId: string | undefined,
  quantity: Quantity,
): readonly Candidate[] {
  const parts = view.lexicon.handbook.parts.filter((part) => partId === undefined || part.id === partId);
  return parts.flatMap((part) =>
    part.features.flatMap((feature) =>
      feature.kind === "measurement" && isSameDimension(feature, quantity) ? [{ part, feature }] : [],
    ),
  );
}

function isSameDimension(feature: MeasurementFeature, quantity: Quantity): boolean {
  return quantity.unit === null || convertUnits(1, quantity.unit, feature.unit) !== undefined;
}

function supportFor(view: MessageView, candidate: Candidate, at: number, clause: number): number {
  const { part, feature } = candidate;
  const named = view.spotted.reduce((best, spotted) => {
    const isIt = spotted.phrase.meanings.some(
      (each) => each.kind === "feature" && each.part === part.id && each.feature === feature.id,
    );
    if (!isIt) return best;
    const where = view.clauseOf[spotted.from] ?? 0;
    const length = spotted.phrase.stems.length * 0.5;
    if (where === clause) return Math.max(best, 4 + length - Math.min(1.5, Math.abs(spotted.from - at) / 6));
    return Math.max(best, isLeadIn(view, where, clause) ? 2 + length : 0);
  }, 0);
  const asked = view.context.askedFeature === feature.id ? 1.5 : 0;
  return named > 0 ? named + asked : asked + cueSupport(view, candidate, clause);
}

/** "width over the tips: 1180 mm", "measured the width, 1180 mm": the clause before holds no figure of its own. */
function isLeadIn(view: MessageView, where: number, clause: number): boolean {
  const [from, to] = [view.clauses[where], view.clauses[clause]];
  if (from === undefined || to === undefined) return false;
  // "Width? 46 inches."
  if (from.isAsked && where === clause - 1 && from.to - from.from <= 4) return !/\d/.test(from.text);
  if (from.sentence !== to.sentence) return false;
  if (where >= clause || where < clause - 2) return false;
  return view.clauses.slice(where, clause).every((each) => !/\d/.test(each.text));
}

function cueSupport(view: MessageView, candidate: Candidate, clause: number): number {
  const own = cuesIn(view, candidate, clause);
  return own > 0 || !isLeadIn(view, clause - 1, clause) ? own : cuesIn(view, candidate, clause - 1) / 2;
}

function cuesIn(view: MessageView, candidate: Candidate, clause: number): number {
  const stretch = view.clauses[clause];
  const words = view.lexicon.parts.get(candidate.part.id);
  if (stretch === undefined || words === undefined) return 0;
  const { cues, nameWords } = words;
  let support = 0;
  for (let at = stretch.from; at <= stretch.to; at += 1) {
    const token = view.tokens[at];
    const features = cues.get(token?.stem ?? "");
    if (!features?.has(candidate.feature.id) || nameWords.has(token?.folded ?? "")) continue;
    support += 1 / rivals(candidate, features);
  }
  return Math.min(support, 2);
}

/** Measurements among the features a word points to. */
function rivals(candidate: Candidate, features: ReadonlySet<string>): number {
  return candidate.part.features.filter((each) => each.kind === "measurement" && features.has(each.id))
    .length;
}

/** Of several features of the dimension, the one in whose range the size lies while it is far from all others. */
function onlyFitting(candidates: readonly Candidate[], quantity: Quantity): Candidate | undefined {
  if (quantity.unit === null || sizeOf.test(quantity.after)) return undefined;
  const fitting = candidates.filter((candidate) =>
    isPlausible(candidate, quantity, 2, [quantity.unit ?? "mm"]),
  );
  const [only] = fitting;
  return fitting.length === 1 && only !== undefined && isPlausible(only, quantity, 1.2, [quantity.unit])
    ? only
    : undefined;
}
