// One try: chosen statements of test files, with some sources changed, in a process of its own.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable, type Writable } from "node:stream";
import { text } from "node:stream/consumers";
import { pipeline } from "node:stream/promises";
import { fileURLToPath } from "node:url";

export interface Attempt {
  /** File to the text that stands for it, without types. */
  readonly sources: readonly (readonly [string, string])[];
  /** Test files, and which of their statements, by place in the file and in the order in which they are to run; all without `chosen`. */
  readonly tests: readonly { readonly file: string; readonly chosen?: readonly number[] }[];
}

export interface Outcome {
  readonly passed: boolean;
  readonly why: string;
  /** Of the processor's time, for each statement that was run, and to open all the files. */
  readonly seconds: readonly number[];
  readonly openingSeconds: number;
  /** For each statement the ids of the mutants whose places it or the opening of its file reached, where the sources note them. */
  readonly reached: readonly (readonly number[])[];
}

const child = fileURLToPath(new URL("./run-statements.ts", import.meta.url));

/**
 * What came of it; undefined if the process was ended because it took more than `limitSeconds`, or ended by itself without an answer. The limit
 * is of the processor's time, so that a busy machine decides nothing.
 */
export async function attempted(attempt: Attempt, limitSeconds: number): Promise<Outcome | undefined> {
  const running = spawn(
    "sh",
    [
      "-c",
      `ulimit -t ${Math.ceil(limitSeconds)}; exec "$0" --max-old-space-size=1024 "$1"`,
      process.execPath,
      child,
    ],
    {
      stdio: ["pipe", "ignore", "ignore", "pipe"],
      env: { ...process.env, NODE_COMPILE_CACHE: join(tmpdir(), "wm-mutation-compiled") },
    },
  );
  const ended = once(running, "close");
  const asked = Readable.from([JSON.stringify(attempt)]);
  const [answer] = await Promise.all([
    text(running.stdio[3] as Readable),
    // One that ends before it has read all of it gives no answer either.
    pipeline(asked, running.stdin as Writable).catch((error: unknown) => String(error)),
    ended,
  ]);
  return answer === "" ? undefined : (JSON.parse(answer) as Outcome);
}
