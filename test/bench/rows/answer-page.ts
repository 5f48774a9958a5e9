// A shared answer's page while a forum sends a crowd: two hundred requests a second over loopback to a process on one core, and the same
// to the least page that the framework can give, in turns.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { platform } from "node:os";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import autocannon from "autocannon";
import type { Row } from "../row.ts";

const PER_SECOND = 200;
const SECONDS = 6;
const ROUNDS = 3;
const CONNECTIONS = 10;
/** Of util-linux; elsewhere the process has the whole machine. */
const ON_ONE_CORE = ["taskset", "-c", "0"];
const server = fileURLToPath(new URL("../answer-page-server.ts", import.meta.url));

export const answerPage: Row = {
  name: "answer-page",
  about: `the first page, and shared answers at ${PER_SECOND} requests a second, ${ROUNDS} times ${SECONDS} s, beside a bare page`,
  starts: [],
  measure: async () => {
    const [command, ...words] =
      platform() === "linux" ? [...ON_ONE_CORE, process.execPath] : [process.execPath];
    const child = spawn(command ?? process.execPath, [...words, server], {
      stdio: ["pipe", "pipe", "inherit"],
    });
    try {
      const [line] = (await once(createInterface(child.stdout), "line")) as [string];
      const { web, paths, bare }: Where = JSON.parse(line);
      const [first, bareSize] = [await kilobytesOf(web), await kilobytesOf(bare)];
      await load(web, paths, 2);
      const answers: Load[] = [];
      const bares: Load[] = [];
      for (let round = 0; round < ROUNDS; round += 1) {
        answers.push(await load(web, paths, SECONDS));
        bares.push(await load(bare, ["/"], SECONDS));
      }
      const p99 = middle(answers.map((one) => one.p99));
      const bareP99 = middle(bares.map((one) => one.p99));
      const failed = answers.reduce((sum, one) => sum + one.failed, 0);
      return [
        { what: "99 of 100 within", value: p99, unit: "ms", budget: { atMost: 20 } },
        { what: "bare page, 99 of 100 within", value: bareP99, unit: "ms" },
        // The loader counts whole milliseconds.
        { what: "ratio", value: Math.max(1, p99) / Math.max(1, bareP99), unit: "x", budget: { atMost: 3 } },
        { what: "mean", value: middle(answers.map((one) => one.mean)), unit: "ms" },
        { what: "bare page, mean", value: middle(bares.map((one) => one.mean)), unit: "ms" },
        { what: "not answered", value: failed, unit: "", budget: { atMost: 0 } },
        {
          what: "first page with its style and script, without pictures",
          value: first,
          unit: "kB",
          budget: { atMost: 60 },
          remark: `a bare page: ${bareSize.toFixed(2)} kB`,
        },
      ];
    } finally {
      child.stdin.end();
      await once(child, "exit");
    }
  },
};

interface Where {
  readonly web: string;
  readonly paths: readonly string[];
  readonly bare: string;
}

interface Load {
  readonly p99: number;
  readonly mean: number;
  readonly failed: number;
}

/**
 * By a thread of its own, for what the rows before have left in this process would be measured as well. Its correction for requests that a
 * slow answer held back is left off: it takes one over the rate, in seconds, for milliseconds, and so counts an answer of 14 ms fourteen times.
 */
async function load(url: string, paths: readonly string[], duration: number): Promise<Load> {
  const requests = paths.map((path) => ({ path }));
  const result = await autocannon({
    url,
    duration,
    requests,
    connections: CONNECTIONS,
    overallRate: PER_SECOND,
    ignoreCoordinatedOmission: true,
    workers: 1,
  });
  const { latency, errors, non2xx } = result;
  return { p99: latency.p99, mean: latency.average, failed: errors + non2xx };
}

/** Of the page and of everything it names that is no picture, in thousands of bytes. */
async function kilobytesOf(web: string): Promise<number> {
  const text = await (await fetch(`${web}/`)).text();
  const linked = [...text.matchAll(/(?:href|src)="(\/static\/[^"]+)"/gu)].map(([, path = ""]) => path);
  const sizes = await Promise.all(
    linked
      .filter((path) => !path.endsWith(".svg"))
      .map(async (path) => (await (await fetch(`${web}${path}`)).arrayBuffer()).byteLength),
  );
  return sizes.reduce((sum, size) => sum + size, Buffer.byteLength(text)) / 1000;
}

function middle(values: readonly number[]): number {
  return values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;
}
