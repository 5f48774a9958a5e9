// Sizes of a message as findings about measurements of a part; what fits no feature, or several, is left aside.
import { chooseFeature } from "./measured-feature.ts";
import type { FeatureFinding } from "./message-reading.ts";
import type { MessageView } from "./message-view.ts";
import { isOtherThing } from "./other-things.ts";
import type { Candidate } from "./plausible-size.ts";
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
    if (view.stances[clause]?.aside !== undefined || isCounted || isOfAnother(view, clause)) continue;
    if (quantity.isDenied) continue;
    const chosen = chooseFeature(view, quantity, at, clause) ?? repeated(quantity, last);
    if (chosen !== undefined) {
      last = { chosen, quantity };
      findings.set(`${chosen.part.id} ${chosen.feature.id}`, findingOf(view, last, clause));
    } else if (quantity.unit !== null && /^\d/.test(view.shown.slice(quantity.start)))
      leftAside.push(view.shown.slice(quantity.start, quantity.end).trim());
  }
  return { findings: [...findings.values()], leftAside };
}

/** "The bench is 1180 mm wide", "I am 180 cm tall": the size of what the clause is about, and that is no part. */
function isOfAnother(view: MessageView, clause: number): boolean {
  const { from = 0, text = "" } = view.clauses[clause] ?? {};
  if (/^(?:i am|im|he is|hes|she is|shes) \d/.test(text)) return true;
  const subject = view.tokens[from + 1];
  if (subject === undefined || !otherSubject.test(text) || !isOtherThing(subject.stem)) return false;
  const parts = [...view.lexicon.parts.values()];
  return parts.every(({ cues, nameWords }) => !cues.has(subject.stem) && !nameWords.has(subject.folded));
}
const otherSubject = /^(?:the|my|our|his|her|an?) \w+ (?:is|was|weighs|weighed|measures|measured)\b/;

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
  if (last === undefined || quantity.unit === null) return undefined;
  // "1176, and again 1176 mm": the second says of what unit the first was.
  if (last.quantity.unit === null && last.quantity.value === quantity.value) return last.chosen;
  if (quantity.unit !== last.quantity.unit) return undefined;
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
