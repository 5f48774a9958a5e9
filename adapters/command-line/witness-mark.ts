/**
 * The command line: finds the command and turns every way of failing into one line and an exit status. A command's file is
 * loaded when it is called for, so that help answers at once. Status 2: what was given cannot be used; 1: a fault of ours.
 */
import { keepCompiled } from "../compile-cache.ts";
import { failureLine, OutsideError } from "../errors.ts";
import { run as help, unknownCommand } from "./help.ts";
import { type Misspelt, UsageError } from "./options.ts";
import { usageText } from "./usages.ts";

type Run = (written: readonly string[]) => Promise<void>;

const commands: Readonly<Record<string, () => Promise<{ readonly run: Run }>>> = {
  chat: () => import("./chat.ts"),
  converse: () => import("./converse.ts"),
  model: () => import("./model.ts"),
  report: () => import("./report.ts"),
  simulate: () => import("./simulate.ts"),
  changeover: () => import("./changeover.ts"),
  new: () => import("./new.ts"),
  check: () => import("./check.ts"),
  editions: () => import("./editions.ts"),
  table: () => import("./table.ts"),
  learn: () => import("./learn.ts"),
  schema: () => import("./schema.ts"),
  "sign-in": () => import("./sign-in.ts"),
  store: () => import("./store.ts"),
  observations: () => import("./observations.ts"),
};

async function perform([command, ...written]: readonly string[]): Promise<void> {
  if (command === undefined) throw new UsageError("a command is needed");
  if (command === "--help" || command === "-h") return help([]);
  if (command === "help") return help(written);
  const load = Object.hasOwn(commands, command) ? commands[command] : undefined;
  if (load === undefined) throw unknownCommand(command);
  if (written.includes("--help") || written.includes("-h")) return help([command]);
  const { run } = await load();
  return run(written);
}

async function report(failure: unknown): Promise<number> {
  if (failure instanceof UsageError) {
    const name = failure.command === undefined ? "witness-mark" : `witness-mark ${failure.command}`;
    const hint = await hintFor(failure.misspelt);
    process.stderr.write(`${name}: ${failure.message}${hint}\n${usageText(failure.command)}\n`);
    return 2;
  }
  process.stderr.write(`${failureLine(failure)}\n`);
  return failure instanceof OutsideError ? 2 : 1;
}

async function hintFor(misspelt: Misspelt | undefined): Promise<string> {
  if (misspelt === undefined) return "";
  const { closestName } = await import("../closest-name.ts");
  const meant = closestName(misspelt.typed, misspelt.known);
  return meant === undefined ? "" : `; did you mean ${misspelt.prefix}${meant}`;
}

// Whoever reads may stop reading ("… | head -1"): that ends the program, and is no fault.
process.stdout.on("error", (problem: NodeJS.ErrnoException) => {
  process.exit(problem.code === "EPIPE" ? 0 : 1);
});

keepCompiled();
try {
  await perform(process.argv.slice(2));
} catch (failure) {
  process.exitCode = await report(failure);
}
