// One try: chosen statements of test files, with some sources changed, in a process of its own.
import { spawnSync } from "node:child_process";
import { tmpdir } from "node:os";
import { join } from "node:path";
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
export function attempted(attempt: Attempt, limitSeconds: number): Outcome | undefined {
  const { output } = spawnSync(
    "sh",
    [
      "-c",
      `ulimit -t ${Math.ceil(limitSeconds)}; exec "$0" --max-old-space-size=1024 "$1"`,
      process.execPath,
      child,
    ],
    {
      input: JSON.stringify(attempt),
      stdio: ["pipe", "ignore", "ignore", "pipe"],
      env: { ...process.env, NODE_COMPILE_CACHE: join(tmpdir(), "wm-mutation-compiled") },
      maxBuffer: 2 ** 28,
    },
  );
  const answer = String(output[3] ?? "");
  return answer === "" ? undefined : (JSON.parse(answer) as Outcome);
}
