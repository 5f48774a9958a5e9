/** The real programs, started as a user starts them: a process, its streams, its exit status. */
import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { vi } from "vitest";

// A process takes its time to start on a busy machine, and some tests start six.
vi.setConfig({ testTimeout: 60_000 });

export const root: string = fileURLToPath(new URL("../../", import.meta.url));
export const commandLine: string = join(root, "adapters/command-line/witness-mark.ts");
export const mainProgram: string = join(root, "adapters/main.ts");
export const shrike: string = join(root, "knowledge/handbooks/wexcombe-shrike");

export interface Ended {
  readonly status: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly out: string;
  readonly err: string;
}

export interface StartOptions {
  readonly environment?: Readonly<Record<string, string>>;
  readonly folder?: string;
  /** The Node to start it with; this one when absent. */
  readonly node?: string;
}

/** A program that runs; its input is left open until `end`. */
export interface Running {
  readonly process: ChildProcess;
  readonly ended: Promise<Ended>;
  write(text: string): void;
  /** Resolves once standard output holds `count` whole lines; rejects when the program ends first. */
  lines(count: number): Promise<readonly string[]>;
}

export function start(program: string, words: readonly string[], options: StartOptions = {}): Running {
  const environment = { PATH: process.env.PATH ?? "", ...options.environment };
  const child = spawn(options.node ?? process.execPath, [program, ...words], {
    cwd: options.folder ?? newFolder(),
    env: environment,
  });
  let out = "";
  let err = "";
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    out += text;
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    err += text;
  });
  // A program may end before it has read everything; that is for the test to judge by its status.
  child.stdin.on("error", () => undefined);
  const ended = new Promise<Ended>((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (status, signal) => resolve({ status, signal, out, err }));
  });
  const lines = (count: number) =>
    new Promise<readonly string[]>((resolve, reject) => {
      const look = () => {
        const whole = out.split("\n").slice(0, -1);
        if (whole.length < count) return;
        child.stdout.off("data", look);
        resolve(whole.slice(0, count));
      };
      child.stdout.on("data", look);
      child.on("close", () => reject(new Error(`ended before ${count} lines: ${out}${err}`)));
      look();
    });
  return { process: child, ended, lines, write: (text) => child.stdin.write(text) };
}

/** Runs a program to its end with all of its input at once. */
export function run(
  program: string,
  words: readonly string[],
  input = "",
  options: StartOptions = {},
): Promise<Ended> {
  const running = start(program, words, options);
  running.process.stdin?.end(input);
  return running.ended;
}

export function newFolder(): string {
  return mkdtempSync(join(tmpdir(), "wm-"));
}
