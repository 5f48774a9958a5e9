// `npm run fuzz`: what strangers may send, drawn from grammars and broken from sound examples, at every door that reads. A finding names the
// number that chance started from; --start with it, --runs 1 and --only tries that one again. Exit status 1 when anything did not hold.
import { parseArgs } from "node:util";
import { chanceFrom } from "../support/random-tables.ts";
import { buttons, pages } from "./doors.ts";
import { handbooks, messages, sheets, sightings } from "./reading.ts";
import type { Target } from "./target.ts";

const targets: readonly Target[] = [messages, handbooks, sheets, sightings, pages, buttons];
const MOST_SHOWN = 10;

const { values } = parseArgs({
  options: {
    only: { type: "string" },
    runs: { type: "string", default: "300" },
    start: { type: "string", default: "1" },
    json: { type: "boolean", default: false },
  },
});
const chosen = targets.filter(({ name }) => values.only === undefined || name === values.only);
if (chosen.length === 0) {
  process.stderr.write(`fuzz: --only: one of ${targets.map(({ name }) => name).join(", ")} is needed\n`);
  process.exit(2);
}

const runs = Number(values.runs);
const start = Number(values.start);
const results: { readonly name: string; readonly runs: number; readonly findings: readonly string[] }[] = [];
for (const target of chosen) {
  const from = performance.now();
  const findings = await attempted(target);
  results.push({ name: target.name, runs, findings });
  if (values.json) continue;
  const seconds = ((performance.now() - from) / 1000).toFixed(0);
  process.stdout.write(
    `${target.name}: ${target.about}; ${runs} from ${start}, ${seconds} s: ${findings.length} findings\n`,
  );
  for (const finding of findings.slice(0, MOST_SHOWN)) process.stdout.write(`  ${finding}\n`);
}
if (values.json) process.stdout.write(`${JSON.stringify(results)}\n`);
process.exitCode = results.every(({ findings }) => findings.length === 0) ? 0 : 1;

async function attempted({ open }: Target): Promise<readonly string[]> {
  const target = await open();
  const findings: string[] = [];
  try {
    for (let number = start; number < start + runs; number += 1) {
      try {
        const finding = await target.attempt(chanceFrom(number));
        if (finding !== undefined) findings.push(`${number}: ${finding}`);
      } catch (failure) {
        findings.push(
          `${number}: ${failure instanceof Error ? (failure.stack ?? failure.message) : String(failure)}`,
        );
      }
    }
  } finally {
    await target.close();
  }
  return findings;
}
