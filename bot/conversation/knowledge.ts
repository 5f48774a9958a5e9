/** A handbook made ready for conversation: its words for the reader, its part kinds compiled when first asked about. */

import {
  atOnce,
  type CompiledPart,
  compilePart,
  compilingLexicon,
  type Handbook,
  type InPieces,
  type Lexicon,
  type PartKind,
  partById,
} from "../../knowledge/index.ts";
import type { Units } from "./saying/said-size.ts";

export interface Knowledge {
  readonly handbook: Handbook;
  readonly lexicon: Lexicon;
  /** Compiled on first use and kept; undefined when the handbook has no such part kind. */
  readonly compiled: (part: string) => CompiledPart | undefined;
  /** The observations that are in it: how many, and a mark that tells these from any others. */
  /** In which units people here measure, and are asked; as the handbook does when left out. */
  readonly units?: Units;
  readonly snapshot?: () => { readonly count: number; readonly mark: string };
}

/** The knowledge of one edition. Costs one pass over its names; parts are compiled lazily. */
export function knowledgeOf(handbook: Handbook): Knowledge {
  return atOnce(preparingKnowledge(handbook));
}

/** The same, giving way after each part kind. */
export function* preparingKnowledge(handbook: Handbook): InPieces<Knowledge> {
  const kept = new Map<string, CompiledPart | undefined>();
  const compiled = (part: string): CompiledPart | undefined => {
    if (!kept.has(part)) kept.set(part, compilePart(handbook, part));
    return kept.get(part);
  };
  return { handbook, lexicon: yield* compilingLexicon(handbook), compiled };
}

export function findPart(knowledge: Knowledge, id: string | null): PartKind | undefined {
  return id === null ? undefined : partById(knowledge.handbook, id);
}
