// What the accepted sightings say of time: in words, with a picture, and refused where their conditions are not met.
import { describe, expect, test } from "vitest";
import { changeoverPicture } from "../../../adapters/pictures/changeover-picture.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { type Block, plainText } from "../../../bot/index.ts";
import { clockFrom, communityTalk } from "../../support/community-talk.ts";
import { keepSeen, type SeenCar, seenCar, seenId } from "../../support/seen-cars.ts";

const [first, second] = ["first-drained", "second"] as const;
const cars: readonly SeenCar[] = [
  ...[1, 2, 3, 4].map((month) => ({ variant: first, year: 1980, month })),
  ...[5, 6, 7, 8].map((month) => ({ variant: second, year: 1980, month })),
  { variant: first, year: 1983, month: 3, grade: "history-unknown" },
];

async function talkWith(seen: readonly SeenCar[]) {
  const store = memoryStore();
  await keepSeen(
    store,
    seen.map((car, number) => seenCar(number, car)),
  );
  return communityTalk(store, clockFrom());
}

async function blocksOf(seen: readonly SeenCar[], text: string): Promise<readonly Block[]> {
  const { bot } = await talkWith(seen);
  return (await bot.receive({ conversation: "club:bench", from: "ann", text })).blocks;
}

const textOf = (blocks: readonly Block[]) => plainText({ blocks } as Parameters<typeof plainText>[0]);

describe("changeovers", () => {
  test("the date, the suspects and the timeline come from the sightings", async () => {
    const blocks = await blocksOf(cars, "when did the rear spoiler change?");
    const text = textOf(blocks);
    expect(text).toMatch(
      /The Second spoiler took the place of the First spoiler with drains most likely in (?:April|May) 1980/u,
    );
    expect(text).toContain("That is from 9 accepted sightings and the handbook’s periods together.");
    expect(text).toMatch(/looks swapped or misread: a000-0008, First spoiler with drains, built March 1983/u);
    const timeline = blocks.find((block) => block.kind === "timeline");
    const marks = timeline !== undefined && "marks" in timeline.chart ? timeline.chart.marks : [];
    expect(marks).toHaveLength(9);
    expect(marks.filter(({ isSuspect }) => isSuspect)).toHaveLength(1);
    expect(changeoverPicture(timeline?.chart as never)).toContain("</svg>");
    expect(timeline?.table.rows.map(([built]) => built)).toContain("March 1983");
  });

  test("a change seen by nobody is the handbook's alone, and has no picture", async () => {
    const blocks = await blocksOf([], "changeovers of the rear spoiler");
    expect(textOf(blocks)).toContain("that is the handbook’s periods alone");
    expect(blocks.some(({ kind }) => kind === "timeline")).toBe(false);
  });

  test("without a part every change has a row", async () => {
    const [table] = await blocksOf(cars, "changeovers");
    expect(table?.kind === "table" && table.rows.map(([part]) => part)).toEqual(
      expect.arrayContaining(["rear spoiler", "door mirror"]),
    );
  });

  test("trims and markets stand apart when two of them were seen", async () => {
    const seen = cars.map((car, at) => ({ ...car, car: { market: at % 2 === 0 ? "home" : "us" } }));
    expect(textOf(await blocksOf(seen, "changeovers of the rear spoiler"))).toMatch(/Home market: about/u);
  });
});

describe("cars wanted", () => {
  test("the months next to the change are wanted", async () => {
    const text = textOf(await blocksOf(cars, "cars wanted for the rear spoiler"));
    expect(text).toMatch(
      /when the First spoiler with drains gave way to the Second spoiler.*\n {2}- built (?:April|May) 1980/u,
    );
  });

  test("the owner of such a car is asked, once, and not when they have recorded it", async () => {
    const talk = await talkWith(cars);
    await talk.say(
      "(ann) rear spoiler on my Shrike S built may 1980, rough inside, tips square, home market",
    );
    let replies = "";
    for (let answers = 0; answers < 12; answers += 1) replies += await talk.say("(ann) cannot tell");
    expect(replies.split("Yours would help to narrow when").length).toBe(2);
    expect(await talk.say("(ann) note it as an observation")).toContain("Which kind of rear spoiler was it?");
  });

  test("a car far from the change is not asked for", async () => {
    const talk = await talkWith(cars);
    await talk.say(
      "(ann) rear spoiler on my Shrike S built may 1978, rough inside, tips square, home market",
    );
    let replies = "";
    for (let answers = 0; answers < 12; answers += 1) replies += await talk.say("(ann) cannot tell");
    expect(replies).not.toContain("Yours would help");
  });
});

describe("the ends of use and numbers", () => {
  test("sightings that are not trusted name no last one", async () => {
    const doubtful = [{ variant: second, year: 1980, month: 6, grade: "history-unknown" } as const];
    expect(textOf(await blocksOf(doubtful, "last seen second spoiler"))).toContain(
      "not even a last one can be named",
    );
  });

  test("trusted ones do, with each method's assumption or refusal", async () => {
    const text = textOf(await blocksOf(cars, "when was the second spoiler last seen?"));
    expect(text).toContain("In use at least until");
    expect(text).toMatch(/end, by Strauss & Sadler 1989: .* if /u);
  });

  test("what a method cannot say is said in a sentence of its own", async () => {
    const tied = [1, 2, 3, 6, 6].map((month) => ({ variant: second, year: 1980, month }));
    const text = textOf(await blocksOf(tied, "last seen second spoiler"));
    expect(text).toContain(
      "end, by Roberts & Solow 2003: cannot say: the last two sightings lie at one place",
    );
    const few = textOf(await blocksOf(tied.slice(0, 1), "last seen second spoiler"));
    expect(few).toContain("end, by Strauss & Sadler 1989: cannot say: it needs three sightings");
  });

  test("of kinds that nobody saw it is said so, and nothing is assumed", async () => {
    const text = textOf(await blocksOf([], "last seen second spoiler"));
    expect(text).toBe("No dated car with the Second spoiler has been accepted yet.");
    expect(textOf(await blocksOf([], "how many had the second spoiler"))).toBe(
      "Cannot say: no car was looked at.",
    );
  });

  test("numbers built follow Goodman 1952, and less is said of fewer serials", async () => {
    const text = textOf(await blocksOf([], "how many were built: 19, 40, 42, 60"));
    expect(text).toContain("about 74 were built");
    expect(text).toContain("on average 89, give or take 50");
    const long = textOf(await blocksOf([], "how many were built: 10000019, 10000040 and 10000060"));
    expect(long).toContain("From 3 serial numbers up to 10000060");
    expect(textOf(await blocksOf([], "how many were built: 12, 1234567890123"))).toContain(
      "Cannot say: a serial has no more than nine figures.",
    );
    expect(textOf(await blocksOf([], "how many were built: 60"))).toContain(
      "cannot say: a limit needs two serials",
    );
  });

  test("a kind's share comes with Wilson's interval", async () => {
    const text = textOf(await blocksOf(cars, "how many had the second spoiler?"));
    expect(text).toContain("The Second spoiler was on 4 of 9 cars");
    // Wilson (Newcombe 1998, method 3) for 4 of 9: .189 to .733.
    expect(text).toContain("between 19 % and 73 %");
  });
});

describe("review in few presses", () => {
  test("accepting is shown in numbers before it is done, and not when it teaches nothing", async () => {
    const talk = await talkWith([...cars, { variant: second, year: 1980, month: 4, stands: "waiting" }]);
    const shown = await talk.say(`(kim, keeper) observation ${seenId(9)}`);
    expect(shown).toContain("If it is accepted");
    expect(shown).toMatch(/such a car was built with the Second spoiler +[\d.]+ % +[\d.]+ %/u);
    expect(shown).toMatch(/the First spoiler with drains gave way to the Second spoiler \(90 %\)/u);
    expect(await talk.say("(ann) observation <1>")).not.toContain("If it is accepted");
  });

  test("a press on decline or ask about is followed by a question for the words, which can be left", async () => {
    const talk = await talkWith([{ variant: second, year: 1980, month: 4, stands: "waiting" }]);
    const id = seenId(0);
    expect(await talk.say(`(kim, keeper) decline observation ${id}`)).toContain("Why is");
    expect(await talk.say("(kim, keeper) leave it")).toContain("Nothing is changed.");
    expect(await talk.say(`(kim, keeper) ask about observation ${id}`)).toContain("What do you want to know");
    expect(await talk.say("(kim, keeper) is it yours?")).toContain("has your question");
    expect(await talk.say(`(kim, keeper) decline observation ${id}`)).toContain("Why is");
    expect(await talk.say("(kim, keeper) the picture shows another car")).toContain("Declined");
    expect(await talk.say(`(kim, keeper) observation ${id}`)).toContain(
      "Declined because the picture shows another car",
    );
  });
});

describe("kinds that followed each other in a row", () => {
  const panels = ["engine-turned", "crackle", "crackle-symbols"] as const;
  const row = (kind: string, months: readonly number[], year: number): readonly SeenCar[] =>
    months.map((month) => ({ part: "instrument-panel", variant: kind, year, month }));
  const seen: readonly SeenCar[] = [
    ...row(panels[0], [1, 4, 7, 10], 1977),
    ...row(panels[1], [2, 5, 8, 11], 1979),
    ...row(panels[2], [3, 6, 9, 12], 1983),
    { part: "instrument-panel", variant: panels[0], year: 1984, month: 2, grade: "history-unknown" },
  ];

  test("are told all at once: every change, the suspects, the cars wanted between them, one drawing", async () => {
    const blocks = await blocksOf(seen, "changeovers of the instrument panel");
    const text = textOf(blocks);
    expect(text).toMatch(/The instrument panel came as .*, one after the other\. All changes at once:/u);
    expect(text.match(/took the place of/gu)?.length).toBeGreaterThanOrEqual(2);
    expect(text).toMatch(/looks swapped or misread: a000-000c, .*built February 1984/u);
    expect(text.match(/cars wanted for the .* giving way to the .*: built /gu)).toHaveLength(2);
    const chart = blocks.flatMap((block) => (block.kind === "timeline" ? [block.chart] : []))[0];
    if (chart === undefined || !("lanes" in chart)) throw new Error("a chain has a drawing of its own");
    expect(chart.lanes.map(({ marks }) => marks.length)).toEqual([5, 4, 4]);
    expect(chart.changes).toHaveLength(2);
    expect(changeoverPicture(chart)).toContain("</svg>");
  });

  test("one of them that is asked for is told by itself", async () => {
    const text = textOf(await blocksOf(seen, "when did the crackle panel change?"));
    expect(text).not.toContain("All changes at once");
  });
});

test("trims in each market stand apart when enough of them were seen, and it is said from whom they borrow", async () => {
  const seen = [0, 1, 2, 3].flatMap((group) =>
    cars.slice(0, 8).map((car) => ({
      ...car,
      car: { market: group % 2 === 0 ? "home" : "america", trim: group < 2 ? "s" : "standard" },
    })),
  );
  const text = textOf(await blocksOf(seen, "changeovers of the rear spoiler"));
  expect(text).toMatch(/, Home market: about .*; with the others: /u);
  expect(text).toContain("Within a market each trim leans on the other trims of that market");
});

describe("lead times", () => {
  test("of every mark of a part stand with what they rest on", async () => {
    const text = textOf(await blocksOf([], "lead times of the door mirror"));
    expect(text).toContain("How long before the car the door mirror was dated:");
    expect(text).toMatch(
      /from the casting dial to the week mark on the glass most take .* months, as the handbook has it/u,
    );
    expect(text.match(/ {2}- from the /gu)).toHaveLength(3);
    expect(
      textOf(await blocksOf([], "lead times")).match(/How long before the car/gu)?.length,
    ).toBeGreaterThan(3);
  });

  test("glass of the week before the car leaves hardly time, which is not to come after it", async () => {
    const talk = await talkWith([]);
    const read = "week mark on the glass is week 23 of 1982";
    const said = await talk.say(`(ann) door mirror on my Shrike S built 14 june 1982, ${read}`);
    expect(said).toContain(
      "(7 to 13 June 1982) leaves hardly time before the car's build date (14 June 1982)",
    );
    expect(said).not.toContain("comes after");
  });

  test.each([
    ["week 14 of 1982", "they go together"],
    ["week 50 of 1982", "dated after the car was built, which is no lead at all"],
    ["week 2 of 1978", "long on the shelf"],
  ])("glass of %s in a car of June 1982: %s", async (read, verdict) => {
    const talk = await talkWith([]);
    await talk.say(`(ann) door mirror on my Shrike S built june 1982, week mark on the glass is ${read}`);
    expect(await talk.say("(ann) lead times")).toContain(verdict);
  });
});
