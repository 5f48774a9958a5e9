/**
 * Learns from the development messages and writes down what was learnt: node test/judge/fit.ts. The words of states go beside
 * the demo handbook, the judge's weights into the reader. Then it prints how each writer is read by what only others taught.
 */
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { groundNames } from "../../knowledge/language/grounds.ts";
import type { JudgeTable } from "../../knowledge/language/judging.ts";
import { messageGroundNames } from "../../knowledge/language/message-grounds.ts";
import { plainDemoLexicon } from "../support/demo-lexicon.ts";
import { judgingOf, learning, wordsOf } from "./learning.ts";
import { developmentMessages, writerOf } from "./taught-messages.ts";
import { figuresOf, scoredUnseen } from "./unseen-writers.ts";

const plain = await plainDemoLexicon();
const learnt = learning(plain, developmentMessages());
const at = (path: string): string => fileURLToPath(new URL(`../../knowledge/${path}`, import.meta.url));

function tableText({ bias, weights }: JudgeTable, names: readonly string[]): string {
  const lines = names.map(
    (name, place) => `    ${/^\w+$/.test(name) ? name : `"${name}"`}: ${weights[place] ?? 0},`,
  );
  return `{
  bias: ${bias},
  weights: {
${lines.join("\n")}
  },
}`;
}

function written(what: string): string {
  return `// ${what}, in nats: learnt by \`node test/judge/fit.ts\` from the development messages of
// test/corpus, by ridge regression. Written by that script; a test fits again and compares. Not to be mended by hand.`;
}

if (process.argv[2] !== "print") {
  writeFileSync(
    at("handbooks/wexcombe-shrike/learnt-words.json"),
    `${JSON.stringify(wordsOf(plain, learnt))}\n`,
  );
  const judging = judgingOf(learnt);
  writeFileSync(
    at("language/judge-weights.ts"),
    `${written("What each ground weighs with the judge")}
import type { GroundName } from "./grounds.ts";

export interface JudgeWeights<Name extends string> {
  readonly bias: number;
  readonly weights: Readonly<Record<Name, number>>;
}

/** For states whose words were learnt. */
export const heardWeights: JudgeWeights<GroundName> = ${tableText(judging.heard, groundNames)};

/** For all others, and for what is denied. */
export const plainWeights: JudgeWeights<GroundName> = ${tableText(judging.plain, groundNames)};
`,
  );
  writeFileSync(
    at("language/message-weights.ts"),
    `${written("What each ground weighs for a message's telling anything")}
import type { JudgeWeights } from "./judge-weights.ts";
import type { MessageGroundName } from "./message-grounds.ts";

/** For messages whose likeliest state has learnt words. */
export const heardMessageWeights: JudgeWeights<MessageGroundName> = ${tableText(judging.heardMessages, messageGroundNames)};

/** For all other messages. */
export const plainMessageWeights: JudgeWeights<MessageGroundName> = ${tableText(judging.plainMessages, messageGroundNames)};
`,
  );
}

const scored = scoredUnseen(learnt);
for (const writer of learnt.foldOf.keys()) {
  const own = scored.filter(({ message }) => writerOf(message) === writer);
  process.stdout.write(figuresOf(writer, own).line);
}
process.stdout.write(figuresOf("all", scored).line);
