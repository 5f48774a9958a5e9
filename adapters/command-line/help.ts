/** `witness-mark help`: what can be typed, on standard output. */
import { UsageError } from "./options.ts";
import { commandNames, usageText } from "./usages.ts";

export async function run(written: readonly string[]): Promise<void> {
  const [command, ...rest] = written;
  if (rest.length > 0) throw new UsageError(`${rest[0]}: not expected here`, "help");
  if (command !== undefined && !commandNames.includes(command)) throw unknownCommand(command);
  process.stdout.write(`${usageText(command)}\n`);
}

/** For a command that does not exist. */
export function unknownCommand(typed: string): UsageError {
  const misspelt = { typed, known: commandNames, prefix: "" };
  return new UsageError(`${typed}: no such command`, undefined, misspelt);
}
