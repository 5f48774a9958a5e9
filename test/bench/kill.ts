// `npm run kill`: the long run of what the tests do shortly. Writers are killed 200 times on each engine while they write.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { killRun } from "../support/kill-run.ts";
import { startPostgres } from "../support/postgres.ts";

const kills = Number(process.argv[2] ?? 200);
const start = Number(process.argv[3] ?? 1);
const folder = mkdtempSync(join(tmpdir(), "wm-kill-"));
const postgres = await startPostgres();
try {
  for (const databaseUrl of [undefined, postgres.address]) {
    const name = databaseUrl === undefined ? "SQLite" : "Postgres";
    const { problems, ...counts } = await killRun({ dataFolder: folder, databaseUrl }, kills, start);
    process.stdout.write(`${name}: ${JSON.stringify(counts)}, ${problems.length} problems\n`);
    for (const problem of problems.slice(0, 20)) process.stdout.write(`  ${problem}\n`);
    if (problems.length > 0) process.exitCode = 1;
  }
} finally {
  await postgres.stop();
  rmSync(folder, { recursive: true, force: true });
}
