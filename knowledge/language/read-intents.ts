// The intents of a message in the order said, each once. Long messages are read clause by clause; only the first
// hundred clauses count, so that a pasted page cannot ask for a thousand things.
import { numberOf } from "./fold-word.ts";
import {
  cannotTell,
  compare,
  goalPatterns,
  howToCheck,
  listVariants,
  plainIntents,
  switchCase,
  withdraw,
} from "./intents.ts";
import type { Intent } from "./message-reading.ts";
import { type MessageView, wordsBetween } from "./message-view.ts";

const mostClauses = 100;

/** Greetings, thanks and bare yes or no count only where the clause says nothing else. */
export function readIntents(view: MessageView): readonly Intent[] {
  const found: Intent[] = [];
  view.clauses.slice(0, mostClauses).forEach((clause, at) => {
    if (view.stances[at]?.aside === "another-car" && !/\b(?:compare|difference)\b/.test(clause.text)) return;
    for (const intent of intentsOf(view, at)) {
      if (!found.some((other) => sameIntent(other, intent))) found.push(intent);
    }
  });
  const isOnlyTalk = found.every((intent) => intent.kind === "small-talk");
  return isOnlyTalk ? found : found.filter((intent) => intent.kind !== "small-talk");
}

function sameIntent(one: Intent, other: Intent): boolean {
  if (one.kind === "goal" && other.kind === "goal") return one.goal === other.goal;
  return one.kind === other.kind;
}

function intentsOf(view: MessageView, at: number): readonly Intent[] {
  const clause = view.clauses[at];
  if (clause === undefined) return [];
  const found: Intent[] = [];
  const compared = comparedIn(view, at);
  if (compared !== undefined) found.push(compared);
  const plain = plainIntents.find(([, pattern]) => pattern.test(clause.text))?.[0];
  const particular = particularIntent(view, at);
  // "What is a fair price" asks for a price, and not how anything is looked at.
  const isPrice = plain === "price" && particular?.kind === "how-to-check" && !("feature" in particular);
  if (particular !== undefined && !isPrice) found.push(particular);
  if (plain !== undefined && isPlainHere(plain, isPrice ? undefined : particular?.kind, view, at))
    found.push({ kind: plain });
  const isTelling = /\b(?:tell|know|sure|find out|check|see) (?:if|whether)\b/.test(clause.text);
  const isSettled = found.some(({ kind }) => settled.has(kind) && !(kind === "how-to-check" && isTelling));
  const goal = isSettled ? undefined : goalIn(view, at);
  if (goal !== undefined) found.push(goal);
  return found;
}

/** Intents after which the same clause does not also name a goal. */
const settled: ReadonlySet<Intent["kind"]> = new Set<Intent["kind"]>([
  "compare",
  "list-variants",
  "photographs",
  "price",
  "what-fits",
  "how-to-check",
  "withdraw",
  "undo",
  "start-over",
  "why",
]);

function isPlainHere(
  plain: Intent["kind"],
  particular: Intent["kind"] | undefined,
  view: MessageView,
  at: number,
): boolean {
  if (particular === "how-to-check") return false;
  // The "N" of "mark: N" answers nothing, nor does what goes on from a masked number: "WS-1047 it is".
  const begins = view.tokens[view.clauses[at]?.from ?? 0]?.start ?? 0;
  if (plain === "yes" && view.shown.slice(0, begins).endsWith("\u2022 ")) return false;
  if (view.clauses.length > 1 && /^[ny]$/.test(view.clauses[at]?.text ?? "")) return false;
  if (plain === "what-fits" || plain === "where-from-here") return isAsking(view, at);
  return true;
}

function isAsking(view: MessageView, at: number): boolean {
  const clause = view.clauses[at];
  return (
    clause !== undefined &&
    (view.stances[at]?.aside === "question" ||
      clause.isAsked ||
      /^(?:and |so |but |ok )?(?:what|which|how|where|will|would|can|does|is)\b|what/.test(clause.text))
  );
}

function goalIn(view: MessageView, at: number): Intent | undefined {
  const clause = view.clauses[at];
  if (clause === undefined) return undefined;
  const matched = goalPatterns.find(([, pattern]) => pattern.test(clause.text))?.[0];
  if (matched === undefined) return undefined;
  // "it looks genuine" states; only asking makes it the goal.
  const isWish =
    /\b(?:want|need|wonder\w*|help|know|tell|check|identify|id|find out|trying to|figure|sure (?:if|this|it|my|the|that|these|they)|whether|curious|advice|confirm|work out|looking to|please|thoughts|any idea)\b/.test(
      clause.text,
    );
  const isAskedTag = clause.isAsked || sentenceIsAsked(view, at);
  if (matched !== "which-variant" && !isAskedTag && !isWish && view.stances[at]?.aside !== "question")
    return undefined;
  return { kind: "goal", goal: matched, words: wordsBetween(view, clause.from, clause.to) };
}

function sentenceIsAsked(view: MessageView, at: number): boolean {
  const sentence = view.clauses[at]?.sentence;
  return view.clauses.some((clause) => clause.sentence === sentence && clause.isAsked);
}

function particularIntent(view: MessageView, at: number): Intent | undefined {
  const clause = view.clauses[at];
  if (clause === undefined) return undefined;
  const feature = featureNamed(view, at);
  const named = feature === undefined ? {} : { feature };
  if (withdraw.test(clause.text)) return { kind: "withdraw", ...named };
  if (howToCheck.test(clause.text))
    return compare.test(clause.text) ? undefined : { kind: "how-to-check", ...named };
  if (listVariants.test(clause.text)) return { kind: "list-variants", part: view.partOf[at] ?? null };
  const switched = clause.to - clause.from < 7 ? switchCase.exec(clause.text)?.groups : undefined;
  if (switched !== undefined) return caseNumber(switched.number ?? switched.ordinal ?? "");
  return isUntold(view, at, clause.text) ? { kind: "cannot-tell", ...named } : undefined;
}

function isUntold(view: MessageView, at: number, text: string): boolean {
  if (!cannotTell.test(text) || isAskingSomebody(text) || isHalfKnown(view, at, text)) return false;
  return view.stances[at]?.aside === "question" || !saysState(view, at);
}

/** "Built in March, not sure of the year": the rest of a date is open, not what was asked. */
function isHalfKnown(view: MessageView, at: number, text: string): boolean {
  const before = view.clauses[at - 1];
  return (
    /\b(?:of|about|which|what|on|the) (?:the |exact |precise )*(?:year|month|day|week)\b/.test(text) &&
    before?.sentence === view.clauses[at]?.sentence &&
    /\b(?:built|finished|made|registered|delivered|stamped|dated|cast|says|reads)\b/.test(before?.text ?? "")
  );
}

/** "not sure which one it is" asks what the part is; it does not answer a question. */
function isAskingSomebody(text: string): boolean {
  return /\b(?:which (?:one|type|version|variant)|what (?:it is|they are|i have|ive got|type|version)|if (?:it|they|its|theyre|this) (?:is |are )?(?:\w+ )?(?:right|genuine|original|real|correct|repro|legit)|whether (?:it|they|its|this)|(?:is|are) (?:right|genuine|original|correct|legit))\b/.test(
    text,
  );
}

function saysState(view: MessageView, at: number): boolean {
  return view.spotted.some(
    (spotted) =>
      view.clauseOf[spotted.from] === at &&
      spotted.phrase.meanings.some((each) => each.kind === "state") &&
      !spotted.phrase.isGeneral,
  );
}

function caseNumber(written: string): Intent | undefined {
  const ordinals = ["first", "second", "third"];
  const number = ordinals.includes(written) ? ordinals.indexOf(written) + 1 : numberOf(written);
  return number === undefined || number < 1 ? undefined : { kind: "switch-case", number };
}

/** The feature of the part in hand that the clause names, when it names just one. */
function featureNamed(view: MessageView, at: number): string | undefined {
  const part = view.partOf[at];
  const ids = new Set(
    view.spotted
      .filter((spotted) => view.clauseOf[spotted.from] === at)
      .flatMap((spotted) => spotted.phrase.meanings)
      .flatMap((each) =>
        "feature" in each && (part === undefined || each.part === part) ? [each.feature] : [],
      ),
  );
  const clause = view.clauses[at];
  const heads = part === undefined ? undefined : view.lexicon.parts.get(part)?.heads;
  if (ids.size === 0 && clause !== undefined) {
    for (const token of view.tokens.slice(clause.from, clause.to + 1)) {
      const feature = heads?.get(token.stem);
      if (feature !== undefined) ids.add(feature);
    }
  }
  const [only] = ids;
  return ids.size === 1 ? only : undefined;
}

/** "compare X and Y", "how do I tell X from Y": the variants named in the sentence. */
function comparedIn(view: MessageView, at: number): Intent | undefined {
  const clause = view.clauses[at];
  if (clause === undefined || !compare.test(clause.text)) return undefined;
  const part = view.partOf[at] ?? null;
  const variants = new Set(
    view.spotted
      .filter((spotted) => view.clauses[view.clauseOf[spotted.from] ?? 0]?.sentence === clause.sentence)
      .flatMap((spotted) => spotted.phrase.meanings)
      .flatMap((each) =>
        each.kind === "variant" && (part === null || each.part === part) ? [each.variant] : [],
      ),
  );
  return { kind: "compare", variants: [...variants], part };
}
