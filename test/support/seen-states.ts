/** A state at a place of a message about the mirror, as the judge sees it. */
import type { Candidate } from "../../knowledge/language/gather-observations.ts";
import { type GroundName, groundNames, groundsOf } from "../../knowledge/language/grounds.ts";
import type { Lexicon } from "../../knowledge/language/lexicon.ts";
import { type Seen, seenIn, wholeOf } from "../../knowledge/language/seen-candidate.ts";
import { mirrorView } from "./tarn-mirror.ts";

interface Asked {
  readonly about?: string;
  readonly lexicon?: Lexicon;
  readonly others?: number;
}

/** Chromed, of the housing, unless something else is said. */
export const chromed = (from: number, rest: Partial<Candidate> = {}): Candidate => ({
  part: "mirror",
  feature: "housing",
  state: "chromed",
  isDenied: false,
  clause: 0,
  from,
  to: from,
  finder: "name",
  ...rest,
});

export function seen(
  text: string,
  candidate: Candidate,
  { about = "mirror", lexicon, others = 0 }: Asked = {},
): Seen {
  const view = mirrorView(text, about, lexicon);
  return seenIn(view, candidate, wholeOf(view, [candidate], others));
}

/** The value of one ground. */
export function ground(name: GroundName, text: string, candidate: Candidate, asked: Asked = {}): number {
  const { about = "mirror", lexicon, others = 0 } = asked;
  const view = mirrorView(text, about, lexicon);
  const { values } = groundsOf(view, candidate, wholeOf(view, [candidate], others));
  return values[groundNames.indexOf(name)] ?? Number.NaN;
}
