// One message laid out for the finders: words, clauses with their stances, phrases found, and which part each
// clause speaks of. Built once; the finders only look.
import type { Span } from "./blank-noise.ts";
import { type Clause, clausesOf } from "./clauses.ts";
import type { Lexicon } from "./lexicon.ts";
import type { Meaning } from "./meaning.ts";
import type { ReadingContext } from "./message-reading.ts";
import { type Spotted, spotTerms } from "./spot-terms.ts";
import { type Stance, stancesOf } from "./stance.ts";
import { type Token, tokenise } from "./tokens.ts";

export interface MessageView {
  readonly lexicon: Lexicon;
  readonly context: ReadingContext;
  /** The text as shown; positions of tokens count in it. */
  readonly shown: string;
  readonly tokens: readonly Token[];
  readonly clauses: readonly Clause[];
  readonly stances: readonly Stance[];
  readonly spotted: readonly Spotted[];
  /** Tokens already read as serials, dates or measurements. */
  readonly taken: ReadonlySet<number>;
  /** The clause of each token. */
  readonly clauseOf: readonly number[];
  /** The part each clause speaks of; undefined where nothing tells. */
  readonly partOf: readonly (string | undefined)[];
}

export interface Readable {
  readonly shown: string;
  readonly readable: string;
  readonly quoted: readonly Span[];
  /** Stretches already read as serials, dates or measurements. */
  readonly taken: readonly Span[];
}

export function viewMessage(text: Readable, lexicon: Lexicon, context: ReadingContext): MessageView {
  const tokens = tokenise(text.readable);
  const clauses = clausesOf(tokens);
  const taken = new Set(tokens.flatMap((token, at) => (isWithin(token, text.taken) ? [at] : [])));
  const spotted = spotTerms(tokens, lexicon, taken);
  const stances = stancesOf(clauses, (clause) => isWithin(tokens[clause.from], text.quoted));
  const clauseOf = clauses.flatMap((clause, at) =>
    Array.from({ length: clause.to - clause.from + 1 }, () => at),
  );
  const view = { lexicon, context, shown: text.shown, tokens, clauses, stances, spotted, taken, clauseOf };
  return { ...view, partOf: partsByClause(view) };
}

function isWithin(token: Token | undefined, spans: readonly Span[]): boolean {
  return token !== undefined && spans.some((span) => span.start <= token.start && token.start < span.end);
}

/** The words of the shown text that tokens `from` to `to` stand on, at most 160 characters. */
export function wordsBetween(view: Pick<MessageView, "shown" | "tokens">, from: number, to: number): string {
  const start = view.tokens[from]?.start ?? 0;
  const end = view.tokens[to]?.end ?? start;
  return view.shown
    .slice(start, Math.min(end, start + 160))
    .replace(/\s+/g, " ")
    .trim();
}

/** Parts a phrase names outright, by a part's own name or by a variant's. */
export function partsNamed(spotted: Spotted): readonly string[] {
  return Array.from(
    new Set(
      spotted.phrase.meanings.flatMap((meaning) =>
        meaning.kind === "part" || meaning.kind === "variant" ? [meaning.part] : [],
      ),
    ),
  );
}

function partsByClause(view: Omit<MessageView, "partOf">): readonly (string | undefined)[] {
  const named = view.clauses.map(() => new Set<string>());
  for (const spotted of view.spotted) {
    const parts = partsNamed(spotted);
    const [only] = parts;
    if (parts.length === 1 && only !== undefined) named[view.clauseOf[spotted.from] ?? 0]?.add(only);
  }
  const everywhere = new Set(named.flatMap((parts) => Array.from(parts)));
  const [first] = everywhere;
  if (everywhere.size === 1) return view.clauses.map(() => first);
  if (everywhere.size === 0) {
    const implied = view.context.part ?? impliedPart(view.spotted);
    return view.clauses.map(() => implied);
  }
  let running: string | undefined = named.flatMap((parts) => Array.from(parts))[0];
  return named.map((parts) => {
    const [only] = parts;
    if (only !== undefined) running = only;
    return running;
  });
}

/** The one part to which every unambiguous phrase points. */
function impliedPart(spotted: readonly Spotted[]): string | undefined {
  const pointed = new Set<string>();
  for (const { phrase } of spotted) {
    const parts = new Set(phrase.meanings.flatMap((meaning) => partOfMeaning(meaning)));
    const [only] = parts;
    if (parts.size === 1 && only !== undefined && !phrase.isGeneral) pointed.add(only);
  }
  const [only] = pointed;
  return pointed.size === 1 ? only : undefined;
}

function partOfMeaning(meaning: Meaning): readonly string[] {
  return "part" in meaning ? [meaning.part] : [];
}
