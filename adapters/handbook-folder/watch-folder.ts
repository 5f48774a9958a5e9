// Something in a handbook folder has changed: told once, after it has been quiet for a moment, because editors write in several
// steps and people save several files. The system's own notices are not all: none come over some network and container mounts, so
// the folder is also looked at now and then.
import { type FSWatcher, watch } from "node:fs";
import { join } from "node:path";

export interface FolderWatch {
  close(): void;
}

export interface WatchPace {
  /** So long nothing more may change before it is told, in milliseconds. */
  readonly quiet: number;
  /** How often to look without having been told, in milliseconds. */
  readonly look: number;
}

export const usualPace: WatchPace = { quiet: 400, look: 20_000 };

/** Calls `look` when the folder, or parts/ or drawings/ in it, may have changed. It keeps no process alive. */
export function watchFolder(folder: string, look: () => void, pace: WatchPace = usualPace): FolderWatch {
  let waiting: NodeJS.Timeout | undefined;
  const watchers = new Map<string, FSWatcher>();
  const changed = () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      watchAll();
      look();
    }, pace.quiet);
    waiting.unref();
  };
  /** A folder that is not there yet, or was replaced by another, is watched from the next look on. */
  function watchAll(): void {
    for (const path of [folder, join(folder, "parts"), join(folder, "drawings")]) {
      watchers.get(path)?.close();
      watchers.delete(path);
      const watcher = watched(path, changed);
      if (watcher !== undefined) watchers.set(path, watcher);
    }
  }
  watchAll();
  const looking = setInterval(() => {
    watchAll();
    look();
  }, pace.look);
  looking.unref();
  return {
    close() {
      clearTimeout(waiting);
      clearInterval(looking);
      for (const watcher of watchers.values()) watcher.close();
      watchers.clear();
    },
  };
}

function watched(path: string, changed: () => void): FSWatcher | undefined {
  try {
    const watcher = watch(path, { persistent: false }, changed);
    // A folder that goes away is noticed by the next look.
    watcher.on("error", () => watcher.close());
    return watcher;
  } catch (failure) {
    if (failure instanceof Error && "code" in failure) return undefined;
    throw failure;
  }
}
