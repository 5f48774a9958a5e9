/**
 * Short texts that people wrote, found again by words with typing errors in them: pinned answers, questions. fuse.js proposes the words
 * that may be meant and the edit distance decides, because over whole sentences fuse.js finds everything or nothing.
 */
import Fuse from "fuse.js";
import { glueWords } from "./common-words.ts";
import { boundedEditDistance } from "./edit-distance.ts";
import { stemWord } from "./fold-word.ts";
import { tokenise } from "./tokens.ts";

export interface FoundText {
  readonly id: string;
  /** Weight of the searched words that the text holds, as a share of all of them, 0 to 1; rare words weigh more. */
  readonly score: number;
}

export interface TextIndex {
  /** Best first, ties by id; texts that hold none of the words are left out. */
  find(words: string): readonly FoundText[];
  /** How much of each text, by weight of its words, a message holds; 0 to 1, best first. For questions asked again in other words. */
  askedIn(message: string): readonly FoundText[];
}

/** An index of texts by id. Building is linear in all words, finding in the distinct ones. */
export function textIndex(texts: ReadonlyMap<string, string>): TextIndex {
  const wordsOf = new Map([...texts].map(([id, text]) => [id, new Set(tellingWords(text))]));
  const frequency = new Map<string, number>();
  for (const words of wordsOf.values()) {
    for (const word of words) frequency.set(word, (frequency.get(word) ?? 0) + 1);
  }
  const finder = new Fuse([...frequency.keys()], { threshold: 0.34, ignoreLocation: true });
  const weightOf = (word: string): number => Math.log(1 + texts.size / (frequency.get(word) ?? 0.5));

  function meant(word: string): ReadonlySet<string> {
    if (frequency.has(word)) return new Set([word]);
    const allowed = word.length < 4 ? 0 : word.length < 8 ? 1 : 2;
    const near = finder.search(word, { limit: 12 }).map(({ item }) => item);
    return new Set(near.filter((item) => boundedEditDistance(word, item, allowed) <= allowed));
  }

  function find(searched: string): readonly FoundText[] {
    const asked = [...new Set(tellingWords(searched))].map((word) => ({
      words: meant(word),
      weight: weightOf(word),
    }));
    const whole = asked.reduce((sum, { weight }) => sum + weight, 0);
    return ranked(wordsOf, (held) =>
      whole === 0
        ? 0
        : asked.reduce(
            (sum, { words, weight }) => sum + ([...words].some((word) => held.has(word)) ? weight : 0),
            0,
          ) / whole,
    );
  }

  function askedIn(message: string): readonly FoundText[] {
    const said = new Set(tellingWords(message).flatMap((word) => [...meant(word)]));
    return ranked(wordsOf, (held) => {
      const words = [...held];
      const whole = words.reduce((sum, word) => sum + weightOf(word), 0);
      const found = words.reduce((sum, word) => sum + (said.has(word) ? weightOf(word) : 0), 0);
      return whole === 0 ? 0 : found / whole;
    });
  }

  return { find, askedIn };
}

function ranked(
  wordsOf: ReadonlyMap<string, ReadonlySet<string>>,
  scoreOf: (held: ReadonlySet<string>) => number,
): readonly FoundText[] {
  return [...wordsOf]
    .map(([id, held]) => ({ id, score: scoreOf(held) }))
    .filter(({ score }) => score > 0)
    .sort((one, other) => other.score - one.score || (one.id < other.id ? -1 : 1));
}

/** The words that carry a meaning of their own, stemmed; a text of nothing but small words keeps those. */
function tellingWords(text: string): readonly string[] {
  const words = tokenise(text).map(({ folded }) => folded);
  const telling = words.filter((word) => !glueWords.has(word));
  return (telling.length > 0 ? telling : words).map(stemWord);
}
