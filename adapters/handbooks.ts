/** The handbooks a program is to go by: all of them sound, or none. */
import {
  type Handbook,
  type HandbookFile,
  loadHandbook,
  type Problem,
  problemText,
} from "../knowledge/index.ts";
import { OutsideError } from "./errors.ts";
import { readHandbookFolder } from "./handbook-folder/index.ts";

export interface OpenHandbook {
  readonly folder: string;
  readonly handbook: Handbook;
  /** What it was read from. */
  readonly files: readonly HandbookFile[];
  /** Worth mending, though the handbook can be used. */
  readonly warnings: readonly string[];
}

/** A handbook that cannot be used. `message` is one line; `problems` has a line for each thing to mend. */
export class BrokenHandbookError extends OutsideError {
  readonly problems: readonly string[];
  readonly folder: string;

  constructor(folder: string, problems: readonly Problem[]) {
    const lines = problems.map(problemText);
    const others = lines.length - 1;
    const more =
      others > 0 ? ` (and ${others} more; witness-mark check --handbook ${folder} lists them)` : "";
    super(`handbook ${folder}: ${lines[0] ?? "is unsound"}${more}`);
    this.name = "BrokenHandbookError";
    this.folder = folder;
    this.problems = lines;
  }
}

/** One handbook; throws BrokenHandbookError when it is unsound or cannot be read. */
export async function openHandbook(folder: string): Promise<OpenHandbook> {
  const reading = await readHandbookFolder(folder);
  if (!reading.ok) throw new BrokenHandbookError(folder, reading.problems);
  const loaded = loadHandbook(reading.files);
  if (!loaded.ok) throw new BrokenHandbookError(folder, loaded.problems);
  const { handbook, warnings } = loaded;
  return { folder, handbook, files: reading.files, warnings: warnings.map(problemText) };
}

/** All of them, in the order given. Two with one id are refused: a case could not say which it is read against. */
export async function openHandbooks(folders: readonly string[]): Promise<readonly OpenHandbook[]> {
  const open: OpenHandbook[] = [];
  for (const folder of folders) {
    const next = await openHandbook(folder);
    const twin = open.find(({ handbook }) => handbook.cover.id === next.handbook.cover.id);
    if (twin !== undefined) {
      throw new OutsideError(
        `handbook ${folder}: has the id ${next.handbook.cover.id}, and so has ${twin.folder}; give each its own`,
      );
    }
    open.push(next);
  }
  return open;
}
