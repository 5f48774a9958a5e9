import { expect, test } from "vitest";
import { talk } from "../../support/talking.ts";

const doubtful = "probably the leather one";
const reportsOf = ({ conversation }: ReturnType<typeof talk>) =>
  conversation.cases.flatMap(({ facts }) => facts.reports);

test("what may not be meant is asked back in words that are then understood", () => {
  const asked = talk("steering wheel", doubtful);
  expect(asked.text).toContain("By “probably the leather”, did you mean the steering wheel?");
  const [, words = ""] = /say “([^”]+)”/.exec(asked.text) ?? [];
  expect(talk("steering wheel", words).text).toContain(`I read – ${words}`);
});

test("a bare yes to what was asked back takes it as said, in the words that were doubted", () => {
  const talked = talk("which steering wheel is this?", doubtful, "yes");
  expect(talked.text).toContain("I read – rim covering: leather");
  expect(reportsOf(talked)).toMatchObject([
    { feature: "rim-cover", words: "probably the leather", certainty: 1 },
  ]);
});

test("a no leaves it aside, and a yes said later belongs to nothing", () => {
  expect(talk("which steering wheel is this?", doubtful, "no").text).toContain(
    "Then “probably the leather” stays aside.",
  );
  const late = talk("which steering wheel is this?", doubtful, "three spokes", "yes");
  expect(reportsOf(late).map(({ feature }) => feature)).toEqual(["spokes"]);
});
