/**
 * The handbooks that serve, as they stand on the disk now: a changed folder is taken at once if it is sound; if not, the edition before
 * goes on serving and whoever keeps the handbook is told why.
 */
import { type EditionWatch, type Knowledge, knowledgeOf, type Log } from "../bot/index.ts";
import type { Handbook, HandbookFile } from "../knowledge/index.ts";
import { failureLine } from "./errors.ts";
import { usualPace, type WatchPace, watchFolder } from "./handbook-folder/index.ts";
import { BrokenHandbookError, type OpenHandbook, openHandbook } from "./handbooks.ts";

export interface HandbookEvents {
  /** Serves from now on. Rejections are the receiver's to prevent. */
  onTaken(handbook: Handbook, files: readonly HandbookFile[]): Promise<void>;
  /** Was not taken; `handbook` serves on. Told once for the same problems. `problems`: a line each. */
  onBroken(handbook: Handbook, problems: readonly string[]): Promise<void>;
}

/** What happens to a handbook is kept and told through `watch`; a store that refuses costs the telling, never the serving. */
export function toldThrough(watch: EditionWatch, log: Log): HandbookEvents {
  const heard = (failure: unknown) => log.error({ err: failure }, "an edition was not written down");
  return {
    onTaken: (handbook, files) => watch.taken(handbook, files).catch(heard),
    onBroken: (handbook, problems) => watch.refused(handbook, problems).catch(heard),
  };
}

export interface LiveHandbooks {
  /** In the order they were opened; what it gives changes when an edition is taken. */
  known(): readonly Knowledge[];
  /** Looks at every folder now, as if each had changed; resolves when all of it is told. */
  look(): Promise<void>;
  close(): Promise<void>;
}

interface Serving {
  open: OpenHandbook;
  knowledge: Knowledge;
  /** What was told to be wrong with the files that were not taken; "" when they are what serves. */
  told: string;
}

/** Watches the folders of handbooks that are open. */
export function liveHandbooks(
  handbooks: readonly OpenHandbook[],
  events: HandbookEvents,
  pace: WatchPace = usualPace,
): LiveHandbooks {
  const serving = handbooks.map(
    (open): Serving => ({ open, knowledge: knowledgeOf(open.handbook), told: "" }),
  );
  let known: readonly Knowledge[] = serving.map(({ knowledge }) => knowledge);
  // One look at a time: two that overlap could put an older edition over a newer one.
  let looking: Promise<void> = Promise.resolve();
  const look = (one: Serving): Promise<void> => {
    looking = looking.then(() => lookAt(one));
    return looking;
  };

  async function lookAt(one: Serving): Promise<void> {
    const found = await reopened(one.open);
    if ("problems" in found) return refuse(one, found.problems);
    const { handbook, files } = found;
    const isKnown = handbook.edition === one.open.handbook.edition;
    if (isKnown && one.told === "") return;
    one.told = "";
    if (!isKnown) {
      one.open = found;
      one.knowledge = knowledgeOf(handbook);
      known = serving.map(({ knowledge }) => knowledge);
    }
    await events.onTaken(handbook, files);
  }

  async function refuse(one: Serving, problems: readonly string[]): Promise<void> {
    const told = problems.join("\n");
    if (one.told === told) return;
    one.told = told;
    await events.onBroken(one.open.handbook, problems);
  }

  const watches = serving.map((one) => watchFolder(one.open.folder, () => void look(one), pace));
  return {
    known: () => known,
    async look() {
      await Promise.all(serving.map(look));
    },
    async close() {
      for (const watch of watches) watch.close();
      await looking;
    },
  };
}

/** The folder as it is now, or why it cannot be taken. An id is how cases know their handbook: it cannot change while they are open. */
async function reopened({
  folder,
  handbook,
}: OpenHandbook): Promise<OpenHandbook | { readonly problems: readonly string[] }> {
  try {
    const found = await openHandbook(folder);
    const { id } = found.handbook.cover;
    if (id === handbook.cover.id) return found;
    return {
      problems: [
        `handbook.yaml: the id was ${handbook.cover.id} and is now ${id} … write the old id again, or start anew with the new one`,
      ],
    };
  } catch (failure) {
    if (failure instanceof BrokenHandbookError) return { problems: failure.problems };
    return { problems: [failureLine(failure)] };
  }
}
