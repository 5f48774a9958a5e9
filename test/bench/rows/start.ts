// How long somebody waits who types the command: from the start of the process to the first byte of the greeting.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import { percentile } from "../percentiles.ts";
import type { Row } from "../row.ts";

const TRIES = 5;
const program = fileURLToPath(new URL("../../../adapters/command-line/witness-mark.ts", import.meta.url));

export const start: Row = {
  name: "start",
  about: `from the command to the greeting on the demo handbook, ${TRIES} times`,
  starts: [],
  measure: async () => {
    const seconds: number[] = [];
    while (seconds.length < TRIES) seconds.push((await millisecondsToGreeting()) / 1000);
    return [
      { what: "median", value: percentile(seconds, 0.5), unit: "s", budget: { atMost: 0.7 } },
      { what: "slowest", value: Math.max(...seconds), unit: "s" },
    ];
  },
};

async function millisecondsToGreeting(): Promise<number> {
  const from = performance.now();
  const child = spawn(process.execPath, [program, "chat"], { stdio: ["pipe", "pipe", "inherit"] });
  const ended = once(child, "exit");
  const isGreeted = await Promise.race([
    once(child.stdout, "data").then(() => true),
    ended.then(() => false),
  ]);
  const milliseconds = performance.now() - from;
  child.kill();
  await ended;
  if (!isGreeted) throw new Error("the chat ended without a greeting");
  return milliseconds;
}
