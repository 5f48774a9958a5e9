// Commands as they stand in the README, run by a shell that knows nothing of the program that runs them here.
import { spawn } from "node:child_process";
import { delimiter } from "node:path";

export interface Surroundings {
  readonly folder: string;
  /** Where npm keeps what it fetched. */
  readonly cache: string;
  readonly environment?: Readonly<Record<string, string>>;
}

export interface Ended {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** The first command of the fenced block that follows `after`. */
export function commandIn(readme: string, after: string): string {
  const rest = readme.slice(readme.indexOf(after));
  const [, block = ""] = rest.split("```");
  return block.trim();
}

export async function runShell(command: string, surroundings: Surroundings): Promise<Ended> {
  const child = shell(command, surroundings);
  let out = "";
  let err = "";
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    out += text;
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    err += text;
  });
  const status = await new Promise<number | null>((resolve) => child.on("close", resolve));
  return { status, out, err };
}

export interface Begun {
  /** What stands on both of its outputs so far. */
  printed(): string;
  /** The words that fit, once they were printed; undefined when it ended or the time is over. */
  until(words: RegExp, milliseconds: number): Promise<string | undefined>;
  /** Asks the command and all that it started to stop, and waits for it. */
  stop(): Promise<void>;
}

export function begin(command: string, surroundings: Surroundings): Begun {
  const child = shell(command, surroundings);
  let printed = "";
  let isOver = false;
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding("utf8").on("data", (text: string) => {
      printed += text;
    });
  }
  const ended = new Promise<void>((resolve) => child.on("close", () => resolve()));
  void ended.then(() => {
    isOver = true;
  });
  return {
    printed: () => printed,
    async until(words, milliseconds) {
      const end = performance.now() + milliseconds;
      while (performance.now() < end) {
        const found = words.exec(printed)?.[0];
        if (found !== undefined || isOver) return found;
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
      return undefined;
    },
    async stop() {
      if (!isOver && child.pid !== undefined) process.kill(-child.pid, "SIGTERM");
      await ended;
    },
  };
}

/** In a process group of its own, without a terminal, and without what `npm run` has added to the surroundings of this program. */
function shell(command: string, { folder, cache, environment }: Surroundings) {
  const own = Object.entries(process.env).filter(([name]) => !/^(?:npm_|INIT_CWD|NODE)/u.test(name));
  const path = (process.env.PATH ?? "")
    .split(delimiter)
    .filter((entry) => !entry.includes("node_modules") && !entry.includes("node-gyp-bin"))
    .join(delimiter);
  return spawn("bash", ["-c", command], {
    cwd: folder,
    detached: true,
    env: { ...Object.fromEntries(own), PATH: path, npm_config_cache: cache, NO_COLOR: "1", ...environment },
    stdio: ["ignore", "pipe", "pipe"],
  });
}
