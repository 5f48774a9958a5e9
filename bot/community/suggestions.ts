/** Names to complete while somebody types: part kinds, their kinds, and pinned answers. Misspelling is forgiven. */
import { type TextIndex, textIndex } from "../../knowledge/index.ts";
import type { Suggestion } from "../bot.ts";
import type { Knowledge } from "../conversation/knowledge.ts";
import { quoted } from "../conversation/phrases/grammar.ts";
import type { CommunityMemory } from "./community-memory.ts";
import { pinIndex } from "./pins/pin.ts";

/** As many as platforms show. */
const mostSuggested = 25;
const longestName = 100;

interface Names {
  readonly all: readonly Suggestion[];
  readonly index: TextIndex;
}

/** Names do not change within an edition. */
const namesOf = new WeakMap<Knowledge, Names>();

/** What was begun first, then what holds its words; nothing typed gives the part kinds. */
export function suggestions(
  serving: readonly Knowledge[],
  { pins }: CommunityMemory,
  typed: string,
): readonly Suggestion[] {
  const begun = typed.trim().toLowerCase();
  const names = serving.map(namesIn);
  if (begun === "") {
    const parts = serving.flatMap(({ handbook }) => handbook.parts.map(({ name }) => ({ name, say: name })));
    return parts.slice(0, mostSuggested);
  }
  const beginning = names.flatMap(({ all }) =>
    all.filter(({ name }) => name.toLowerCase().startsWith(begun)),
  );
  const holding = names.flatMap(({ all, index }) =>
    index.find(begun).flatMap(({ id }) => all[Number(id)] ?? []),
  );
  const pinned = pinIndex(pins)
    .find(begun)
    .flatMap(({ id }): readonly Suggestion[] => {
      const pin = pins.byId.get(id);
      return pin === undefined ? [] : [{ name: quoted(pin.text, longestName - 2), say: `pin ${id}` }];
    });
  const found = new Map([...beginning, ...holding, ...pinned].map((one) => [one.say, one]));
  return [...found.values()].slice(0, mostSuggested);
}

function namesIn(knowledge: Knowledge): Names {
  const kept = namesOf.get(knowledge);
  if (kept !== undefined) return kept;
  const all = knowledge.handbook.parts.flatMap((part): readonly Suggestion[] => [
    { name: part.name, say: part.name },
    ...part.variants.map(({ name }) => ({
      name: `${name} (${part.name})`.slice(0, longestName),
      say: `${part.name}: ${name}`,
    })),
  ]);
  const made = { all, index: textIndex(new Map(all.map(({ name }, at) => [String(at), name]))) };
  namesOf.set(knowledge, made);
  return made;
}
