// `npm run newcomer`: what somebody meets who has nothing. A fresh clone in an empty folder, an empty cache of npm, the commands as the
// README writes them, and a look at what they print. --without-tests leaves the last one, which takes minutes, out.
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { begin, commandIn, runShell } from "./shell.ts";

const { values: options } = parseArgs({ options: { "without-tests": { type: "boolean" } } });
const root = fileURLToPath(new URL("../../", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "wm-newcomer-"));
const clone = join(folder, "clone");
const cache = join(folder, "cache");
let failures = 0;

function judge(what: string, isSo: boolean, seen = ""): void {
  failures += Number(!isSo);
  process.stdout.write(`${isSo ? "is so  " : "IS NOT "} ${what}\n`);
  if (!isSo && seen !== "") process.stdout.write(`${seen.slice(-3000).replaceAll(/^/gmu, "        ")}\n`);
}

/** `npm ci && npm start`, without a terminal, until it serves; the page is fetched, and it is asked to stop. */
async function startCommand(readme: string): Promise<void> {
  const command = commandIn(readme, "## Start");
  judge("the README begins with one command that installs and starts", command === "npm ci && npm start");
  const from = performance.now();
  // A port of its own, for a machine on which 8787 is taken.
  const running = begin(command, { folder: clone, cache, environment: { PORT: "0" } });
  const printed = await running.until(/web at http:\S+\//u, 600_000);
  const seconds = ((performance.now() - from) / 1000).toFixed(0);
  judge(`it serves after ${seconds} s, and says what and where`, printed !== undefined, running.printed());
  const isNamed = running.printed().includes("witness-mark serves Wexcombe Shrike");
  judge("it names the demonstration it serves", isNamed, running.printed());
  judge("npm prints no error", !/npm error/iu.test(running.printed()), running.printed());
  const address = /http:\S+/u.exec(printed ?? "")?.[0];
  if (address !== undefined) await page(address);
  await running.stop();
  const answers =
    address === undefined
      ? false
      : await fetch(address).then(
          () => true,
          () => false,
        );
  judge("it is gone when it was asked to stop", !answers);
}

async function page(address: string): Promise<void> {
  const answer = await fetch(address);
  const text = await answer.text();
  judge(
    "the page is there, with a box to ask in",
    answer.status === 200 && /<textarea|<input/u.test(text),
    text,
  );
  judge(`it weighs ${(text.length / 1000).toFixed(1)} kB, at most 60`, text.length <= 60_000);
}

/** The pipe of the README, as it is written there. */
async function pipeCommand(readme: string): Promise<void> {
  const { out, err, status } = await runShell(commandIn(readme, "**A pipe.**"), { folder: clone, cache });
  judge("the pipe ends with status 0", status === 0, `${out}${err}`);
  judge("it read what was said", /inside finish\s+rough, fibres showing/u.test(out), out);
  judge(
    "nothing but the conversation is on its output",
    !out.includes('"level"') && !out.startsWith(">"),
    out,
  );
}

async function testCommand(readme: string): Promise<void> {
  const command = commandIn(readme, "## Tests");
  judge("the README's test command is one line", command === "npm ci && npm test");
  const { out, err, status } = await runShell(command, { folder: clone, cache });
  const count = /^\s*Tests\s.*\d+ passed.*$/mu.exec(out)?.[0].trim();
  judge(
    `npm test ends with status 0 and counts its tests: ${count ?? "no count"}`,
    status === 0,
    `${out}${err}`,
  );
  judge("no test failed", count !== undefined && !count.includes("failed"), out);
}

try {
  const cloned = await runShell(`git clone --quiet '${root}' clone`, { folder, cache });
  judge("the clone is made and prints nothing", cloned.status === 0 && cloned.out === "", cloned.err);
  const readme = readFileSync(join(clone, "README.md"), "utf8");
  await startCommand(readme);
  await pipeCommand(readme);
  if (options["without-tests"] !== true) await testCommand(readme);
  const left = await runShell("git status --porcelain", { folder: clone, cache });
  judge("the clone is as clean as it was", left.out === "", left.out);
} finally {
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
}
process.stdout.write(
  failures === 0 ? "the newcomer's path holds\n" : `${failures} things are not as they should be\n`,
);
process.exitCode = failures === 0 ? 0 : 1;
