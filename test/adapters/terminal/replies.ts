/** Replies with every kind of block, for the tests of the terminal; invented, and not what any handbook says. */
import type { Block, Choice, QuestionBlock, Reply } from "../../../bot/index.ts";

export function choice(id: string, label: string, say = label): Choice {
  return { id, label, say };
}

export const groove: QuestionBlock = {
  kind: "question",
  feature: "gasket-groove",
  text: "Look at the foot. Is the gasket groove square-cut, or does it have a rounded bottom?",
  effort: 2,
  photographDoes: true,
  answers: [choice("square", "square-cut"), choice("rounded", "rounded bottom")],
  expects: "choice",
  besides: [
    choice("cannot-tell", "cannot tell"),
    choice("why", "why this?", "why do you ask"),
    choice("how", "how do I check?", "how do I check it"),
  ],
};

export const thickness: QuestionBlock = {
  ...groove,
  feature: "glass-thickness",
  text: "How thick is the glass?",
  answers: [choice("not-there", "no glass")],
  expects: "measurement",
  unit: "mm",
};

export function reply(...blocks: readonly Block[]): Reply {
  return {
    blocks,
    summary: {
      case: "c1",
      part: "door-mirror",
      goal: "which-variant",
      car: {},
      understood: [],
      ranking: [],
      verdict: null,
      question: null,
      done: false,
      uncertainty: { bits: 0, remaining: [] },
      pinned: [],
      cautions: [],
      sources: [],
    },
  };
}

/** One of each, in the order a long reply would have. */
export const everything: Reply = reply(
  {
    kind: "understood",
    lead: "I read",
    items: [
      { label: "part", value: "door mirror" },
      { label: "housing", value: "cast alloy", doubt: "you think" },
      { label: "casting mark", value: "not seen" },
    ],
    remarks: ["That the seller calls them first type I leave aside; it is not something you saw."],
  },
  {
    kind: "standing",
    lead: "Where it stands",
    items: [
      { name: "first-type mirror", probability: 0.71, words: "likely (71 %)" },
      { name: "trade reproduction", probability: 0.19, words: "unlikely (19 %)" },
      { name: "something not in the handbook", probability: 0.06, words: "very unlikely (6 %)" },
    ],
  },
  {
    kind: "evidence",
    first: "first-type mirror",
    rival: "trade reproduction",
    items: [
      { words: "housing cast alloy", bans: 0.6, strength: "medium", sources: "owners' survey 2019" },
      { words: "two screws", bans: 0.02, strength: "weak", sources: "" },
      { words: "no casting mark", bans: -0.3, strength: "weak", sources: "owners' survey 2019" },
    ],
  },
  { kind: "cautions", lines: ["Battery off before you look behind the panel; the maker's manual decides."] },
  groove,
  {
    kind: "picture",
    path: "drawings/foot.svg",
    svg: "<svg/>",
    alternative: "The foot from below, with a square-cut groove",
  },
  {
    kind: "table",
    caption: "The mirrors",
    head: ["mirror", "screws", "fitted"],
    rows: [
      ["first type", "two", "1977 to 1981"],
      ["second type", "three", "1981 to 1984"],
    ],
  },
  { kind: "list", lead: "Photographs that would do", items: ["the foot from below", "the housing inside"] },
  {
    kind: "sources",
    items: [{ short: "owners' survey 2019", citation: "A survey among 41 owners, 2019", grade: "B" }],
  },
  { kind: "choices", choices: [choice("car", "tell me about the car")] },
  { kind: "text", tone: "aside", text: "Prices I do not keep." },
  { kind: "text", tone: "caution", text: "Glass-fibre dust: mask and gloves." },
  { kind: "text", tone: "answer", text: "Very likely (94 %): the trade reproduction." },
  { kind: "edition", text: "Wexcombe Shrike, edition 3f2a" },
);
