// The one path over the ports: what is stored, what is logged, and what happens when several speak at once.
import { describe, expect, test } from "vitest";
import { memoryStore } from "../../adapters/store/memory.ts";
import { type Clock, communityMemories, type Log, receiver, type Store } from "../../bot/index.ts";
import { demoKnowledge, demoToday } from "../support/demo-knowledge.ts";

interface Line {
  readonly level: string;
  readonly fields: object;
  readonly message: string;
}

function surroundings(store: Store = memoryStore()) {
  const lines: Line[] = [];
  const logged =
    (level: string) =>
    (fields: object, message: string): void => {
      lines.push({ level, fields, message });
    };
  const log: Log = { info: logged("info"), warn: logged("warn"), error: logged("error") };
  let milliseconds = 0;
  const clock: Clock = {
    today: () => demoToday,
    milliseconds() {
      milliseconds += 3;
      return milliseconds;
    },
  };
  const memories = communityMemories(store);
  const around = { store, memories, clock, log, platform: "test", secretKey: "a secret for tests only" };
  const receive = receiver({ ...around, knowledge: () => [demoKnowledge()] });
  return { receive, lines, store };
}

const said = (text: string) => ({ conversation: "workshop", from: "owner", text });

describe("receiving a message", () => {
  test("a case goes on over messages that come one by one", async () => {
    const { receive } = surroundings();
    await receive(said("rear spoiler, rough inside"));
    const reply = await receive(said("square tips"));
    expect(reply.summary.understood.map((fact) => fact.feature)).toEqual(["inside-finish", "tips"]);
  });

  test("messages sent at the same moment are taken in turn, and none is lost", async () => {
    const { receive } = surroundings();
    const replies = await Promise.all(
      ["rear spoiler, rough inside", "square tips", "two drain notches"].map((text) => receive(said(text))),
    );
    expect(replies.at(-1)?.summary.understood).toHaveLength(3);
  });

  test("one line is logged a question, with platform, outcome, variants left and milliseconds", async () => {
    const { receive, lines } = surroundings();
    const reply = await receive(said("rear spoiler, rough inside"));
    expect(lines).toEqual([
      {
        level: "info",
        fields: {
          platform: "test",
          outcome: "asked",
          variantsLeft: reply.summary.uncertainty.remaining.length,
          milliseconds: 3,
        },
        message: "question answered",
      },
    ]);
  });

  test.each([
    [["rear spoiler", ...Array.from({ length: 5 }, () => "cannot tell")], "left open"],
    [["hello"], "part unknown"],
    [["door mirror, pressed steel, clamp on, bright, 64 mm foot"], "corvane-bullet"],
  ])("the outcome of %j is logged as %s", async (texts, outcome) => {
    const { receive, lines } = surroundings();
    for (const text of texts) await receive(said(text));
    expect(lines.at(-1)?.fields).toMatchObject({ outcome });
  });

  test("no log line carries what was said", async () => {
    const { receive, lines } = surroundings();
    await receive(said("rear spoiler with an unusual sticker"));
    expect(JSON.stringify(lines)).not.toContain("sticker");
  });

  test("a message that is delivered twice counts once and is answered alike", async () => {
    const { receive, store } = surroundings();
    const once = { ...said("rear spoiler, rough inside"), id: "m1" };
    const reply = await receive(once);
    await receive({ ...said("square tips"), id: "m2" });
    expect(await receive(once)).toEqual(JSON.parse(JSON.stringify(reply)));
    expect(await store.history("conversation", "workshop")).toHaveLength(2);
  });

  test("every message is a version of its conversation: who, when, and whether it was said or pressed", async () => {
    const { receive, store } = surroundings();
    await receive({ ...said("rear spoiler"), id: "m1" });
    await receive({ conversation: "workshop", from: "otis", answer: { feature: "tips", state: "square" } });
    const history = await store.history("conversation", "workshop");
    expect(history.map(({ by, why, message }) => ({ by, why, message }))).toEqual([
      { by: "owner", why: "said", message: "m1" },
      { by: "otis", why: "answered", message: undefined },
    ]);
    expect(history.every(({ at }) => at > 0)).toBe(true);
  });

  test("a damaged state is warned of and a new conversation begun", async () => {
    const store = memoryStore();
    const change = { kind: "conversation", id: "workshop", by: "somebody", at: 0, why: "damaged" };
    await store.advance(change, () => ({ state: { version: 1, cases: "gone" }, outcome: null }));
    const { receive, lines } = surroundings(store);
    const reply = await receive(said("rear spoiler, rough inside"));
    expect(reply.summary.part).toBe("rear-spoiler");
    expect(lines.map((line) => line.level)).toEqual(["warn", "info"]);
  });

  test("a store that cannot write rejects, and the message is answered once it can", async () => {
    const sound = memoryStore();
    let isDiskFull = true;
    const store: Store = {
      ...sound,
      advance: (change, advance) =>
        isDiskFull ? Promise.reject(new Error("no disk")) : sound.advance(change, advance),
    };
    const { receive, lines } = surroundings(store);
    await expect(receive(said("hello"))).rejects.toThrow("no disk");
    await expect(receive(said("hello"))).rejects.toThrow("no disk");
    expect(lines).toEqual([]);
    isDiskFull = false;
    await expect(receive(said("hello"))).resolves.toBeDefined();
  });
});
