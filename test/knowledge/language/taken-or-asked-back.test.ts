// Short answers, and what becomes of what the judge does not take: all with weights of the test's own.
import { describe, expect, test } from "vitest";
import { findingsInWords } from "../../support/reading-in-words.ts";
import { nats, weighing, weighingMessages } from "../../support/weighing.ts";
import { inLines, readings, readMirror } from "../../support/whole-reading.ts";

describe("a short answer fills what nothing else told", () => {
  test.each(
    readings(`
      yes (mirror screws)
      mirror.screws two|three
      yes

      b (mirror housing)
      mirror.housing painted

      90 (mirror reach)
      mirror.reach 90\u00b10.5 ?

      90, built in 1974 (mirror reach)
      mirror.reach 90\u00b10.5 ?
      built 1974

      12/73 (mirror glass-week)
      mirror.glass-week 19 to 25 March 1973

      no screws, three (mirror screws)
      mirror.screws three
      aside, several-readings: no screws, three

      two screws, none (mirror stamp)
      mirror.screws two
      mirror.stamp unstamped
      no
    `),
  )("%s (%s)", (text, about, expected) => {
    expect(inLines(readMirror(text, about))).toEqual(expected);
  });
  const nods = { plain: weighing(9, { "answer by nod": -18 }) };
  test("unless the judge does not believe it; a place among the answers it is not asked of", () => {
    expect(findingsInWords(readMirror("none", "mirror screws", nods))).toEqual([]);
    expect(findingsInWords(readMirror("three", "mirror screws", nods))).toEqual(["mirror.screws three"]);
    const nothing = { plain: weighing(-9) };
    expect(findingsInWords(readMirror("b", "mirror housing", nothing))).toEqual(["mirror.housing painted"]);
    expect(findingsInWords(readMirror("three", "mirror screws", nothing))).toEqual([]);
  });
  test("beside other facts it needs no message that tells", () => {
    const message = {
      plain: weighing(nats(0.7)),
      plainMessages: weighingMessages(-9, { "figures told": 18 }),
    };
    expect(findingsInWords(readMirror("none", "mirror screws", message))).toEqual([]);
    expect(findingsInWords(readMirror("none, reach 90 mm", "mirror screws", message))).toEqual([
      "mirror.reach 90\u00b10.5 mm",
      "mirror.screws none",
    ]);
  });
});

describe("figures speak for a message's telling anything", () => {
  const message = {
    plain: weighing(nats(0.7)),
    plainMessages: weighingMessages(-9, { "figures told": 18 }),
  };
  test.each([
    ["chromed", []],
    ["chromed, reach 90 mm", ["mirror.housing chromed", "mirror.reach 90\u00b10.5 mm"]],
    ["chromed, etched week 12/73", ["mirror.housing chromed", "mirror.glass-week 19 to 25 March 1973"]],
    ["chromed, built in 1974", ["mirror.housing chromed"]],
    ["two screws, >ABS<", ["mirror.housing plastic", "mirror.screws two"]],
  ])("%s", (text, expected) => {
    expect(findingsInWords(readMirror(text, "mirror", message))).toEqual(expected);
  });
});

describe("what the judge doubts is asked back", () => {
  const doubting = { plain: weighing(nats(0.3), { denied: 0.1, "two words": 9 }) };
  test.each(
    readings(`
      chromed
      in doubt, mirror housing chromed: chromed
      opaque

      chromed and two screws
      mirror.screws two
      in doubt, mirror housing chromed: chromed

      chromed, or painted in body colour
      opaque

      chromed, no week stamp
      in doubt, mirror housing chromed: chromed
      in doubt, mirror stamp unstamped: no week stamp
      opaque

      chromed, yes chromed, and glittering
      in doubt, mirror housing chromed: chromed
      in doubt, mirror housing chromed: chromed
      in doubt, mirror housing chromed: glittering
      opaque

      not chromed
      opaque

      chromed, painted in body colour, and no week stamp
      in doubt, mirror stamp unstamped: no week stamp
      opaque

      no screws or no week stamp
      mirror.screws none
      in doubt, mirror stamp unstamped: no week stamp

      painted in body colour, marked >ABS<
      mirror.housing plastic
    `),
  )("%s", (text, about, expected) => {
    expect(inLines(readMirror(text, about, doubting))).toEqual(expected);
  });
});

test("a message longer than is read is cut, and says so", () => {
  const reading = readMirror(`chromed ${"so ".repeat(4000)}`);
  expect(reading.isCut).toBe(true);
  expect(findingsInWords(reading)).toEqual(["mirror.housing chromed"]);
  expect(readMirror("chromed").isCut).toBeUndefined();
  expect(readMirror("It is chromed").shownText).toBe("It is chromed");
});
