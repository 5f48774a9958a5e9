/** An answer from general trade knowledge: all readings with why and on whose word, what it cannot say, what to look at. */
import type { TradeAnswer } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import { tradeReadingLine, tradeReadingsLead } from "../phrases/trade.ts";
import { cautionsBlock } from "./say-cautions.ts";

/** More readings than this are shown shortened; the first are the likeliest. */
const mostReadings = 6;

export function sayTradeAnswer(answer: TradeAnswer): readonly Block[] {
  const items = answer.readings
    .slice(0, mostReadings)
    .map(({ reading, why, basis }) => tradeReadingLine(reading, why, basis));
  const cautions = cautionsBlock(answer.cautions);
  return [
    { kind: "list", lead: tradeReadingsLead(answer.topic, answer.readings.length), items },
    ...(cautions === undefined ? [] : [cautions]),
    { kind: "text", text: [answer.cannotSay, answer.lookNext].filter((line) => line !== "").join(" ") },
  ];
}
