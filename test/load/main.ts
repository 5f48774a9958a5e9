// `npm run load`: everything at once, as it is run: Discord, Telegram, pages and a forum at one process, or at several on one Postgres, while
// a thousand people ask, record and pin, and things go wrong. What the store holds afterwards is compared with what was said and answered.
// Exit status 1 when anything was lost, doubled, refused or never answered. Nothing is kept on disk.
import { availableParallelism, loadavg } from "node:os";
import { parseArgs } from "node:util";
import { type FaultName, faultNames } from "./faults.ts";
import type { Outcome } from "./outcome.ts";
import { runOf, type Scenario } from "./run.ts";
import type { DoorName } from "./speaker.ts";

const usage = `npm run load -- [options]
  --processes N       1; more than one bring a Postgres along
  --postgres          a Postgres for one process, too
  --conversations N   1000
  --rate N            things said a second, all together; 20
  --doors LIST        discord,telegram,web,forum
  --discord-in-all    every process logs in to Discord, not the first alone
  --faults LIST       of ${faultNames.join(", ")}; "all"; none when left out
  --history N         how many times the conversations are there already; 0
  --handbook N        how many times the part kinds of the demonstration; 1
  --start N           the number chance starts from; 1
  --profiles FOLDER   what each process did with the processor goes there, as V8 writes it
  --json
`;

const doorNames: readonly DoorName[] = ["discord", "telegram", "web", "forum"];

function scenarioOf(words: readonly string[]): { readonly scenario: Scenario; readonly isJson: boolean } {
  const { values } = parseArgs({
    args: [...words],
    options: {
      processes: { type: "string", default: "1" },
      postgres: { type: "boolean", default: false },
      conversations: { type: "string", default: "1000" },
      rate: { type: "string", default: "20" },
      doors: { type: "string", default: doorNames.join(",") },
      "discord-in-all": { type: "boolean", default: false },
      faults: { type: "string", default: "" },
      history: { type: "string", default: "0" },
      handbook: { type: "string", default: "1" },
      start: { type: "string", default: "1" },
      profiles: { type: "string" },
      json: { type: "boolean", default: false },
    },
  });
  const processes = number("processes", values.processes);
  return {
    isJson: values.json,
    scenario: {
      processes,
      postgres: values.postgres || processes > 1,
      conversations: number("conversations", values.conversations),
      rate: number("rate", values.rate),
      doors: oneOf("doors", values.doors, doorNames),
      discordInAll: values["discord-in-all"],
      faults: values.faults === "all" ? faultNames : oneOf<FaultName>("faults", values.faults, faultNames),
      history: number("history", values.history),
      handbook: number("handbook", values.handbook),
      start: number("start", values.start),
      profiles: values.profiles,
      note: (line) => process.stderr.write(`  ${line}\n`),
    },
  };
}

function number(name: string, text: string): number {
  if (!/^\d+$/u.test(text)) throw new RangeError(`--${name}: a whole number is needed`);
  return Number(text);
}

function oneOf<Name extends string>(name: string, text: string, known: readonly Name[]): readonly Name[] {
  return text
    .split(",")
    .filter((word) => word !== "")
    .map((word) => {
      const found = known.find((one) => one === word);
      if (found === undefined) throw new RangeError(`--${name}: ${known.join(", ")} are known`);
      return found;
    });
}

function linesOf({
  problems,
  errors,
  said,
  answered,
  seconds,
  busiest,
  latency,
  used,
  own,
  store,
}: Outcome): readonly string[] {
  const whole = (value: number) => value.toFixed(0).padStart(8);
  return [
    `said ${said.once}, again ${said.again}, answered ${answered} in ${seconds.toFixed(0)} s: ${(answered / seconds).toFixed(1)} a second, at its busiest ${busiest.toFixed(1)}`,
    "until the answer can be read, ms     p50     p95     p99    most  answers",
    ...Object.entries(latency).map(
      ([door, { p50, p95, p99, most, answers }]) =>
        `  ${door.padEnd(27)}${whole(p50)}${whole(p95)}${whole(p99)}${whole(most)}${whole(answers)}`,
    ),
    ...used.map(
      ({ before, after, heap, processor }, index) =>
        `process ${index + 1}: ${before.toFixed(0)} MB before, ${after.toFixed(0)} MB after, of it ${heap.toFixed(0)} MB heap; ${processor.toFixed(2)} of a processor`,
    ),
    `${((1000 * seconds * used.reduce((sum, { processor }) => sum + processor, 0)) / answered).toFixed(1)} ms of a processor an answer`,
    `people and platforms themselves: ${own.toFixed(2)} of a processor`,
    `store: ${store.records} records, ${store.versions} versions`,
    ...Object.entries(errors).map(([words, count]) => `logged as an error ${count} times: ${words}`),
    ...problems.map((problem) => `PROBLEM ${problem}`),
    problems.length === 0 ? "nothing lost, nothing twice, nobody unanswered" : `${problems.length} problems`,
  ];
}

const machine = () =>
  `load of the machine ${loadavg()[0]?.toFixed(1)} on ${availableParallelism()} processors`;

try {
  const { scenario, isJson } = scenarioOf(process.argv.slice(2));
  const { note: _, ...asked } = scenario;
  if (!isJson) process.stdout.write(`${JSON.stringify(asked)}\n${machine()}\n`);
  const outcome = await runOf(scenario);
  // Without a fault nothing may be logged as an error either.
  const isWell =
    outcome.problems.length === 0 && (asked.faults.length > 0 || Object.keys(outcome.errors).length === 0);
  process.stdout.write(
    isJson ? `${JSON.stringify({ asked, ...outcome })}\n` : `${linesOf(outcome).join("\n")}\n${machine()}\n`,
  );
  process.exitCode = isWell ? 0 : 1;
} catch (failure) {
  if (!(failure instanceof RangeError)) throw failure;
  process.stderr.write(`load: ${failure.message}\n\n${usage}`);
  process.exitCode = 2;
}
