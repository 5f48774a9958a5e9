// One whole turn (read, infer, choose, reply) on the demo handbook, over real messages and pressed answers.

import { annotatedMessages } from "../../support/corpus-folder.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";

import { figuresOfTurns } from "../figures-of-times.ts";
import type { Row } from "../row.ts";
import { timesOfTurns } from "../times-of-turns.ts";

const WARM_UP = 1000;
const TURNS = 3000;
const START = 12;

export const turnOnDemo: Row = {
  name: "turn-on-demo",
  about: `one whole turn, ${TURNS} messages and pressed answers, least of three plays`,
  starts: [START],
  measure: () => {
    const talk = {
      knowledge: demoKnowledge(),
      today: demoToday,
      texts: annotatedMessages("development").map(({ text }) => text),
      length: 12,
    };
    return figuresOfTurns(timesOfTurns(talk, { start: START, turns: TURNS, warmUp: WARM_UP }), 5);
  },
};
