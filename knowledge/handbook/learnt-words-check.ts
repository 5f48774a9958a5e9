/**
 * Whether learnt words are still those of the handbook beside them. A handbook goes on being written, words of a state that is gone
 * do no harm, and states that few messages tell are read by their names; so this only warns.
 */
import { fileProblem, learntWordsPath, printable } from "./handbook-file.ts";
import { learnAgain } from "./learnt-words-file.ts";
import type { LearntWords } from "./learnt-words-schema.ts";
import type { Problem, ProblemCode } from "./problem.ts";
import type { PartKind } from "./schema.ts";

/** Of more only the number is told. */
const mostNamed = 5;

/** A warning for what the words speak of and the handbook does not have, and one for states they were not learnt of. */
export function checkLearntWords(learnt: LearntWords, parts: readonly PartKind[]): readonly Problem[] {
  const known = new Set(parts.flatMap(namesOfPart));
  const states = parts.flatMap(statesOf);
  const heard = new Set(namesOfWords(learnt));
  // What lies in something strange is not told beside it.
  const strange = [...heard].filter((name) => !known.has(name) && isKnownAbove(name, known));
  const unheard = states.filter((name) => !heard.has(name));
  return [
    ...warning("learnt-words-unknown", strange, "words were learnt of what the handbook does not have"),
    ...warning(
      "learnt-words-missing",
      unheard,
      `${unheard.length === 1 ? "1 state is" : `${unheard.length} states are`} read by name alone, without learnt words`,
      "collect messages that tell of them, and learn the words again with witness-mark learn",
    ),
  ];
}

function warning(
  code: ProblemCode,
  names: readonly string[],
  what: string,
  mend = learnAgain,
): readonly Problem[] {
  if (names.length === 0) return [];
  const more = names.length > mostNamed ? ` and ${names.length - mostNamed} more` : "";
  const message = `${what}: ${names.slice(0, mostNamed).map(printable).join(", ")}${more}`;
  return [fileProblem(code, learntWordsPath, message, mend)];
}

/** "rear-spoiler", "rear-spoiler/fixing" and "rear-spoiler/fixing/tape": ids hold no slash. */
function namesOfPart(part: PartKind): readonly string[] {
  return [part.id, ...part.features.map(({ id }) => `${part.id}/${id}`), ...statesOf(part)];
}

function statesOf({ id: part, features }: PartKind): readonly string[] {
  return features.flatMap((feature) =>
    feature.kind === "states" ? feature.states.map(({ id }) => `${part}/${feature.id}/${id}`) : [],
  );
}

function isKnownAbove(name: string, known: ReadonlySet<string>): boolean {
  const above = name.slice(0, Math.max(0, name.lastIndexOf("/")));
  return above === "" || known.has(above);
}

/** The same of learnt words. */
function* namesOfWords({ parts, spokenOf }: LearntWords): Generator<string> {
  yield* Object.keys(spokenOf);
  for (const [part, features] of Object.entries(parts)) {
    yield part;
    for (const [feature, states] of Object.entries(features)) {
      yield `${part}/${feature}`;
      for (const state of Object.keys(states)) yield `${part}/${feature}/${state}`;
    }
  }
}
