// Which part kind each clause speaks of: one named there, else the last named before, else the case in hand, else
// the one part to which all the words point.
import type { Clause } from "./clauses.ts";
import { numberOf } from "./fold-word.ts";
import type { Lexicon } from "./lexicon.ts";
import type { Meaning } from "./meaning.ts";
import type { ReadingContext } from "./message-reading.ts";
import type { Spotted } from "./spot-terms.ts";

export interface PartView {
  readonly lexicon: Lexicon;
  readonly context: ReadingContext;
  readonly clauses: readonly Clause[];
  readonly spotted: readonly Spotted[];
  /** The clause of each token. */
  readonly clauseOf: readonly number[];
}

/** Parts a phrase names outright, by a part's own name or by a variant's. */
function partsNamed(spotted: Spotted): readonly string[] {
  return Array.from(
    new Set(
      spotted.phrase.meanings.flatMap((meaning) =>
        meaning.kind === "part" || meaning.kind === "variant" ? [meaning.part] : [],
      ),
    ),
  );
}

/**
 * The part a phrase names when `inHand` is spoken of: "the wheel" after "steering wheel" is still that one, and a
 * word that is a feature of the part in hand ("rim") does not change the subject.
 */
function partNamed(spotted: Spotted, lexicon: Lexicon, inHand: string | undefined): string | undefined {
  const named = partsNamed(spotted);
  if (inHand !== undefined) {
    const isOwnWord = spotted.phrase.meanings.some((each) => "part" in each && each.part === inHand);
    const isShortName = spotted.phrase.stems.every((stem) => lexicon.parts.get(inHand)?.nameWords.has(stem));
    if (named.length > 0 && (isOwnWord || isShortName)) return inHand;
  }
  const [only] = named;
  return named.length === 1 ? only : undefined;
}

/** The part each phrase names, in order, the subject running on from the case in hand. */
export function partMentions(view: PartView): readonly (string | undefined)[] {
  let inHand = view.context.part;
  return view.spotted.map((spotted) => {
    const part = partNamed(spotted, view.lexicon, inHand);
    if (part !== undefined) inHand = part;
    return part;
  });
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
  if (everywhere.size === 1) return view.clauses.map(() => first);
  if (everywhere.size === 0) {
    const implied = view.context.part ?? impliedPart(view.spotted);
    return view.clauses.map(() => implied);
  }
  let running: string | undefined = first;
  return named.map((parts) => {
    const [only] = parts;
    if (only !== undefined) running = only;
    return running;
  });
}

/** The one part to which every unambiguous phrase points; one short phrase alone is too little to go by. */
function impliedPart(spotted: readonly Spotted[]): string | undefined {
  const pointed = new Map<string, number>();
  for (const { phrase } of spotted) {
    const parts = new Set(phrase.meanings.flatMap((meaning) => partOfMeaning(meaning)));
    const [only] = parts;
    if (parts.size !== 1 || only === undefined || phrase.isGeneral) continue;
    const telling = phrase.stems.filter((stem) => numberOf(stem) === undefined);
    pointed.set(only, (pointed.get(only) ?? 0) + telling.length);
  }
  const [only] = pointed;
  return pointed.size === 1 && only !== undefined && only[1] >= 2 ? only[0] : undefined;
}

function partOfMeaning(meaning: Meaning): readonly string[] {
  return "part" in meaning ? [meaning.part] : [];
}
