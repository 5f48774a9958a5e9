// What is told of one feature several times in a message: put right, denied, leaned to, left open, or both at once.
import { describe, expect, test } from "vitest";
import { gatherObservations } from "../../../knowledge/language/gather-observations.ts";
import type { Observation } from "../../../knowledge/language/observations.ts";
import { weighObservations } from "../../../knowledge/language/weigh-observations.ts";
import { valueInWords } from "../../support/reading-in-words.ts";
import { mirrorView } from "../../support/tarn-mirror.ts";
import { wordings } from "../../support/wordings.ts";

/** "screws two" or, where it is not quite sure, "screws two, 0.75"; stretches left aside after a tilde. */
function inWords(text: string, observations?: readonly Observation[]): readonly string[] {
  const view = mirrorView(text);
  const { findings, leftAside } = weighObservations(
    view,
    observations ?? gatherObservations(view).candidates,
  );
  return [
    ...findings.map(
      ({ feature, value, certainty }) =>
        `${feature} ${valueInWords(value)}${certainty === 1 ? "" : `, ${certainty}`}`,
    ),
    ...leftAside.map((words) => `~ ${words}`),
  ];
}

/** Rows of "message -> what comes of it". */
const rows = (table: string): readonly (readonly [string, string])[] =>
  wordings(table).map((line) => {
    const [text = "", expected = ""] = line.split(" -> ");
    return [text, expected];
  });
const check = (text: string, expected: string): void => {
  expect(inWords(text).join("; ")).toBe(expected);
};

describe("what is put right replaces what was said before", () => {
  test.each(
    rows(`
      two screws, {sorry,i meant,i mean,correction,scratch that,make that,actually,edit,oops,wait,my mistake} three screws -> screws three
      two screws, {no its,no it is,no theyre,on second thoughts,should read,i was wrong,strike that,turns out} three screws -> screws three
      two screws, {but looking,on closer inspection,looking again,looking closer,cleaned it,instead} three screws -> screws three
      two screws, {checked again,looked again,looking better} three screws -> screws three
      two screws, no, three screws -> screws three
      two screws, {rather,had another look} three screws -> screws three, 0.75
      two screws. {Sorry!,Correction:,Actually it has} three screws -> screws three
      two screws, three screws {sorry,actually,rather} -> screws three
      two screws, three screws actually of steel -> screws three
      two screws, three screws, {sorry,actually} -> screws three
      two screws. Three screws. Actually -> screws three
      two screws, three screws, {sorry mate,not sorry,actually not} -> ~ two screws, three screws
      two screws, three screws of sorry make -> ~ two screws, three screws
      three screws, three screws, sorry -> screws three
      no screws, two screws, sorry, three screws -> screws three
      two screws, sorry, three screws, no screws -> ~ two screws, sorry, three screws, no screws
      two screws, three screws no -> ~ two screws, three screws
      two screws, wait, three screws, and chromed -> screws three; housing chromed
    `),
  )("%s -> %s", check);
});

describe("what was only thought or written once gives way to what is", () => {
  test.each(
    rows(`
      {I assumed,I expected,I was expecting,At first glance,I used to see,I tought} two screws, has three screws -> screws three
      {I wrote,I said,I posted,I typed,I put,I told you,I answered} two screws, has three screws -> screws three
      I posted two screws earlier and has three screws -> screws three
      I thought two screws but it has three screws -> screws three, 0.75
      {I wrote earlier because,I said and wrote,I wrote and have} two screws, has three screws -> ~ two screws, has three screws
      I thought two screws -> screws two, 0.75
    `),
  )("%s -> %s", check);
});

describe("what it is compared with is not told", () => {
  test.each(
    rows(`
      three screws {rather than,instead of,as opposed to,unlike,versus,over,of the} two screws -> screws three
      three screws over {the,a,old,hard} two screws -> screws three
      {than,instead of} two screws -> screws two
      more two screws than three screws -> screws two, 0.75
      three screws over there and two screws -> ~ three screws over there and two screws
    `),
  )("%s -> %s", check);
});

describe("who leans is less sure", () => {
  test.each(
    rows(`
      {more,mostly,mainly,rather,closer to,nearer to,it tends to} chromed -> housing chromed, 0.75
      {mostly the,nearer to the} chromed -> housing chromed, 0.75
      mostly all of it chromed -> housing chromed
      two screws, mostly two screws -> screws two, 0.75
      two screws and maybe two screws -> screws two, 0.5
      maybe two screws, two screws -> screws two, 0.5
      maybe mostly chromed -> housing chromed, 0.5
    `),
  )("%s -> %s", check);
});

describe("who leaves it open tells each, unless that is all there are; who says both tells neither", () => {
  test.each(
    rows(`
      two screws or three screws -> screws two|three
      two screws, or maybe three screws -> screws two|three, 0.5
      two screws between us three screws -> screws two|three
      two screws, three screws or no screws -> ~ two screws, three screws or no screws
      two screws or three screws or no screws -> ~ two screws or three screws or no screws
      two screws and three screws -> ~ two screws and three screws
      maybe chromed, maybe painted in body colour -> ~ chromed, maybe painted in body colour
      two screws on the left, three screws on the right -> ~ two screws on the left, three screws
      two screws, and again two screws -> screws two
      chromed, two screws -> housing chromed; screws two
    `),
  )("%s -> %s", check);
});

describe("what is denied leaves the others, narrowed by what else the sentence says", () => {
  test.each(
    rows(`
      not two screws -> screws three|none
      not two screws, not three screws -> screws none
      not two screws, not three screws, not no screws ->
      not chromed -> housing painted|plastic
      not chromed, I think -> housing painted|plastic, 0.75
      no straight stalk, it is made of plastic -> stalk moulded
      made of plastic it has no straight stalk -> stalk moulded
      no straight stalk. It is made of plastic -> stalk bent|moulded
      no straight stalk, my mate has one of plastic -> stalk bent|moulded
      not straight stalk nor bent stalk -> stalk moulded
      not two screws, three screws -> screws three
    `),
  )("%s -> %s", (text, expected) => {
    expect(inWords(text).join("; ")).toBe(expected);
  });
});

/** The left and the right of two words, or both, as told states of the stalk. */
const said = (state: string, at: number, rest: Partial<Observation> = {}): Observation => ({
  part: "mirror",
  feature: "stalk",
  state,
  isDenied: false,
  clause: 0,
  from: at,
  to: at,
  ...rest,
});

describe("of two states in one message", () => {
  test("the one at three times the odds of the other stands out", () => {
    const at = (bent: number, straight: number) =>
      inWords("bent yet straight", [
        said("bent", 0, { probability: bent }),
        said("straight", 2, { probability: straight }),
      ]);
    expect(at(0.75, 0.5)).toEqual(["stalk bent"]);
    expect(at(0.5, 0.75)).toEqual(["stalk straight"]);
    expect(at(0.74, 0.5)).toEqual(["~ bent yet straight"]);
    expect(at(0.5, 0.5)).toEqual(["~ bent yet straight"]);
  });

  test("one that was not weighed stands at even odds", () => {
    const straight = said("straight", 2, { probability: 0.75 });
    expect(inWords("bent yet straight", [said("bent", 0), straight])).toEqual(["stalk straight"]);
  });

  test("the same state at poor odds as well is no rival", () => {
    const observations = [
      said("bent", 0, { probability: 0.9 }),
      said("bent", 1, { probability: 0.4 }),
      said("straight", 2, { probability: 0.5 }),
    ];
    expect(inWords("bent yet straight", observations)).toEqual(["stalk bent"]);
  });

  test.each(
    wordings(
      "bent on the {left,nearside,passenger,passengers}, straight on the {right,offside,driver,drivers}",
    ),
  )("of a left and a right one neither stands out: %s", (text) => {
    const sides = [
      said("bent", 0, { probability: 0.9 }),
      said("straight", 4, { clause: 1, probability: 0.5 }),
    ];
    expect(inWords(text, sides)).toEqual([`~ ${text.replace(/ on the \w+$/, "")}`]);
    expect(inWords(text.replace(/ on the \w+$/, " too"), sides)).toEqual(["stalk bent"]);
  });

  test("the one whose words the other's name holds as well tells nothing, in the same clause", () => {
    expect(inWords("stalk is bent", [said("straight", 0), said("bent", 2)])).toEqual(["stalk bent"]);
    expect(inWords("the stalk is bent", [said("straight", 0, { to: 1 }), said("bent", 3)])).toEqual([
      "stalk bent",
    ]);
    expect(inWords("stalk good, bent", [said("straight", 0), said("bent", 2, { clause: 1 })])).toEqual([
      "~ stalk good, bent",
    ]);
    expect(inWords("curly stalk is bent", [said("straight", 0, { to: 1 }), said("bent", 3)])).toEqual([
      "~ curly stalk is bent",
    ]);
  });

  test("the words of the message are kept from the first to the last, and no part where none is told", () => {
    const view = mirrorView("well bent and bent bent again");
    const observations = [4, 3, 1].map((at) => said("bent", at, { part: null }));
    expect(weighObservations(view, observations).findings).toEqual([
      {
        part: null,
        feature: "stalk",
        value: { kind: "state", state: "bent" },
        certainty: 1,
        words: "bent and bent bent",
      },
    ]);
  });

  test("one that stands out must do so from each of the others", () => {
    const bent = (probability: number) => said("bent", 0, { probability });
    const others = [said("moulded", 1, { probability: 0.2 }), said("straight", 2, { probability: 0.75 })];
    expect(inWords("bent yet straight", [bent(0.9), ...others])).toEqual(["stalk bent"]);
    expect(inWords("bent yet straight", [bent(0.89), ...others])).toEqual(["~ bent yet straight"]);
  });

  test("where each is said in words that the other's name holds, neither is told", () => {
    expect(inWords("stalk and stalk", [said("straight", 0), said("bent", 2)])).toEqual([]);
  });

  test("each part has a finding of its own, and an observation beyond the message is firm", () => {
    const handle = said("bent", 2, { part: "door-handle", clause: 7 });
    expect(inWords("bent and bent", [said("bent", 0), handle])).toEqual(["stalk bent", "stalk bent"]);
  });

  test("of an unknown feature or part no choice is left open, and no other state is left by a denial", () => {
    const glass = { feature: "glass" };
    expect(inWords("bent or straight", [said("bent", 0, glass), said("straight", 2, glass)])).toEqual([
      "~ bent or straight",
    ]);
    expect(inWords("not bent", [said("bent", 1, { part: "ferret", isDenied: true })])).toEqual([]);
  });

  test("what is denied of an unknown feature, or of one that has no states, leaves nothing", () => {
    for (const feature of ["glass", "reach"])
      expect(inWords("not bent", [said("bent", 0, { feature, isDenied: true, to: 1 })])).toEqual([]);
  });

  test("a feature that several parts have is looked up where no part is told", () => {
    expect(inWords("not bent", [said("bent", 0, { part: null, isDenied: true, to: 1 })])).toEqual([
      "stalk straight|moulded",
    ]);
  });
});
