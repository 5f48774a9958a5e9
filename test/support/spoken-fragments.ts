// Things people say in a workshop, sensible and not, for laws that must hold whatever is said and in whatever order.
import fc from "fast-check";
import type { IncomingMessage } from "../../bot/index.ts";

export const tellings = [
  "rear spoiler, rough inside, six screws",
  "it is smooth inside I think",
  "four studs and nuts",
  "rounded tips",
  "square tips",
  "no mark anywhere",
  "1180 mm wide",
  "width 118",
  "46 1/2 inches across the tips",
  "it flexes",
  "glass fibre, stiff",
  "two drain notches",
  "my car was built in November 1981",
  "built May 1980",
  "it is a Shrike S",
  "door mirror with a ball joint",
  "seller says it is an early one",
  "moulding clock says 8 in the middle, arrow on 3",
  "weighs 1430 g",
  "black gel coat",
];

export const wishes = [
  "why this?",
  "how do I check?",
  "cannot tell",
  "undo",
  "start over",
  "what do you know so far",
  "compare the first spoiler and the second spoiler",
  "what photographs should I ask the seller for?",
  "where do I go from here?",
  "what would fit without drilling?",
  "show the sources",
  "list cases",
  "case 1",
  "case 9",
  "new case",
  "help",
  "how much is it worth?",
  "is it right for my car?",
  "what should my car have?",
  "is it genuine?",
  "withdraw the width",
  "yes",
  "no",
  "thanks",
  "which kinds are there?",
  "what does >ABS< mean?",
];

export const nonsense = [
  "?",
  "👍",
  "",
  "   ",
  "asdf qwer",
  "\u0000\u0007",
  "constructor",
  "__proto__",
  "<b>x</b>",
  "42",
];

const anyText = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...tellings) },
  { weight: 5, arbitrary: fc.constantFrom(...wishes) },
  { weight: 2, arbitrary: fc.constantFrom(...nonsense) },
  { weight: 1, arbitrary: fc.string({ unit: "grapheme", maxLength: 60 }) },
);

const anyAnswer = fc.oneof(
  fc.constantFrom(
    { feature: "inside-finish", state: "rough" },
    { feature: "inside-finish", state: "smooth" },
    { feature: "tips", state: "round" },
    { feature: "width", reading: "1180 mm" },
    { feature: "width", cannotTell: true as const },
    { feature: "car.built", reading: "1980-05" },
    { feature: "car.trim", state: "s" },
    { feature: "part", state: "rear-spoiler" },
    { feature: "unit:width", state: "yes" },
    { feature: "constructor", state: "toString" },
  ),
  fc.record({ feature: fc.string({ maxLength: 20 }), state: fc.string({ maxLength: 20 }) }),
);

/** Messages by one of two people, in words or pressed. */
export const anyMessage: fc.Arbitrary<IncomingMessage> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      conversation: fc.constant("workshop"),
      from: fc.constantFrom("owner", "owner", "neighbour"),
      text: anyText,
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      conversation: fc.constant("workshop"),
      from: fc.constantFrom("owner", "neighbour"),
      answer: anyAnswer,
    }),
  },
);
