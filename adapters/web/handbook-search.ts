/**
 * Search of the handbooks' entries, word by word, with slips forgiven: each word asked for must be near a word of the entry, exactly, as
 * its beginning, or within one edit for every four letters. A ranking library was not taken: a name is short, and each hit can be explained.
 */
import { boundedEditDistance, type Handbook } from "../../knowledge/index.ts";

export interface Entry {
  readonly kind: "part" | "version" | "tell" | "misbelief" | "pin";
  readonly name: string;
  readonly context: string;
  readonly path: string;
}

interface Indexed {
  readonly entry: Entry;
  readonly words: readonly string[];
  readonly nameWords: readonly string[];
}

export interface HandbookIndex {
  /** Entries that hold every word asked for, the nearest first; ties in handbook order. */
  search(words: string, more?: readonly Entry[]): readonly Entry[];
}

const MOST_FOUND = 40;
const MOST_WORDS = 8;
const stopWords = new Set([
  "the",
  "a",
  "an",
  "of",
  "on",
  "in",
  "for",
  "my",
  "is",
  "with",
  "and",
  "what",
  "which",
]);

export function handbookIndex(handbooks: readonly Handbook[]): HandbookIndex {
  const indexed = handbooks.flatMap(entriesOf);
  return {
    search(text, more = []) {
      const asked = wordsOf(text).slice(0, MOST_WORDS);
      if (asked.length === 0) return [];
      return [...more.map((entry) => indexOf(entry, [])), ...indexed]
        .map((one, order) => ({ one, order, score: scoreOf(asked, one) }))
        .filter(({ score }) => score > 0)
        .toSorted((first, second) => second.score - first.score || first.order - second.order)
        .slice(0, MOST_FOUND)
        .map(({ one }) => one.entry);
    },
  };
}

function entriesOf({ cover, parts }: Handbook): readonly Indexed[] {
  return parts.flatMap((part) => {
    const path = `/handbook/${cover.id}/${part.id}`;
    const entry = (kind: Entry["kind"], name: string, context: string, place: string): Entry => ({
      kind,
      name,
      context,
      path: `${path}${place}`,
    });
    return [
      indexOf(entry("part", part.name, part.summary, ""), part.also),
      ...part.variants.map((variant) =>
        indexOf(entry("version", variant.name, part.name, `#version-${variant.id}`), [
          ...variant.also,
          part.name,
        ]),
      ),
      ...part.features.map((feature) => {
        const states =
          feature.kind === "states" ? feature.states.flatMap(({ name, also }) => [name, ...also]) : [];
        return indexOf(entry("tell", feature.name, part.name, `#tell-${feature.id}`), [
          ...feature.also,
          ...states,
          part.name,
        ]);
      }),
      ...part.misbeliefs.map((belief) =>
        indexOf(entry("misbelief", belief.claim, part.name, `#said-${belief.id}`), belief.also),
      ),
    ];
  });
}

function indexOf(entry: Entry, also: readonly string[]): Indexed {
  const nameWords = wordsOf(entry.name);
  return { entry, nameWords, words: [...new Set([...nameWords, ...also.flatMap(wordsOf)])] };
}

function wordsOf(text: string): readonly string[] {
  const words =
    text
      .normalize("NFKD")
      .toLowerCase()
      .match(/[a-z0-9]+/gu) ?? [];
  return words.filter((word) => !stopWords.has(word));
}

/** 0 when a word asked for is like none; words of the name itself count double. */
function scoreOf(asked: readonly string[], { words, nameWords }: Indexed): number {
  let sum = 0;
  for (const word of asked) {
    const best = Math.max(2 * bestLikeness(word, nameWords), bestLikeness(word, words));
    if (best === 0) return 0;
    sum += best;
  }
  // Of two names that hold all words the shorter is meant.
  return sum / asked.length + 1 / (10 + nameWords.length);
}

function bestLikeness(word: string, others: readonly string[]): number {
  return others.reduce((best, other) => Math.max(best, likeness(word, other)), 0);
}

function likeness(word: string, other: string): number {
  if (word === other) return 1;
  if (other.startsWith(word) && word.length >= 3) return 0.8;
  const edits = Math.floor(Math.min(word.length, other.length) / 4);
  if (edits === 0 || Math.abs(word.length - other.length) > edits) return 0;
  const distance = boundedEditDistance(word, other, edits);
  return distance > edits ? 0 : 0.7 - 0.2 * (distance / edits);
}
