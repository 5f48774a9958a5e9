/**
 * Fits the judge's weights to the development messages and writes them down: node test/judge/fit.ts. With a writer's name
 * that writer is left out and the table only printed, so that what was learnt can be tried on somebody unseen.
 */
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { groundNames } from "../../knowledge/language/grounds.ts";
import { demoLexicon } from "../support/demo-lexicon.ts";
import { fittedTable } from "./fitted-table.ts";

const leftOut = process.argv[2];
const table = fittedTable(await demoLexicon(), leftOut);
const header = `// What each ground weighs with the judge, in nats: learnt by \`node test/judge/fit.ts\` from the development messages of
// test/corpus, by ridge regression. Written by that script; a test fits again and compares. Not to be mended by hand.
import type { GroundName } from "./grounds.ts";
`;
const lines = groundNames.map(
  (name) => `  ${/^\w+$/.test(name) ? name : `"${name}"`}: ${table.weights.get(name) ?? 0},`,
);
const text = `${header}
export const bias = ${table.bias};

export const judgeWeights: Readonly<Record<GroundName, number>> = {
${lines.join("\n")}
};
`;
const target = fileURLToPath(new URL("../../knowledge/language/judge-weights.ts", import.meta.url));
if (leftOut === undefined || process.argv[3] === "write") writeFileSync(target, text);
else process.stdout.write(text);
