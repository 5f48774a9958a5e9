/** Names and other words: one word for two things, words one typing slip apart, words listed twice. */
import type { Cars, PartKind } from "../handbook/schema.ts";
import type { Path } from "../handbook/yaml-reading.ts";
import { boundedEditDistance } from "../language/edit-distance.ts";
import { type Margin, note } from "./remark.ts";
import type { PartMargin } from "./source-remarks.ts";

interface Named {
  readonly id: string;
  readonly name: string;
  readonly also: readonly string[];
}

interface Word {
  readonly margin: Margin;
  /** What the word stands for: unique within its list. */
  readonly id: string;
  readonly folded: string;
  readonly written: string;
  readonly path: Path;
}

/** Shorter words are never taken for a slip by the reader, so they may lie as close as they like. */
const SHORTEST_SLIP = 5;
/** Lists with more words are not compared for slips: every pair would take too long. */
const MOST_WORDS = 3000;

export function remarkWords(parts: readonly PartMargin[], cars: Margin | undefined, names: Cars): void {
  compare(
    "part kind",
    parts.flatMap(({ margin, part }) => wordsOf(margin, part, [])),
  );
  for (const { margin, part } of parts) remarkPartWords(margin, part);
  if (cars === undefined) return;
  for (const key of ["models", "trims", "markets"] as const) {
    compare(key.slice(0, -1), wordsOfList(cars, names[key], [key]));
  }
}

function remarkPartWords(margin: Margin, part: PartKind): void {
  compare("feature", wordsOfList(margin, part.features, ["features"]));
  compare("mounting", wordsOfList(margin, part.mountings, ["mountings"]));
  for (const [index, feature] of part.features.entries()) {
    if (feature.kind !== "states") continue;
    compare(`state of ${feature.id}`, wordsOfList(margin, feature.states, ["features", index, "states"]));
  }
  const variants = wordsOfList(margin, part.variants, ["variants"]);
  compare("variant", variants);
  const own = new Set(wordsOf(margin, part, []).map(({ folded }) => folded));
  for (const word of variants.filter(({ folded }) => own.has(folded))) {
    noteCollision(word, `"${word.written}" is also a word for the part kind itself, ${part.id}`);
  }
}

function wordsOfList(margin: Margin, list: readonly Named[], path: Path): readonly Word[] {
  return list.flatMap((named, index) => wordsOf(margin, named, [...path, index]));
}

function wordsOf(margin: Margin, { id, name, also }: Named, path: Path): readonly Word[] {
  const word = (written: string, place: Path): Word => ({
    margin,
    id,
    written,
    folded: folded(written),
    path: place,
  });
  return [
    word(name, [...path, "name"]),
    ...also.map((written, index) => word(written, [...path, "also", index])),
  ];
}

/** Case, hyphens, quotes and accents make no other word. */
function folded(text: string): string {
  return text
    .normalize("NFKD")
    .replaceAll(/[\p{M}'’"]/gu, "")
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

function compare(what: string, words: readonly Word[]): void {
  const first = new Map<string, Word>();
  for (const word of words) {
    const known = first.get(word.folded);
    if (known === undefined) first.set(word.folded, word);
    else if (known.id !== word.id) {
      noteCollision(word, `"${word.written}" stands for two ${what}s, ${known.id} and ${word.id}`);
    } else if (known.written === word.written && known.path.at(-1) !== "name") noteTwice(word);
  }
  if (first.size <= MOST_WORDS) compareSlips(what, [...first.values()]);
}

function noteCollision({ margin, path }: Word, message: string): void {
  const mend = "keep it for the one most people mean, or add a word that sets them apart";
  note(margin, { severity: "doubt", code: "words-collide", path, message, mend });
}

function noteTwice({ margin, path, written, id }: Word): void {
  const message = `"${written}" is listed twice for ${id}`;
  note(margin, { severity: "wish", code: "word-twice", path, message, mend: "delete one" });
}

interface Token {
  readonly word: Word;
  readonly token: string;
}

/** Words of different things that differ in one token only, and in it by one slip. */
function compareSlips(what: string, words: readonly Word[]): void {
  const buckets = new Map<string, Token[]>();
  for (const word of words) {
    const tokens = word.folded.split(" ");
    for (const [index, token] of tokens.entries()) {
      if (token.length < SHORTEST_SLIP || /\d/u.test(token)) continue;
      const key = tokens.with(index, "*").join(" ");
      const bucket = buckets.get(key) ?? [];
      for (const other of bucket) noteSlip(what, { word, token }, other);
      bucket.push({ word, token });
      buckets.set(key, bucket);
    }
  }
}

function noteSlip(what: string, { word, token }: Token, other: Token): void {
  if (other.word.id === word.id || !isSlip(other.token, token)) return;
  note(word.margin, {
    severity: "wish",
    code: "words-near",
    path: word.path,
    message: `"${word.written}" (${word.id}) is one typing slip from "${other.word.written}" (${other.word.id}), another ${what}`,
    mend: "nothing to do if both are needed; else choose words further apart",
  });
}

function isSlip(one: string, other: string): boolean {
  return Math.abs(one.length - other.length) <= 1 && boundedEditDistance(one, other, 1) === 1;
}
