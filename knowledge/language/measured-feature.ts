// Which measurement of a part a size is of: by names and words beside it, by the question just asked, and by lying where the
// sizes of one feature lie and those of no other do.
import type { MeasurementFeature } from "../handbook/schema.ts";
import { convertUnits } from "../trade/units.ts";
import type { MessageView } from "./message-view.ts";
import { stemsOf } from "./name-stems.ts";
import { type Candidate, isPlausible } from "./plausible-size.ts";
import type { Quantity } from "./quantities.ts";
import { isClockHour, isOfSomethingElse, sizeOf } from "./size-of-another.ts";

/** The feature a size is of: the one named nearest, the one asked, or the only one that it fits. */
export function chooseFeature(
  view: MessageView,
  quantity: Quantity,
  at: number,
  clause: number,
): Candidate | undefined {
  const candidates = candidatesFor(view, view.partOf[clause], quantity);
  const [best, second] = ranked(view, candidates, quantity, at, clause);
  if (best === undefined) return undefined;
  const isOpen = second !== undefined && (best.support === 0 || best.rank === second.rank);
  if (isOpen && (best.support > 0 || view.partOf[clause] === undefined)) return undefined;
  if (isOpen) return onlyFitting(candidates, quantity);
  return taken(view, best, quantity, clause, second === undefined);
}

/** The best supported feature, unless the size is none of it; or the only one that the size fits. */
function taken(
  view: MessageView,
  { candidate, support, isFit }: Ranked,
  quantity: Quantity,
  clause: number,
  isSole: boolean,
): Candidate | undefined {
  const isNamed = isNamedBy(view, clause, isFit ? support + halfNamed : support);
  if (!isNamed && view.context.askedFeature === candidate.feature.id) return candidate;
  if (isNoSizeOf(view, candidate, quantity, support, clause)) return undefined;
  const isSure =
    (isNamed || quantity.unit !== null) &&
    isPlausible(
      candidate,
      quantity,
      isSole && !isNamed ? soleFactor : widestFactor(support, quantity, isNamed),
    );
  return isSure ? candidate : onlyFitting(candidatesFor(view, view.partOf[clause], quantity), quantity);
}

interface Ranked {
  readonly candidate: Candidate;
  readonly support: number;
  readonly isFit: boolean;
  readonly rank: number;
}

/**
 * The best first. A size that lies among those of one feature speaks for it as loudly as most of a word of its name, and
 * against those that only a slip of the unit could explain.
 */
function ranked(
  view: MessageView,
  candidates: readonly Candidate[],
  quantity: Quantity,
  at: number,
  clause: number,
): readonly Ranked[] {
  const fitting = candidates.filter((candidate) => fits(candidate, quantity));
  return candidates
    .map((candidate) => {
      const support = supportFor(view, candidate, at, clause);
      const isFit = fitting.includes(candidate);
      const isSlip = fitting.length > 0 && support < namedOutright && isSlipOf(view, candidate, quantity);
      return { candidate, support, isFit, rank: support + (isFit ? fitSupport : isSlip ? -slipSupport : 0) };
    })
    .sort((one, other) => other.rank - one.rank);
}

function isSlipOf(view: MessageView, candidate: Candidate, quantity: Quantity): boolean {
  if (quantity.unit === null || view.context.askedFeature === candidate.feature.id) return false;
  return !isPlausible(candidate, quantity, soleFactor, [quantity.unit]);
}

const slipSupport = 1;
const fitSupport = 0.7;
/** A fitting size needs half the words. */
const halfNamed = 0.5;
/** The only feature of a dimension: what is weighed can only be the weight. */
const soleFactor = 3;
const closeFactor = 1.12;

/** Whether the size lies close about those of the feature's variants, in its own unit; millimetres where none was said. */
function fits(candidate: Candidate, quantity: Quantity): boolean {
  return isPlausible(candidate, quantity, closeFactor, [quantity.unit ?? "mm"]);
}

function isNoSizeOf(
  view: MessageView,
  candidate: Candidate,
  quantity: Quantity,
  support: number,
  clause: number,
): boolean {
  if (isClockHour(quantity) || isPersonsWeight(view, candidate, clause)) return true;
  return support < namedOutright && isOfSomethingElse(quantity);
}

/** "My bathroom scales say 81 kg": where no part is spoken of, nothing of a part was weighed. */
function isPersonsWeight(view: MessageView, { feature }: Candidate, clause: number): boolean {
  return view.partOf[clause] === undefined && /^(?:kg|g|lb|oz)$/.test(feature.unit);
}

/** A size that its name stands beside is a size, however odd: the identification weighs it. */
function widestFactor(support: number, quantity: Quantity, isNamed: boolean): number {
  if (support >= namedOutright && quantity.unit !== null) return 25;
  return isNamed ? 5 : 2;
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
    const inOrder = isInOrder(view, spotted, feature) ? orderSupport : 0;
    const where = view.clauseOf[spotted.from] ?? 0;
    const length = spotted.phrase.stems.length * 0.5 + inOrder;
    if (where === clause) return Math.max(best, 4 + length - Math.min(1.5, Math.abs(spotted.from - at) / 6));
    return Math.max(best, isLeadIn(view, where, clause) ? 2 + length : 0);
  }, 0);
  const asked = view.context.askedFeature === feature.id ? 1.5 : 0;
  return named > 0 ? named + asked : asked + cueSupport(view, candidate, clause);
}

const orderSupport = 0.3;

/** "Centre hole" is a name of the bore; "hole centres", of a distance. */
function isInOrder(
  view: MessageView,
  { used }: MessageView["spotted"][number],
  feature: MeasurementFeature,
): boolean {
  const said = used.map((at) => view.tokens[at]?.stem).join(" ");
  return [feature.name, ...feature.also].some((name) => stemsOf(name).join(" ") === said);
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
  if (sizeOf.test(quantity.after) || (quantity.unit === null && !isMeasured(quantity))) return undefined;
  const fitting = candidates.filter((candidate) =>
    isPlausible(candidate, quantity, 2, [quantity.unit ?? "mm"]),
  );
  const [only] = fitting;
  const near =
    quantity.unit === null ? closeFactor : millimetres(quantity) < large ? nearFactor : nearOfLarge;
  return fitting.length === 1 &&
    only !== undefined &&
    isPlausible(only, quantity, near, [quantity.unit ?? "mm"])
    ? only
    : undefined;
}

function millimetres({ value, unit }: Quantity): number {
  return (unit === null ? undefined : convertUnits(value, unit, "mm")) ?? value;
}

const nearFactor = 1.2;
/** Few things are as large as a part itself; in millimetres. */
const large = 100;
const nearOfLarge = 1.5;

/** "1171 by the tape": a figure of three places and more that somebody measured. */
function isMeasured({ instrument, value }: Quantity): boolean {
  return instrument !== undefined && instrument !== "guess" && value >= 100;
}
