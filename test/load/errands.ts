// What people come for, as the words they say one after another and what must be kept of it: the model that the store is compared with.
import { pick } from "../support/draws.ts";
import type { Chance } from "../support/random-tables.ts";

export type Role = "asker" | "observer" | "keeper";

/** One thing to say. */
export interface Saying {
  readonly words: string;
  /** A fact of the case that it tells: a feature and its state. */
  readonly fact?: readonly [feature: string, state: string];
  /** Once it is answered, there is one more of these by this person. */
  readonly makes?: "observation" | "pin";
}

interface Kind {
  readonly part: string;
  readonly question: string;
  readonly facts: readonly Required<Pick<Saying, "words" | "fact">>[];
}

/** Of the demonstration's handbook; each sentence tells one feature. */
const kinds: readonly Kind[] = [
  {
    part: "rear-spoiler",
    question: "which rear spoiler is this?",
    facts: [
      { words: "rough inside", fact: ["inside-finish", "rough"] },
      { words: "square tips", fact: ["tips", "square"] },
      { words: "two drain notches", fact: ["drain-notches", "notches"] },
      { words: "no moulder's mark", fact: ["maker-mark", "no-mark"] },
      { words: "six screws", fact: ["fixing", "six-screws"] },
    ],
  },
  {
    part: "door-mirror",
    question: "which door mirror is this?",
    facts: [
      { words: "alloy housing", fact: ["housing", "cast-alloy"] },
      { words: "two screws", fact: ["screws", "two"] },
      { words: "no casting mark", fact: ["casting-mark", "no-mark"] },
      { words: "no week mark", fact: ["glass-week", "not-there"] },
    ],
  },
];

/** Words of one errand; the facts in an order that chance draws. `name` tells what this person pins from what others do. */
export function errandOf(role: Role, name: string, chance: Chance): readonly Saying[] {
  const kind = pick(chance, kinds);
  const facts = shuffled(kind.facts, chance);
  const asked: readonly Saying[] = [{ words: kind.question }, ...facts.slice(0, 2)];
  const rest: readonly Saying[] = [...facts.slice(2), { words: "why this?" }, { words: "how do I check?" }];
  if (role === "asker") return [...asked, ...rest];
  if (role === "keeper") {
    const words = `Ask ${name} for the drawing before you pay.`;
    return [...asked, { words: `pin this: ${words}` }, { words: "keep it", makes: "pin" }, ...rest];
  }
  const recorded = ["what I told decides", "history is not known", "today", "none", "no"];
  return [
    ...asked,
    { words: "my car was built june 1980, shrike S, home market" },
    { words: "record an observation" },
    ...recorded.map((words) => ({ words })),
    { words: "record it", makes: "observation" },
    ...rest,
  ];
}

function shuffled<T>(things: readonly T[], chance: Chance): readonly T[] {
  return things
    .map((thing) => [chance(), thing] as const)
    .toSorted(([one], [other]) => one - other)
    .map(([, thing]) => thing);
}
