// `npm run fuzz`: what strangers may send, drawn from grammars and broken from sound examples, at every door that reads. A finding names the
// recipe that it was drawn by; --again RECIPE and --only try that one again. --guided: what reaches new code is kept and changed on. Exit
// status 1 when anything did not hold.
import { parseArgs } from "node:util";
import { community } from "./community.ts";
import { buttons, pages } from "./doors.ts";
import { guided, outcomeOf } from "./guided.ts";
import { imported } from "./imported.ts";
import { drawings, photographs } from "./pictures.ts";
import { handbooks, messages, sheets, sightings } from "./reading.ts";
import { chanceOf, type Recipe, readRecipe } from "./recipe.ts";
import type { Target } from "./target.ts";

const targets: readonly Target[] = [
  messages,
  community,
  handbooks,
  sheets,
  sightings,
  imported,
  drawings,
  photographs,
  pages,
  buttons,
];
const MOST_SHOWN = 10;

const { values } = parseArgs({
  options: {
    only: { type: "string" },
    runs: { type: "string", default: "300" },
    start: { type: "string", default: "1" },
    again: { type: "string" },
    guided: { type: "boolean", default: false },
    json: { type: "boolean", default: false },
  },
});

function refuse(words: string): never {
  process.stderr.write(`fuzz: ${words}\n`);
  process.exit(2);
}

const chosen = targets.filter(({ name }) => values.only === undefined || name === values.only);
if (chosen.length === 0) refuse(`--only: one of ${targets.map(({ name }) => name).join(", ")} is needed`);
const again = values.again === undefined ? undefined : readRecipe(values.again);
if (values.again !== undefined && again === undefined) refuse("--again: the recipe of a finding is needed");

const runs = Number(values.runs);
const start = Number(values.start);
const results: (Result & { readonly name: string })[] = [];

interface Result {
  readonly findings: readonly string[];
  readonly runs: number;
  /** How far it came, where that was looked at. */
  readonly reached?: string;
}

for (const target of chosen) {
  const from = performance.now();
  const result = await resultOf(target);
  results.push({ name: target.name, ...result });
  if (values.json) continue;
  const seconds = ((performance.now() - from) / 1000).toFixed(0);
  const { findings, reached = "" } = result;
  process.stdout.write(
    `${target.name}: ${target.about}; ${result.runs} from ${start}${reached}, ${seconds} s: ${findings.length} findings\n`,
  );
  for (const finding of findings.slice(0, MOST_SHOWN)) process.stdout.write(`  ${finding}\n`);
}
if (values.json) process.stdout.write(`${JSON.stringify(results)}\n`);
process.exitCode = results.every(({ findings }) => findings.length === 0) ? 0 : 1;

async function resultOf(target: Target): Promise<Result> {
  if (again !== undefined) return { runs: 1, findings: await attempted(target, [again]) };
  if (values.guided) {
    const { findings, kept, places } = await guided(target, start, runs);
    return { runs, findings, reached: `, ${places} places in the code reached, ${kept} attempts kept` };
  }
  const recipes = Array.from({ length: runs }, (_, index) => ({ start: start + index, changes: [] }));
  return { runs, findings: await attempted(target, recipes) };
}

async function attempted({ open }: Target, recipes: readonly Recipe[]): Promise<readonly string[]> {
  const target = await open();
  const findings: string[] = [];
  try {
    for (const recipe of recipes) {
      const finding = await outcomeOf(() => target.attempt(chanceOf(recipe)));
      if (finding !== undefined) findings.push(`${recipe.start}: ${finding}`);
    }
  } finally {
    await target.close();
  }
  return findings;
}
