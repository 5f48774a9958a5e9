// What was told is not asked again, not forgotten and not read as something else.
import { describe, expect, test } from "vitest";
import { blocksOf, talk } from "../../support/talking.ts";

const readings = (said: ReturnType<typeof talk>) =>
  said.reply.summary.understood.map(({ feature, reading }) => `${feature} ${reading}`);

describe("a unit asked back", () => {
  const heavy = "rear spoiler weighs 3.5 kg";

  test("is the one said when another is denied", () => {
    expect(talk(heavy).text).toContain("Did you mean 3.5 lb?");
    const denied = talk(heavy, "no");
    expect(readings(denied)).toEqual(["mass 3.5 kg"]);
    expect(denied.text).not.toContain("Did you mean");
  });

  test("is the one said when the size is said once more, and is asked of another size", () => {
    expect(talk(heavy, "3.5 kg").text).not.toContain("Did you mean");
    expect(talk(heavy, "no, 3.6 kg").text).toContain("Did you mean 3.6 lb?");
  });

  test("is not filled in from a unit that no scale here has", () => {
    expect(readings(talk("rear spoiler, width 118", "it weighs 40 tons"))).toEqual(["width 118"]);
  });
});

test("a weight far from all is weighed again, a length measured again", () => {
  expect(talk("rear spoiler weighs 3.5 kg", "3.5 kg").text).toContain("Please weigh it again");
  const long = talk("rear spoiler, 600 mm wide").text;
  expect(long).toContain("Please measure again, and say from which edge to which");
});

describe("a mark that is younger than the car", () => {
  const mark = "the glass is marked E4 43R-001234";

  test("is no size, whatever is asked for", () => {
    expect(readings(talk("door mirror", mark))).toEqual([]);
  });

  test("is named when the date is told after it, and is known then", () => {
    expect(talk("door mirror", mark, "car built 1979").text).toContain("the part that carries it came later");
    expect(talk("door mirror", mark, "car built 1984").text).not.toContain("came later");
    expect(talk("door mirror", mark, "what do you know so far?").text).toContain(
      "- mark: an approval E4 43R",
    );
    expect(talk("door mirror", mark, "ask a keeper").text).toContain("- mark: an approval E4 43R");
  });
});

describe("what do you know so far?", () => {
  test("names what waits for its part, and what of the car could not be told", () => {
    expect(talk("rough inside", "what do you know so far?").text).toContain(
      "“rough inside”, kept until I know the part",
    );
    const untold = talk("which front wing is this?", "cannot tell", "what do you know so far?");
    expect(untold.text).toContain("- model: cannot tell");
  });
});

test("what could not be told is no fact in the list of cases", () => {
  expect(talk("door mirror", "cannot tell", "cases").text).toContain("nothing told yet");
});

test("undo names a question that was changed, and one of the car that could not be answered", () => {
  const goal = talk("rear spoiler, rough inside", "is it genuine?", "undo");
  expect(goal.text).toContain("Taken back: that you want to know whether it is genuine.");
  expect(talk("which front wing is this?", "cannot tell", "undo").text).toContain(
    "Taken back: model (cannot tell).",
  );
});

test("why, after what the car should have, names the car it goes by", () => {
  const { text } = talk("what dash should my Shrike S have, built 14 june 1981?", "home market", "why?");
  expect(text).toMatch(/goes by when the works fitted each kind, .*built 14 June 1981\. \[/);
});

test("two members who differ about the one thing told are said to differ", () => {
  const said = talk("door mirror, cast alloy", { from: "bert", text: "it is moulded plastic" });
  expect(said.text).toContain("I was told two things of the housing material");
});

describe("cautions", () => {
  const kinds = (said: ReturnType<typeof talk>) => said.reply.blocks.map(({ kind }) => kind);

  test("stand before what fits without drilling, too, each once", () => {
    const { reply } = talk("instrument panel", "what would fit?");
    const [first, ...others] = blocksOf(reply, "cautions");
    expect(first?.lines[0]).toContain("Disconnect the earth lead");
    expect(others.flatMap(({ lines }) => lines).join(" ")).not.toContain("earth lead");
    expect(reply.blocks.findIndex(({ kind }) => kind === "cautions")).toBeLessThan(
      reply.blocks.findIndex(({ kind }) => kind === "list"),
    );
  });

  test("of what does not go on are given with the handbook's reason", () => {
    const { text } = talk("road wheel for my Mark II", "what would fit?");
    expect(text).toContain("Mounting of your car: 4 × 114.3 mm, ");
    expect(text).toContain("Not on a car with 4 × 114.3 mm:");
    expect(text).toContain("bulletin 23 forbids drawing the studs over");
  });

  test("stand before the steps by which two kinds are told apart", () => {
    const compared = talk("compare the first spoiler and the Norrick re-make");
    expect(kinds(compared).slice(0, 3)).toEqual(["table", "cautions", "list"]);
  });

  test("that are the answer itself are not said twice", () => {
    expect(talk("is asbestos a risk?").text.match(/may hold asbestos/g)).toHaveLength(1);
  });
});

test("two kinds side by side have no row in which both say the same, and a date mark tells by its date", () => {
  const { reply } = talk(
    "compare the first-type mirror with steel ball and the first-type mirror with nylon ball",
  );
  const rows = blocksOf(reply, "table")[0]?.rows ?? [];
  const same = rows.filter(([name, one, other]) => name !== "material" && one === other);
  expect(same).toEqual([]);
  expect(blocksOf(reply, "list")[0]?.items.join("\n")).toContain("week mark on the glass: by its date");
});

test("kinds that are compared by name are not asked back as something seen", () => {
  const said = talk("road wheel", "compare the turbine wheel and the turned-lip turbine wheel");
  expect(blocksOf(said.reply, "table")).toHaveLength(1);
  expect(said.text).not.toContain("did you mean");
});

test("a part that is named once more after its answer is answered once more", () => {
  const answered = [
    "rear spoiler, it flexes, smooth inside, built june 1982, home market Shrike S",
    "clock says 5 with 82 in the centre",
  ];
  expect(talk(...answered, "and the rear spoiler").text).toContain("the Moulded spoiler.");
});

test("undo of a new start brings back the question that was asked", () => {
  const { text } = talk("rear spoiler, is it genuine?", "start over", "undo");
  expect(text).toContain("Back again: rear spoiler and that you want to know whether it is genuine.");
  expect(text).not.toContain("Taken back");
});

describe("sizes without a unit", () => {
  test.each([
    ["rear spoiler", "1180 wide, 62 high"],
    ["rear spoiler, built may 1980", "width 1180 and height 62, it was built in june 1980"],
    ["rear spoiler, six screws, built may 1980", "1180 wide, 62 high"],
  ])("that are named are all taken: %s; %s", (...said) => {
    expect(readings(talk(...said)).filter((one) => /width|height/.test(one))).toEqual([
      "width 1180",
      "lip-height 62",
    ]);
  });

  test("of one thing are taken while another size is asked for", () => {
    const asked = ["rear spoiler, rough inside, grey gel coat, four studs, built 1980", "cannot tell"];
    expect(talk(...asked).reply.summary.question?.feature).toBe("stud-spacing");
    expect(readings(talk(...asked, "the width is 1176"))).toContain("width 1176");
  });

  test("that are only counted, or are a year, are no sizes", () => {
    const said = talk(
      "rear spoiler, rough inside, grey gel coat, built 1980",
      "cannot tell",
      "4 studs, built 1981",
    );
    expect(readings(said).filter((one) => !one.endsWith("undefined"))).toEqual([]);
  });
});

test("what gives a fake away is answered without another word for it", () => {
  expect(talk("instrument panel", "what gives a fake away?").text).toContain(
    "What gives copies of the instrument panel away",
  );
});

test("of what the handbook records on one kind only, two kinds are not told apart", () => {
  const { reply } = talk("compare the stick-on overlay and the counter blank panel");
  expect(blocksOf(reply, "table")[0]?.rows.flat()).not.toContain("not recorded");
});

test("of two things wanted at once the last is the question, and only it is named", () => {
  const { text } = talk("rear spoiler, rough inside, is it genuine and what should my car have?");
  expect(text).toContain("You want to know what the car should have.");
  expect(text).not.toContain("You want to know whether it is genuine.");
});

test("the same fact in other words is no step that undo would take back", () => {
  const { text } = talk("rear spoiler, rounded tips", "four studs", "I mean 4 studs", "undo");
  expect(text).toContain("Taken back: fixing (four studs and nuts).");
  expect(text).not.toContain("Back again");
});
