// Which state of a feature says "it is not there" and which say "it is": so that "no mark", "isn't painted" and a
// bare "yes" can be read without the historian listing them.
import { notThere } from "../evidence/report.ts";
import type { Feature, StateFeature } from "../handbook/schema.ts";
import { foldWord } from "./fold-word.ts";

const absentWords: ReadonlySet<string> = new Set(
  "no none not absent missing without never nil nothing unmarked lacks lacking neither".split(" "),
);
const presentWords: ReadonlySet<string> = new Set("yes present visible there has fitted".split(" "));

export interface Polarity {
  /** The state for "none", "not there"; undefined when the feature has no such state. */
  readonly absent: string | undefined;
  /** The states left when it is there; empty when the feature has no absent state. */
  readonly present: readonly string[];
}

/** Polarity of any feature; measurements and dates are absent only where the handbook names what "none" is. */
export function polarityOf(feature: Feature): Polarity {
  const ifNone = feature.none === undefined ? undefined : notThere;
  if (feature.kind !== "states") return { absent: ifNone, present: [] };
  const absent = absentState(feature) ?? ifNone;
  if (absent === undefined) return { absent: undefined, present: [] };
  return { absent, present: feature.states.map((state) => state.id).filter((id) => id !== absent) };
}

function absentState(feature: StateFeature): string | undefined {
  const byName = feature.states.find(
    (state) => opensWith(state.name, absentWords) || opensWith(state.id, absentWords),
  );
  if (byName !== undefined) return byName.id;
  if (feature.states.length !== 2) return undefined;
  const [first, second] = feature.states;
  if (first === undefined || second === undefined) return undefined;
  if (isUndoing(first.id, second.id) || opensWith(second.name, presentWords)) return first.id;
  if (isUndoing(second.id, first.id) || opensWith(first.name, presentWords)) return second.id;
  return feature.states.find((state) => state.also.some((name) => opensWith(name, absentWords)))?.id;
}

function opensWith(text: string, words: ReadonlySet<string>): boolean {
  return words.has(foldWord(text.split(/[\s,-]+/)[0] ?? ""));
}

function isUndoing(one: string, other: string): boolean {
  return one === `un${other}` || one === `non-${other}`;
}
