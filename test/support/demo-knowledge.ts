// The demo handbook ready for conversation, compiled once for a test file, and the day on which all tests take place.
import { type Knowledge, knowledgeOf } from "../../bot/index.ts";
import { demoHandbook } from "./demo-handbook.ts";

let known: Knowledge | undefined;

export function demoKnowledge(): Knowledge {
  known ??= knowledgeOf(demoHandbook());
  return known;
}

/** 1 November 2026, as an interval in months. */
export const demoToday = { from: 12 * 2026 + 10, to: 12 * 2026 + 10 + 1 / 30 };
