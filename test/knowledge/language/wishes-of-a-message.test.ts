// All that a message wants, in the order said: several wishes at once, wishes that are only told of, and what one word makes of another.
// Everyday English, no source.
import { expect, test } from "vitest";
import { layOut } from "../../../knowledge/language/lay-out.ts";
import type { Intent } from "../../../knowledge/language/message-reading.ts";
import { readIntents } from "../../../knowledge/language/read-intents.ts";
import { demoLexicon, testToday } from "../../support/demo-lexicon.ts";

const lexicon = await demoLexicon();

/** 'goal genuine "is it genuine"', "compare trade-copy and register-remake door-mirror", … `about`: "part" or "part askedFeature". */
function wishesOf(text: string, about: string): string {
  const [part = "", askedFeature] = about.split(" ");
  const { view } = layOut(text, lexicon, {
    today: testToday,
    ...(part === "" ? {} : { part }),
    ...(askedFeature === undefined ? {} : { askedFeature }),
  });
  return readIntents(view).map(inFull).join(", ");
}

function inFull({ kind, ...rest }: Intent): string {
  const particulars = Object.entries(rest).map(([name, value]) => {
    if (Array.isArray(value)) return value.join(" and ");
    if (value === null) return "of no part";
    return name === "words" ? JSON.stringify(value) : String(value);
  });
  return [kind, ...particulars].join(" ").trim();
}

test.each([
  ["", "hello, is it genuine?", 'goal genuine "is it genuine"'],
  ["", "hello", "small-talk"],
  ["", "thanks, bye", "small-talk"],
  ["", "yes", "yes"],
  ["", "no", "no"],
  ["", "no idea", "cannot-tell"],
  ["", "no, can't tell", "no, cannot-tell"],
  ["", "thanks, not sure", "cannot-tell"],
  ["door-mirror screws", "not sure", "cannot-tell"],
  ["door-mirror screws", "not sure about the groove", "cannot-tell groove"],
  ["door-mirror screws", "can't tell if it is three screws", "cannot-tell screws"],
  ["door-mirror screws", "can't tell if the housing is alloy?", "cannot-tell housing"],
  ["door-mirror screws", "can't say, moulded plastic though", "cannot-tell"],
  ["door-mirror screws", "not sure which one it is", 'goal which-variant "not sure which one it is"'],
  ["door-mirror screws", "not sure what version", ""],
  ["door-mirror screws", "not sure if it is genuine", 'goal genuine "not sure if it is genuine"'],
  ["door-mirror screws", "not sure whether it fits", ""],
  ["door-mirror", "built in march, not sure of the year", ""],
  ["door-mirror", "built in march. not sure of the year", "cannot-tell"],
  ["door-mirror", "it is nice, not sure of the year", "cannot-tell"],
  ["door-mirror", "stamped 5, not sure about the exact year", ""],
  ["door-mirror", "the label reads may, no idea which month", ""],
  ["door-mirror", "dated may, no idea what week it was", ""],
  ["", "what is a fair price", "price"],
  ["", "what is it worth", "price"],
  ["", "what is a lip", "how-to-check lip"],
  ["door-mirror", "what is a groove", "how-to-check groove"],
  ["door-mirror", "how do I check the groove and the housing", "how-to-check groove"],
  ["door-mirror", "how do I check the groove", "how-to-check groove"],
  ["", "how do I check the groove", "how-to-check groove"],
  ["rear-spoiler", "how do I check the groove", "how-to-check"],
  ["", "how do I tell a copy from a real one", "compare  of no part"],
  ["", "compare them", "compare  of no part"],
  ["", "my mate wants to compare his mirrors", "compare  door-mirror"],
  ["", "my mate has one, is his genuine?", 'goal genuine "is his genuine"'],
  ["", "what versions are there", "list-variants of no part"],
  ["door-mirror", "what versions are there", "list-variants door-mirror"],
  ["door-mirror", "list all versions, please", "list-variants door-mirror"],
  ["", "case 2", "switch-case 2"],
  ["", "switch to the second", "switch-case 2"],
  ["", "go back to case 12", "switch-case 12"],
  ["", "go to the third", "switch-case 3"],
  ["", "case 0", ""],
  ["", "go back to case 2 and then we will look at the other mirror", "switch-case 2"],
  ["", "question 3 is open", "switch-case 3"],
  ["door-mirror", "forget what I said", "withdraw"],
  ["door-mirror", "forget what I said about the groove", "withdraw groove"],
  ["door-mirror", "ignore that about the screws and the groove", "withdraw screws"],
  ["", "undo", "undo"],
  ["", "start over", "start-over"],
  ["", "start over, is it genuine?", 'start-over, goal genuine "is it genuine"'],
  ["", "is it genuine", 'goal genuine "is it genuine"'],
  ["", "it looks genuine", ""],
  ["", "it looks genuine, right?", 'goal genuine "it looks genuine", yes'],
  ["", "I want to know if it is genuine", 'goal genuine "I want to know if it is genuine"'],
  ["", "help me check it is genuine please", 'goal genuine "help me check it is genuine please"'],
  ["", "I am curious, is this the real deal", 'goal genuine "is this the real deal"'],
  ["", "it is genuine, I was told", ""],
  ["", "it is genuine or not, any idea", 'goal genuine "it is genuine or not"'],
  ["", "which one is it", 'goal which-variant "which one is it"'],
  [
    "",
    "which one is it and is it genuine",
    'goal which-variant "which one is it", goal genuine "and is it genuine"',
  ],
  ["", "is it genuine? is it really genuine?", 'goal genuine "is it genuine"'],
  [
    "",
    "is it right for my car and is it genuine?",
    'goal right-for-car "is it right for my car", goal genuine "and is it genuine"',
  ],
  ["", "it is right for my car", ""],
  ["", "is it right for my car", 'goal right-for-car "is it right for my car"'],
  ["", "I wonder which is right for my car", 'goal what-should-it-have "I wonder which is right for my car"'],
  ["", "what should my car have", 'goal what-should-it-have "what should my car have"'],
  ["", "my car should have three", ""],
  ["", "please identify it", 'goal which-variant "please identify it"'],
  ["", "will it fit", "what-fits"],
  ["", "it will fit", ""],
  ["", "so will it fit", "what-fits"],
  ["", "what fits", "what-fits"],
  ["", "it fits without drilling", ""],
  ["", "does it fit without drilling", "what-fits"],
  ["", "what next", "where-from-here"],
  ["", "next steps?", "where-from-here"],
  ["", "how much is it worth and is it genuine?", 'price, goal genuine "and is it genuine"'],
  ["", "is it worth it as genuine?", "price"],
  ["", "what photos should I take to see if it is genuine?", "photographs"],
  ["", "which one would fit to see if genuine?", "what-fits"],
  ["", "why do you ask if it is genuine?", "why"],
  ["", "how do I check if it is genuine?", 'how-to-check, goal genuine "how do I check if it is genuine"'],
  [
    "",
    "how do I tell whether it is genuine?",
    'how-to-check, goal genuine "how do I tell whether it is genuine"',
  ],
  [
    "",
    "how do I find out if this is right for my car?",
    'how-to-check, goal right-for-car "how do I find out if this is right for my car"',
  ],
  ["", "how do I know it is genuine?", "how-to-check"],
  ["", "list the versions that are genuine?", "list-variants of no part"],
  ["", "ignore that, is it genuine?", 'withdraw, goal genuine "is it genuine"'],
  ["", "ignore what I said on genuine?", "withdraw"],
  ["", "undo, is it genuine?", 'undo, goal genuine "is it genuine"'],
  ["", "sources", "sources"],
  ["", "says who? and why", "sources, why"],
  ["", "no thanks", "no"],
  ["", "thanks, no", "no"],
  ["", "so far so good, what do you know", "what-do-you-know"],
  ["door-mirror", "the screws", ""],
  ["door-mirror", "not sure, the groove is rounded", "cannot-tell"],
  [
    "door-mirror",
    "compare the trade copy and the register remake",
    "compare trade-copy and register-remake door-mirror",
  ],
  [
    "door-mirror",
    "compare the trade copy, that is cheap, and the register remake",
    "compare trade-copy and register-remake door-mirror",
  ],
  ["door-mirror", "compare the trade copy. The register remake is dear", "compare trade-copy door-mirror"],
  [
    "",
    "how do I tell the trade copy from the register remake",
    "compare trade-copy and register-remake door-mirror",
  ],
  [
    "rear-spoiler",
    "compare the trade copy mirror and the register remake",
    "compare trade-copy and register-remake door-mirror",
  ],
  ["door-mirror", "the trade copy is like the register remake", ""],
  ["door-mirror screws", "can't say, it is moulded plastic", "cannot-tell"],
  ["door-mirror screws", "can't say it is moulded plastic", ""],
  ["door-mirror screws", "hard to say, alloy?", "cannot-tell"],
  ["", "go back", "undo"],
  ["", "go back to the start", "undo"],
  ["", "my mate has two, what is the difference to mine?", "how-to-check"],
  ["", "his is cheap, how much is it?", "price"],
  ["", "I can say which one it is if you tell me what it costs", "price"],
  ["", "next steps?", "where-from-here"],
  ["", "case 1", "switch-case 1"],
  ["", "go back to case 1, please", "switch-case 1"],
  ["door-mirror", "not sure, no idea, can't tell", "cannot-tell"],
  ["", "hello. thanks. It is genuine, is it?", 'goal genuine "It is genuine"'],
  ["", "is the price right?", "price"],
  ["", "what is the foot worth", "price"],
] as const)("(%s) %s", (about, text, expected) => {
  expect(wishesOf(text, about)).toBe(expected);
});

test("a message wants something in its first hundred clauses, and each thing once", () => {
  const long = (before: number): string => `${"it is so. ".repeat(before)}undo. undo. start over`;
  expect([99, 100].map((before) => wishesOf(long(before), ""))).toEqual(["undo", ""]);
  expect(wishesOf(long(97), "")).toBe("undo, start-over");
});
