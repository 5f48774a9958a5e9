// Observations that a keeper takes in from a list, as rows or as JSON, broken: whatever of it is taken in, the community goes on: what was
// asked before can be asked after, shown, and taken out again.

import { memoryStore } from "../../adapters/store/memory.ts";
import { type Bot, communityMemories, openBot } from "../../bot/index.ts";
import { clockFrom } from "../support/community-talk.ts";
import { demoKnowledge } from "../support/demo-knowledge.ts";
import { pick } from "../support/draws.ts";
import { silentLog } from "../support/logs.ts";
import { keepSeen, seenCar } from "../support/seen-cars.ts";
import { brokenText, wellFormed } from "./pieces.ts";
import { processorMilliseconds, SLOW_MILLISECONDS, shown, type Target } from "./target.ts";

const AFTERWARDS = [
  "which rear spoiler is this? rough inside, built may 1980",
  "when did the rear spoiler change",
  "observations",
  "cars wanted",
  "queue",
  "export observations as csv",
  "export observations as json",
];

export const imported: Target = {
  name: "imported",
  about: "lists of observations, broken, taken in by a keeper; then what others ask",
  async open() {
    const lists = [await listOf("csv"), await listOf("json")];
    // The first time much is compiled and worked out, which is nobody's fault.
    for (const words of AFTERWARDS) await asked(club().bot, words);
    return {
      close: async () => undefined,
      async attempt(chance) {
        const list = pick(chance, lists);
        const broken = wellFormed(brokenText(chance, list, list));
        const { bot } = club();
        for (const words of [`import observations:\n${broken}`, ...AFTERWARDS]) {
          const from = processorMilliseconds();
          const { blocks } = await asked(bot, words);
          const took = processorMilliseconds() - from;
          if (blocks.length === 0) return `no answer to ${shown(words)} after ${shown(broken)}`;
          if (took > SLOW_MILLISECONDS)
            return `took ${took.toFixed(0)} ms: ${shown(words)} after ${shown(broken)}`;
        }
        return undefined;
      },
    };
  },
};

function club() {
  const store = memoryStore();
  const bot = openBot({
    knowledge: () => [demoKnowledge()],
    store,
    memories: communityMemories(store),
    clock: clockFrom(),
    log: silentLog,
    platform: "club",
    secretKey: "a secret that only tests know, and they tell everybody",
  });
  return { store, bot };
}

function asked(bot: Bot, text: string) {
  return bot.receive({ conversation: "club:bench", from: "olga", standing: "owner", isPrivate: true, text });
}

/** A list as it goes out, over many lines so that each can be broken. */
async function listOf(form: "csv" | "json"): Promise<string> {
  const { store, bot } = club();
  await keepSeen(
    store,
    Array.from({ length: 8 }, (_, number) =>
      seenCar(number, {
        variant: number < 4 ? "first-drained" : "second",
        year: 1978 + Math.floor(number / 2),
        month: 1 + number,
        stands: number === 7 ? "waiting" : "accepted",
      }),
    ),
  );
  const { blocks } = await asked(bot, `export observations as ${form}`);
  const text = blocks.flatMap((block) => (block.kind === "file" ? [block.text] : [])).join("");
  if (text === "") throw new Error("nothing goes out");
  return form === "csv" ? text : JSON.stringify(JSON.parse(text), undefined, 1);
}
