// Telling what was seen: nothing that somebody sends while they tell it is lost, and nobody is left without a word.
import { describe, expect, test } from "vitest";
import { observationKind } from "../../../bot/community/observations/observations-view.ts";
import { type IncomingMessage, plainText } from "../../../bot/index.ts";
import { communityTalk } from "../../support/community-talk.ts";

function member() {
  const { bot, store } = communityTalk();
  const send = async (more: Partial<IncomingMessage>) =>
    plainText(await bot.receive({ conversation: "club:bench", from: "ann", name: "ann", ...more }));
  const say = async (...lines: readonly string[]) => {
    let reply = "";
    for (const text of lines) reply = await send({ text });
    return reply;
  };
  const photographsKept = async () => {
    const [id = ""] = await store.ids(observationKind.kind);
    return observationKind.shape.parse(await store.current(observationKind.kind, id)).saw.photographs;
  };
  return { send, say, photographsKept };
}

describe("photographs while something is recorded", () => {
  test("come with the answer to another question and are kept with it", async () => {
    const { send, say, photographsKept } = member();
    await say("record an observation", "rear spoiler");
    await send({ text: "second spoiler", photographs: ["of-the-tips"] });
    await say("june 1980", "one owner from new", "today", "none", "no", "record it");
    expect(await photographsKept()).toEqual(["of-the-tips"]);
  });

  test("come alone, and the open question is asked again", async () => {
    const { send, say, photographsKept } = member();
    await say("record an observation", "rear spoiler");
    const reply = await send({ photographs: ["of-the-tips", "of-the-inside"] });
    expect(reply).toContain("2 photographs kept with it so far.\nWhich kind of rear spoiler was it?");
    await say("second spoiler", "june 1980", "one owner from new", "today");
    await send({ photographs: ["of-the-car"] });
    await say("no");
    expect(await send({ photographs: ["of-the-label"] })).toContain("4 photographs kept with it so far.");
    await say("record it");
    expect(await photographsKept()).toEqual(["of-the-tips", "of-the-inside", "of-the-car", "of-the-label"]);
  });
});

describe("the car of what is recorded", () => {
  test("is asked for again when its history alone was told, and that is not asked for any more", async () => {
    const { say } = member();
    await say("record an observation", "rear spoiler", "second spoiler");
    expect(await say("one owner from new")).toMatch(/^Which car was it on\?/u);
    expect(await say("june 1980")).toContain("When did you see it?");
    expect(await say("today", "none", "no")).toContain("built June 1980; history: one owner from new;");
  });

  test.each([
    ["june 1980", "built June 1980"],
    ["1980-06", "built June 1980"],
    ["06/80", "built June 1980"],
    ["it was the summer of 1980", "built June to August 1980"],
    ["June '80, shrike S", "trim Shrike S, built June 1980"],
  ])("is told by %j, as its build date is what was asked for", async (text, car) => {
    const { say } = member();
    await say("record an observation", "rear spoiler", "second spoiler");
    expect(await say(text)).toContain("How well is this car’s history known?");
    expect(await say("one owner from new", "today", "none", "no")).toContain(`car: ${car}; history`);
  });
});
