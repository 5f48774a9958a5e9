import { expect, test } from "vitest";
import { readAnnotatedMessages } from "../../../../knowledge/language/hearing/annotated-messages.ts";
import { tarnHandbook } from "../../../support/tarn-lexicon.ts";

const handbook = tarnHandbook();
const fact = (rest: object) => ({ part: "door-handle", feature: "lever", ...rest });
const read = (...lines: readonly object[]) =>
  readAnnotatedMessages(lines.map((line) => JSON.stringify(line)).join("\n"), handbook);
const problemOf = (line: object) => read(line).problems.map(({ message }) => message);

test("a line gives a message with its context and the states it tells", () => {
  const { messages, problems } = read({
    id: "ina-1",
    text: "ends in a curl",
    context: { part: "door-handle", askedFeature: "lever" },
    facts: [fact({ state: "hooked" })],
    car: { loosePart: true, trim: "sport" },
    goal: "which-variant",
  });
  expect(problems).toEqual([]);
  expect(messages).toEqual([
    {
      text: "ends in a curl",
      context: { part: "door-handle", askedFeature: "lever" },
      told: [{ part: "door-handle", feature: "lever", state: "hooked" }],
    },
  ]);
});

test("the part that was talked of may stand without what was asked", () => {
  const context = { part: "door-handle" };
  expect(read({ text: "hello", context, facts: [] })).toEqual({
    messages: [{ text: "hello", context, told: [] }],
    problems: [],
  });
});

test("readings, dates, denied states and what is not there are allowed and teach nothing", () => {
  const { messages, problems } = read({
    text: "14 cm, of 1974, no curl",
    facts: [
      fact({ feature: "length", reading: "14 cm" }),
      fact({ feature: "length", date: "1974" }),
      fact({ not: "hooked" }),
      fact({ feature: "length", state: "not-there" }),
    ],
  });
  expect({ messages, problems }).toEqual({
    messages: [{ text: "14 cm, of 1974, no curl", told: [] }],
    problems: [],
  });
});

test("empty lines, a byte order mark and Windows line ends are passed over; the lines still count", () => {
  const line = '{"text":"hello","context":{},"facts":[]}';
  const { messages, problems } = readAnnotatedMessages(`\uFEFF${line}\r\n\r\n \nhello\r\n${line}`, handbook);
  expect(messages).toEqual(Array.from({ length: 2 }, () => ({ text: "hello", context: {}, told: [] })));
  expect(problems).toEqual([{ line: 4, message: "this is no JSON; one object a line is needed" }]);
});

test.each([
  [
    { facts: [fact({ part: "dor-handle", state: "flat" })] },
    'unknown part kind "dor-handle"; did you mean "door-handle"?',
  ],
  [
    { facts: [fact({ feature: "leaver", state: "flat" })] },
    'unknown feature of door-handle "leaver"; did you mean "lever"?',
  ],
  [{ facts: [fact({ state: "hookd" })] }, 'unknown state of lever "hookd"; did you mean "hooked"?'],
  [{ facts: [fact({ not: "steel" })] }, 'unknown state of lever "steel"; known: flat, round, hooked'],
  [
    { facts: [fact({ feature: "length", state: "long" })] },
    "length has no states, so none can be told of it",
  ],
  [{ facts: [], context: { part: "mirror" } }, 'unknown part kind "mirror"; known: door-handle'],
  [
    { facts: [], context: { part: "door-handle", askedFeature: "spring-" } },
    'unknown feature of door-handle "spring-"; did you mean "spring"?',
  ],
  [
    { facts: [fact({ state: "flat" }), fact({ state: "bent" })] },
    'unknown state of lever "bent"; known: flat, round, hooked',
  ],
  [
    { facts: [fact({ state: "flat", not: "bent" })] },
    'unknown state of lever "bent"; known: flat, round, hooked',
  ],
  [{ facts: [fact({})] }, "facts.0: state, not, reading or date is needed"],
  [{ facts: [fact({ sate: "flat" })] }, 'facts.0: unrecognized key: "sate"'],
  [{}, "facts: invalid input: expected array, received undefined"],
  [{ facts: [], fact: [] }, 'unrecognized key: "fact"'],
])("%j is refused with what is wrong", (rest, message) => {
  expect(problemOf({ text: "hello", ...rest })).toEqual([message]);
});

test("a name from a file is printed without control characters", () => {
  expect(
    problemOf({ text: "hello", facts: [fact({ part: "\u001b[31mred", state: "flat" })] }).join(),
  ).toMatch(/^unknown part kind "\?\[31mred"; known: door-handle$/);
});
