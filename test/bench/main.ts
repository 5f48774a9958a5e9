// `npm run bench`: our budgets measured in one run. Prints one table, or JSON with --json; --only NAME runs one row.
// Exit status 1 when a budget is missed, 2 for a row that does not exist. Nothing is kept on disk.

import { availableParallelism, loadavg } from "node:os";
import { parseArgs } from "node:util";
import { linesOf } from "./page.ts";
import { type Figure, holds, type Row } from "./row.ts";
import { answerPage } from "./rows/answer-page.ts";
import { calibrationOfDemo } from "./rows/calibration-of-demo.ts";
import { calibrationOfOwners } from "./rows/calibration-of-owners.ts";
import { changeoverCells } from "./rows/changeover-cells.ts";
import { changeoverCoverageRow } from "./rows/changeover-coverage.ts";
import { changeoverTimes } from "./rows/changeover-times.ts";
import { discordAcknowledgement } from "./rows/discord-acknowledgement.ts";
import { discordSession } from "./rows/discord-session.ts";
import { durableMessagesRow } from "./rows/durable-messages.ts";
import { factsRead } from "./rows/facts-read.ts";
import { hostileMessages } from "./rows/hostile-messages.ts";
import { hundredThousandObservations } from "./rows/hundred-thousand-observations.ts";
import { listingRecords } from "./rows/listing-records.ts";
import { policyAgainstForm } from "./rows/policy-against-form.ts";
import { policyOnDemo } from "./rows/policy-on-demo.ts";
import { policyOnRandomTables } from "./rows/policy-on-random-tables.ts";
import { posteriorAgainstNetwork } from "./rows/posterior-against-network.ts";
import { readingMessages } from "./rows/reading-messages.ts";
import { start } from "./rows/start.ts";
import { telegramSession } from "./rows/telegram-session.ts";
import { turnOnDemo } from "./rows/turn-on-demo.ts";
import { turnOnLargeHandbook } from "./rows/turn-on-large-handbook.ts";

// Times first, while nothing else has warmed or filled the process.
const rows: readonly Row[] = [
  start,
  turnOnDemo,
  readingMessages,
  factsRead,
  turnOnLargeHandbook,
  hundredThousandObservations,
  posteriorAgainstNetwork,
  changeoverTimes,
  calibrationOfOwners,
  calibrationOfDemo,
  policyOnRandomTables,
  policyOnDemo,
  policyAgainstForm,
  hostileMessages,
  durableMessagesRow,
  answerPage,
  discordAcknowledgement,
  discordSession,
  listingRecords,
  changeoverCoverageRow,
  changeoverCells,
  telegramSession,
];

const { values: options } = parseArgs({ options: { json: { type: "boolean" }, only: { type: "string" } } });
const chosen = options.only === undefined ? rows : rows.filter(({ name }) => name === options.only);
if (chosen.length === 0) {
  process.stderr.write(`bench: --only: one of ${rows.map(({ name }) => name).join(", ")} is needed\n`);
  process.exit(2);
}

const isJson = options.json === true;
const measured: object[] = [];
const missed: Figure[] = [];
const say = (line: string) => (isJson ? undefined : process.stdout.write(`${line}\n`));
const load = () => `load of the machine ${loadavg()[0]?.toFixed(1)} on ${availableParallelism()} processors`;

say(`Node ${process.versions.node}, ${load()}\n`);
for (const row of chosen) {
  const from = performance.now();
  const figures = await row.measure();
  const seconds = (performance.now() - from) / 1000;
  missed.push(...figures.filter((figure) => holds(figure) === false));
  const { name, about, starts } = row;
  measured.push({
    name,
    about,
    starts,
    seconds,
    figures: figures.map((figure) => ({ ...figure, holds: holds(figure) ?? null })),
  });
  say(linesOf(row, figures, seconds).join("\n"));
}
say(`${missed.length === 0 ? "every budget holds" : `${missed.length} budgets missed`}; ${load()}`);
if (isJson) process.stdout.write(`${JSON.stringify({ rows: measured, missed: missed.length })}\n`);
process.exitCode = missed.length === 0 ? 0 : 1;
