/** An answer from general trade knowledge: all readings with why and on whose word, what it cannot say, what to look at. */
import type { TradeAnswer } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import { sentence } from "../phrases/grammar.ts";
import { tradeReadingLine, tradeReadingsLead } from "../phrases/trade.ts";
import { cautionLines, cautionsBlock } from "./say-cautions.ts";

/** More readings than this are shown shortened; the first are the likeliest. */
const mostReadings = 6;

export function sayTradeAnswer(answer: TradeAnswer): readonly Block[] {
  const items = answer.readings
    .slice(0, mostReadings)
    .map(({ reading, why, basis }) => tradeReadingLine(reading, why, basis));
  return [
    { kind: "list", lead: tradeReadingsLead(answer.topic, items.length, answer.readings.length), items },
    ...cautionsUnsaid(answer),
    { kind: "text", text: [answer.cannotSay, answer.lookNext].filter((line) => line !== "").join(" ") },
  ];
}

/** An answer that is itself the caution gives it once. */
function cautionsUnsaid({ cautions, readings }: TradeAnswer): readonly Block[] {
  const said = new Set(readings.map(({ reading }) => sentence(reading)));
  const unsaid = cautions.filter((id) => !cautionLines([id]).some((line) => said.has(line)));
  return [cautionsBlock(unsaid)].filter((block) => block !== undefined);
}
