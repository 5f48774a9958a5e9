// Models that are set beside each other: what fits what is no word on the speaker's own car. Everyday English, no source.
import { type MessageView, wordsBetween } from "./message-view.ts";
import { stemsOf } from "./name-stems.ts";
import type { Spotted } from "./spot-terms.ts";

const goesOnto = /\b(?:onto|fit(?:s|ted)?|straight to|swap(?:s|ped)? to) (?:an?|the) $/;

/** "Don't fit Mk2 rims to a Mk1", "do they bolt onto a Mk1?": models set beside each other; and the "I" of "mark so I". */
export function isBesideAnotherModel(view: MessageView, { from, to, used, phrase }: Spotted): boolean {
  const last = view.tokens[to];
  if (to - from >= used.length && last?.folded === "i") return true;
  const clause = view.clauses[view.clauseOf[from] ?? 0];
  const before = wordsBetween(view, clause?.from ?? from, from - 1).toLowerCase();
  if (/\b(?:my|mine|our|i have|ive|got)\b/.test(before)) return false;
  const model = modelOf(phrase);
  const isAsked = view.stances[view.clauseOf[from] ?? 0]?.aside === "question" || /\bhearing\b/.test(before);
  if (isAsked && goesOnto.test(`${before} `)) return true;
  // "Mk1, mk2", "Mk1, no Mk2": said and bettered.
  const first = view.tokens[clause?.from ?? from]?.folded === "no" ? from - 1 : from;
  const isNameAlone = clause?.from === first && clause.to === to;
  return (
    !isNameAlone &&
    view.spotted.some((other) => {
      const named = modelOf(other.phrase);
      const where = view.clauses[view.clauseOf[other.from] ?? 0];
      return (
        named !== undefined &&
        model !== undefined &&
        named !== model &&
        where?.sentence === clause?.sentence &&
        !isFamily(view, other.phrase.stems)
      );
    })
  );
}

function modelOf({ meanings }: Spotted["phrase"]): string | undefined {
  const [only] = meanings.filter(({ kind }) => kind === "model");
  return meanings.length === 1 && only !== undefined && "id" in only ? only.id : undefined;
}

/** "Shrike" stands in the names of every model: it names the make of car, not one model of it. */
export function isFamily(view: MessageView, named: readonly string[]): boolean {
  const { models } = view.lexicon.handbook.cars;
  const holds = (name: string): boolean => {
    const stems = new Set(stemsOf(name));
    return named.every((stem) => stems.has(stem));
  };
  return models.length > 1 && models.every((model) => [model.name, ...model.also].some(holds));
}
