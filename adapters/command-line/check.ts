/** `witness-mark check`: every problem of a handbook, a line each on standard output, as editors and pipes like them. */
import { demonstrationHandbook } from "../configuration.ts";
import { OutsideError } from "../errors.ts";
import { BrokenHandbookError, openHandbook } from "../handbooks.ts";
import { readOptions } from "./options.ts";

export async function run(written: readonly string[]): Promise<void> {
  const { handbook: folder = demonstrationHandbook } = readOptions("check", written, { handbook: "text" });
  try {
    const { handbook, warnings } = await openHandbook(folder);
    const variants = handbook.parts.reduce((sum, part) => sum + part.variants.length, 0);
    const size = `${handbook.parts.length} part kinds, ${variants} variants`;
    print([...warnings, `${handbook.cover.name}: sound, edition ${handbook.edition}, ${size}`]);
  } catch (failure) {
    if (!(failure instanceof BrokenHandbookError)) throw failure;
    print(failure.problems);
    throw new OutsideError(`handbook ${folder}: ${failure.problems.length} to mend`, failure);
  }
}

function print(lines: readonly string[]): void {
  process.stdout.write(`${lines.join("\n")}\n`);
}
