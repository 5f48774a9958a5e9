// One message laid out for the finders: words, clauses with their stances, phrases found, and which part each
// clause speaks of. Built once; the finders only look.
import { partMentions, partsByClause } from "./active-part.ts";
import type { Span } from "./blank-noise.ts";
import { type Clause, clausesOf } from "./clauses.ts";
import { withHeardParts } from "./hearing/heard-parts.ts";
import { type HeardSentence, hear, soundedSentences } from "./hearing/hearing.ts";
import type { Lexicon } from "./lexicon.ts";
import type { ReadingContext } from "./message-reading.ts";
import { withPlainNouns } from "./plain-nouns.ts";
import { withSharedNouns } from "./shared-nouns.ts";
import { findPhrases, longestFirst, type Spotted } from "./spot-terms.ts";
import { type Stance, stancesOf } from "./stance.ts";
import { type Token, tokenise } from "./tokens.ts";
import { lookUpOnce, type WordLookUp } from "./vocabulary.ts";

export interface MessageView {
  readonly lexicon: Lexicon;
  readonly context: ReadingContext;
  /** The text as shown; positions of tokens count in it. */
  readonly shown: string;
  readonly tokens: readonly Token[];
  /** The handbook's word each token stands for: itself, an inflection or a misspelling of just one; else its stem. */
  readonly words: readonly string[];
  readonly clauses: readonly Clause[];
  readonly stances: readonly Stance[];
  readonly spotted: readonly Spotted[];
  /** The phrases that use a token, by token. */
  readonly phrasesAt: ReadonlyMap<number, readonly Spotted[]>;
  /** The phrases that name a feature, by feature id. */
  readonly featuresNamed: ReadonlyMap<string, readonly Spotted[]>;
  /** The part each spotted phrase names, if any. */
  readonly mentioned: readonly (string | undefined)[];
  /** Tokens already read as serials, dates or measurements. */
  readonly taken: ReadonlySet<number>;
  /** The clause of each token. */
  readonly clauseOf: readonly number[];
  /** The part each clause speaks of; undefined where nothing tells. */
  readonly partOf: readonly (string | undefined)[];
  /** What is heard in each sentence; none where the handbook has no learnt words. */
  readonly heard: readonly HeardSentence[];
}

export interface Readable {
  readonly shown: string;
  readonly readable: string;
  readonly quoted: readonly Span[];
  /** Stretches already read as serials, dates or measurements. */
  readonly taken: readonly Span[];
}

/** So few words say little but the name of a part: "compare the mirrors", "the wing mirrer". */
const mostOfName = 5;

export function viewMessage(text: Readable, lexicon: Lexicon, context: ReadingContext): MessageView {
  const tokens = tokenise(text.readable);
  const clauses = clausesOf(tokens);
  const clauseOf = clauses.flatMap((clause, at) =>
    Array.from({ length: clause.to - clause.from + 1 }, () => at),
  );
  const taken = new Set(tokens.flatMap((token, at) => (isWithin(token, text.taken) ? [at] : [])));
  const lookUp = lookUpOnce(lexicon.vocabulary);
  const found = findPhrases(tokens, lexicon, taken, lookUp);
  const settle = (phrases: readonly Spotted[]): readonly Spotted[] =>
    withSharedNouns(longestFirst(phrases), tokens, lexicon);
  // Once the part is known, phrases of other parts no longer stand in the way of its own.
  const named = partsByClause({ lexicon, context, tokens, clauses, clauseOf, spotted: settle(found) });
  const isNamedInFew =
    tokens.length <= mostOfName &&
    partMentions({ lexicon, context, tokens, clauses, clauseOf, spotted: settle(found) }).some(
      (part) => part !== undefined,
    );
  const { ears } = lexicon;
  const sounded = ears === undefined ? [] : soundedSentences({ tokens, clauses, context, taken }, ears);
  const partOf = isNamedInFew || ears === undefined ? named : withHeardParts(named, sounded, ears);
  const spotted = settle(found.filter((phrase) => concerns(phrase, partOf[clauseOf[phrase.from] ?? 0])));
  return {
    lexicon,
    context,
    shown: text.shown,
    tokens,
    words: wordsOf(tokens, lookUp),
    clauses,
    stances: stancesOf(withPlainNouns(clauses, tokens, lexicon), (clause) =>
      isWithin(tokens[clause.from], text.quoted),
    ),
    spotted,
    phrasesAt: grouped(spotted, (each) => each.used),
    featuresNamed: grouped(spotted, featureIds),
    mentioned: partMentions({ lexicon, context, tokens, clauses, clauseOf, spotted }).map((part, at) => {
      const clause = clauseOf[spotted[at]?.from ?? 0] ?? 0;
      return partOf[clause] === named[clause] || part === partOf[clause] ? part : undefined;
    }),
    taken,
    clauseOf,
    partOf,
    heard: ears === undefined ? [] : hear(sounded, partOf, ears),
  };
}

function grouped<Key>(
  spotted: readonly Spotted[],
  keysOf: (each: Spotted) => readonly Key[],
): ReadonlyMap<Key, readonly Spotted[]> {
  const groups = new Map<Key, Spotted[]>();
  for (const each of spotted) {
    for (const key of keysOf(each)) {
      const known = groups.get(key);
      if (known === undefined) groups.set(key, [each]);
      else if (known.at(-1) !== each) known.push(each);
    }
  }
  return groups;
}

function featureIds({ phrase }: Spotted): readonly string[] {
  return phrase.meanings.flatMap((meaning) => (meaning.kind === "feature" ? [meaning.feature] : []));
}

function wordsOf(tokens: readonly Token[], lookUp: WordLookUp): readonly string[] {
  return tokens.map(({ folded, stem }) => {
    const [only, other] = lookUp(folded);
    const isSure = only !== undefined && other === undefined && only.edits < 2;
    return isSure ? only.stem : stem;
  });
}

function concerns({ phrase }: Spotted, part: string | undefined): boolean {
  if (part === undefined) return true;
  return phrase.meanings.some(
    (meaning) => !("part" in meaning) || meaning.kind === "part" || meaning.part === part,
  );
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
