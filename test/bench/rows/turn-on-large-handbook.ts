// One whole turn on a part kind far larger than any club has written: what grows with the handbook shows here.

import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { type Knowledge, knowledgeOf } from "../../../bot/index.ts";
import { demoToday } from "../../support/demo-knowledge.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { syntheticHandbook, syntheticMessage } from "../../support/synthetic-handbook.ts";
import { figuresOfTurns } from "../figures-of-times.ts";
import { timed } from "../percentiles.ts";
import type { Row } from "../row.ts";
import { timesOfTurns } from "../times-of-turns.ts";

const VARIANTS = 2000;
const FEATURES = 300;
const WARM_UP = 100;
const TURNS = 500;
const START = 2300;

export const turnOnLargeHandbook: Row = {
  name: "turn-on-large-handbook",
  about: `one whole turn, one part kind of ${VARIANTS} variants and ${FEATURES} features, ${TURNS} turns`,
  starts: [START],
  measure: () => {
    const before = heapMegabytes();
    const handbook = syntheticHandbook({ variants: VARIANTS, features: FEATURES, start: START });
    const { result: knowledge, milliseconds: ready } = timed(() => readyKnowledge(knowledgeOf(handbook)));
    const chance = chanceFrom(START);
    const texts = Array.from({ length: 400 }, () => syntheticMessage(handbook, chance));
    const talk = { knowledge, today: demoToday, texts: ["mirror foot", ...texts], length: 12 };
    const times = timesOfTurns(talk, { start: START, turns: TURNS, warmUp: WARM_UP });
    const after = heapMegabytes();
    return [
      { what: "compiled and its words indexed", value: ready, unit: "ms" },
      ...figuresOfTurns(times, 40),
      { what: "heap after garbage collection", value: after, unit: "MB", budget: { atMost: 400 } },
      {
        what: "of it handbook, compiled tables and words",
        value: after - before,
        unit: "MB",
        remark: sizeOf(knowledge),
      },
    ];
  },
};

function readyKnowledge(knowledge: Knowledge): Knowledge {
  for (const { id } of knowledge.handbook.parts) knowledge.compiled(id);
  return knowledge;
}

/** Said after the heap was measured, so that the knowledge is still held while it is. */
function sizeOf({ handbook }: Knowledge): string {
  return handbook.parts.map((part) => `${part.variants.length} by ${part.features.length}`).join(", ");
}

function heapMegabytes(): number {
  setFlagsFromString("--expose-gc");
  runInNewContext("gc")();
  return process.memoryUsage().heapUsed / 2 ** 20;
}
