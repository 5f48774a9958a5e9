// The Postgres of a run, which can fall and be started again as it is: with the files it had, at the address it had.
import { execFileSync, spawn } from "node:child_process";
import pg from "pg";
import { startPostgres } from "../support/postgres.ts";
import { waitUntil } from "./waiting.ts";

export interface Database {
  readonly address: string;
  /** Falls without closing anything, stays away for so long, and comes back. */
  restart(awayMilliseconds: number): Promise<void>;
  stop(): Promise<void>;
}

export async function openDatabase(): Promise<Database> {
  const postgres = await startPostgres();
  let { process: server } = postgres;
  const [, ...words] = server.spawnargs;
  const folder = words[words.indexOf("-D") + 1] ?? "";
  return {
    address: postgres.address,
    async restart(awayMilliseconds) {
      const gone = new Promise((resolve) => server.once("exit", resolve));
      server.kill("SIGQUIT");
      await gone;
      await new Promise((resolve) => setTimeout(resolve, awayMilliseconds));
      server = spawn(server.spawnfile, words, { ...owner(), cwd: `${folder}/..`, stdio: "ignore" });
      const isBack = await waitUntil(() => answers(postgres.address), 60_000, 100);
      if (!isBack) throw new Error("postgres did not come back");
    },
    async stop() {
      const gone = new Promise((resolve) => server.once("exit", resolve));
      if (server.exitCode === null && server.signalCode === null) {
        server.kill("SIGQUIT");
        await gone;
      }
      await postgres.stop();
    },
  };
}

/** As test/support/postgres.ts starts it. */
function owner(): { readonly uid?: number; readonly gid?: number } {
  if (process.getuid?.() !== 0) return {};
  const number = (flag: string) => Number(execFileSync("id", [flag, "nobody"], { encoding: "utf8" }));
  return { uid: number("-u"), gid: number("-g") };
}

async function answers(address: string): Promise<boolean> {
  const client = new pg.Client({ connectionString: address, connectionTimeoutMillis: 2000 });
  client.on("error", () => undefined);
  try {
    await client.connect();
    await client.end();
    return true;
  } catch {
    // Not yet.
    return false;
  }
}
