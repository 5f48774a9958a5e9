/**
 * One process holds a file at a time: two that rewrite the same file would each lose what the other acknowledged.
 * The lock names its process, so that one left behind by a crash is recognised and taken over.
 */
import { readFile, rm, writeFile } from "node:fs/promises";
import { OutsideError } from "../errors.ts";

/** Takes the lock and gives back the way to let it go. Throws OutsideError while a living process holds it. */
export async function holdFile(lock: string): Promise<() => Promise<void>> {
  if (!(await tryToTake(lock))) {
    const holder = Number(await readFile(lock, "utf8").catch(() => ""));
    if (isAnotherLivingProcess(holder)) {
      throw new OutsideError(`store: ${lock} says that process ${holder} is using this store`);
    }
    await rm(lock, { force: true });
    if (!(await tryToTake(lock))) throw new OutsideError(`store: ${lock} was taken by another process`);
  }
  return () => rm(lock, { force: true });
}

async function tryToTake(lock: string): Promise<boolean> {
  try {
    await writeFile(lock, `${process.pid}`, { flag: "wx", mode: 0o600 });
    return true;
  } catch (cause) {
    if (cause instanceof Error && "code" in cause && cause.code === "EEXIST") return false;
    throw new OutsideError(`store: ${lock} cannot be written`, cause);
  }
}

/** A container's first process has the same number after every start: our own number is never another's. */
function isAnotherLivingProcess(id: number): boolean {
  if (!Number.isInteger(id) || id <= 0 || id === process.pid) return false;
  try {
    process.kill(id, 0);
    return true;
  } catch (cause) {
    return cause instanceof Error && "code" in cause && cause.code === "EPERM";
  }
}
