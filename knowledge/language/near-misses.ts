// Words that come close to a name of the part in hand without being taken: "did you mean". fuse.js proposes among
// a few hundred names at most, and the edit distance decides; over whole messages it would find everything.
import Fuse from "fuse.js";
import { commonWords, glueWords } from "./common-words.ts";
import { boundedEditDistance } from "./edit-distance.ts";
import type { Lexicon } from "./lexicon.ts";
import type { MessageReading } from "./message-reading.ts";
import type { MessageView } from "./message-view.ts";
import { longestWord } from "./vocabulary.ts";

type NearMiss = MessageReading["nearMisses"][number];
interface Name {
  readonly name: string;
  readonly word: string;
  readonly kind: NearMiss["kind"];
}

const mostNames = 300;
const mostAsked = 3;
const finders = new WeakMap<Lexicon, Map<string, Fuse<Name>>>();

/** Near misses of at most three unknown words, best name each. */
export function findNearMisses(view: MessageView): readonly NearMiss[] {
  const held = new Set(view.spotted.flatMap((spotted) => spotted.used));
  const unknown = view.tokens.filter(
    (token, at) => !held.has(at) && !view.taken.has(at) && isOdd(token.folded),
  );
  const found: NearMiss[] = [];
  for (const token of unknown.slice(0, mostAsked)) {
    const part = view.partOf[view.clauseOf[view.tokens.indexOf(token)] ?? 0];
    const near = nearest(token.folded, finderFor(view.lexicon, part));
    if (near === undefined || found.some((other) => other.meant === near.name)) continue;
    found.push({ words: view.shown.slice(token.start, token.end), meant: near.name, kind: near.kind });
  }
  return found;
}

function isOdd(word: string): boolean {
  return (
    word.length >= 5 &&
    word.length <= longestWord &&
    !/\d/.test(word) &&
    !commonWords.has(word) &&
    !glueWords.has(word)
  );
}

/** The closest proposed word within a third of its letters; ties go to the first name. */
function nearest(word: string, finder: Fuse<Name>): Name | undefined {
  let best: Name | undefined;
  let least = Math.floor(word.length / 4) + 2;
  for (const { item } of finder.search(word, { limit: 5 })) {
    const edits = boundedEditDistance(word, item.word, least);
    if (edits >= least || edits === 0 || item.word[0] !== word[0]) continue;
    best = item;
    least = edits;
  }
  return best;
}

function finderFor(lexicon: Lexicon, part: string | undefined): Fuse<Name> {
  const known = finders.get(lexicon) ?? new Map<string, Fuse<Name>>();
  finders.set(lexicon, known);
  const key = part ?? "";
  const finder =
    known.get(key) ??
    new Fuse(namesOf(lexicon, part), { keys: ["word"], threshold: 0.34, ignoreLocation: true });
  known.set(key, finder);
  return finder;
}

function namesOf(lexicon: Lexicon, part: string | undefined): readonly Name[] {
  const names: Name[] = lexicon.handbook.parts.flatMap((each) => wordsIn(each.name, "part"));
  const inHand = lexicon.handbook.parts.find((each) => each.id === part);
  for (const feature of inHand?.features ?? []) {
    names.push(...wordsIn(feature.name, "feature"));
    if (feature.kind === "states")
      names.push(...feature.states.flatMap((state) => wordsIn(state.name, "state")));
  }
  for (const variant of inHand?.variants ?? []) names.push(...wordsIn(variant.name, "variant"));
  return names.slice(0, mostNames);
}

function wordsIn(name: string, kind: NearMiss["kind"]): readonly Name[] {
  return name
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length >= 5 && !commonWords.has(word))
    .map((word) => ({ name, word, kind }));
}
