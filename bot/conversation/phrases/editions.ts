/** What changed between two editions of a handbook, in words for keepers and members. */
import type { HandbookChange } from "../../../knowledge/index.ts";
import { listed, quoted, sentence, withThe } from "./grammar.ts";

type Of<About extends HandbookChange["about"]> = Extract<HandbookChange, { about: About }>;

type ThingChange = Extract<HandbookChange, { thing: unknown }>;

/** One sentence: 'The Second-type mirror now “usually” has three screws (fixing screws); until now “always”.' */
export function changeInWords(change: HandbookChange): string {
  switch (change.about) {
    case "claim":
      return sentence(claimWords(change));
    case "measure":
      return sentence(measureWords(change));
    case "periods":
      return sentence(periodWords(change));
    case "added":
    case "removed":
    case "renamed":
    case "reworded":
      return sentence(thingWords(change));
    case "learnt words":
      return sentence(learntWords(change));
    case "other":
      return sentence(`${change.detail} changed${ofPart(change)}`);
  }
}

function claimWords({ variant, feature, state, before, after }: Of<"claim">): string {
  const who = withThe(variant.name);
  const what = `${state.name} (${feature.name})`;
  if (after === undefined) return `${who} is no longer said to have ${what}; until now “${before}”`;
  const was = before === undefined ? "nothing was said before" : `until now “${before}”`;
  const isCount = /^\d/u.test(after);
  return isCount ? `${who} has ${what} on ${after}; ${was}` : `${who} now “${after}” has ${what}; ${was}`;
}

function measureWords({ variant, feature, unit, before, after }: Of<"measure">): string {
  const what = `${withThe(feature.name)} of ${withThe(variant.name)}`;
  const words = (measure: { readonly mean: number; readonly spread: number }) =>
    `${measure.mean} ± ${measure.spread} ${unit}`.trim();
  if (after === undefined) {
    return `${what} is no longer given${before === undefined ? "" : `; until now ${words(before)}`}`;
  }
  return `${what} is now ${words(after)}; ${before === undefined ? "no figure before" : `until now ${words(before)}`}`;
}

function periodWords({ variant, which, before, after }: Of<"periods">): string {
  const done = which === "fitted" ? "fitted" : "sold";
  const times = (list: readonly string[]) => (list.length === 0 ? "at no time" : listed(list));
  return `${withThe(variant.name)} was ${done} ${times(after)}; until now the handbook said ${times(before)}`;
}

function thingWords(change: ThingChange): string {
  const { what, thing, detail } = change;
  const name = what === "misbelief" ? quoted(thing.name) : thing.name;
  const where = ofPart(change);
  if (change.about === "added") return `new ${what}: ${name}${where}`;
  if (change.about === "removed") return `${what} removed: ${name}${where}`;
  if (change.about === "renamed") return `the ${what} called ${detail} is now called ${name}${where}`;
  return `the ${what} ${name}${where}: ${detail} changed`;
}

function learntWords({ messages }: Of<"learnt words">): string {
  if (messages === undefined) return "learnt words: there are none any more";
  return `learnt words: learnt anew from ${messages === 1 ? "one message" : `${messages} messages`}`;
}

function ofPart({ part }: HandbookChange): string {
  return part === undefined ? "" : `, ${part.name}`;
}

/** " 3 pinned answers touch it." after a change; "" when none does. */
export function pinsTouched(count: number): string {
  if (count === 0) return "";
  return count === 1 ? " One pinned answer touches it." : ` ${count} pinned answers touch it.`;
}

/** At the head of a list of changes. */
export const editionChanged = (name: string, older: string, newer: string) =>
  `${name}: edition ${newer} in place of ${older}.`;
export const editionRefused = (name: string) =>
  `The changed handbook ${name} is not taken: it is not sound. The edition before goes on serving.`;
export const nothingChanged = "Nothing that is said has changed.";
export const moreChanges = (count: number) => `and ${count} more`;

/** A case whose answer another edition has turned: `was` and `now` as names in a sentence. */
export const answerTurned = (older: string, newer: string, was: string, now: string) =>
  `The handbook has a new edition (${newer}, before ${older}), and it changes this answer: it was ${was}, and is now ${now}.`;
export const answerMoved = (older: string, newer: string, name: string, was: string, now: string) =>
  `The handbook has a new edition (${newer}, before ${older}): ${name} was ${was}, and is now ${now}.`;
