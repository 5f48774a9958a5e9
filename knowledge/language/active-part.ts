// Which part kind each clause speaks of: one named there, else the last named before, else the case in hand, else
// the one part to which all the words point.
import type { Clause } from "./clauses.ts";
import { numberOf } from "./fold-word.ts";
import { type Lexicon, wordsOfFeature } from "./lexicon.ts";
import type { Meaning } from "./meaning.ts";
import type { ReadingContext } from "./message-reading.ts";
import { stemsOf } from "./name-stems.ts";
import type { Spotted } from "./spot-terms.ts";
import { foldedAt, type Token } from "./tokens.ts";

export interface PartView {
  readonly lexicon: Lexicon;
  readonly context: ReadingContext;
  readonly tokens: readonly Token[];
  readonly clauses: readonly Clause[];
  readonly spotted: readonly Spotted[];
  /** The clause of each token. */
  readonly clauseOf: readonly number[];
}

/** Parts a phrase names outright, by a part's own name, by a variant's, or by a feature that holds it ("mirror shell"). */
function partsNamed({ phrase }: Spotted, lexicon: Lexicon): readonly string[] {
  const named = phrase.meanings.flatMap((meaning) => {
    if (meaning.kind === "part" || meaning.kind === "variant") return [meaning.part];
    if (meaning.kind === "state") return holdsWholeName(phrase, meaning.part, lexicon) ? [meaning.part] : [];
    return meaning.kind === "feature" && holdsPartName(phrase, meaning.part, lexicon) ? [meaning.part] : [];
  });
  return Array.from(new Set(named));
}

/** "Steering wheel … glove": a state said around the part's name of several words. */
function holdsWholeName({ stems }: Spotted["phrase"], id: string, { handbook }: Lexicon): boolean {
  const name = stemsOf(handbook.parts.find((part) => part.id === id)?.name ?? "");
  return name.length > 1 && name.every((stem) => stems.includes(stem));
}

function holdsPartName({ stems }: Spotted["phrase"], part: string, lexicon: Lexicon): boolean {
  const isHeadOf = (stem: string, id: string): boolean => lexicon.parts.get(id)?.nameHeads.has(stem) === true;
  const others = [...lexicon.parts.keys()].filter((id) => id !== part);
  return (
    stems.length > 1 &&
    stems.some((stem) => isHeadOf(stem, part) && !others.some((other) => isHeadOf(stem, other)))
  );
}

/**
 * The part a phrase names when `inHand` is spoken of: "the wheel" after "steering wheel" is still that one, and a
 * word that is a feature of the part in hand ("rim") does not change the subject.
 */
function partNamed(
  spotted: Spotted,
  words: readonly string[],
  lexicon: Lexicon,
  inHand: string | undefined,
): string | undefined {
  const named = partsNamed(spotted, lexicon);
  if (inHand !== undefined) {
    const isOwnWord = spotted.phrase.meanings.some((each) => "part" in each && each.part === inHand);
    const isShortName =
      words.length === 1 && lexicon.parts.get(inHand)?.nameHeads.has(words[0] ?? "") === true;
    if (named.length > 0 && (isOwnWord || isShortName)) return inHand;
    // A variant's nickname ("cheap copy") changes the subject only if it holds the name of its part.
    if (!named.every((part) => namesPartItself(spotted, words, part, lexicon))) return undefined;
  }
  const [only] = named;
  return named.length === 1 ? only : undefined;
}

function namesPartItself(
  spotted: Spotted,
  words: readonly string[],
  part: string,
  lexicon: Lexicon,
): boolean {
  const isPartName = spotted.phrase.meanings.some((each) => each.kind === "part" && each.part === part);
  return isPartName || words.some((word) => lexicon.parts.get(part)?.nameWords.has(word));
}

/** The part each phrase names, in order, the subject running on from the case in hand. */
export function partMentions(view: PartView): readonly (string | undefined)[] {
  const plainly = plainlyNamed(view.spotted);
  const pointed = pointedParts(view.spotted, view.lexicon);
  let inHand = view.context.part;
  /** The words the part in hand was called by in this message; none while only the case tells it. */
  let calledBy = new Set<string>();
  return view.spotted.map((spotted) => {
    const words = spotted.used.map((token) => foldedAt(view.tokens, token));
    if (inHand !== undefined && isPlace(view, spotted)) return undefined;
    // "The rim of the steering wheel": a word of the part named plainly later is no other part.
    const owner = inHand ?? plainly.find((part) => isWordOf(spotted, part));
    // "Spoiler: smooth. Wing: rough": a short name is still the part in hand only where that was called so.
    const isAnew = calledBy.size > 0 && isNewName(spotted, words, calledBy);
    const named = partNamed(spotted, words, view.lexicon, isAnew ? undefined : owner);
    const part = isAnew ? named : betterPointed(named, words, view.lexicon, pointed);
    if (part === undefined || (part !== inHand && isAmidst(view, spotted, inHand))) return undefined;
    calledBy = new Set(part === inHand ? [...calledBy, ...words] : words);
    inHand = part;
    return part;
  });
}

/** One word that is the name of a part and nothing else, and that no part was called by yet. */
function isNewName({ phrase }: Spotted, words: readonly string[], calledBy: ReadonlySet<string>): boolean {
  const isName = phrase.meanings.length === 1 && phrase.meanings[0]?.kind === "part";
  return isName && words.length === 1 && !calledBy.has(words[0] ?? "");
}

/** "The horn push shows a bird with spread wings": said amid words that only the part in hand has. */
function isAmidst(view: PartView, spotted: Spotted, inHand: string | undefined): boolean {
  if (inHand === undefined || spotted.used.length > 1) return false;
  const clause = view.clauseOf[spotted.from];
  return view.spotted.some(
    ({ from, to, phrase }) =>
      to < spotted.from &&
      view.clauseOf[from] === clause &&
      !phrase.isGeneral &&
      phrase.stems.length > 1 &&
      phrase.meanings.every((each) => "feature" in each && each.part === inHand),
  );
}

/** "Sweeps round the wings", "next to the mirror": where something is, not what is spoken of. */
function isPlace(view: PartView, spotted: Spotted): boolean {
  const before = view.tokens.slice(Math.max(0, spotted.from - 3), spotted.from).map(({ folded }) => folded);
  const after = view.tokens.slice(spotted.to + 1, spotted.to + 4).map(({ folded }) => folded);
  if (aid.test(before.join(" ")) && reading.test(after.join(" "))) return true;
  return /\b(?:round|along|around|against|towards?|past|beside|between|near|next to|close to|up to|into|onto|over)(?: (?:the|my|its|each|both))?$|\b(?:without|with no)(?: an?| any| the)?$/.test(
    before.join(" "),
  );
}

/** "With the mirror I read …": what one sees by is not what is seen. */
const aid = /\b(?:with|in|through|using|by) (?:an?|the|my)(?: \w+)?$/;
const reading = /^(?:i|we) (?:can |could )?(?:read|see|saw|make|made|spotted)\b/;

/** Parts named by phrases that can mean nothing else, in order. */
function plainlyNamed(spotted: readonly Spotted[]): readonly string[] {
  return spotted.flatMap(({ phrase }) => {
    const [first] = phrase.meanings;
    return phrase.meanings.length === 1 && first?.kind === "part" ? [first.part] : [];
  });
}

function isWordOf({ phrase }: Spotted, part: string): boolean {
  return phrase.meanings.some((each) => each.kind !== "part" && "part" in each && each.part === part);
}

/** The part each clause speaks of; undefined where nothing tells. */
export function partsByClause(view: PartView): readonly (string | undefined)[] {
  const named = view.clauses.map(() => new Set<string>());
  const mentioned = partMentions(view);
  view.spotted.forEach((spotted, at) => {
    const part = mentioned[at];
    if (part !== undefined) named[view.clauseOf[spotted.from] ?? 0]?.add(part);
  });
  const everywhere = new Set(named.flatMap((parts) => Array.from(parts)));
  const [first] = everywhere;
  if (everywhere.size === 0) {
    const implied = view.context.part ?? impliedPart(view.spotted, view.lexicon);
    return view.clauses.map(() => implied);
  }
  let running: string | undefined = first;
  return named.map((parts) => {
    const [only] = parts;
    if (only !== undefined) running = only;
    return running;
  });
}

/** "The wheel" with splines and a horn push is the steering wheel: a short name goes to the part that is spoken of. */
function betterPointed(
  part: string | undefined,
  words: readonly string[],
  lexicon: Lexicon,
  pointed: ReadonlyMap<string, number>,
): string | undefined {
  const [only] = words;
  if (part === undefined || words.length !== 1 || only === undefined) return part;
  let best = part;
  for (const [other, weight] of pointed) {
    const sharesName = lexicon.parts.get(other)?.nameHeads.has(only) === true;
    if (sharesName && weight > (pointed.get(best) ?? 0)) best = other;
  }
  return best;
}

/** How strongly the phrases that can mean one part only point to each: their telling words, numbers left out. */
function pointedParts(spotted: readonly Spotted[], lexicon: Lexicon): ReadonlyMap<string, number> {
  const pointed = new Map<string, number>();
  for (const { phrase } of spotted) {
    const parts = new Set(phrase.meanings.flatMap((meaning) => partOfMeaning(meaning)));
    const [only] = parts;
    const namesPart = phrase.meanings.some((meaning) => meaning.kind === "part");
    if (parts.size !== 1 || only === undefined || phrase.isGeneral || isOfWeight(phrase, lexicon)) continue;
    const telling = phrase.stems.filter((stem) => numberOf(stem) === undefined);
    const ownNoun =
      phrase.stems.length > 1 && phrase.stems.some((stem) => lexicon.parts.get(only)?.nameHeads.has(stem))
        ? 1
        : 0;
    const ofFeature =
      phrase.stems.length > 1 && phrase.meanings.every(({ kind }) => kind === "feature") ? 1 : 0;
    pointed.set(only, (pointed.get(only) ?? 0) + (namesPart ? 0 : telling.length + ownNoun + ofFeature));
  }
  return pointed;
}

/** "On the bathroom scales": how something is weighed does not tell what is. */
function isOfWeight({ meanings }: Spotted["phrase"], lexicon: Lexicon): boolean {
  return meanings.every((meaning) => {
    const feature =
      meaning.kind === "feature"
        ? wordsOfFeature(lexicon, meaning.part, meaning.feature)?.feature
        : undefined;
    return feature?.kind === "measurement" && /^(?:kg|g|lb|oz)$/.test(feature.unit);
  });
}

/** Three telling words, or the whole name of a feature. */
const leastPointing = 3;

/** The part pointed to twice as strongly as any other; one short phrase is too little. */
function impliedPart(spotted: readonly Spotted[], lexicon: Lexicon): string | undefined {
  const [first, second] = [...pointedParts(spotted, lexicon)].sort(([, one], [, other]) => other - one);
  if (first === undefined || first[1] < leastPointing) return undefined;
  return first[1] >= 2 * (second?.[1] ?? 0) ? first[0] : undefined;
}

function partOfMeaning(meaning: Meaning): readonly string[] {
  return "part" in meaning ? [meaning.part] : [];
}
