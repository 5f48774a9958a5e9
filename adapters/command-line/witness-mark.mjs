#!/usr/bin/env node
// The command as npm links it: plain JavaScript, because the Node that starts it may be too old to read TypeScript.
// It then hands over to the one that `npm ci` brought along, with the same streams, signals and exit status.
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";

const program = new URL("./witness-mark.ts", import.meta.url);

if (readsTypeScript(process.versions.node)) {
  await import(program.href);
} else {
  const runtime = pinnedRuntime();
  if (runtime === undefined) {
    process.stderr.write(
      `witness-mark: Node 22.18 or newer is needed, this is ${process.versions.node}; npm ci brings one along\n`,
    );
    process.exitCode = 1;
  } else {
    handOver(runtime);
  }
}

function readsTypeScript(version) {
  const [major, minor] = version.split(".").map(Number);
  return major > 22 ? major > 23 || minor >= 6 : major === 22 && minor >= 18;
}

function pinnedRuntime() {
  return ["node", "node.exe"]
    .map((name) => fileURLToPath(new URL(`../../node_modules/node/bin/${name}`, import.meta.url)))
    .find((path) => existsSync(path));
}

function handOver(runtime) {
  const child = spawn(runtime, [fileURLToPath(program), ...process.argv.slice(2)], { stdio: "inherit" });
  const passOn = (signal) => child.kill(signal);
  const signals = ["SIGINT", "SIGTERM", "SIGHUP"];
  for (const signal of signals) process.on(signal, passOn);
  child.on("error", (problem) => {
    process.stderr.write(`witness-mark: ${runtime} cannot be started (${problem.message})\n`);
    process.exitCode = 1;
  });
  child.on("exit", (status, signal) => {
    for (const name of signals) process.off(name, passOn);
    if (signal === null) process.exitCode = status ?? 1;
    else process.kill(process.pid, signal);
  });
}
