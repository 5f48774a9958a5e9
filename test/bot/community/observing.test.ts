// Telling what was seen: nothing that somebody sends while they tell it is lost, and nobody is left without a word.
import { describe, expect, test } from "vitest";
import { observationKind } from "../../../bot/community/observations/observations-view.ts";
import { emptyConversation, type IncomingMessage, plainText } from "../../../bot/index.ts";
import { communityTalk } from "../../support/community-talk.ts";

function member() {
  const talk = communityTalk();
  const { bot, store } = talk;
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
  return { talk, send, say, photographsKept };
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

test("somebody who may only ask is told that recording is for members, and how to become one", async () => {
  const { send } = member();
  const reply = await send({ text: "record an observation", standing: "asker" });
  expect(reply).toContain("Recording what was seen is for members of this community");
});

test.each(["observations", "pins"])(
  "an errand of %s in a form that is read no more is left, and the message is answered as any other",
  async (affair) => {
    const { talk, say } = member();
    const change = { kind: "conversation", id: "club:bench", by: "ann", at: 1, why: "said" };
    const errand = { person: "ann", affair, state: { part: "rear-spoiler" } };
    const state = { ...emptyConversation, errands: [errand] };
    await talk.store.advance(change, () => ({ state, outcome: null }));
    expect(await say("rear spoiler")).toContain("I read – part: rear spoiler.");
    expect(await say("record an observation")).toContain("Which kind of rear spoiler was it?");
  },
);
