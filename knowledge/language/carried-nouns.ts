// "Three spokes, silver", "the flange: wide": a clause that only describes is said of a noun of the clause before.
// Its words and that noun together must be a whole name of one state; anything less is left alone.
import { glueWords } from "./common-words.ts";
import type { MessageView } from "./message-view.ts";
import type { Negation } from "./negation.ts";
import type { Observation } from "./observations.ts";
import { findPhrase } from "./shared-nouns.ts";

/** Words of the clause before that are tried. */
const mostNouns = 10;
const besides: ReadonlySet<string> = new Set(
  "and all both each every one ones them they too also fairly rather pretty nice nicely lovely proper then plain they're theyre".split(
    " ",
  ),
);

/** States told so; clauses that hold a state already, and features told for, are left out. */
export function observeCarriedNouns(
  view: MessageView,
  negations: readonly (readonly Negation[])[],
  told: readonly Observation[],
): readonly Observation[] {
  return view.clauses.flatMap((clause, at) => {
    const part = view.partOf[at];
    const previous = view.clauses.slice(0, at).findLast(({ text }) => !correcting.test(text));
    if (part === undefined || previous === undefined || previous.sentence !== clause.sentence) return [];
    if ((negations[at] ?? []).length > 0 || told.some((each) => each.clause === at)) return [];
    const said = contentOf(view, clause.from, clause.to).filter((stem) => !besides.has(stem));
    if (said.length === 0 || said.length > 2) return [];
    const nouns = contentOf(view, previous.from, previous.to).slice(-mostNouns);
    const meant = new Map(nouns.flatMap((noun) => statesNamed(view, part, [...said, noun])));
    const [only] = meant.values();
    const known = previous === view.clauses[at - 1] ? told : [];
    if (meant.size !== 1 || only === undefined || known.some((each) => each.feature === only.feature))
      return [];
    return [{ part, ...only, isDenied: false, clause: at, from: clause.from, to: clause.to }];
  });
}

/** "Two screws, wait, three": a word between that only puts right. */
const correcting =
  /^(?:no )?(?:wait|sorry|oops|actually|rather|correction|hang on|hold on|make that|er|erm)(?: no)?$/;

function contentOf(view: MessageView, from: number, to: number): readonly string[] {
  const stems: string[] = [];
  for (let at = from; at <= to; at += 1) {
    const token = view.tokens[at];
    if (token !== undefined && !glueWords.has(token.folded)) stems.push(view.words[at] ?? token.stem);
  }
  return stems;
}

function statesNamed(
  view: MessageView,
  part: string,
  stems: readonly string[],
): readonly (readonly [string, { readonly feature: string; readonly state: string }])[] {
  const phrase = new Set(stems).size === stems.length ? findPhrase(stems, view.lexicon) : undefined;
  return (phrase?.meanings ?? []).flatMap((each) =>
    each.kind === "state" && each.part === part
      ? [[`${each.feature} ${each.state}`, { feature: each.feature, state: each.state }] as const]
      : [],
  );
}
