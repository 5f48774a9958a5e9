// A disk of its own for the store, so small that it can be filled for real. It lies in memory, so that what is measured is not how busy the
// machine's own disk is. Mounting one is for root; who is not is told so, and the fault is left out.
import { execFileSync } from "node:child_process";
import { closeSync, mkdirSync, openSync, rmSync, statfsSync, writeSync } from "node:fs";
import { join } from "node:path";

export interface SmallDisk {
  /** Writes until not a byte more goes in. */
  fill(): void;
  /** Makes room again. */
  clear(): void;
}

const MEGABYTES = 256;

/** At `folder`, which is made; or why there is none. */
export function mountSmallDisk(
  folder: string,
): { readonly disk: SmallDisk; unmount(): void } | { readonly missing: string } {
  if (process.getuid?.() !== 0) return { missing: "only root may mount a disk" };
  mkdirSync(folder, { recursive: true });
  if (!isMounted(folder)) return { missing: "this machine mounts no disk in memory" };
  const ballast = join(folder, "ballast");
  return {
    disk: {
      fill: () => fill(folder, ballast),
      clear: () => rmSync(ballast, { force: true }),
    },
    unmount: () => execFileSync("umount", [folder]),
  };
}

function isMounted(folder: string): boolean {
  try {
    execFileSync("mount", ["-t", "tmpfs", "-o", `size=${MEGABYTES}m`, "tmpfs", folder], { stdio: "ignore" });
    return true;
  } catch {
    // Root without the right to, as in a container.
    return false;
  }
}

/** In ever smaller pieces, so that nothing is left over. */
function fill(folder: string, file: string): void {
  const open = openSync(file, "a");
  try {
    for (let size = 2 ** 22; size >= 1; size = Math.floor(size / 2)) {
      while (isWritten(open, Buffer.alloc(size, 1)));
    }
  } finally {
    closeSync(open);
  }
  const { bavail } = statfsSync(folder);
  if (bavail > 0) throw new Error(`the disk has still ${bavail} blocks free`);
}

function isWritten(open: number, bytes: Buffer): boolean {
  try {
    return writeSync(open, bytes) === bytes.length;
  } catch (failure) {
    if (failure instanceof Error && "code" in failure && failure.code === "ENOSPC") return false;
    throw failure;
  }
}
