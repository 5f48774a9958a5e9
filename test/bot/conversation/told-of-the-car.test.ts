// What is told of the car: put right while something else is asked, against itself, of two cars, of a part that is on none.
import { describe, expect, test } from "vitest";
import { talk } from "../../support/talking.ts";

const car = (said: ReturnType<typeof talk>) => said.reply.summary.car;

describe("a build date", () => {
  test.each([
    "actually no, march 1978",
    "no wait, march 1978",
    "sorry, it was from march 1978",
    "no, March 1978.",
  ])("is put right by %s while a size is asked for", (said) => {
    const corrected = talk("door mirror, my car was built in march 1980", said);
    expect(car(corrected)).toEqual({ built: "March 1978" });
    expect(corrected.reply.summary.understood).toEqual([]);
    expect(corrected.text).toContain("March 1978 (before: March 1980)");
  });

  test("is put right by a year in which such cars were made, and by no other", () => {
    expect(car(talk("steering wheel, built 1980", "no, 1981"))).toEqual({ built: "1981" });
    expect(car(talk("steering wheel, built 1980", "no, 1931"))).toEqual({ built: "1980" });
  });

  test("stays when a size like a year is put right, when a date mark is, and when somebody else speaks", () => {
    expect(car(talk("rear spoiler, built 1980, width 1180 mm", "no, 1981"))).toEqual({ built: "1980" });
    const mark = talk(
      "door mirror, built march 1982",
      "week mark is 31 81",
      "no, week mark on the glass is june 1981",
    );
    expect(car(mark)).toEqual({ built: "March 1982" });
    const other = talk("door mirror, built march 1980", { from: "dora", text: "actually no, march 1978" });
    expect(car(other)).toEqual({ built: "March 1980" });
  });

  test("that leaves one model asks for no model, and offers no trim of another time", () => {
    const asked = talk("what steering wheel should my car have, built 2 june 1979?");
    expect(asked.reply.summary.question?.feature).toBe("car.trim");
    expect(asked.reply.summary.question?.answers.map(({ id }) => id)).toEqual(["standard", "s"]);
    const mirror = talk("what door mirror should my car have, built 2 november 1981?", "home market");
    expect(mirror.reply.summary.question).toBeNull();
    const panel = talk(
      "instrument panel, built june 1981, six dials, black crackle paint, is it right for my car?",
    );
    expect(panel.reply.summary.question?.feature).not.toBe("car.model");
  });

  test("outside a model's or a trim's time is named as a slip, once", () => {
    const said =
      "The Shrike Mark II was made March 1982 to June 1985; built February 1982 does not go with that.";
    const told = talk("road wheel for my Mark II", "car was built in february 1982");
    expect(told.text).toContain(said);
    expect(
      talk("road wheel for my Mark II", "car was built in february 1982", "eight spokes").text,
    ).not.toContain(said);
    expect(talk("road wheel for my Mark II", "car was built in may 1982").text).not.toContain(
      "does not go with",
    );
    expect(talk("rear spoiler, Shrike Touring, built june 1980").text).toContain(
      "The Shrike Touring was made",
    );
  });

  test("that comes from the car's number is shown", () => {
    expect(talk("rear spoiler, chassis number WS-1432").text).toMatch(/car built: .+ \(by its number\)/);
  });
});

describe("a second car", () => {
  const two = [
    "door mirror, two screws",
    "I have another car, built may 1983, Touring",
    "door mirror, moulded plastic",
  ];

  test("gives nothing to the cases of the first", () => {
    expect(car(talk(...two, "case 1"))).toEqual({});
  });

  test("has its own case of the same part", () => {
    const { conversation } = talk(...two, "rear spoiler, smooth inside", "door mirror with a steel ball");
    const mirrors = conversation.cases.filter(({ facts }) => facts.part === "door-mirror");
    expect(mirrors.map(({ facts }) => facts.reports.map(({ feature }) => feature))).toEqual([
      ["screws"],
      ["housing", "joint"],
    ]);
  });

  test("that is not a second one is said to be the same", () => {
    expect(
      talk("rear spoiler, rough inside, built may 1980", "the door mirror has a steel ball").text,
    ).toContain("Case 2, door mirror, for the same car.");
    expect(talk("rear spoiler", "smooth inside", "the door mirror has a steel ball").text).toContain(
      "Case 2, door mirror.",
    );
  });

  test("has its date in all of its own cases", () => {
    const said = talk(...two, "rear spoiler, smooth inside");
    expect(car(said)).toMatchObject({ built: "May 1983" });
  });
});

describe("a loose part", () => {
  test("is told of its owner's car that this says nothing of it", () => {
    const said = "the car says nothing of which it is";
    expect(talk("a loose door mirror from a swap meet", "my car was built march 1980").text).toContain(said);
    expect(talk("door mirror", "my car was built march 1980").text).not.toContain(said);
    const right = talk("a loose door mirror from a swap meet, is it right for my car?", "built march 1980");
    expect(right.text).not.toContain(said);
  });

  test.each(["actually it is on the car", "it's not loose"])("is loose no longer after %s", (said) => {
    expect(car(talk("a loose door mirror from a swap meet", said))).toEqual({});
  });

  test.each(["it is not on the car", "is it on the car?", "it's still loose"])(
    "stays loose after %s",
    (said) => {
      expect(car(talk("a loose door mirror from a swap meet", said))).toEqual({
        "where it is": "loose, not on a car",
      });
    },
  );
});

describe("is it right for my car?", () => {
  test("before the date is told, says which kind it looks like and not that it is right", () => {
    const { text } = talk("steering wheel, three spokes, bare plastic rim, is it right for my car?");
    expect(text).toContain("Where it stands: Base three-spoke");
    expect(text).not.toContain("such cars left the works");
  });

  test("of a part dated after the car claims no more than that its kind was fitted to such cars", () => {
    const { text } = talk(
      "rear spoiler, it flexes, smooth inside, built june 1982",
      "clock says 9 with 83 in the centre",
      "is it right for my car?",
    );
    expect(text).toContain("a kind that such cars left the works with.");
    expect(text).toContain("That it is the one this car left with: exceptionally unlikely");
  });
});

describe("a particular of the car", () => {
  test.each(["home", "market: home", "the market is home"])("is told by %s, whatever is asked", (said) => {
    const asked = ["is the door mirror right for my car?", "finished 2 november 1981"];
    expect(talk(...asked).reply.summary.question?.feature).toBe("glass-week");
    expect(car(talk(...asked, said))).toMatchObject({ market: "Home market" });
  });

  test("is withdrawn by its name, by its owner", () => {
    const told = ["rear spoiler, Shrike S, home market, built may 1980, rough inside, six screws"];
    expect(car(talk(...told, "withdraw the market"))).toEqual({ trim: "Shrike S", built: "May 1980" });
    expect(talk(...told, "withdraw the build date").text).toContain("Withdrawn: built (May 1980).");
    const other = talk(...told, { from: "dora", text: "withdraw the trim" });
    expect(car(other)).toMatchObject({ trim: "Shrike S" });
    expect(talk("rear spoiler, rough inside, six screws", "withdraw the market").text).toContain(
      "Say which one",
    );
  });
});
