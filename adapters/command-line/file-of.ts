/** A file that stands before the options of a command. */
import { UsageError } from "./options.ts";

/** The file and what comes after it; throws UsageError when there is none. */
export function fileOf(
  command: string,
  [file, ...rest]: readonly string[],
): { readonly file: string; readonly rest: readonly string[] } {
  if (file === undefined || file.startsWith("--")) throw new UsageError("a file is needed", command);
  return { file, rest };
}
