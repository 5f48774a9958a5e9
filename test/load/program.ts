// One process of `npm start` without a terminal, as a service runs it: started, looked at from outside, frozen, killed, started again.
import { type ChildProcess, execFile, spawn } from "node:child_process";
import { createServer } from "node:net";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { fromEnd, waitUntil } from "./waiting.ts";

const run = promisify(execFile);
const mainProgram = fileURLToPath(new URL("../../adapters/main.ts", import.meta.url));
const shiftedClock = new URL("./shifted-clock.mjs", import.meta.url).href;

export interface Program {
  readonly address: string;
  /** Lines of its log that are errors, by their words. */
  readonly errors: Map<string, number>;
  /** Lines of its log that are warnings, by their message alone. */
  readonly warnings: Map<string, number>;
  /** Whatever it printed last. */
  printed(): string;
  /** Again and again until it is ready. */
  start(): Promise<void>;
  isRunning(): boolean;
  /** SIGKILL, and waits until it is gone. */
  kill(): Promise<void>;
  /** SIGTERM; the exit status. */
  stop(): Promise<number | null>;
  isReady(): Promise<boolean>;
  used(): Promise<Used>;
  /** From now on no file of it may grow beyond `bytes`; undefined: as far as they like. A disk that is full, for one process. */
  limitFiles(bytes: number | undefined): Promise<void>;
  /** Its clock goes this much before or behind the machine's. */
  shiftClock(milliseconds: number): Promise<void>;
}

export interface Used {
  /** Megabytes that the process holds. */
  readonly resident: number;
  /** Megabytes of them on its heap. */
  readonly heap: number;
  /** Seconds of a processor since it started. */
  readonly processor: number;
}

const START_WITHIN = 600_000;

/** `clockFile`: where the shift of its clock is read from. `profiles`: a folder for what it did with the processor, when it stops. */
export async function programOf(
  environment: Readonly<Record<string, string>>,
  clockFile: string,
  profiles?: string,
): Promise<Program> {
  const port = await freePort();
  const address = `http://127.0.0.1:${port}`;
  const errors = new Map<string, number>();
  const warnings = new Map<string, number>();
  let child: ChildProcess | undefined;
  let gone: Promise<number | null> = Promise.resolve(null);
  let printed = "";
  const { writeFile } = await import("node:fs/promises");
  await writeFile(clockFile, "0");

  function take(line: string): void {
    if (!line.startsWith("{")) return;
    const { level, msg, err } = JSON.parse(line) as {
      readonly level?: unknown;
      readonly msg?: string;
      readonly err?: { readonly message?: string };
    };
    if (level === "warn" || level === 40) warnings.set(msg ?? "", (warnings.get(msg ?? "") ?? 0) + 1);
    if (level !== "error" && level !== 50) return;
    const words = `${msg ?? ""}${err?.message === undefined ? "" : `: ${err.message}`}`;
    errors.set(words, (errors.get(words) ?? 0) + 1);
  }

  function begin(): void {
    // A file that may not grow is told by a signal first; ignored, the write fails as on a full disk.
    const command = [
      "-c",
      `trap '' XFSZ; exec "$0" "$@"`,
      process.execPath,
      ...(profiles === undefined ? [] : ["--cpu-prof", `--cpu-prof-dir=${profiles}`]),
      "--import",
      shiftedClock,
      mainProgram,
    ];
    const begun = spawn("sh", command, {
      env: { PATH: process.env.PATH ?? "", ...environment, PORT: `${port}`, CLOCK_SHIFT_FILE: clockFile },
      stdio: ["ignore", "pipe", "pipe"],
    });
    child = begun;
    gone = new Promise((resolve) => begun.on("close", (status) => resolve(status)));
    let open = "";
    begun.stdout.setEncoding("utf8").on("data", (text: string) => {
      printed = fromEnd(printed + text);
    });
    begun.stderr.setEncoding("utf8").on("data", (text: string) => {
      printed = fromEnd(printed + text);
      const lines = (open + text).split("\n");
      open = lines.pop() ?? "";
      for (const line of lines) take(line);
    });
  }

  const isRunning = () => child !== undefined && child.exitCode === null && child.signalCode === null;
  const isReady = async () => {
    try {
      return (await fetch(`${address}/readyz`)).status === 200;
    } catch {
      // Nobody listens there.
      return false;
    }
  };
  return {
    address,
    errors,
    warnings,
    printed: () => printed,
    isRunning,
    isReady,
    async start() {
      const isUp = await waitUntil(
        async () => {
          // Whoever runs it as a service has it started again when it ends, as when the database has no time for it.
          if (!isRunning()) begin();
          return await isReady();
        },
        START_WITHIN,
        500,
      );
      if (!isUp) throw new Error(`a process did not start: ${printed}`);
    },
    async kill() {
      child?.kill("SIGKILL");
      await gone;
    },
    async stop() {
      child?.kill("SIGTERM");
      return gone;
    },
    async used() {
      const text = await (await fetch(`${address}/metrics`)).text();
      const figure = (name: string) => Number(new RegExp(`^${name} (\\S+)$`, "mu").exec(text)?.[1]);
      return {
        resident: figure("process_resident_memory_bytes") / 2 ** 20,
        heap: figure("nodejs_heap_size_used_bytes") / 2 ** 20,
        processor: figure("process_cpu_seconds_total"),
      };
    },
    async limitFiles(bytes) {
      await run("prlimit", ["--pid", `${child?.pid}`, `--fsize=${bytes ?? "unlimited"}:`]);
    },
    async shiftClock(milliseconds) {
      await writeFile(clockFile, `${milliseconds}`);
      child?.kill("SIGUSR2");
    },
  };
}

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const at = server.address();
  await new Promise((resolve) => server.close(resolve));
  return typeof at === "object" && at !== null ? at.port : 0;
}
