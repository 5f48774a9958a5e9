// The contract of every door: a conversation held through it has the same substance as one held with the bot itself. The golden
// conversations are played twice, and after each turn what the bot was told and what can be read are compared.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { memoryStore } from "../../adapters/store/memory.ts";
import { type Bot, communityMemories, type IncomingMessage, openBot, type Reply } from "../../bot/index.ts";
import { demoKnowledge, demoToday } from "../support/demo-knowledge.ts";
import { parseGolden } from "../support/golden-conversation.ts";
import { silentLog } from "../support/logs.ts";
import type { OpenHarness, Seen } from "./harness.ts";

const folder = join(import.meta.dirname, "../conversations");

/** Each shows something else: choices, measurements, dates, doubts, a second member, several cases, undo. */
const conversations = [
  "01-a-vague-post.txt",
  "02-the-answer.txt",
  "03-right-for-the-car.txt",
  "04-two-facts-that-do-not-go-together.txt",
  "06-cautions.txt",
  "08-undo-and-start-over.txt",
  "09-two-parts-at-once.txt",
  "10-a-number-without-a-unit.txt",
  "15-cannot-tell-anything.txt",
  "25-two-who-disagree.txt",
] as const;

export function contractSuite(platform: string, open: OpenHarness): void {
  describe(`${platform} keeps the substance of a conversation`, () => {
    test.each(conversations)(
      "%s",
      async (name) => {
        const direct = freshBot();
        const { bot, last } = listenedTo(freshBot());
        const harness = await open(bot);
        try {
          let before: Reply | undefined;
          for (const { message, said } of parseGolden(readFileSync(join(folder, name), "utf8"))) {
            const seen = await played(harness, message, before);
            const reply = await direct.receive(message);
            expect({ said, ...substanceOf(last()) }).toEqual({ said, ...substanceOf(reply) });
            expectShown(said, last(), seen);
            before = reply;
          }
        } finally {
          await harness.close();
        }
      },
      120_000,
    );
  });
}

/** A bot with an empty memory, as the contract's conversations begin. */
export function freshBot(): Bot {
  const store = memoryStore();
  return openBot({
    knowledge: () => [demoKnowledge()],
    store,
    memories: communityMemories(store),
    clock: { today: () => demoToday, milliseconds: () => 1_793_500_000_000 },
    log: silentLog,
    secretKey: "a secret of the tests, long enough to be one",
    platform: "contract",
  });
}

function listenedTo(bot: Bot): { readonly bot: Bot; readonly last: () => Reply } {
  let last: Reply | undefined;
  return {
    bot: {
      ...bot,
      async receive(message) {
        last = await bot.receive(message);
        return last;
      },
    },
    last() {
      if (last === undefined) throw new Error("the door told the bot nothing");
      return last;
    },
  };
}

/** A press in the script names feature and state; a member presses the label they read. */
async function played(
  harness: Awaited<ReturnType<OpenHarness>>,
  message: IncomingMessage,
  before: Reply | undefined,
): Promise<Seen> {
  const { answer, from } = message;
  if (answer === undefined) return harness.say(from, message.text ?? "");
  const question = before?.blocks.findLast((block) => block.kind === "question");
  const choice = question?.answers.find(({ id }) => "state" in answer && id === answer.state);
  if (question?.feature !== answer.feature || choice === undefined)
    throw new Error(`the script presses what was not on offer: ${JSON.stringify(answer)}`);
  return harness.press(from, choice.label);
}

/** What must not depend on the door. */
function substanceOf({ summary }: Reply) {
  const { part, goal, car, understood, ranking, verdict, question, done } = summary;
  return { part, goal, car, understood, ranking, verdict, question: question?.feature ?? null, done };
}

/** The question and everything on offer can be read; nothing of either is lost to the platform's limits. */
function expectShown(said: string, reply: Reply, { texts, controls }: Seen): void {
  const read = inOneLine(texts.join(" "));
  for (const block of reply.blocks) {
    if (block.kind === "text") expect(read, said).toContain(inOneLine(block.text));
    if (block.kind === "cautions")
      for (const line of block.lines) expect(read, said).toContain(inOneLine(line));
    if (block.kind !== "question") continue;
    expect(read, said).toContain(inOneLine(block.text));
    const labels = [...block.answers, ...block.besides].map(({ label }) => inOneLine(label));
    expect(controls.map(inOneLine), said).toEqual(expect.arrayContaining(labels));
  }
}

function inOneLine(text: string): string {
  return text.replaceAll(/\s+/gu, " ").trim();
}
