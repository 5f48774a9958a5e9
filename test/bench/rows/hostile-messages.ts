// A hundred thousand messages that try to break a turn. After each the conversation must still hold all its cases and come
// back whole from JSON, and none may take long: whoever can slow the bot down can silence it. A turn is judged by the time of
// the processor that it took, so that the verdict is ours and not that of whoever shares the machine; the clock stands beside.

import { isDeepStrictEqual } from "node:util";
import { emptyConversation, readConversation, step } from "../../../bot/index.ts";
import { annotatedMessages } from "../../support/corpus-folder.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";
import { hostileMessages as hostile } from "../../support/hostile-messages.ts";
import { leastProcessorMilliseconds, timedOnProcessor } from "../../support/processor-time.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { mean } from "../percentiles.ts";
import type { Figure, Row } from "../row.ts";

const CONVERSATIONS = 8400;
/** Messages of one conversation; conversation k is drawn from START + k. */
const MESSAGES = 12;
const START = 100_000;

export const hostileMessages: Row = {
  name: "hostile-messages",
  about: `${CONVERSATIONS * MESSAGES} hostile messages through the whole turn, ${MESSAGES} a conversation`,
  starts: [START],
  measure: () => {
    const tally: Tally = { broken: [], times: [], worst: nothing, slow: 0, clock: nothing, slowByClock: 0 };
    const texts = annotatedMessages("development").map((message) => message.text);
    const draw = hostile(demoKnowledge().handbook, texts);
    for (let index = 0; index < CONVERSATIONS; index += 1) converse(draw, START + index, tally);
    return figuresOf(tally);
  },
};

interface Tally {
  /** What went wrong, and where. */
  readonly broken: string[];
  /** Of the processor, one a turn. */
  readonly times: number[];
  worst: Slowest;
  slow: number;
  /** By the clock, as the turn came. */
  clock: Slowest;
  slowByClock: number;
}

interface Slowest {
  readonly milliseconds: number;
  readonly where: string;
}

const nothing: Slowest = { milliseconds: 0, where: "" };
const SLOW = 100;

function converse(draw: ReturnType<typeof hostile>, start: number, tally: Tally): void {
  const chance = chanceFrom(start);
  let conversation = emptyConversation;
  for (let number = 1; number <= MESSAGES; number += 1) {
    const message = draw(chance);
    const before = conversation;
    const where = `from ${start}, message ${number}`;
    try {
      const turn = () => step(demoKnowledge(), before, message, demoToday);
      const { onProcessor, byTheClock, result } = timedOnProcessor(turn);
      const least = onProcessor > SLOW / 2 ? Math.min(onProcessor, again(turn)) : onProcessor;
      const what = `${where}, ${message.text?.length ?? 0} characters`;
      tally.times.push(least);
      tally.worst = slower(tally.worst, { milliseconds: least, where: what });
      tally.slow += Number(least > SLOW);
      tally.clock = slower(tally.clock, { milliseconds: byTheClock, where: what });
      tally.slowByClock += Number(byTheClock > SLOW);
      const fault = faultOf(before, result);
      if (fault !== undefined) tally.broken.push(`${where}: ${fault}`);
      conversation = result.conversation;
    } catch (cause) {
      tally.broken.push(`${where}: ${cause instanceof Error ? cause.message : String(cause)}`);
    }
  }
}

/** A slow turn is taken again: the first of its kind has code compiled on the way, and garbage falls to whoever comes. */
function again(turn: () => unknown): number {
  return leastProcessorMilliseconds(2, turn);
}

function slower(one: Slowest, other: Slowest): Slowest {
  return other.milliseconds > one.milliseconds ? other : one;
}

function faultOf(before: typeof emptyConversation, taken: ReturnType<typeof step>): string | undefined {
  const { conversation, reply } = taken;
  if (reply.blocks.length === 0) return "nothing was answered";
  if (JSON.stringify(reply).length === 0) return "the reply is no JSON";
  const kept = new Set(conversation.cases.map(({ id }) => id));
  if (before.cases.some(({ id }) => !kept.has(id))) return "a case is gone";
  const back = readConversation(JSON.parse(JSON.stringify(conversation)));
  if (back === undefined) return "the conversation does not come back from JSON";
  return isDeepStrictEqual(back, conversation) ? undefined : "the conversation comes back changed";
}

function figuresOf({ broken, times, worst, slow, clock, slowByClock }: Tally): readonly Figure[] {
  return [
    {
      what: "turns that failed or lost something",
      value: broken.length,
      unit: "",
      budget: { atMost: 0 },
      remark: broken.slice(0, 3).join("; "),
    },
    { what: `turns over ${SLOW} ms of the processor`, value: slow, unit: "", budget: { atMost: 0 } },
    { what: "slowest turn", value: worst.milliseconds, unit: "ms", remark: worst.where },
    { what: `turns over ${SLOW} ms by the clock, as they came`, value: slowByClock, unit: "" },
    { what: "slowest by the clock", value: clock.milliseconds, unit: "ms", remark: clock.where },
    { what: "mean", value: mean(times), unit: "ms", remark: `${times.length} turns` },
  ];
}
