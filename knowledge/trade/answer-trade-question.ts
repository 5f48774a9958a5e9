// The front of the room: a question in plain words, answered from general trade knowledge with every reading that
// fits, on whose word, and what it cannot say. When not sure that it is such a question, it stays silent.

import { boltCircleTopic } from "./asking/bolt-circle-topic.ts";
import { dateCodeTopic, glassDateTopic, tyreDateTopic } from "./asking/date-topics.ts";
import { boltHeadTopic, spannerTopic, threadTopic } from "./asking/fastener-topics.ts";
import { areaWeightTopic, densityLookupTopic, namedProcessTopic } from "./asking/lookup-topics.ts";
import { approvalTopic, beltMirrorTopic, glassMarkTopic, lampTopic } from "./asking/marking-topics.ts";
import { densityTopic, materialMarkTopic, processTopic } from "./asking/material-topics.ts";
import { plainAnswerTopic } from "./asking/plain-answer-topic.ts";
import { type TopicReader, type TradeContext, toTradeQuestion } from "./asking/trade-question.ts";
import { loadIndexTopic, speedSymbolTopic, tyreGradesTopic, tyreSizeTopic } from "./asking/tyre-topics.ts";
import { unitTopic } from "./asking/unit-topic.ts";
import {
  cautionTopic,
  datedRuleTopic,
  paintTopic,
  provenanceTopic,
  spreadTopic,
  wiringTopic,
} from "./asking/vehicle-topics.ts";
import { vinTopic } from "./asking/vin-topic.ts";
import { backSpaceTopic, rimTopic, wheelMarkTopic } from "./asking/wheel-topics.ts";
import { readTradeEvidence } from "./read-trade-evidence.ts";
import type { TradeAnswer, TradeReading } from "./trade-reading.ts";
import { maskVins } from "./vin.ts";

// The most exact marks first, so that a looser topic never takes a question from its owner.
const TOPICS: readonly TopicReader[] = [
  vinTopic,
  materialMarkTopic,
  densityTopic,
  cautionTopic,
  tyreDateTopic,
  backSpaceTopic,
  boltCircleTopic,
  loadIndexTopic,
  tyreSizeTopic,
  speedSymbolTopic,
  tyreGradesTopic,
  rimTopic,
  datedRuleTopic,
  glassDateTopic,
  glassMarkTopic,
  beltMirrorTopic,
  lampTopic,
  wheelMarkTopic,
  unitTopic,
  spannerTopic,
  threadTopic,
  boltHeadTopic,
  approvalTopic,
  wiringTopic,
  dateCodeTopic,
  processTopic,
  areaWeightTopic,
  namedProcessTopic,
  densityLookupTopic,
  paintTopic,
  provenanceTopic,
  spreadTopic,
  plainAnswerTopic,
];

function maskReading(reading: TradeReading): TradeReading {
  return { reading: maskVins(reading.reading), why: maskVins(reading.why), basis: reading.basis };
}

/**
 * The answer to a trade question in plain words, or undefined when the message is not surely one (a description
 * of a part in the middle of an identification is not). `era` are the years of the case, `today` bounds dates.
 * At most 2,000 characters are read. Vehicle numbers come back with their last six hidden.
 */
export function answerTradeQuestion(text: string, context: TradeContext): TradeAnswer | undefined {
  const question = toTradeQuestion(text, context);
  for (const topic of TOPICS) {
    const answer = topic(question);
    if (answer !== undefined) {
      return {
        ...answer,
        isAsked: question.isAsking && !question.isPlainMark,
        readings: answer.readings.map(maskReading),
        evidence: readTradeEvidence(text, context),
      };
    }
  }
  return undefined;
}
