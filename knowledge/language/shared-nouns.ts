// "The first and second spoiler", "two or three screws": the noun stands once for both. The word before the
// conjunction is read as if the noun followed it.
import { glueWords } from "./common-words.ts";
import type { Lexicon } from "./lexicon.ts";
import type { Phrase } from "./meaning.ts";
import type { Spotted } from "./spot-terms.ts";
import { foldedAt, type Token } from "./tokens.ts";

const joining: ReadonlySet<string> = new Set("and or nor vs versus from to than".split(" "));

/** The spotted phrases with those that share their noun added, in order. */
export function withSharedNouns(
  spotted: readonly Spotted[],
  tokens: readonly Token[],
  lexicon: Lexicon,
): readonly Spotted[] {
  const held = new Set(spotted.flatMap((each) => each.used));
  const added = spotted.flatMap((each) => sharedBefore(each, tokens, lexicon, held) ?? []);
  return [...spotted, ...added].sort((one, other) => one.from - other.from || one.to - other.to);
}

function sharedBefore(
  spotted: Spotted,
  tokens: readonly Token[],
  lexicon: Lexicon,
  held: ReadonlySet<number>,
): Spotted | undefined {
  if (spotted.phrase.stems.length < 2) return undefined;
  const joint = tellingBefore(tokens, spotted.from);
  if (joint === undefined || !joining.has(foldedAt(tokens, joint))) return undefined;
  const at = tellingBefore(tokens, joint);
  const word = at === undefined ? undefined : tokens[at];
  if (at === undefined || word === undefined || held.has(at)) return undefined;
  const own = tokens[spotted.from]?.stem;
  const wanted = spotted.phrase.stems.map((stem) => (stem === own ? word.stem : stem));
  const phrase = findPhrase(wanted, lexicon);
  return phrase === undefined ? undefined : { phrase, from: at, to: at, used: [at], edits: 0 };
}

/** The token before, articles and other glue passed over unless it joins. */
function tellingBefore(tokens: readonly Token[], from: number): number | undefined {
  for (let at = from - 1; at >= Math.max(0, from - 3); at -= 1) {
    const word = foldedAt(tokens, at);
    if (joining.has(word) || !glueWords.has(word)) return at;
  }
  return undefined;
}

/** The phrase made of just these stems in any order. */
export function findPhrase(stems: readonly string[], lexicon: Lexicon): Phrase | undefined {
  const key = [...stems].sort().join(" ");
  for (const stem of stems) {
    const found = lexicon.phrasesByWord
      .get(stem)
      ?.find((phrase) => [...phrase.stems].sort().join(" ") === key);
    if (found !== undefined) return found;
  }
  return undefined;
}
