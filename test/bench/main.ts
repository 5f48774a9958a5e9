// `npm run bench`: our budgets measured in one run. Prints one table, or JSON with --json; --only NAME runs one row.
// Exit status 1 when a budget is missed, 2 for a row that does not exist. Nothing is kept on disk.

import { parseArgs } from "node:util";
import { linesOf } from "./page.ts";
import { type Figure, holds, type Row } from "./row.ts";
import { calibrationOfDemo } from "./rows/calibration-of-demo.ts";
import { calibrationOfOwners } from "./rows/calibration-of-owners.ts";
import { durableMessagesRow } from "./rows/durable-messages.ts";
import { hostileMessages } from "./rows/hostile-messages.ts";
import { policyAgainstForm } from "./rows/policy-against-form.ts";
import { policyOnDemo } from "./rows/policy-on-demo.ts";
import { policyOnRandomTables } from "./rows/policy-on-random-tables.ts";
import { posteriorAgainstNetwork } from "./rows/posterior-against-network.ts";
import { readingMessages } from "./rows/reading-messages.ts";
import { start } from "./rows/start.ts";
import { turnOnDemo } from "./rows/turn-on-demo.ts";
import { turnOnLargeHandbook } from "./rows/turn-on-large-handbook.ts";

// Times first, while nothing else has warmed or filled the process.
const rows: readonly Row[] = [
  start,
  turnOnDemo,
  readingMessages,
  turnOnLargeHandbook,
  posteriorAgainstNetwork,
  calibrationOfOwners,
  calibrationOfDemo,
  policyOnRandomTables,
  policyOnDemo,
  policyAgainstForm,
  hostileMessages,
  durableMessagesRow,
];

const { values: options } = parseArgs({ options: { json: { type: "boolean" }, only: { type: "string" } } });
const chosen = options.only === undefined ? rows : rows.filter(({ name }) => name === options.only);
if (chosen.length === 0) {
  process.stderr.write(`bench: --only: one of ${rows.map(({ name }) => name).join(", ")} is needed\n`);
  process.exit(2);
}

const missed: Figure[] = [];
for (const row of chosen) {
  const from = performance.now();
  const figures = await row.measure();
  const seconds = (performance.now() - from) / 1000;
  missed.push(...figures.filter((figure) => holds(figure) === false));
  const { name, about, starts } = row;
  const judged = figures.map((figure) => ({ ...figure, holds: holds(figure) ?? null }));
  process.stdout.write(
    options.json === true
      ? `${JSON.stringify({ name, about, starts, seconds, figures: judged })}\n`
      : `${linesOf(row, figures, seconds).join("\n")}\n`,
  );
}
if (options.json !== true) {
  process.stdout.write(missed.length === 0 ? "every budget holds\n" : `${missed.length} budgets missed\n`);
}
process.exitCode = missed.length === 0 ? 0 : 1;
