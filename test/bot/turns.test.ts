// What a turn does with each thing people say, asked of the demo handbook's rear spoiler and door mirror.
import { describe, expect, test } from "vitest";
import { blocksOf, talk, talkOn } from "../support/talking.ts";

const inHand = (conversation: ReturnType<typeof talk>["conversation"], number = 1) =>
  conversation.cases.find((kept) => kept.number === number);

describe("facts", () => {
  test("a later word of the same person replaces the earlier one", () => {
    const { reply } = talk("rear spoiler, square tips", "no, rounded tips");
    expect(reply.summary.understood).toEqual([expect.objectContaining({ feature: "tips", state: "round" })]);
  });

  test("words of two people on one feature stand side by side, the second shown as another's", () => {
    const { reply, conversation } = talk("rear spoiler, square tips", { from: "dora", text: "rounded tips" });
    expect(inHand(conversation)?.facts.reports.map((report) => [report.by, report.value])).toEqual([
      ["owner", { kind: "state", state: "square" }],
      ["dora", { kind: "state", state: "round" }],
    ]);
    expect(blocksOf(reply, "understood")[0]?.items[0]?.doubt).toContain("another member");
  });

  test("only the owner describes the car of the case", () => {
    const { conversation, text } = talk("rear spoiler, square tips", {
      from: "dora",
      text: "built in May 1984",
    });
    expect(inHand(conversation)?.facts.car).toEqual({});
    expect(text).toContain("somebody else's");
  });

  test("a doubtful word lowers the certainty and is shown as doubtful", () => {
    const { reply } = talk("rear spoiler", "I think the tips are rounded");
    expect(reply.summary.understood[0]?.certainty).toBeLessThan(1);
    expect(blocksOf(reply, "understood")[0]?.items[0]?.doubt).toBe("you think");
  });

  test("what was seen before the part was named counts once it is", () => {
    const { reply } = talk("rounded tips, four studs", "rear spoiler");
    expect(reply.summary.understood.map((fact) => fact.feature)).toEqual(
      expect.arrayContaining(["tips", "fixing"]),
    );
  });

  test("a pressed state that the feature does not have is no fact", () => {
    const { reply } = talk("rear spoiler", { answer: { feature: "tips", state: "purple" } });
    expect(reply.summary.understood).toEqual([]);
  });

  test("a pressed answer names its part when only one part has such a feature", () => {
    const { reply } = talk({ answer: { feature: "drain-notches", state: "notches" } });
    expect(reply.summary.part).toBe("rear-spoiler");
    expect(reply.summary.understood).toHaveLength(1);
  });

  test("a date in the strict form of scripts is taken as it stands", () => {
    const { reply } = talk("rear spoiler", { answer: { feature: "car.built", reading: "1980-05" } });
    expect(reply.summary.car).toEqual({ built: "May 1980" });
  });

  test("what is only supposed is no fact", () => {
    expect(talk("rear spoiler", "what if the tips are square").reply.summary.understood).toEqual([]);
  });

  test("a chassis number is kept and shown only masked", () => {
    const { conversation, text } = talk("rear spoiler, chassis number WS-1234");
    expect(JSON.stringify(conversation)).not.toContain("1234");
    expect(text).not.toContain("1234");
  });
});

describe("questions", () => {
  test("'cannot tell' removes a question for good", () => {
    let { conversation, reply } = talk("rear spoiler");
    const asked = new Set<string>();
    for (let turn = 0; turn < 40 && reply.summary.question !== null; turn += 1) {
      const { feature } = reply.summary.question;
      expect(asked.has(feature), feature).toBe(false);
      asked.add(feature);
      ({ conversation, reply } = talkOn(conversation, "cannot tell"));
    }
    expect(reply.summary.question).toBeNull();
    expect(reply.summary.done).toBe(true);
  });

  test.each(["is my rear spoiler right for my car?", "what rear spoiler should my car have?"])(
    "the build date comes first when somebody asks: %s",
    (text) => {
      expect(talk(text).reply.summary.question?.feature).toBe("car.built");
    },
  );

  test("a bare date answers the question for it", () => {
    const { reply } = talk("is my rear spoiler right for my car?", "nov 81");
    expect(reply.summary.car).toEqual({ built: "November 1981" });
  });

  test("a number without a unit is asked back, and yes settles it", () => {
    const asked = talk("rear spoiler, width 118");
    expect(asked.reply.summary.question?.feature).toBe("unit:width");
    const { conversation, reply } = talkOn(asked.conversation, "yes");
    expect(reply.summary.question?.feature).not.toBe("unit:width");
    expect(inHand(conversation)?.facts.reports[0]?.value).toMatchObject({
      value: 118,
      unit: "cm",
      unitConfirmed: true,
    });
  });

  test("no drops the number", () => {
    const { reply } = talk("rear spoiler, width 118", { answer: { feature: "unit:width", state: "no" } });
    expect(reply.summary.understood).toEqual([]);
  });

  test("a size far from every kind is asked again, once", () => {
    const asked = talk("rear spoiler, 600 mm wide");
    expect(asked.reply.summary.question?.feature).toBe("width");
    expect(asked.text).toContain("say from which edge to which");
    const again = talkOn(asked.conversation, "600 mm");
    expect(again.reply.summary.question?.feature).not.toBe("width");
  });

  test("facts that do not go together are named and one is looked at again, once", () => {
    const asked = talk("door mirror, moulded plastic housing", "casting mark B in a diamond");
    expect(asked.text).toContain("do not go together");
    const feature = asked.reply.summary.question?.feature;
    expect(feature).toBe("housing");
    const again = talkOn(asked.conversation, "moulded plastic");
    expect(again.text).toContain("You have looked twice");
    expect(again.reply.summary.question?.feature).not.toBe(feature);
  });

  test("cautions stand directly before the question they concern, and are whole only the first time", () => {
    const { reply } = talk("rear spoiler, rounded tips", "how do I check the inside finish?");
    expect(blocksOf(reply, "cautions")[0]?.lines.at(-1)).toContain("licensed practice");
    const kinds = reply.blocks.map((block) => block.kind);
    expect(kinds.indexOf("cautions")).toBeLessThan(kinds.indexOf("text"));
  });
});

/** Answers every question until none is left: a second look confirms what was told, anything else cannot be told. */
function untilDone(said: string) {
  let { conversation, reply, text } = talk(said);
  for (let turn = 0; turn < 40 && reply.summary.question !== null; turn += 1) {
    const { feature } = reply.summary.question;
    const told = reply.summary.understood.find((fact) => fact.feature === feature);
    const again = told?.state === undefined ? "cannot tell" : { answer: { feature, state: told.state } };
    ({ conversation, reply, text } = talkOn(conversation, again));
  }
  return { reply, text };
}

describe("the answer", () => {
  test("keeps a contradiction named that a second look did not resolve", () => {
    const { reply, text } = untilDone(
      "rear spoiler, six screws, square tips, rough inside, no drain notches, black gel coat, Q mark",
    );
    expect(reply.summary.done).toBe(true);
    expect(text).toContain("though you looked twice: moulder's mark (Q with a part number)");
  });

  test("of what a car should have names no one kind while none reaches a half", () => {
    const { text } = untilDone("what front wing should my car have?");
    expect(text).toContain("it cannot be told which");
    expect(text).toContain("The build date would tell more.");
  });
});

describe("several cases", () => {
  test("two parts in one message open two cases, each with its own facts", () => {
    const { conversation, reply } = talk("the mirror has a steel ball, the rear spoiler is rough inside");
    expect(conversation.cases.map((kept) => [kept.facts.part, kept.facts.reports.length])).toEqual([
      ["door-mirror", 1],
      ["rear-spoiler", 1],
    ]);
    expect(reply.summary.part).toBe("door-mirror");
  });

  test("another case of the same owner starts from the same car", () => {
    const { conversation } = talk("rear spoiler, built May 1980", "new case", "door mirror");
    expect(inHand(conversation, 2)?.facts.car).toEqual(inHand(conversation, 1)?.facts.car);
  });

  test("a date told in one case is taken along to the other", () => {
    const { reply } = talk("door mirror and rear spoiler", "built May 1980", "case 2");
    expect(reply.summary.case).toBe("case-2");
    expect(reply.summary.car).toEqual({ built: "May 1980" });
  });

  test("a second voice with its own question has its own case", () => {
    const { conversation } = talk("rear spoiler, rough inside", {
      from: "dora",
      text: "which rear spoiler is this? rounded tips",
    });
    expect(conversation.cases.map((kept) => kept.owner)).toEqual(["owner", "dora"]);
    expect(inHand(conversation)?.facts.reports).toHaveLength(1);
  });

  test("a number that names no case changes nothing", () => {
    const before = talk("rear spoiler, rough inside");
    const after = talkOn(before.conversation, "case 9");
    expect(after.text).toContain("no case 9");
    expect(after.conversation).toEqual(before.conversation);
  });

  test("an id that names no case is said so", () => {
    expect(talk({ text: "rough inside", case: "case-7" }).text).toContain("no case case-7");
  });
});

describe("taking back", () => {
  test("start over puts everything aside, and undo brings it back", () => {
    const before = talk("rear spoiler, rough inside", "square tips");
    const empty = talkOn(before.conversation, "start over");
    expect(empty.reply.summary).toMatchObject({ part: null, understood: [] });
    const back = talkOn(empty.conversation, "undo");
    expect(back.reply.summary.understood).toEqual(before.reply.summary.understood);
  });

  test("a fact is withdrawn by name", () => {
    const { reply } = talk("rear spoiler, rough inside, square tips", "withdraw the tips");
    expect(reply.summary.understood.map((fact) => fact.feature)).toEqual(["inside-finish"]);
  });

  test("a member withdraws only what they said", () => {
    const { conversation } = talk("rear spoiler, square tips", { from: "dora", text: "withdraw the tips" });
    expect(inHand(conversation)?.facts.reports).toHaveLength(1);
  });

  test("undo with nothing told says so", () => {
    expect(talk("undo").text).toContain("nothing to take back");
  });
});

describe("manners", () => {
  test.each(["?", "👍", "..."])("%s brings only the open question again", (sign) => {
    const { reply } = talk("rear spoiler, rough inside", sign);
    expect(reply.blocks.map((block) => block.kind)).toEqual(["question"]);
  });

  test("nonsense gets one line and the open question, and repeated nonsense gets no more", () => {
    const once = talk("rear spoiler, rough inside", "xyzzy plugh");
    const thrice = talkOn(once.conversation, "xyzzy plugh", "xyzzy plugh");
    expect(once.reply.blocks).toHaveLength(2);
    expect(thrice.text).toBe(once.text);
  });

  test("chatter changes no fact", () => {
    const before = talk("rear spoiler, rough inside");
    const after = talkOn(before.conversation, "lovely weather for the gathering, thanks");
    expect(after.reply.summary.understood).toEqual(before.reply.summary.understood);
  });

  test("a message of nothing is answered, and one too long is read so far and said so", () => {
    expect(talk("").text).toContain("nothing to read");
    expect(talk(`rear spoiler, rough inside ${"x ".repeat(8000)}`).text).toContain("8,000 characters");
  });

  test("an answer that stands is not repeated whole", () => {
    const before = talk(
      "is my rear spoiler right for the car? built may 1979, Shrike S, home market",
      "rough inside",
    );
    const done = talkOn(before.conversation, "square tips", "two drain notches", "six screws");
    expect(done.reply.summary.done).toBe(true);
    const after = talkOn(done.conversation, "ground edge");
    expect(blocksOf(after.reply, "evidence")).toEqual([]);
    expect(after.text).toMatch(/does not change the answer|The answer stays/);
  });
});

describe("the car", () => {
  test("history, trim and market are kept and shown in words", () => {
    const { reply } = talk("rear spoiler, Shrike S, home market, one owner, 1981 model");
    expect(reply.summary.car).toMatchObject({
      trim: "Shrike S",
      market: "Home market",
      history: "one owner",
    });
  });

  test("a loose part wanted for a dated car is judged against that car", () => {
    const { reply } = talk(
      "bought a rear spoiler at a swap meet, rough inside, square tips",
      "is it right for my car? built June 1978",
    );
    expect(reply.summary.goal).toBe("right-for-car");
    expect(reply.summary.verdict?.class).not.toBe("as-built");
  });

  test("a bare date that no question asked for is taken as the car's", () => {
    expect(talk("rear spoiler, rough inside", "march 1979").reply.summary.car).toEqual({
      built: "March 1979",
    });
  });

  test("a trim is answered by its letter", () => {
    const { conversation } = talk("what steering wheel should my car have?", "2 june 1979");
    expect(inHand(conversation)?.facts.open?.feature).toBe("car.trim");
    const { reply } = talkOn(conversation, "S");
    expect(reply.summary.car).toMatchObject({ trim: "Shrike S" });
  });

  test("who says what it has after what it should have gets the two compared", () => {
    const { reply, text } = talk(
      "what rear spoiler should my Shrike S have? built august 1980, home market",
      "mine has six screws",
    );
    expect(reply.summary.goal).toBe("right-for-car");
    expect(text).toContain("whether that is right for the car");
  });

  test("a goal beside the words counts as said", () => {
    const { reply } = talk({ text: "rear spoiler, rough inside", goal: "genuine" });
    expect(reply.summary.goal).toBe("genuine");
  });
});

describe("what was not taken", () => {
  test("a question about a feature is no fact, and that is said", () => {
    const { reply, text } = talk("rear spoiler", "is it smooth?");
    expect(reply.summary.understood).toEqual([]);
    expect(text).toContain("I read that as a question");
  });

  test("another's car is left aside in one remark, however much is told of it", () => {
    const { text } = talk("rear spoiler", "my mate's has a smooth inside and his has four studs");
    expect(text.match(/another car/g)).toHaveLength(1);
  });

  test("a density told counts, with doubt", () => {
    const { conversation } = talk("rear spoiler", "it weighs 1070 g dry and 70 g in water");
    const flex = inHand(conversation)?.facts.reports.find((report) => report.feature === "flex");
    expect(flex?.value).toEqual({ kind: "weighed-states", weights: { gives: 1, "thin-plastic": 1 } });
    expect(flex?.certainty).toBeLessThan(1);
  });

  test("a fact that turns the answer brings the whole answer again", () => {
    const { conversation, reply } = talk(
      "rear spoiler, it flexes, smooth inside, Q mark, built 1983, Shrike S, home market",
      ...Array.from({ length: 12 }, () => "cannot tell"),
    );
    expect(reply.summary.done).toBe(true);
    const turned = talkOn(
      conversation,
      "withdraw the feel of the trailing edge",
      "stiff, rough inside, no mark",
    );
    expect(turned.reply.summary.verdict?.class).not.toBe(reply.summary.verdict?.class);
  });
});

describe("somebody who can see nothing", () => {
  const silent = (times: number) =>
    talk("rear spoiler", ...Array.from({ length: times }, () => "cannot tell"));

  test("is offered a way out from the second time on", () => {
    const offered = (times: number) =>
      blocksOf(silent(times).reply, "choices").map((block) => block.choices[0]?.id);
    expect(offered(1)).toEqual([]);
    expect(offered(2)).toEqual(["photographs"]);
    expect(offered(3)).toEqual(["photographs"]);
  });

  test("is asked no more than five times, and then told what would settle it", () => {
    const { reply, text } = silent(5);
    expect(reply.summary.done).toBe(true);
    expect(text).toContain("What tells them apart");
    expect(blocksOf(reply, "choices")[0]?.choices[0]?.label).toBe("what to photograph");
  });

  test("is asked again once something is told", () => {
    const { conversation } = silent(5);
    expect(talkOn(conversation, "it has square tips").reply.summary.question).not.toBeNull();
  });

  test("is not told each time that a question will not come again", () => {
    expect(silent(1).text).toContain("I will not ask again");
    expect(silent(2).text).not.toContain("I will not ask again");
  });
});

describe("two who disagree", () => {
  test("are both named", () => {
    const { reply } = talk("rear spoiler, square tips", { from: "dora", text: "rounded tips" });
    expect(blocksOf(reply, "understood")[0]?.items[0]?.doubt).toContain("told otherwise before: square tips");
  });

  test("are not said to differ when they agree", () => {
    const { reply } = talk("rear spoiler, square tips", { from: "dora", text: "square tips" });
    expect(blocksOf(reply, "understood")[0]?.items[0]?.doubt).toBe("said by another member");
  });
});

describe("a fact that hardly moves the ranking", () => {
  test("is said to say little beside the other sign of the same change", () => {
    const { text } = talk("door mirror, held by three screws and the housing is moulded plastic");
    expect(text).toContain("Beside three screws, housing material (moulded plastic) says little more.");
    expect(text).not.toContain("That says little here");
  });
});

describe("what is said once", () => {
  test("a caution of a case that waits is whole when its question is first put", () => {
    const { text } = talk("door mirror and road wheel", "the wheel has eight spokes");
    expect(text).not.toContain("As said before");
    expect(text).toContain("Never under a car on a jack alone");
  });

  test("a quarrel is named once while its second look stays open", () => {
    const { conversation, text } = talk("instrument panel with 6 dials and real wood veneer");
    expect(text).toContain("do not go together");
    const later = talkOn(conversation, "car was built in march 1980");
    expect(later.text).toContain("Please look again");
    expect(later.text).not.toContain("do not go together");
  });

  test("a part that is known already is not misunderstood", () => {
    expect(talk("rear spoiler", "spoiler").text).not.toContain("did not understand");
  });
});

describe("what cannot be used", () => {
  test("a pressed answer that nothing asks for is named", () => {
    expect(talk("road wheel", { answer: { feature: "tips", state: "square" } }).text).toContain(
      "no answer to anything I ask about this part",
    );
  });

  test("words after the answer that are not understood leave ways to go on", () => {
    const { reply } = talk(
      "rear spoiler, rough inside, six screws, square tips, built june 1978, home market, no drain notches, WC in a ring",
      "xyzzy plugh",
    );
    expect(blocksOf(reply, "choices")[0]?.choices.map(({ id }) => id)).toContain("keeper");
  });

  test("a kind's name beside another part that is named opens no second case", () => {
    const { conversation } = talk("the seller says early first type, photo shows square tips, rear spoiler");
    expect(conversation.cases.map((kept) => kept.facts.part)).toEqual(["rear-spoiler"]);
  });

  test("a date mark with many readings is shown by the first of them", () => {
    const { text } = talk("door mirror, dots ..7");
    expect(text).toMatch(/or one of \w+ more/);
  });
});

describe("a word about the car", () => {
  test.each([
    ["home", { market: "Home market" }],
    ["north american", { market: "North American market" }],
    ["standard", { trim: "Standard Shrike" }],
  ])("%s alone is taken whatever is asked", (said, car) => {
    expect(talk("rear spoiler", said).reply.summary.car).toEqual(car);
  });

  test.each(["market", "car", "S"])("%s alone is no name of one", (said) => {
    expect(talk("rear spoiler", said).reply.summary.car).toEqual({});
  });
});

describe("what an answer leaves open", () => {
  test("names the rival, and that nothing else tells the two apart only when that is so", () => {
    const { text } = talk(
      "rear spoiler, rough inside, square tips, home market",
      "built march 1979",
      "two drain notches",
      "WC in a ring",
    );
    expect(text).toContain("Left open: the First spoiler");
    expect(text).toMatch(/tells the two clearly apart|What would settle it/);
  });
});

describe("a fact that one member told and another could not tell", () => {
  test("is named as it was told when it does not go with the rest", () => {
    const { text } = talk(
      "rear spoiler, rough inside",
      { from: "dora", text: "four studs" },
      "square tips",
      { answer: { feature: "fixing", cannotTell: true } },
      "square tips",
    );
    expect(text).not.toContain("fixing (cannot tell)");
  });
});

describe("an answer about the car that is pressed", () => {
  test("is taken for market, trim and model", () => {
    const { reply } = talk(
      "rear spoiler",
      { answer: { feature: "car.market", state: "home" } },
      { answer: { feature: "car.trim", state: "shrike-s" } },
    );
    expect(reply.summary.car.market).toBe("Home market");
  });

  test("a date of a part in the strict form is taken as it stands", () => {
    const { reply } = talk("road wheel", { answer: { feature: "machining-stamp", reading: "1981-W31" } });
    expect(reply.summary.understood[0]?.reading).toBe("27 July to 2 August 1981");
  });

  test("cannot be told, and is not asked again", () => {
    const { reply, text } = talk("is this rear spoiler right for my car?", {
      answer: { feature: "car.built", cannotTell: true },
    });
    expect(text).toContain("Car built: cannot tell");
    expect(reply.summary.question?.feature).not.toBe("car.built");
  });
});

describe("what the car should have", () => {
  test("is not said again whole when a word changes nothing of it", () => {
    const { conversation } = talk("what front wing should my mark II have?", "1983");
    const { text } = talkOn(conversation, "home");
    expect(text).toContain("That does not change the answer.");
    expect(text).not.toContain("What the works fitted");
  });

  test("offers no photographs, for nothing is looked at", () => {
    const { reply } = talk("what front wing should my mark II have?", "1983");
    expect(blocksOf(reply, "choices")[0]?.choices.map(({ id }) => id)).not.toContain("photographs");
  });
});

describe("a question that no command answers", () => {
  test("is called one, and its figures are no facts", () => {
    const { reply, text } = talk("is a rear spoiler with 4 studs and a hairy inside from 1978 possible?");
    expect(reply.summary.understood).toEqual([]);
    expect(text).toContain("I read that as a question");
  });

  test("what was unclear before the part was named is told when it is", () => {
    const { text } = talk("about 17 inches", "steering wheel");
    expect(text).toMatch(/I read – .*17 in|“17 inches” I cannot place/);
  });
});

describe("a mark told before the part is named", () => {
  test("counts once it is", () => {
    const { reply, text } = talk("it says >PUR< on the inside", "rear spoiler");
    expect(reply.summary.understood.map(({ feature }) => feature)).toEqual(["flex"]);
    expect(text).toContain("gives, polyurethane");
  });
});

describe("the question which part it is", () => {
  test.each([
    ["cannot tell", "say where on the car it sits"],
    ["yes", "I asked nothing that yes or no would answer"],
    ["why this?", "Each part has its own tells"],
    ["how do I check?", "Name it in your own words"],
  ])("is not answered by %s, and that is said", (said, answer) => {
    const { text, reply } = talk("hello", said);
    expect(text).toContain(answer);
    expect(reply.summary.question?.feature).toBe("part");
  });
});

describe("a unit that is wrong", () => {
  test("is asked back with the size as it was said", () => {
    const { text } = talk("rear spoiler, width 118 mm");
    expect(text).toMatch(/You wrote 118 mm. Did you mean 118 cm\?|118 mm lies far from every kind/);
  });
});

describe("withdrawing by another member", () => {
  test("takes nothing of the owner's", () => {
    const { reply, text } = talk("rear spoiler, rough inside", {
      from: "dora",
      text: "withdraw the inside finish",
    });
    expect(text).toContain("You have told me nothing that could be withdrawn");
    expect(reply.summary.understood).toHaveLength(1);
  });
});

describe("what was told in answer to a question about copies", () => {
  test("is weighed for the goal that the question set", () => {
    const { reply } = talk("front wing", "how can I tell if it is a repro?", "N in a square");
    expect(reply.summary.goal).toBe("genuine");
    expect(reply.summary.understood.map(({ feature }) => feature)).toEqual(["moulded-number"]);
  });
});
