// All words of a handbook, and the nearest of them to a word as typed. Buckets by length and by first or second
// letter keep the search to a few hundred comparisons; measured on a made-up message set this beat fuzzy search
// over whole messages and n-grams by far in precision, and costs about a tenth of a millisecond a message.
import { commonWords } from "./common-words.ts";
import { boundedEditDistance } from "./edit-distance.ts";
import { baseForms, irregularForms, stemWord } from "./fold-word.ts";
import { englishFor } from "./foreign-words.ts";
import { synonymsOf } from "./thesaurus.ts";

/** A known word that a typed word may stand for, with the number of edits between them. */
export interface WordMatch {
  readonly stem: string;
  readonly edits: number;
}

export interface Vocabulary {
  readonly stems: ReadonlySet<string>;
  readonly buckets: ReadonlyMap<string, readonly string[]>;
}

/** Built once for an edition. `usual`: the words for which a misspelt one may stand; those of mere sayings only add ties. */
export function compileVocabulary(words: Iterable<string>, usual: Iterable<string>): Vocabulary {
  const stems = new Set(words);
  const buckets = new Map<string, string[]>();
  for (const stem of new Set(usual)) {
    if (stem.length < 3 || /\d/.test(stem)) continue;
    for (const key of [`${stem.length}.${stem[0]}`, `${stem.length}-${stem[1]}`]) {
      const bucket = buckets.get(key);
      if (bucket === undefined) buckets.set(key, [stem]);
      else bucket.push(stem);
    }
  }
  return { stems, buckets };
}

/** No word of a handbook is longer; longer runs of letters are not looked up. */
export const longestWord = 40;

/** Edits allowed in a word of this length: 0 below four letters, 1 below eight, else 2. */
export function allowedEdits(length: number): number {
  if (length < 4) return 0;
  return length < 8 ? 1 : 2;
}

/**
 * The known words a typed word stands for: itself, an inflection, or the closest misspelling (all ties, in
 * handbook order). Everyday words stand only for themselves. Empty when nothing is near.
 */
export function findWords(folded: string, vocabulary: Vocabulary): readonly WordMatch[] {
  if (folded.length > longestWord) return [];
  const stem = stemWord(folded);
  for (const known of [stem, folded]) {
    if (vocabulary.stems.has(known))
      return [
        { stem: known, edits: 0 },
        ...inflected(known, vocabulary),
        ...ofOneMeaning(folded, known, vocabulary),
      ];
  }
  if (commonWords.has(folded) || commonWords.has(stem)) return [];
  const base = [...baseForms(stem), ...irregularForms(stem)].find((form) => vocabulary.stems.has(form));
  if (base !== undefined) return [{ stem: base, edits: 1 }];
  const english = englishFor(folded);
  if (english !== undefined && vocabulary.stems.has(english)) return [{ stem: english, edits: 0 }];
  const synonym = synonymsOf(folded, stem).find((word) => vocabulary.stems.has(word));
  if (synonym !== undefined) return [{ stem: synonym, edits: 1 }];
  // "Bothered" is an everyday word in another form, and no misspelling.
  return isCommonForm(stem) ? [] : closestWords(stem, vocabulary);
}

export type WordLookUp = (folded: string) => readonly WordMatch[];

/** `findWords` that remembers what it found: a message says most of its words more than once to those who read it. */
export function lookUpOnce(vocabulary: Vocabulary): WordLookUp {
  const known = new Map<string, readonly WordMatch[]>();
  return (folded) => {
    const found = known.get(folded) ?? findWords(folded, vocabulary);
    known.set(folded, found);
    return found;
  };
}

function isCommonForm(stem: string): boolean {
  const base = /^(.{3,}?)(?:ed|(?<=e)d|ing|ly|er|est|ness|ful|less)$/.exec(stem)?.[1];
  return base !== undefined && (commonWords.has(base) || commonWords.has(`${base}e`));
}

/** "Hollow" beside "hollowed": other forms of a known word, which count inside longer phrases only. */
function inflected(stem: string, vocabulary: Vocabulary): readonly WordMatch[] {
  if (stem.length < 4) return [];
  const forms = new Set(baseForms(stem).filter((form) => form !== stem && vocabulary.stems.has(form)));
  return Array.from(forms, (form) => ({ stem: form, edits: 1 }));
}

/** Words of the same meaning, which count inside longer phrases only: "four bolts and nuts" for "four studs and nuts". */
function ofOneMeaning(folded: string, stem: string, vocabulary: Vocabulary): readonly WordMatch[] {
  const known = synonymsOf(folded, stem).filter((word) => word !== stem && vocabulary.stems.has(word));
  return known.map((word) => ({ stem: word, edits: 1 }));
}

function closestWords(word: string, vocabulary: Vocabulary): readonly WordMatch[] {
  if (/\d/.test(word)) return [];
  let least = allowedEdits(word.length);
  let found: string[] = [];
  for (const candidate of candidatesFor(word, least, vocabulary)) {
    const edits = boundedEditDistance(word, candidate, Math.min(least, allowedEdits(candidate.length)));
    if (edits === 0 || edits > Math.min(least, allowedEdits(candidate.length))) continue;
    if (word.length === 4 && !isSafeInFour(word, candidate)) continue;
    if (edits < least) found = [];
    least = edits;
    if (!found.includes(candidate)) found.push(candidate);
  }
  // A letter lost, doubled or swapped is likelier than one for another: "spoier" is "spoiler" and no "spoker".
  const likely = found.filter((each) => each.length !== word.length || isSafeInFour(word, each));
  return (likely.length > 0 ? likely : found).slice(0, 4).map((stem) => ({ stem, edits: least }));
}

/** In four letters a changed one is more often another word ("soap" is not "snap"); a swap or a lost letter is a slip. */
function isSafeInFour(word: string, candidate: string): boolean {
  if (candidate.length !== word.length) return candidate.length > word.length;
  return [...word].sort().join("") === [...candidate].sort().join("");
}

function* candidatesFor(word: string, edits: number, vocabulary: Vocabulary): Generator<string> {
  if (edits === 0) return;
  const letters = letterMask(word);
  for (let length = word.length - edits; length <= word.length + edits; length += 1) {
    for (const key of keysFor(word, length)) {
      for (const candidate of vocabulary.buckets.get(key) ?? []) {
        if (bitCount(letters ^ letterMask(candidate)) <= 2 * edits) yield candidate;
      }
    }
  }
}

/** The first letter is right, or the second; a swap of the two is a common slip as well. */
function keysFor(word: string, length: number): readonly string[] {
  if (word.length < 5) return [`${length}.${word[0]}`];
  return [`${length}.${word[0]}`, `${length}-${word[1]}`, `${length}.${word[1]}`];
}

function letterMask(word: string): number {
  let mask = 0;
  for (let at = 0; at < word.length; at += 1) mask |= 1 << (word.charCodeAt(at) & 31);
  return mask;
}

function bitCount(mask: number): number {
  const pairs = mask - ((mask >>> 1) & 0x55555555);
  const quads = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((quads + (quads >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}
