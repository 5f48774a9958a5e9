// Handbooks about something else than cars: nothing the bot says may speak of cars, and what people say of their things is understood.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { memoryStore } from "../../adapters/store/memory.ts";
import { greetingFor } from "../../adapters/terminal/greeting.ts";
import {
  answerCard,
  communityMemories,
  emptyConversation,
  type Knowledge,
  knowledgeOf,
  openBot,
  plainText,
  step,
  wordedFor,
} from "../../bot/index.ts";
import { type Handbook, loadHandbook, reviewHandbook } from "../../knowledge/index.ts";
import { clockFrom, silentLog } from "../support/community-talk.ts";
import { demoToday } from "../support/demo-knowledge.ts";

const shipped = "knowledge/handbooks";

function filesOf(id: string) {
  const folder = join(shipped, id);
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(yaml|svg)$/u.test(entry.name))
    .map((entry) => {
      const path = join(entry.parentPath, entry.name);
      return { path: path.slice(folder.length + 1), text: readFileSync(path, "utf8") };
    });
}

function handbook(id: string): Handbook {
  const loaded = loadHandbook(filesOf(id));
  if (!loaded.ok) throw new Error(`${id} is not sound`);
  return loaded.handbook;
}

function talkAbout(...ids: readonly string[]) {
  const known: readonly Knowledge[] = ids.map((id) => knowledgeOf(handbook(id)));
  const store = memoryStore();
  const around = {
    store,
    memories: communityMemories(store),
    clock: clockFrom(),
    log: silentLog,
    secretKey: "tests only",
  };
  const bot = openBot({ ...around, knowledge: () => known, platform: "club" });
  return (text: string) => bot.receive({ conversation: "club:1", from: "ann", text });
}

describe("a community of sewing machines", () => {
  const messages = [
    "help",
    "which face plate is this? engraved scroll, nickel, my machine was built in 1936",
    "straight lines on the back",
    "why",
    "is it right for my machine?",
    "what should my machine have?",
    "what do you know so far?",
    "what would fit without drilling?",
    "new case: hand wheel, six spokes, a magnet does not hold",
    "how do I check?",
    "compare the two",
    "show the sources",
    "it is a loose part",
    "how much is it worth?",
    "start over",
  ];

  test("is told of machines, and never of cars", async () => {
    const say = talkAbout("ollerton-finch");
    for (const message of messages) {
      const text = plainText(await say(message));
      expect(text.replaceAll(/“[^”]*”/gu, "")).not.toMatch(/\bcars?\b/iu);
    }
  });

  test("is told of machines on the pages of its answers and its sheet", () => {
    const finch = knowledgeOf(handbook("ollerton-finch"));
    let conversation = emptyConversation;
    for (const text of [
      "which face plate is this? engraved scroll, my machine was built in 1936",
      "is it right for my machine?",
    ])
      ({ conversation } = step(
        finch,
        conversation,
        { conversation: "club:1", from: "ann", text },
        demoToday,
      ));
    const card = answerCard([finch], conversation, { person: "ann" });
    expect(card).toMatchObject({ thing: "machine", car: [{ label: "built", value: "1936" }] });
    expect(JSON.stringify(Object.values(card ?? {}))).not.toMatch(/\bcars?\b/iu);
  });

  test("is understood when it speaks of its machines", async () => {
    const say = talkAbout("ollerton-finch");
    const reply = await say("which face plate is this? my machine was made in 1943");
    expect(reply.summary).toMatchObject({ part: "face-plate", car: { built: "1943" } });
    const goal = await say("is it right for my machine?");
    expect(goal.summary.goal).toBe("right-for-car");
    expect((await say("what should my machine have?")).summary.goal).toBe("what-should-it-have");
  });

  test("learns that a painted plate with two screws is the wartime one", async () => {
    const say = talkAbout("ollerton-finch");
    await say("which face plate is this? black paint, two slotted screws");
    const { summary } = await say("a magnet holds");
    expect(summary.ranking[0]).toMatchObject({ variant: "wartime" });
  });
});

test("several handbooks serve one community, and each case keeps to its own", async () => {
  const say = talkAbout("wexcombe-shrike", "ollerton-finch", "marlpit-wren");
  expect((await say("which rear spoiler is this? rough inside")).summary.part).toBe("rear-spoiler");
  const plate = await say("which face plate is this?");
  expect(plate.summary.part).toBe("face-plate");
  const latch = await say("and a window catch, plastic lever, on my caravan of 1968");
  expect(latch.summary.part).toBe("window-catch");
  expect(latch.summary.ranking[0]?.variant).toBe("nylon-catch");
  expect(plainText(latch)).not.toMatch(/\bcar\b/u);
});

test.each(["ollerton-finch", "marlpit-wren"])("%s gets no remark from a critic", (id) => {
  expect(reviewHandbook(filesOf(id)).remarks).toEqual([]);
});

test("the second demonstration has more than one part kind, eight variants and twelve features", () => {
  const { parts } = handbook("ollerton-finch");
  expect(parts.length).toBeGreaterThan(1);
  expect(parts.flatMap(({ variants }) => variants).length).toBeGreaterThanOrEqual(8);
  expect(parts.flatMap(({ features }) => features).length).toBeGreaterThanOrEqual(12);
});

test("words are put in with their article, number and capital; quoted words stay", () => {
  const wren = handbook("marlpit-wren");
  const organ = { ...wren, cover: { ...wren.cover, thing: "organ", things: undefined } };
  expect(wordedFor(wren, "Cars like your car’s, a car: “my car”. Carefully.")).toBe(
    "Caravans like your caravan’s, a caravan: “my car”. Carefully.",
  );
  expect(wordedFor(organ, "A car, or a car among cars")).toBe("An organ, or an organ among organs");
});

test("a terminal greets in the handbook's word", async () => {
  const { lines, examples } = await greetingFor([handbook("marlpit-wren")]);
  expect(lines[0]).toContain("right for your caravan");
  expect(examples).toContain("is this window catch right for a caravan built in 1967?");
});
