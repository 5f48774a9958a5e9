/** `witness-mark help`: what can be typed, on standard output. */
import { closestName } from "../closest-name.ts";
import { UsageError } from "./options.ts";
import { commandNames, usageText } from "./usages.ts";

export async function run(written: readonly string[]): Promise<void> {
  const [command, ...rest] = written;
  if (rest.length > 0) throw new UsageError(`${rest[0]}: not expected here`, "help");
  if (command !== undefined && !commandNames.includes(command)) throw new UsageError(unknownCommand(command));
  process.stdout.write(`${usageText(command)}\n`);
}

/** The words for a command that does not exist. */
export function unknownCommand(typed: string): string {
  const meant = closestName(typed, commandNames);
  return `${typed}: no such command${meant === undefined ? "" : `; did you mean ${meant}`}`;
}
